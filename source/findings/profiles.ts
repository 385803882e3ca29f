import * as z from 'zod/mini';
import {answerValue, type Check} from '../check/check.js';
import {progressOf} from '../check/progress.js';
import type {Profile} from '../procedure/facts.js';
import type {ProfileKind, Step} from '../procedure/step.js';

/** Profiles as they are kept on file. */
export const profilesSchema = z.array(
	z.looseObject({
		id: z.string(),
		kind: z.enum(['arm', 'cartridge', 'tools']),
		name: z.string(),
		usedAt: z.string(),
		formerNames: z.optional(z.readonly(z.array(z.string()))),
		setAside: z.optional(z.literal(true)),
		answers: z.record(z.string(), z.looseObject({typed: z.string(), value: answerValue})),
	}),
);

const nameSteps = {arm: 'arm-name', cartridge: 'cartridge-name', tools: 'tools-name'} as const satisfies Record<
	ProfileKind,
	string
>;

/**
 * The profiles after a check: each group whose questions are all answered is kept under its name, latest use first.
 * The same list comes back when nothing changed, so that nothing needs to be written.
 */
export function profilesWith(profiles: readonly Profile[], check: Check, usedAt: string): readonly Profile[] {
	const asked = askedSteps(check);
	return (['arm', 'cartridge', 'tools'] as const).reduce<readonly Profile[]>((list, kind) => {
		const made = profileOf(check, kind, asked, usedAt);
		if (!made) return list;
		const old = list.find((one) => one.kind === kind && (one.name === made.name || one.id === made.id));
		if (old && JSON.stringify(old.answers) === JSON.stringify(made.answers)) return list;
		const formerNames = old?.formerNames;
		return [
			{...made, id: old?.id ?? made.id, ...(formerNames ? {formerNames} : {})},
			...list.filter((one) => one !== old),
		];
	}, profiles);
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
