import type {Nothing, Said} from '../said.js';
import type {Facts} from './facts.js';
import type {IdOf, StepId} from './step-ids.js';

/** What can be reached or believed, from the least to the most. */
export type SpanMm = {readonly leastMm: number; readonly mostMm: number};

/**
 * What may be wrong with an accepted answer: each by its id, with the values that tell of it, in base units. What a
 * person reads of it stands in `words/`.
 */
export type ProblemValues = {
	'lines-left': {readonly list: IdOf<'ticks'>; readonly lines: readonly string[]};
	'not-confirmed': {readonly step: UnconfirmedStep};
	'never-crosses-record': SpanMm;
	'no-such-arm': Nothing;
	'pivot-not-believable': SpanMm & {readonly pivotMm: number};
	'offset-not-known': Nothing;
	'radius-out-of-reach': SpanMm & {readonly radiusMm: number};
	'outer-not-larger': {readonly outerMm: number; readonly innerMm: number};
	'radius-taken': {readonly radiusMm: number};
	'stop-takes-hold': {readonly leastMm: number};
	'middle-not-between': {readonly innerMm: number; readonly outerMm: number};
	'percent-of-nothing': Nothing;
	'low-force-too-high': Nothing;
	'high-force-too-low': Nothing;
	'mat-meets-guard': Nothing;
	'level-read-once': Nothing;
	'leans-at-once': {readonly readDeg: number; readonly allowedDeg: number};
	'tilt-too-much': {readonly sharePct: number; readonly allowedPct: number};
	'deck-leans': {readonly leanDeg: number; readonly allowedDeg: number};
	'guard-mass-not-known': Nothing;
	'weigh-with-guard': Nothing;
	'force-range-not-known': {readonly carriedMn: number};
	'force-outside-range': {
		readonly carriedMn: number;
		readonly side: 'below' | 'above';
		readonly lowMn: number;
		readonly highMn: number;
	};
	'force-off-target': {
		readonly carriedMn: number;
		readonly playingMn: number;
		readonly offPct: number;
		readonly allowedPct: number;
	};
	'stylus-height': {
		readonly stylusMm: number;
		readonly side: 'low' | 'high';
		readonly lowMm: number;
		readonly highMm: number;
	};
	/** The same where the gap under the guard was read. */
	'guard-gap-off': {
		readonly guardMm: number;
		readonly side: 'low' | 'high';
		readonly lowMm: number;
		readonly highMm: number;
	};
	'guard-too-near': {readonly guardMm: number};
	'closing-off-scale': Nothing;
	'closing-moved': {readonly movedPct: number};
	'not-weighed': Nothing;
	'playing-force-off': {
		readonly weighedMn: number;
		readonly playingMn: number;
		readonly offPct: number;
		readonly allowedPct: number;
	};
};

export type ProblemId = keyof ProblemValues;

/** What is wrong, without the ways out of it. */
export type Trouble = Said<ProblemValues>;

/** Steps that must be confirmed with yes; only the date of the next check may be declined. */
export type UnconfirmedStep = Exclude<IdOf<'confirm'>, 'next-check'>;

/** Ways out, each by its id. */
export type WayId =
	| 'correct-length'
	| 'correct-pivot'
	| 'correct-null'
	| 'correct-other-null'
	| 'correct-inner'
	| 'correct-outer'
	| 'correct-third'
	| 'correct-stop'
	| 'correct-middle'
	| 'correct-lowest'
	| 'correct-highest'
	| 'correct-playing'
	| 'correct-mount'
	| 'reads-mn'
	| 'reads-grams'
	| 'measure-pivot'
	| 'type-offset'
	| 'from-both-nulls'
	| 'set-height'
	| 'take-mat-off'
	| 'level-again'
	| 'turn-level'
	| 'weigh-now'
	| 'set-force'
	| 'set-force-guarded'
	| 'type-range'
	| 'weigh-guarded'
	| 'type-guard-mass'
	| 'weighed-guarded'
	| 'weighed-without'
	| 'add-guard-mass'
	| 'tick-again'
	| 'probe-anew'
	| 'do-now'
	| 'switch-on';

/** A way out of an answer that does not pass. */
export type Way = {readonly id: WayId} & (
	| {readonly do: 'ask-again'; readonly steps: readonly StepId[]}
	| {readonly do: 'set'; readonly step: StepId; readonly value: string | readonly string[]}
	| {readonly do: 'new-series'; readonly because: 'closing-off'; readonly steps: readonly StepId[]}
);

export type Problem = Trouble & {readonly ways: readonly Way[]};

/** What is wrong, with the ways out of it. */
export const problem = <Id extends ProblemId>(id: Id, values: ProblemValues[Id], ...ways: readonly Way[]): Problem =>
	// That an id has its own values the compiler cannot see of one that is not known here.
	({id, values, ways}) as Problem;

/** The way out that asks steps again. */
export const wayTo = (id: WayId, ...steps: readonly StepId[]): Way => ({id, do: 'ask-again', steps});

/** The way out that sets an answer. */
export const setTo = (id: WayId, step: StepId, value: string | readonly string[]): Way => ({
	id,
	do: 'set',
	step,
	value,
});

/** What is wrong with a confirmation that was answered with no. */
export const mustBe = (facts: Facts, step: UnconfirmedStep, id: WayId = 'do-now'): Problem | undefined =>
	facts.yes(step) ? undefined : problem('not-confirmed', {step}, wayTo(id, step));
