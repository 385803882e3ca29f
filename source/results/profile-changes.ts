import type {Profile} from '../procedure/facts.js';
import {readAnswer, readText} from '../procedure/read-answer.js';
import type {AnswerValue, ProfileKind} from '../procedure/step.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';
import {answersAfter, profileQuestions} from './profile-answers.js';
import {nameSteps} from './profiles.js';

/** The list of profiles after a change, the very same where nothing changed; or one sentence saying why not. */
export type ProfilesChanged =
	| {readonly ok: true; readonly profiles: readonly Profile[]}
	| {readonly ok: false; readonly sentence: string};

export const kindWords = {arm: 'arm', cartridge: 'cartridge', tools: 'set of tools'} as const satisfies Record<
	ProfileKind,
	string
>;

const refused = (sentence: string): ProfilesChanged => ({ok: false, sentence});

/** Changes one profile of the list in its place. */
function changed(
	profiles: readonly Profile[],
	id: string,
	change: (profile: Profile) => Profile | string,
): ProfilesChanged {
	const index = profiles.findIndex((one) => one.id === id);
	const old = profiles[index];
	if (!old) return refused('That profile is no longer on file; look at the list again.');
	const next = change(old);
	if (typeof next === 'string') return refused(next);
	return {ok: true, profiles: next === old ? profiles : profiles.with(index, next)};
}

type Renaming = {
	readonly id: string;
	/** The new name, as typed. */
	readonly typed: string;
	/** Names of arms that have a check on file or open, whether or not there is a profile of them. */
	readonly checkedArms: readonly string[];
	readonly at: string;
};

/**
 * A profile under another name. Its old name stays its own, so that its past checks are still found; and no name that
 * another one has or had is taken, since that would make one history of two.
 */
export const renamed = (profiles: readonly Profile[], {id, typed, checkedArms, at}: Renaming): ProfilesChanged =>
	changed(profiles, id, (old) => {
		const read = readText(typed.trim());
		if (read.kind !== 'value') return read.kind === 'refused' ? read.sentence : 'Type a name.';
		const name = read.typed;
		if (name === old.name) return old;
		const clash = nameClash(profiles, old, name, checkedArms);
		if (clash !== undefined) return clash;
		const formerNames = [...(old.formerNames ?? []).filter((one) => one !== name), old.name];
		const answers = {...old.answers, [nameSteps[old.kind]]: {typed: name, value: name}};
		return {...old, name, formerNames, answers, correctedAt: at};
	});

function nameClash(
	profiles: readonly Profile[],
	{id, kind, formerNames = []}: Profile,
	name: string,
	checkedArms: readonly string[],
): string | undefined {
	const others = profiles.filter((one) => one.kind === kind && one.id !== id);
	const word = kindWords[kind];
	if (others.some((one) => one.name === name))
		return `There is another ${word} called "${name}"; choose another name, so that the two stay apart.`;
	const former = others.find((one) => one.formerNames?.includes(name));
	if (former)
		return `The ${word} "${former.name}" was called "${name}" before; choose another name, so that the two stay apart.`;
	if (kind === 'arm' && checkedArms.includes(name) && !formerNames.includes(name))
		return `There are checks of another arm called "${name}"; choose another name, so that the two stay apart.`;
	return;
}

type Correction = {
	readonly id: string;
	/** Id of the step whose answer is corrected; a name is changed by `renamed`. */
	readonly step: string;
	/** As typed, or the id of an option. */
	readonly typed: string;
	readonly at: string;
};

/** A profile with one answer corrected: read by its step, and held against the other answers. Past checks keep theirs. */
export const corrected = (profiles: readonly Profile[], {id, step: stepId, typed, at}: Correction): ProfilesChanged =>
	changed(profiles, id, (old) => {
		const {facts, steps} = profileQuestions(old);
		const step = steps.find((one) => one.id === stepId && stepId !== nameSteps[old.kind]);
		if (!step) return 'That question does not apply to this profile; look at the list of its answers again.';
		const read = readAnswer(step, typed, facts);
		if (read.kind === 'refused') return read.sentence;
		if (read.kind === 'side-wanted')
			return `Type it with its side, ${read.sides.plus.word} or ${read.sides.minus.word}.`;
		const before = old.answers[stepId];
		if (before && before.typed === read.typed && isSame(before.value, read.value)) return old;
		const next = {...old.answers, [stepId]: {typed: read.typed, value: read.value}};
		const problem = step.verify?.(profileQuestions({kind: old.kind, answers: next}).facts);
		if (problem)
			return `${says.problem(problem)} What helps: ${problem.ways.map(({id: way}) => words.ways[way]).join(', or ')}.`;
		return {...old, answers: answersAfter(old.kind, next, [stepId]), correctedAt: at};
	});

const isSame = (one: AnswerValue, other: AnswerValue): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Sets a profile aside, so that checks do not offer it any more, or takes it back. Its past checks stay either way. */
export const setAside = (profiles: readonly Profile[], id: string, aside: boolean): ProfilesChanged =>
	changed(profiles, id, (old) => {
		const {setAside: before = false, ...rest} = old;
		if (before === aside) return old;
		return aside ? {...rest, setAside: true} : rest;
	});
