import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isAtLeast} from './compare.js';
import {mean} from './statistics.js';

/**
 * One round: the readings at the innermost and the outermost place where the arm, nudged there, still holds. With the
 * gauge turned end for end they stand in the gauge's own sign, so the inner one is the larger.
 */
export type LimitPair = {readonly innerLimit: number; readonly outerLimit: number};

/** How the gauge's readings become percent of the playing force. */
export type GaugeScale = {
	/** Percent for each unit of the gauge. */
	readonly factor: number;
	/** What the gauge shows when nothing pushes it, in its own unit. */
	readonly zero: number;
	/** Size of one nudge, in the gauge's unit. */
	readonly nudge: number;
};

/** Middle of each round's hold band, in percent, as the gauge shows it: the gauge's zero is still in it. */
export const roundCentresPct = (rounds: readonly LimitPair[], factor: number): number[] =>
	rounds.map(({innerLimit, outerLimit}) => (factor * (innerLimit + outerLimit)) / 2);

/** Width of each round's hold band, in percent, as read; whichever way the gauge stands. */
export const roundWidthsPct = (rounds: readonly LimitPair[], factor: number): number[] =>
	rounds.map(({innerLimit, outerLimit}) => factor * Math.abs(outerLimit - innerLimit));

/**
 * The hold band, in percent: the span between the limits, which the trade calls the static friction. People stop
 * at the last nudge that held, so each limit falls short by half a nudge on average, and the span by one.
 */
export const bandPct = (widthsPct: readonly number[], {factor, nudge}: Omit<GaugeScale, 'zero'>): number =>
	mean(widthsPct) + factor * nudge;

/** Whether a raw reading reaches the top of the gauge's scale on either side. */
export const reachesTop = (reading: number, topOfScale: number): boolean => isAtLeast(Math.abs(reading), topOfScale);

/**
 * What a gauge shows, in its own unit, where the arm pushes with a force in percent of the playing force: the way of a
 * reading to percent, turned round.
 */
export const gaugeShows = (forcePct: number, {factor, zero}: Pick<GaugeScale, 'factor' | 'zero'>): number =>
	forcePct / factor + zero;

/** Half the span between the limits as they are read, in the gauge's unit: without the nudge that is added to a hold band. */
export const halfSpanRead = (rounds: readonly LimitPair[]): number =>
	mean(rounds.map(({innerLimit, outerLimit}) => outerLimit - innerLimit)) / 2;

/** The nearest reading that a gauge's smallest step has, free of the dust that steps leave. */
export const toStep = (reading: number, step: number): number =>
	Number((Math.round(reading / step) * step).toPrecision(12));

/** How far rounds that do not agree lie apart, and how far is usual; both in the gauge's unit. */
export type RoundsApart = {readonly apart: number; readonly usual: number};

/**
 * The rounds at one radius whose middles lie farther apart than a careful hand leaves them; undefined where they agree.
 *
 * @param step smallest step of the gauge, in its unit
 * @param nudge size of one nudge, in the same unit
 */
export function roundsApart(rounds: readonly LimitPair[], step: number, nudge: number): RoundsApart | undefined {
	const middles = rounds.map(({innerLimit, outerLimit}) => (innerLimit + outerLimit) / 2);
	const apart = Math.max(...middles) - Math.min(...middles);
	const usual = limits.roundsAgreeTimes.value * (step + nudge);
	return isAbove(apart, usual) ? {apart, usual} : undefined;
}

/**
 * The gauge's zero by reversal, in percent: turned end for end on the same spot the gauge shows the arm's pull with the
 * other sign and its own zero with the same one, so half the sum of both middles is the zero.
 *
 * @param usedPct middles of the rounds as used
 * @param turnedPct middles of the rounds with the gauge turned, in the gauge's own sign
 */
export const zeroByTurningPct = (usedPct: readonly number[], turnedPct: readonly number[]): number =>
	(mean(usedPct) + mean(turnedPct)) / 2;

/** The arm's side pull where the gauge was turned, in percent: half the difference of both middles, free of the zero. */
export const pullByTurningPct = (usedPct: readonly number[], turnedPct: readonly number[]): number =>
	(mean(usedPct) - mean(turnedPct)) / 2;

/**
 * Standard uncertainty of a zero that nobody looked at, in percent: it may be a step off, and half a percent at least,
 * all alike likely (JCGM 100:2008 4.3.7).
 */
export const uncheckedZeroPct = (stepPct: number): number =>
	Math.max(stepPct, limits.uncheckedZeroPct.value) / Math.sqrt(3);
