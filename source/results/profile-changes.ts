import {isSameValue} from '../check/check.js';
import type {Profile} from '../procedure/facts.js';
import type {Names} from '../procedure/names.js';
import type {Problem} from '../procedure/problem.js';
import {readAnswer, readText} from '../procedure/read-answer.js';
import type {TypedRefusal} from '../procedure/refusal.js';
import type {ProfileKind} from '../procedure/step-ids.js';
import type {Nothing, Said} from '../said.js';
import {answersAfter, profileQuestions} from './profile-answers.js';
import {nameSteps} from './profiles.js';

/** Why a profile is not changed. Two arms under one name would make one history of two. */
export type ProfileRefusals = {
	/** It is no longer on file. */
	gone: Nothing;
	'no-name': Nothing;
	/** What was typed is no answer. */
	'not-read': {readonly refusal: TypedRefusal};
	'name-taken': {readonly kind: ProfileKind; readonly name: string};
	/** Another one had the name before; `today` is what that one is called now. */
	'name-was-taken': {readonly kind: ProfileKind; readonly name: string; readonly today: string};
	/** There are checks of another arm under that name. */
	'name-has-checks': {readonly name: string};
	/** Typed where a day is wanted. */
	'no-day': {readonly typed: string};
	/** It lies ahead. */
	'day-ahead': {readonly on: string};
	'does-not-apply': Nothing;
	/** A size was typed without its side. */
	'side-wanted': {readonly plus: string; readonly minus: string};
	'does-not-pass': {readonly problem: Problem};
};
export type ProfileRefusal = Said<ProfileRefusals>;

/** The list of profiles after a change, the very same where nothing changed; or why not. */
export type ProfilesChanged =
	| {readonly ok: true; readonly profiles: readonly Profile[]}
	| {readonly ok: false; readonly refusal: ProfileRefusal};

/** Changes one profile of the list in its place. */
export function changed(
	profiles: readonly Profile[],
	id: string,
	change: (profile: Profile) => Profile | ProfileRefusal,
): ProfilesChanged {
	const index = profiles.findIndex((one) => one.id === id);
	const old = profiles[index];
	if (!old) return {ok: false, refusal: {id: 'gone', values: {}}};
	const next = change(old);
	if (!('answers' in next)) return {ok: false, refusal: next};
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
		if (read.kind === 'refused') return {id: 'not-read', values: {refusal: read.refusal}};
		if (read.kind !== 'value') return {id: 'no-name', values: {}};
		const name = read.typed;
		if (name === old.name) return old;
		const clash = nameClash(profiles, old, name, checkedArms);
		if (clash) return clash;
		const formerNames = [...(old.formerNames ?? []).filter((one) => one !== name), old.name];
		const answers = {...old.answers, [nameSteps[old.kind]]: {typed: name, value: name}};
		return {...old, name, formerNames, answers, correctedAt: at};
	});

function nameClash(
	profiles: readonly Profile[],
	{id, kind, formerNames = []}: Profile,
	name: string,
	checkedArms: readonly string[],
): ProfileRefusal | undefined {
	const others = profiles.filter((one) => one.kind === kind && one.id !== id);
	if (others.some((one) => one.name === name)) return {id: 'name-taken', values: {kind, name}};
	const former = others.find((one) => one.formerNames?.includes(name));
	if (former) return {id: 'name-was-taken', values: {kind, name, today: former.name}};
	if (kind === 'arm' && checkedArms.includes(name) && !formerNames.includes(name))
		return {id: 'name-has-checks', values: {name}};
	return;
}

type Correction = {
	readonly id: string;
	/** Id of the step whose answer is corrected; a name is changed by `renamed`. */
	readonly step: string;
	/** As typed, or the id of an option. */
	readonly typed: string;
	/** Of the language in which it was typed; a choice is kept by them. */
	readonly names?: Names;
	readonly at: string;
};

/** A profile with one answer corrected: read by its step, and held against the other answers. Past checks keep theirs. */
export const corrected = (
	profiles: readonly Profile[],
	{id, step: stepId, typed, names, at}: Correction,
): ProfilesChanged =>
	changed(profiles, id, (old) => {
		const {facts, steps} = profileQuestions(old);
		const step = steps.find((one) => one.id === stepId && stepId !== nameSteps[old.kind]);
		if (!step) return {id: 'does-not-apply', values: {}};
		const read = readAnswer(step, typed, facts, names);
		if (read.kind === 'refused') return {id: 'not-read', values: {refusal: read.refusal}};
		if (read.kind === 'side-wanted')
			return {id: 'side-wanted', values: {plus: read.sides.plus.word, minus: read.sides.minus.word}};
		const before = old.answers[stepId];
		if (before && before.typed === read.typed && isSameValue(before.value, read.value)) return old;
		const next = {...old.answers, [stepId]: {typed: read.typed, value: read.value}};
		const problem = step.verify?.(profileQuestions({kind: old.kind, answers: next}).facts);
		if (problem) return {id: 'does-not-pass', values: {problem}};
		return {...old, answers: answersAfter(old.kind, next, [stepId]), correctedAt: at};
	});

/** Sets a profile aside, so that checks do not offer it any more, or takes it back. Its past checks stay either way. */
export const setAside = (profiles: readonly Profile[], id: string, aside: boolean): ProfilesChanged =>
	changed(profiles, id, (old) => {
		const {setAside: before = false, ...rest} = old;
		if (before === aside) return old;
		return aside ? {...rest, setAside: true} : rest;
	});
