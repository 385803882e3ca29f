import {words} from '../words/index.js';
import type {BegunBand, Friction, FrictionBars, Judged} from './instruments/bands.js';
import type {Clearance} from './instruments/clearance.js';
import type {DeckTouch} from './instruments/deck.js';
import type {BigFigure, Countdown} from './instruments/figure.js';
import type {HistoryEvent} from './instruments/history.js';
import type {LevelScale} from './instruments/level.js';

/** How a line is meant; a face may colour it, the words never depend on it. What is aside comes after the rest. */
export type Tone = 'plain' | 'strong' | 'good' | 'warn' | 'bad' | 'aside' | 'curve';

/** One span of force on a common scale, in percent of tracking force, positive toward the rim. */
export type BandRow = {
	readonly label: string;
	readonly lowPct: number;
	readonly highPct: number;
	readonly pullPct: number;
	/** An earlier series, a struck round: drawn with other marks. */
	readonly earlier?: boolean;
	/** Of an earlier check or series its day, as yyyy-mm-dd: told where there is room. */
	readonly date?: string | undefined;
	/** The pull, as it is printed at the end of the row. */
	readonly figure?: Judged | undefined;
};

/** A reading against the radius, in percent of tracking force, positive toward the rim. */
export type PullAt = {readonly radiusMm: number; readonly pct: number};
export type WantedAt = PullAt & {readonly lowPct: number; readonly highPct: number};
/** A day, as yyyy-mm-dd, and what was measured then. */
export type HistoryPoint = {readonly date: string; readonly pct: number; readonly uncertaintyPct: number};
/** Degrees from 12 o'clock, clockwise. */
export type LeverAt = {readonly radiusMm: number; readonly clockDeg: number};

/** An arm in plan over the record, on its gauge. */
export type GaugedArm = {
	readonly effectiveLengthMm: number;
	readonly pivotDistanceMm: number;
	/** Where the pivot stands seen from the spindle: degrees anticlockwise from the right, from above. */
	readonly pivotDirectionDeg: number;
	/** Where the stylus stands, and the neutral place of the gauge, from the spindle. */
	readonly stylusRadiusMm: number;
	readonly gaugeRadiusMm: number;
	/** What the gauge shows in its own sign, the end of its scale either way, and its smallest step. */
	readonly readingPct: number;
	readonly topPct: number;
	readonly stepPct: number;
	/** Turned end for end, its plus end points to the spindle. */
	readonly isTurned: boolean;
	/** What the arm does, in a few words. */
	readonly state: string;
};

/**
 * What a screen shows beside the question: sentences, and pictures that each have a sentence of their own; `heard` is
 * what a voice says in its place, empty where a sentence beside it says the same.
 */
export type Shown = Seen & {
	readonly heard?: string;
	/** Begins a page of its own, by this name: what bears out the one thing, and is not it. */
	readonly leaf?: string;
};

type Seen =
	| {readonly kind: 'line'; readonly text: string; readonly tone: Tone}
	/** Hold bands against zero and the limits of the pull. */
	| {
			readonly kind: 'bands';
			readonly rows: readonly BandRow[];
			readonly goodPct: number;
			readonly usablePct: number;
			/** The round that is being taken. */
			readonly begun?: BegunBand | undefined;
			/** What holds the arm, under its pull where there is room. */
			readonly friction?: FrictionBars | undefined;
			readonly caption: string;
	  }
	| Friction
	| BigFigure
	| Countdown
	| LevelScale
	| DeckTouch
	| Clearance
	/** Cells under headings; one under the other where there is no room. */
	| {
			readonly kind: 'table';
			readonly head: readonly string[];
			readonly rows: readonly (readonly string[])[];
			readonly caption: string;
	  }
	/** The reading that is wanted over the record, and what was read. */
	| {
			readonly kind: 'curve';
			/** From the inside of the record to its outside, with the band that the assumed drag leaves open. */
			readonly wanted: readonly WantedAt[];
			/** Where skating is least; null where the arm has no such radius. */
			readonly leastRadiusMm: number | null;
			/** The arm's own pull, without bias. */
			readonly own: readonly PullAt[];
			/** Read with the bias on. */
			readonly measured: readonly PullAt[];
			readonly caption: string;
	  }
	/** A weighted lever, and where it stands at each radius. */
	| {readonly kind: 'lever'; readonly places: readonly LeverAt[]; readonly caption: string}
	/** A figure over the years, with its uncertainty and the limits. */
	| {
			readonly kind: 'history';
			readonly label: string;
			/** Oldest first. */
			readonly points: readonly HistoryPoint[];
			/** Where the zones end: to both sides of zero for a pull. */
			readonly limitsPct: readonly number[];
			/** What was done meanwhile, in order of time. */
			readonly events?: readonly HistoryEvent[];
			readonly caption: string;
	  }
	/** An arm that can be nudged. */
	| ({readonly kind: 'gauged-arm'; readonly caption: string} & GaugedArm)
	/** The deck from above, with the places where a pivot may stand. */
	| {readonly kind: 'plan'; readonly caption: string};

export type ShownAs<Kind extends Shown['kind']> = Extract<Shown, {kind: Kind}>;

/** What is shown, in words. */
export const inWords = (shown: Shown): string => (shown.kind === 'line' ? shown.text : shown.caption);

/** What a voice says of it; empty where it says the same elsewhere. */
export const heardOf = (shown: Shown): string => shown.heard ?? inWords(shown);

/** Drawn, or printed, and not said: a voice has told the same already, or tells it beside. */
export const unheard = (shown: Shown): Shown => ({...shown, heard: ''});

export const line = (text: string, tone: Tone = 'plain'): Shown => ({kind: 'line', text, tone});

/** Cells under headings; the first of each row is its name. */
export const table = (head: readonly string[], rows: readonly (readonly string[])[]): Shown => ({
	kind: 'table',
	head,
	rows,
	caption: words.figures.rowsInWords({head, rows}),
});
