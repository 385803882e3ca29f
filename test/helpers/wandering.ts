import fc from 'fast-check';
import * as z from 'zod/mini';
import {type Check, checkSchema} from '../../source/check/check.js';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {takenUp} from '../../source/check/entry.js';
import {promptOf} from '../../source/check/prompt.js';
import {type Entry, respond} from '../../source/check/respond.js';
import {openSeries} from '../../source/check/series.js';
import type {Step} from '../../source/procedure/step.js';
import {biasAnswers, northDeckWith} from './sample-check.js';
import {clockFrom, entryFor, follow, freshDialogue, type Script} from './script.js';

/**
 * A script that meets every step of a first check: a pivot distance worked out, damping, a third radius, weighing at
 * height, a guard that was left out.
 */
export const everyStep: Script = northDeckWith({
	'arm-pivot-distance': '',
	'arm-offset': '24',
	'arm-pivot-way': 'nulls',
	'arm-null-radius': '66',
	'arm-null-other': '120.9',
	'arm-damping': 'yes',
	'arm-gravity-centre': 'far',
	'radius-extra': '98',
	'force-low': '16 mN',
	'force-high': '27 mN',
	weighed: 'without',
	'guard-account': 'add',
	// With the guard's 3.9 mN the gauge carries the playing force.
	'force-reading': '17.1 mN',
	'force-at-height': '',
	...biasAnswers,
	'bias-radius-middle': '98',
});

/** The same with a gauge that cannot be turned: its pointer is read free of the arm, and all rounds are as used. */
const turnless: Script = {
	answers: {...everyStep.answers, 'gauge-turns': 'no', 'zero-free-before': '+0.5', 'zero-free-after': '0'},
	rounds: {...everyStep.rounds, inner: [['3 out', '8.5 out']], closing: [['3 out', '8.5 out']]},
};

/** The same with a gauge that is pushed by hand, of a floating arm. */
const byHand: Script = {
	...everyStep,
	answers: {
		...everyStep.answers,
		'gauge-mount': 'hand',
		'gauge-unit': 'mN',
		'gauge-step': '0.1',
		'gauge-nudge': '0',
		'gauge-sign': 'hand-in',
	},
};

/** What someone may do next, as far as it can be told without knowing the screen. */
export type Move =
	| {readonly kind: 'sensible'}
	| {readonly kind: 'pick'; readonly index: number}
	| {readonly kind: 'leave'; readonly minutes: number}
	| {readonly kind: 'entry'; readonly entry: Entry};

const typedTexts = [
	'',
	' ',
	'0',
	'4',
	'-3',
	'+4',
	'4 out',
	'3 in',
	'0.1 left',
	'2.5 plus',
	'3 minus',
	'4,5',
	'100',
	'21 mN',
	'0.5 g',
	'-',
	'y',
];
const junk = ['x'.repeat(3000), '\u001B[2J', '1.2.3', '👍'.repeat(90), 'NaN', '/back'];
const entry = (one: Entry): Move => ({kind: 'entry', entry: one});

export const moves = fc.oneof(
	{weight: 8, arbitrary: fc.constant<Move>({kind: 'sensible'})},
	{weight: 4, arbitrary: fc.nat(12).map((index): Move => ({kind: 'pick', index}))},
	{weight: 4, arbitrary: fc.constantFrom(...typedTexts).map((text) => entry({kind: 'text', text}))},
	{weight: 1, arbitrary: fc.constantFrom(...junk).map((text) => entry({kind: 'text', text}))},
	{weight: 3, arbitrary: fc.constantFrom(...(['back', 'steps', 'no', 'yes'] as const)).map((kind) => entry({kind}))},
	{weight: 1, arbitrary: fc.constant(entry({kind: 'stop'}))},
	{weight: 1, arbitrary: fc.nat(6).map((number) => entry({kind: 'number', number}))},
	{weight: 1, arbitrary: fc.constantFrom(1, 31, 800).map((minutes): Move => ({kind: 'leave', minutes}))},
);

/** Every state on the way of both scripts, to start a walk from: from an empty check to its end. */
export const stations: readonly Dialogue[] = (() => {
	const seen: Dialogue[] = [];
	const look = (dialogue: Dialogue) => seen.push(dialogue);
	const end = follow(freshDialogue(), everyStep, {seen: look});
	follow(follow(freshDialogue(), everyStep, {until: 'gauge-turns'}), turnless, {until: 'verdict', seen: look});
	follow(freshDialogue(), byHand, {until: 'back-guard', seen: look});
	return [...seen, end];
})();

/** A check as it comes back from the disk. @throws ZodError when its schema refuses it */
export const stored = (check: Check): Check => z.parse(checkSchema, JSON.parse(JSON.stringify(check)));

export function deepFreeze<T>(value: T): T {
	if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
	Object.freeze(value);
	for (const part of Object.values(value)) deepFreeze(part);
	return value;
}

/** The entry that a move comes to on a screen; undefined for leaving and coming back. */
export function entryOfMove(dialogue: Dialogue, move: Move): Entry | undefined {
	if (move.kind === 'leave') return;
	if (move.kind === 'entry') return move.entry;
	if (move.kind === 'sensible') return entryFor(dialogue, everyStep);
	const prompt = promptOf(dialogue);
	if (prompt.kind !== 'choice' && prompt.kind !== 'side') return {kind: 'yes'};
	return {kind: 'choose', id: prompt.options[move.index % prompt.options.length]?.id ?? ''};
}

/** One move; leaving for home comes straight back to the open check. */
export function move(dialogue: Dialogue, one: Move, at: string): Dialogue {
	const entry = entryOfMove(dialogue, one);
	const next = entry && respond(dialogue, entry, at);
	return next ?? takenUp(startDialogue(stored(dialogue.check), dialogue.profiles), at);
}

// After odd answers (a gauge whose scale ends at 1 %) the readings of the script are refused; one of these never is.
const fallbacks: readonly Entry[] = [
	'0',
	'136 out',
	'4 out',
	'1 out',
	'1 plus',
	'0.1',
	'2',
	'10',
	'20 mN',
	'100',
	'136',
].map((text) => ({kind: 'text', text}));

// When the script's own answer does not pass time and again: a third radius that someone chose for the inner one.
// Or plus means something else on the gauge since; zero is zero on any.
const otherwise = (step: Step | undefined): readonly Entry[] =>
	(step?.input.kind === 'number' ? ['', '75', '120'] : step?.input.kind === 'signed' ? ['0'] : []).map((text) => ({
		kind: 'text',
		text,
	}));

/** An outer limit that is never refused: the inner one once more. */
function sameAsInner(dialogue: Dialogue): Entry[] {
	const {slot} = positionOf(dialogue);
	const round = slot && openSeries(dialogue.check)[slot.place][slot.index];
	return round ? [{kind: 'text', text: round.innerLimit.typed}] : [];
}

/** What the first entry leads to that is not refused, or the first one where all are. */
function firstTaken(
	here: Dialogue,
	ways: readonly {readonly entry: Entry; readonly at: string}[],
): Dialogue | undefined {
	let refused: Dialogue | undefined;
	for (const [index, {entry, at}] of ways.entries()) {
		const next = respond(here, entry, at);
		if (next !== undefined && next.refusal === undefined) return next;
		if (index === 0) refused = next;
	}
	return refused;
}

/** A technician who wants to get to the end, tries one way out after the other, and never gives up. */
export function finish(dialogue: Dialogue, start: string): Dialogue {
	const now = clockFrom(start);
	const tries = new Map<string, number>();
	let here = dialogue;
	for (let count = 0; count < 600; count++) {
		const {step} = positionOf(here);
		if (here.mode.kind === 'ask' && !step) return here;
		const prompt = promptOf(here);
		const tried = tries.get(prompt.key) ?? 0;
		tries.set(prompt.key, tried + 1);
		const entry =
			prompt.kind === 'choice' &&
			(tried > 3 || prompt.options.some(({id}) => id === 'override' || id.startsWith('way-')))
				? ({kind: 'choose', id: prompt.options[tried % prompt.options.length]?.id ?? ''} as const)
				: entryFor(here, everyStep);
		const ways = [...(tried > 3 ? otherwise(step) : []), entry, ...sameAsInner(here), ...fallbacks];
		const next = firstTaken(
			here,
			ways.map((one) => ({entry: one, at: now()})),
		);
		if (!next) throw new Error(`left for home at ${step?.id}`);
		here = next;
	}
	throw new Error(`never ends: still at ${positionOf(here).step?.id}`);
}
