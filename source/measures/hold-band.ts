import {isAtLeast} from './compare.js';
import {mean} from './statistics.js';

/** One round: the readings at the innermost and the outermost place where the arm, nudged there, still stays put. */
export type Round = {readonly innerLimit: number; readonly outerLimit: number};

/** How the gauge's readings become percent of the playing force. */
export type GaugeScale = {
	/** Percent for each unit of the gauge. */
	readonly factor: number;
	/** What the gauge shows when nothing pushes it, in its own unit. */
	readonly zero: number;
	/** Size of one nudge, in the gauge's unit. */
	readonly nudge: number;
};

/** Centre and width of each round's hold band, in percent, as read. */
export const roundCentresPct = (rounds: readonly Round[], {factor, zero}: GaugeScale): number[] =>
	rounds.map(({innerLimit, outerLimit}) => (factor * (innerLimit - zero) + factor * (outerLimit - zero)) / 2);

/** Width of each round's hold band, in percent, as read. */
export const roundWidthsPct = (rounds: readonly Round[], {factor}: GaugeScale): number[] =>
	rounds.map(({innerLimit, outerLimit}) => factor * (outerLimit - innerLimit));

/** The arm's own side pull, in percent, positive toward the rim: the mean centre of the hold band. */
export const pullPct = (rounds: readonly Round[], scale: GaugeScale): number => mean(roundCentresPct(rounds, scale));

/**
 * The hold band, in percent: the span between the limits, which the trade calls the static friction. People stop
 * at the last nudge that held, so each limit falls short by half a nudge on average, and the span by one.
 */
export const bandPct = (rounds: readonly Round[], scale: GaugeScale): number =>
	mean(roundWidthsPct(rounds, scale)) + scale.factor * scale.nudge;

/** Whether a raw reading reaches the top of the gauge's scale on either side. */
export const reachesTop = (reading: number, topOfScale: number): boolean => isAtLeast(Math.abs(reading), topOfScale);
