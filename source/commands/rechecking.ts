import type {Check} from '../check/check.js';
import {profileNamed} from '../findings/profiles.js';
import type {Profile} from '../procedure/facts.js';
import {profileSteps} from '../procedure/index.js';
import type {AnswerValue, ProfileKind} from '../procedure/step.js';

type Answers = Record<string, {readonly value: AnswerValue; readonly typed: string}>;

/**
 * What cannot have changed unseen since the last check, beside what belongs to a profile. That the guard is on is said
 * by the weighing, which is asked; whether the gauge can be turned is a matter of the gauge.
 */
const kept = ['mat', 'mat-thickness', 'guard-on', 'zero-way'] as const;

/**
 * What a check that repeats an earlier one starts with: arm, cartridge and tools from their profiles, which may have
 * been corrected since, else as they were then; and the mat. Everything that can have changed unseen is left out.
 */
export function answersOfLast(last: Check, profiles: readonly Profile[]): Answers {
	const profiled = (['arm', 'cartridge', 'tools'] as const).map((kind) => profileAnswers(last, kind, profiles));
	const others = kept.map((id): Answers => (last.answers[id] ? {[id]: pick(last, id)} : {}));
	return Object.assign({}, ...profiled, ...others, {'room-note': {value: '', typed: ''}});
}

const pick = ({answers}: Check, id: string) => ({value: answers[id]?.value ?? null, typed: answers[id]?.typed ?? ''});

function profileAnswers(last: Check, kind: ProfileKind, profiles: readonly Profile[]): Answers {
	const name = String(last.answers[`${kind}-name`]?.value ?? '');
	const profile = profileNamed(profiles, kind, name);
	if (profile) return {[`${kind}-profile`]: {value: profile.id, typed: profile.name}, ...profile.answers};
	const ids = profileSteps(kind).filter((id) => last.answers[id]);
	return Object.fromEntries(ids.map((id) => [id, pick(last, id)]));
}
