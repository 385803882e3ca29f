import type {Profile} from '../../procedure/facts.js';
import {unitOf} from '../../procedure/read-answer.js';
import {profileQuestions} from '../../results/profile-answers.js';
import {corrected, renamed, setAside} from '../../results/profile-changes.js';
import {nameSteps} from '../../results/profiles.js';
import {words} from '../../words/index.js';
import {unitText} from '../../words/numbers.js';
import {askOf, names, optionsOf, titleOf} from '../../words/step-text.js';
import type {Workbench} from '../../workbench.js';
import {line, type Shown} from '../shown-lines.js';
import {eventsAt} from './events.js';
import {backOffer, fieldStop, go, listStop, type Offer, type Stop, type Turn, warnings} from './page.js';
import {type BesidePlace, type ProfilePlace, toHome} from './places.js';
import {answerLine, answerText, profileLines, profileProblems} from './profile-lines.js';
import {saving} from './saving.js';

const say = words.beside.profiles;
const toList = go({at: 'profiles'} as const);

type OneProfile = Exclude<ProfilePlace, {at: 'profiles'}>;

/** The profiles on file: to look at, rename, correct and set aside. */
export function profilesAt(workbench: Workbench, place: ProfilePlace): Stop<BesidePlace> {
	const profiles = workbench.profiles();
	if (place.at === 'profiles') return allProfiles(profiles);
	const profile = profiles.find(({id}) => id === place.id);
	const stop = profile ? stopOf(workbench, place, profile) : goneStop(before(place));
	const isThere = () => workbench.profiles().some(({id}) => id === place.id);
	return {...stop, turn: (entry) => (isThere() ? stop.turn(entry) : toList)};
}

function before(place: OneProfile): Turn<BesidePlace> {
	if (place.at === 'profile') return toList;
	return go({at: place.at === 'answer' ? 'answers' : 'profile', id: place.id});
}

const goneStop = (back: Turn<BesidePlace>): Stop<BesidePlace> =>
	listStop({title: say.title, shown: [line(say.gone, 'warn')]}, back, [backOffer(back)]);

/** Those set aside come last. */
function allProfiles(profiles: readonly Profile[]): Stop<BesidePlace> {
	const sorted = [...profiles.filter((one) => !one.setAside), ...profiles.filter((one) => one.setAside)];
	return listStop<BesidePlace>({title: say.title, shown: [line(profiles.length === 0 ? say.none : say.some)]}, toHome, [
		...sorted.map(({id, kind, name, setAside: isAside = false}): Offer<BesidePlace> => {
			return [id, say.inList({kind, name, isAside}), () => go({at: 'profile', id})];
		}),
		backOffer(toHome),
	]);
}

function stopOf(workbench: Workbench, place: OneProfile, profile: Profile): Stop<BesidePlace> {
	const {id} = place;
	const back = before(place);
	const meanwhile = workbench.archive.isTakenOver(profile) ? [line(say.takenOver(profile), 'warn')] : [];
	switch (place.at) {
		case 'profile': {
			const {actions} = say;
			const aside = (isAside: boolean) => saving(workbench, place, (all) => setAside(all, id, isAside));
			return listStop({title: profile.name, shown: [...meanwhile, ...profileLines(profile)]}, back, [
				['rename', actions.rename, () => go({at: 'rename', id})],
				['answers', actions.answers, () => go({at: 'answers', id})],
				['take-back', profile.setAside && actions['take-back'], () => aside(false)],
				['set-aside', profile.setAside ? undefined : actions['set-aside'], () => aside(true)],
				['events', profile.kind === 'arm' ? actions.events : undefined, () => go({at: 'events', id})],
				['back', actions.back, () => back],
			]);
		}
		case 'rename': {
			const rename = (typed: string) => {
				const renaming = {id, typed, checkedArms: workbench.archive.checkedArms(), at: workbench.now()};
				return saving(workbench, {at: 'profile', id}, (all) => renamed(all, renaming));
			};
			const shown = [line(say.renaming[profile.kind]), ...meanwhile];
			return fieldStop({title: say.rename(profile), shown}, back, rename, {initial: profile.name});
		}
		case 'answers': {
			const steps = profileQuestions(profile).steps.filter((step) => step.id !== nameSteps[profile.kind]);
			const shown = [line(say.correcting), ...meanwhile, ...warnings(profileProblems(profile))];
			return listStop({title: say.correct(profile), shown}, back, [
				...steps.map(({id: step}): Offer<BesidePlace> => {
					return [step, answerLine(profile, step), () => go({at: 'answer', id, step})];
				}),
				backOffer(back),
			]);
		}
		case 'events':
		case 'event-kind':
		case 'event-note':
		case 'event-day':
		case 'event-strike':
			return eventsAt(workbench, place, profile);
		case 'answer':
			return answerStop(workbench, profile, place.step, {back, meanwhile});
	}
}

type AnswerStop = {readonly back: Turn<BesidePlace>; readonly meanwhile: readonly Shown[]};

function answerStop(
	workbench: Workbench,
	profile: Profile,
	id: string,
	{back, meanwhile}: AnswerStop,
): Stop<BesidePlace> {
	const {facts, steps} = profileQuestions(profile);
	const step = steps.find((one) => one.id === id);
	if (!step) return goneStop(back);
	const {input} = step;
	const correct = (typed: string): Turn<BesidePlace> => {
		const correction = {id: profile.id, step: id, typed, names, at: workbench.now()};
		return saving(workbench, {at: 'answers', id: profile.id}, (all) => corrected(all, correction));
	};
	const shown = [line(askOf(step, facts)), line(say.now({text: answerText(profile, id)})), ...meanwhile];
	const page = {title: titleOf(id), shown};
	if (input.kind === 'choice')
		return listStop(page, back, [
			...optionsOf(step.id, input.options).map((one): Offer<BesidePlace> => [one.id, one.label, () => correct(one.id)]),
			backOffer(back),
		]);
	const unit = input.kind === 'number' || input.kind === 'signed' ? unitText(unitOf(input, facts)) : '';
	const mayBeEmpty = 'optional' in input && (input.optional ?? false);
	return fieldStop(page, back, correct, {initial: profile.answers[id]?.typed ?? '', mayBeEmpty, unit});
}
