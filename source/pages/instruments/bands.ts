import type {Tone} from '../shown-lines.js';

/** What stands at the end of a row: a figure as it is printed, and how it is judged. */
export type Judged = {readonly text: string; readonly tone: Tone};

/** A round of which only the inner limit was read, in percent of tracking force, positive toward the rim. */
export type BegunBand = {readonly label: string; readonly lowPct: number};

/** The width of a hold band, in percent of tracking force. */
export type FrictionRow = {readonly label: string; readonly bandPct: number; readonly figure?: Judged | undefined};

/** Widths of hold bands against their own limits, which are not those of the pull. */
export type FrictionBars = {
	readonly rows: readonly FrictionRow[];
	/** The widest band that is good, and that is usable, in percent of tracking force. */
	readonly goodPct: number;
	readonly usablePct: number;
};

export type Friction = FrictionBars & {readonly kind: 'friction'; readonly caption: string};
