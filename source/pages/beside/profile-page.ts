import type {Profile} from '../../procedure/facts.js';
import {unitOf} from '../../procedure/read-answer.js';
import type {Step} from '../../procedure/step.js';
import {profileQuestions} from '../../results/profile-answers.js';
import {nameSteps} from '../../results/profiles.js';
import {units} from '../../units.js';
import {words} from '../../words/index.js';
import {says} from '../../words/says.js';
import {askOf, optionsOf, titleOf} from '../../words/step-text.js';
import type {Workbench} from '../../workbench.js';
import {unusualLengths} from '../geometry-lines.js';
import {line, type Shown} from '../shown-lines.js';
import {type BesidePage, back} from './page.js';
import type {ProfilePlace} from './profiles.js';

const say = words.beside.profiles;

/** What a page of the profiles says and asks. */
export function profilePage(workbench: Workbench, place: ProfilePlace): BesidePage {
	if (place.at === 'profiles') return listPage(workbench.profiles());
	const profile = workbench.profiles().find(({id}) => id === place.id);
	return profile ? pageOfOne(workbench, place, profile) : gonePage;
}

const gonePage: BesidePage = {
	title: say.title,
	shown: [line(say.gone, 'warn')],
	prompt: {kind: 'choice', options: [back]},
};

/** Those set aside come last. */
function listPage(profiles: readonly Profile[]): BesidePage {
	const sorted = [...profiles.filter((one) => !one.setAside), ...profiles.filter((one) => one.setAside)];
	const options = sorted.map(({id, kind, name, setAside = false}) => ({
		id,
		label: say.inList({kind, name, isAside: setAside}),
	}));
	return {
		title: say.title,
		shown: [line(profiles.length === 0 ? say.none : say.some)],
		prompt: {kind: 'choice', options: [...options, back]},
	};
}

function pageOfOne(workbench: Workbench, place: Exclude<ProfilePlace, {at: 'profiles'}>, profile: Profile): BesidePage {
	const meanwhile = workbench.archive.isTakenOver(profile) ? [line(say.takenOver(profile), 'warn')] : [];
	switch (place.at) {
		case 'profile':
			return {
				title: profile.name,
				shown: [...meanwhile, ...profileLines(profile)],
				prompt: {kind: 'choice', options: actionsOn(profile)},
			};
		case 'rename':
			return {
				title: say.rename(profile),
				shown: [line(say.renaming[profile.kind]), ...meanwhile],
				prompt: {kind: 'field', initial: profile.name, mayBeEmpty: false, unit: ''},
			};
		case 'answers':
			return {
				title: say.correct(profile),
				shown: [line(say.correcting), ...meanwhile, ...problemLines(profile)],
				prompt: {kind: 'choice', options: [...answerOptions(profile), back]},
			};
		case 'answer':
			return answerPage(profile, place.step, meanwhile);
	}
}

const problemLines = (profile: Profile): Shown[] => profileProblems(profile).map((text) => line(text, 'warn'));

/** A profile with all its answers, in the order in which they are asked. */
export const profileLines = (profile: Profile): Shown[] => [
	line(say.kept({on: profile.usedAt.slice(0, 10), changedOn: profile.correctedAt?.slice(0, 10)})),
	...(profile.formerNames?.length ? [line(say.formerNames({names: profile.formerNames}))] : []),
	...(profile.setAside ? [line(say.aside, 'warn')] : []),
	...problemLines(profile),
	...profileQuestions(profile).steps.flatMap(({id}) =>
		profile.answers[id] ? [line(say.answer({title: titleOf(id), text: answerText(profile, id)}))] : [],
	),
];

const actionsOn = ({setAside}: Profile) =>
	(['rename', 'answers', setAside ? 'take-back' : 'set-aside', 'back'] as const).map((id) => ({
		id,
		label: say.actions[id],
	}));

const answerText = ({answers}: Profile, id: string): string => say.text({typed: answers[id]?.typed});

const correctable = (profile: Profile): readonly Step[] =>
	profileQuestions(profile).steps.filter(({id}) => id !== nameSteps[profile.kind]);

const answerOptions = (profile: Profile) =>
	correctable(profile).map(({id}) => ({id, label: say.answer({title: titleOf(id), text: answerText(profile, id)})}));

function answerPage(profile: Profile, id: string, meanwhile: readonly Shown[]): BesidePage {
	const {facts, steps} = profileQuestions(profile);
	const step = steps.find((one) => one.id === id);
	if (!step) return gonePage;
	const {input} = step;
	const title = titleOf(id);
	const shown = [line(askOf(step, facts)), line(say.now({text: answerText(profile, id)})), ...meanwhile];
	if (input.kind === 'choice')
		return {title, shown, prompt: {kind: 'choice', options: [...optionsOf(step.id, input.options), back]}};
	const unit = input.kind === 'number' || input.kind === 'signed' ? units[unitOf(input, facts)].label : '';
	const mayBeEmpty = 'optional' in input && (input.optional ?? false);
	return {title, shown, prompt: {kind: 'field', initial: profile.answers[id]?.typed ?? '', mayBeEmpty, unit}};
}

/**
 * What does not pass in a profile, or has no answer yet; a check that takes it over asks for it. And lengths that a
 * check would not ask about but say to look at again.
 */
function profileProblems(profile: Pick<Profile, 'kind' | 'answers'>): readonly string[] {
	const {facts, steps} = profileQuestions(profile);
	const problems = steps.flatMap((step) => {
		if (!facts.answered(step.id)) return [words.results.profileLacks({title: titleOf(step.id)})];
		const problem = step.verify?.(facts);
		return problem ? [say.answer({title: titleOf(step.id), text: says.problem(problem)})] : [];
	});
	const unusual = profile.kind === 'arm' ? unusualLengths(facts) : undefined;
	return unusual === undefined ? problems : [...problems, unusual];
}
