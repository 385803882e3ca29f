import {isAtLeast} from './compare.js';
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
