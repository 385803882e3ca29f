import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {type Prompt, promptOf} from '../../source/check/prompt.js';
import {newCheck, reduce} from '../../source/check/reduce.js';
import {type Entry, respond} from '../../source/check/respond.js';
import {factsOf, type Profile} from '../../source/procedure/facts.js';
import {procedure} from '../../source/procedure/index.js';
import type {Place} from '../../source/procedure/places.js';
import {readAnswer} from '../../source/procedure/read-answer.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import {takes} from '../../source/procedure/step.js';
import type {AnswerValue} from '../../source/procedure/step-ids.js';
import {says} from '../../source/words/says.js';
import {names, optionLabel} from '../../source/words/step-text.js';

/** What a technician does at each step: typed text, the id of an option, `yes` or `no`; and the readings by place. */
export type Script = {
	readonly answers: Readonly<Record<string, string>>;
	readonly rounds: Readonly<Partial<Record<Place, readonly (readonly [inner: string, outer: string])[]>>>;
};

/** Time that moves on by some seconds with every look at it. */
export function clockFrom(start: string, stepSeconds = 20): () => string {
	let now = Date.parse(start);
	return () => {
		now += 1000 * stepSeconds;
		return new Date(now).toISOString();
	};
}

/** Time that goes on where a check stands, so that nobody seems to have been away. */
export const clockOf = ({check}: Dialogue): (() => string) => clockFrom(check.touchedAt ?? check.startedAt);

const limits = limitsOf(usualSettings);

/** A conversation over an empty check. */
export const freshDialogue = (profiles: readonly Profile[] = [], id = 'sample-1'): Dialogue =>
	startDialogue(
		newCheck({id, at: '2026-03-02T09:00:00Z', program: '0.0.0', limits, setAnew: true}),
		profiles,
		[],
		names,
	);

/** A push in words as a gauge shows it that was turned end for end, zero and all left out: '3 out' is '-3'. */
const inOwnSign = (typed: string): string => typed.replace(/^([\d.,]+) out$/, '-$1').replace(/^([\d.,]+) in$/, '+$1');

/** The entry with which a technician following a script answers what is asked now. */
export function entryFor(dialogue: Dialogue, script: Script): Entry {
	const prompt = promptOf(dialogue);
	const {step, slot, stuck} = positionOf(dialogue);
	const known = step ? script.answers[step.id] : undefined;
	switch (prompt.kind) {
		case 'field': {
			if (dialogue.mode.kind === 'reason-typed') return {kind: 'text', text: 'a reason of its own'};
			if (!slot) return {kind: 'text', text: known ?? prompt.initial};
			const rounds = script.rounds[slot.place] ?? [];
			const round = rounds[slot.index % rounds.length];
			const typed = round?.[slot.which === 'innerLimit' ? 0 : 1] ?? '0';
			return {kind: 'text', text: slot.gauge === 'turned' ? inOwnSign(typed) : typed};
		}
		case 'yes-no':
			return {kind: dialogue.mode.kind !== 'stop' && known !== 'no' ? 'yes' : 'no'};
		case 'still':
			return {kind: 'yes'};
		case 'side':
			return {kind: 'choose', id: prompt.options[0]?.id ?? ''};
		case 'choice': {
			if (['steps', 'strike', 'other-way'].includes(dialogue.mode.kind)) return {kind: 'back'};
			const wanted = prompt.options.find(
				({id}) => dialogue.mode.kind === 'ask' && !stuck && (id === known || (known === undefined && id === 'go-on')),
			);
			return {kind: 'choose', id: (wanted ?? prompt.options[0])?.id ?? ''};
		}
		case 'none':
			return {kind: 'back'};
	}
}

type RunOptions = {
	readonly now?: () => string;
	/** Stops before the step of this id is answered. */
	readonly until?: string;
	readonly seen?: (dialogue: Dialogue, entry: Entry) => void;
	readonly most?: number;
};

/** What a script answers of what nobody is asked is known beforehand, as from a profile. */
function withKept(dialogue: Dialogue, {answers}: Script): Dialogue {
	if (Object.keys(dialogue.check.answers).length > 0) return dialogue;
	const known: Record<string, {readonly value: AnswerValue; readonly typed: string}> = {};
	// In the units of the script's own gauge.
	const facts = factsOf({answers: known, limits});
	const usual = new Set<string>();
	for (const step of procedure) {
		if (step.usual?.(facts) !== undefined) usual.add(step.id);
		const typed = answers[step.id];
		const read = typed === undefined ? undefined : readAnswer(step, typed, facts);
		if (read?.kind !== 'value') continue;
		const typedBack = takes(step, 'choice') ? optionLabel(step.id, String(read.value)) : read.typed;
		known[step.id] = {value: read.value, typed: typedBack};
	}
	const kept = procedure.flatMap(({id}) => {
		const answer = usual.has(id) && known[id];
		return answer ? [[id, answer] as const] : [];
	});
	const filled = {type: 'fill', answers: Object.fromEntries(kept), at: dialogue.check.startedAt} as const;
	return {...dialogue, check: reduce(dialogue.check, filled)};
}

/** Follows a script to the end of the check, or to a step. @throws Error when it gets nowhere */
export function follow(dialogue: Dialogue, script: Script, options: RunOptions = {}): Dialogue {
	const {now = clockOf(dialogue), until, seen, most = 400} = options;
	let here = withKept(dialogue, script);
	for (let count = 0; count < most; count++) {
		const {step} = positionOf(here);
		if (here.mode.kind === 'ask' && (!step || step.id === until)) return here;
		const entry = entryFor(here, script);
		seen?.(here, entry);
		const next = respond(here, entry, now());
		if (!next) throw new Error(`left for home at ${step?.id}`);
		if (next.refusal !== undefined)
			throw new Error(`${step?.id} refused ${JSON.stringify(entry)}: ${says.refusal(next.refusal)}`);
		here = next;
	}
	throw new Error(`still at ${positionOf(here).step?.id} after ${most} entries`);
}

/** Hands one entry over after another; each must be taken. */
export function say(dialogue: Dialogue, entries: readonly Entry[], now = clockOf(dialogue)): Dialogue {
	return entries.reduce((here, entry) => {
		if (isOpenAlready(here, entry)) return here;
		const next = respond(here, entry, now());
		if (!next || next.refusal !== undefined)
			throw new Error(
				`${positionOf(here).step?.id} refused ${JSON.stringify(entry)}: ${next?.refusal && says.refusal(next.refusal)}`,
			);
		return next;
	}, dialogue);
}

/** Why the last of some entries is not taken; those before it must be. Undefined where it is taken. */
export function refusalOf(dialogue: Dialogue, ...entries: readonly Entry[]) {
	const before = say(dialogue, entries.slice(0, -1));
	const last = entries.at(-1);
	return last && respond(before, last, clockOf(before)())?.refusal;
}

/** A stage of one step is opened at once, without its own list. */
const isOpenAlready = (here: Dialogue, entry: Entry): boolean =>
	entry.kind === 'choose' && here.mode.kind === 'ask' && entry.id === `step:${positionOf(here).step?.id}`;

/** From a number that does not pass to the ways out of it. */
export const waysOut: Entry = {kind: 'text', text: ''};
export const text = (typed: string): Entry => ({kind: 'text', text: typed});
export const choose = (id: string): Entry => ({kind: 'choose', id});
export const yes: Entry = {kind: 'yes'};
export const no: Entry = {kind: 'no'};
export const back: Entry = {kind: 'back'};
/** From anywhere to a step, by the list of steps. */
export const goTo = (stage: string, step: string): Entry[] => [
	{kind: 'steps'},
	choose(`stage:${stage}`),
	choose(`step:${step}`),
];

/** An entry as a line of the plain face. */
export function lineOf(prompt: Prompt, entry: Entry): string {
	if (entry.kind === 'text') return entry.text;
	if (entry.kind === 'choose' && prompt.kind === 'choice')
		return String(prompt.options.findIndex(({id}) => id === entry.id) + 1);
	if (entry.kind === 'choose' && prompt.kind === 'side')
		return prompt.options.find(({id}) => id === entry.id)?.keys[0] ?? '';
	if (entry.kind === 'number') return String(entry.number);
	if (entry.kind === 'marks') return entry.notSo.length === 0 ? 'y' : entry.notSo.join(' ');
	return {yes: 'y', no: 'n', back: '/back', steps: '/steps', stop: '/stop', choose: ''}[entry.kind];
}
