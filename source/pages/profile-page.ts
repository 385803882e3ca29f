import type {Profile} from '../procedure/facts.js';
import {unitOf} from '../procedure/read-answer.js';
import type {Step} from '../procedure/step.js';
import {profileQuestions} from '../results/profile-answers.js';
import {nameSteps} from '../results/profiles.js';
import {units} from '../units.js';
import {words} from '../words/index.js';
import type {Workbench} from '../workbench.js';
import {back, type Page} from './page.js';
import {profileLines, profileProblems} from './profile-lines.js';
import {line, type Shown} from './shown-lines.js';

export type ProfilePlace =
	| {readonly at: 'list'}
	| {readonly at: 'profile' | 'rename' | 'answers'; readonly id: string}
	| {readonly at: 'answer'; readonly id: string; readonly step: string};

/** What a page of the profiles says and asks. */
export function profilePage(workbench: Workbench, place: ProfilePlace): Page {
	if (place.at === 'list') return listPage(workbench.profiles());
	const profile = workbench.profiles().find(({id}) => id === place.id);
	return profile ? pageOfOne(workbench, place, profile) : gonePage;
}

type OnePlace = Exclude<ProfilePlace, {at: 'list'}>;

const gonePage: Page = {
	title: 'Profiles',
	shown: [line('That profile is no longer on file.', 'warn')],
	prompt: {kind: 'choice', options: [back]},
};

/** Those set aside come last. */
function listPage(profiles: readonly Profile[]): Page {
	const sorted = [...profiles.filter((one) => !one.setAside), ...profiles.filter((one) => one.setAside)];
	const text =
		profiles.length === 0
			? 'None yet: they are kept as you answer the questions of a check.'
			: 'Kept from your checks. Choose one to see it, rename, correct or set it aside.';
	const options = sorted.map(({id, kind, name, ...rest}) => ({
		id,
		label: `${kind}: ${name}${rest.setAside ? ' (set aside)' : ''}`,
	}));
	return {title: 'Profiles', shown: [line(text)], prompt: {kind: 'choice', options: [...options, back]}};
}

function pageOfOne(workbench: Workbench, place: OnePlace, profile: Profile): Page {
	const meanwhile = takenOverLines(workbench, profile);
	switch (place.at) {
		case 'profile':
			return {
				title: profile.name,
				shown: [...meanwhile, ...profileLines(profile)],
				prompt: {kind: 'choice', options: actionsOn(profile)},
			};
		case 'rename':
			return {
				title: `Rename ${profile.name}`,
				shown: [line(renameWords[profile.kind]), ...meanwhile],
				prompt: {kind: 'field', initial: profile.name, mayBeEmpty: false, unit: ''},
			};
		case 'answers':
			return {
				title: `Correct ${profile.name}`,
				shown: [
					line('Past checks keep the answers that they were made with.'),
					...meanwhile,
					...profileProblems(profile).map((text) => line(text, 'warn')),
				],
				prompt: {kind: 'choice', options: [...answerOptions(profile), back]},
			};
		case 'answer':
			return answerPage(profile, place.step, meanwhile);
	}
}

const renameWords = {
	arm: 'A new name for the same arm; its past checks keep the old one and stay with it. Another arm is entered in a check.',
	cartridge: 'A new name for the same cartridge. Another one, or one with a new stylus, is entered in a check.',
	tools:
		'A new name for the same gauge, scale and level. Others, or a gauge that was repaired or adjusted, are entered in a check.',
} as const satisfies Record<Profile['kind'], string>;

const takenOverLines = ({archive}: Workbench, profile: Profile): Shown[] =>
	archive.isTakenOver(profile)
		? [
				line(
					`The open check has taken this ${words.results.kinds[profile.kind]} over and keeps its answers: a change here holds for checks that start from now on.`,
					'warn',
				),
			]
		: [];

const actionsOn = (profile: Profile) => [
	{id: 'rename', label: 'rename it'},
	{id: 'answers', label: 'correct an answer'},
	profile.setAside
		? {id: 'take-back', label: 'take it back: offer it in checks again'}
		: {id: 'set-aside', label: 'set it aside: offer it no more'},
	{id: 'back', label: 'back to the list'},
];

const correctable = (profile: Profile): readonly Step[] =>
	profileQuestions(profile).steps.filter(({id}) => id !== nameSteps[profile.kind]);

const answerText = (profile: Profile, id: string): string => {
	const answer = profile.answers[id];
	if (!answer) return 'no answer yet';
	return answer.typed === '' ? 'not known' : answer.typed;
};

const answerOptions = (profile: Profile) =>
	correctable(profile).map(({id, title}) => ({id, label: `${title}: ${answerText(profile, id)}`}));

function answerPage(profile: Profile, id: string, meanwhile: readonly Shown[]): Page {
	const {facts, steps} = profileQuestions(profile);
	const step = steps.find((one) => one.id === id);
	if (!step) return gonePage;
	const {input, title, ask} = step;
	const shown = [
		line(typeof ask === 'string' ? ask : ask(facts)),
		line(`Now: ${answerText(profile, id)}`),
		...meanwhile,
	];
	if (input.kind === 'choice') return {title, shown, prompt: {kind: 'choice', options: [...input.options, back]}};
	const unit = input.kind === 'number' || input.kind === 'signed' ? units[unitOf(input, facts)].label : '';
	const mayBeEmpty = 'optional' in input && (input.optional ?? false);
	return {title, shown, prompt: {kind: 'field', initial: profile.answers[id]?.typed ?? '', mayBeEmpty, unit}};
}
