import * as z from 'zod/mini';
import {answerOf, answerValue, type Check} from '../check/check.js';
import {progressOf} from '../check/progress.js';
import type {Profile} from '../procedure/facts.js';
import type {Step} from '../procedure/step.js';
import type {ProfileKind} from '../procedure/step-ids.js';
import {answersAfter, type ProfileAnswers} from './profile-answers.js';

/** Profiles as they are kept on file. */
export const profilesSchema = z.array(
	z.looseObject({
		id: z.string(),
		kind: z.enum(['arm', 'cartridge', 'tools']),
		name: z.string(),
		usedAt: z.string(),
		formerNames: z.optional(z.readonly(z.array(z.string()))),
		setAside: z.optional(z.literal(true)),
		correctedAt: z.optional(z.string()),
		events: z.optional(
			z.readonly(
				z.array(
					z.looseObject({
						kind: z.string(),
						on: z.string(),
						note: z.optional(z.string()),
						at: z.string(),
						struckAt: z.optional(z.string()),
					}),
				),
			),
		),
		answers: z.record(z.string(), z.looseObject({typed: z.string(), value: answerValue})),
	}),
);

/** The question for the name of a profile. */
export const nameSteps = {arm: 'arm-name', cartridge: 'cartridge-name', tools: 'tools-name'} as const satisfies Record<
	ProfileKind,
	string
>;

/**
 * The profiles after a check: arm and tools whose questions are all answered are kept under their names, latest use first.
 * The same list comes back when nothing changed, so that nothing needs to be written.
 */
export function profilesWith(profiles: readonly Profile[], check: Check, usedAt: string): readonly Profile[] {
	const asked = askedSteps(check);
	return (['arm', 'tools'] as const).reduce<readonly Profile[]>((list, kind) => {
		const made = profileOf(check, kind, asked, usedAt);
		return made ? withMade(list, made, check) : list;
	}, profiles);
}

function withMade(list: readonly Profile[], made: Profile, check: Check): readonly Profile[] {
	const {kind, id, name} = made;
	const old = profileNamed(list, kind, name) ?? list.find((one) => one.kind === kind && one.id === id);
	if (!old) return [made, ...list];
	const next = {...old, ...made, id: old.id, ...taken(old, made, check)};
	if (JSON.stringify(old.answers) === JSON.stringify(next.answers)) return list;
	return [next, ...list.filter((one) => one !== old)];
}

/** The profile that has a name, else the one that had it before. */
export const profileNamed = (profiles: readonly Profile[], kind: ProfileKind, name: string): Profile | undefined =>
	profiles.find((one) => one.kind === kind && one.name === name) ??
	profiles.find((one) => one.kind === kind && one.formerNames?.includes(name));

/** Whether a check has taken its answers from a profile, or the profile was made from it. */
export function isTakenBy(check: Check, {id, kind, name, formerNames = []}: Profile): boolean {
	if (id === `${kind}-${check.id}` || check.answers[`${kind}-profile`]?.value === id) return true;
	const named = check.answers[nameSteps[kind]]?.value;
	return typeof named === 'string' && [name, ...formerNames].includes(named);
}

/** The steps that apply, also those that a check which was stopped no longer asks. */
function askedSteps({stopped: _stopped, ...whole}: Check): readonly Step[] {
	return progressOf(whole).visible;
}

function profileOf(check: Check, kind: ProfileKind, asked: readonly Step[], usedAt: string): Profile | undefined {
	const ids = asked.filter((step) => step.profile === kind).map(({id}) => id);
	const name = check.answers[nameSteps[kind]]?.value;
	if (typeof name !== 'string' || ids.some((id) => !check.answers[id])) return;
	const answers = Object.fromEntries(
		ids.flatMap((id) => {
			const answer = check.answers[id];
			return answer ? [[id, {typed: answer.typed, value: answer.value}] as const] : [];
		}),
	);
	return {id: `${kind}-${check.id}`, kind, name, answers, usedAt};
}

/** Name and answers of a profile on file after a check: what was renamed or corrected meanwhile stays as it is. */
function taken(old: Profile, made: Profile, check: Check): {name: string; answers: ProfileAnswers} {
	const answers = old.correctedAt === undefined ? made.answers : laterOn(old, old.correctedAt, made, check);
	if (!old.formerNames?.includes(made.name)) return {name: made.name, answers};
	const nameStep = nameSteps[old.kind];
	const named = old.answers[nameStep];
	return {name: old.name, answers: named ? {...answers, [nameStep]: named} : answers};
}

function laterOn({kind, answers}: Profile, correctedAt: string, made: Profile, check: Check): ProfileAnswers {
	const isLater = (id: string): boolean => Date.parse(answerOf(check, id)?.at ?? '') > Date.parse(correctedAt);
	const later = Object.entries(made.answers).filter(([id]) => isLater(id));
	const ids = later.map(([id]) => id);
	return answersAfter(kind, {...answers, ...Object.fromEntries(later)}, ids);
}
