import type {Tone} from '../shown-lines.js';

/** One figure to be read across the bench: a reading being typed or just taken, a target, a verdict's figure. */
export type BigFigure = {
	readonly kind: 'figure';
	/** Digits with sign and decimal mark as they are read, '+8.5', '2.10', '0.15'; empty while nothing is typed. */
	readonly text: string;
	/** What the digits count, small beside them: '%', 'g', 'mm', '°'. */
	readonly unit: string;
	/** Which way or side it is, before it is asked which: 'out', 'in', 'LEFT high'. */
	readonly side?: string | undefined;
	/** What it stands against, to the right: 'inner limit 3.0 out', 'allowed ± 0.20 °'. */
	readonly note?: string | undefined;
	/** How the figure is meant; strong where nothing is said. */
	readonly tone?: Tone | undefined;
	/** Left out where all that stands beside it would want for room. */
	readonly isSpare?: true;
	/** The same as a sentence. */
	readonly caption: string;
};

/** The time for which the arm must hold still. */
export type Countdown = {
	readonly kind: 'countdown';
	/** Whole seconds left, and of how many. */
	readonly seconds: number;
	readonly ofSeconds: number;
	/** What to do meanwhile: 'Keep still.' */
	readonly note?: string | undefined;
	readonly caption: string;
};
