import type {BandRow, Shown, Tone} from '../pages/shown-lines.js';
import type {AtWorst, Verdict} from '../results/figures-types.js';
import type {IssuedFinding} from '../results/issued.js';

/** A text that somebody typed: set apart, so that its direction disturbs nothing around it. */
export type Typed = {readonly typed: string};
export type Words = string | Typed | readonly (string | Typed)[];

/** A figure with the verdict on it, which is shown as a shape beside the words. */
export type Judged = {readonly words: Words; readonly verdict: Verdict; readonly atWorst: AtWorst};
export type Cell = Words | Judged;

/** A hold band with the uncertainty (95 %) of its middle, where that is known. */
export type BandBar = BandRow & {readonly pullUncertaintyPct?: number | undefined};
export type Bands = Omit<Extract<Shown, {kind: 'bands'}>, 'rows'> & {readonly rows: readonly BandBar[]};
export type Curve = Extract<Shown, {kind: 'curve'}>;
export type Lever = Extract<Shown, {kind: 'lever'}>;
export type History = Extract<Shown, {kind: 'history'}>;
/** What can be drawn; its caption says the same in sentences. */
export type Drawing = Bands | Curve | Lever | History;

/** What a report is made of. Each format shows every kind. */
export type Block =
	| {readonly kind: 'line'; readonly words: Words; readonly tone: Tone}
	/** Must not be overlooked: the deck is not ready, the check is void. */
	| {readonly kind: 'notice'; readonly words: Words; readonly tone: Tone}
	/** The verdict as a whole. */
	| ({readonly kind: 'verdict'} & Judged)
	| {readonly kind: 'list'; readonly items: readonly Words[]}
	/** The first cell of each row is its heading. */
	| {
			readonly kind: 'table';
			readonly caption: Words;
			readonly head: readonly string[];
			readonly rows: readonly (readonly Cell[])[];
	  }
	/** Names and what is known of each: a narrow table. */
	| {readonly kind: 'facts'; readonly caption: Words; readonly facts: readonly (readonly [name: Words, value: Cell])[]}
	/** In order of weight, with who acts. */
	| {readonly kind: 'findings'; readonly findings: readonly IssuedFinding[]}
	| {
			readonly kind: 'picture';
			readonly title: string;
			readonly drawing: Drawing;
			/** Its figures stand in a table too, so that a format without pictures need not repeat them. */
			readonly isTold: boolean;
	  };

export type Part = {readonly title: string; readonly blocks: readonly Block[]};
export type Section = Part & {
	/** Smaller parts, each under a heading of its own. */
	readonly parts?: readonly Part[];
};

/** A report before it has a format. */
export type Report = {
	readonly title: Words;
	/** What it is about, before anything else: names and values. */
	readonly about: readonly (readonly [name: string, value: Words])[];
	readonly sections: readonly Section[];
	/** Where it comes from. */
	readonly foot: string;
};

export const isJudged = (cell: Cell): cell is Judged => typeof cell === 'object' && 'verdict' in cell;

export const typed = (text: string): Typed => ({typed: text});
/** A sentence with what somebody typed within it set apart. */
export function withTyped(text: string, part: string): Words {
	const at = part === '' ? -1 : text.indexOf(part);
	return at < 0 ? text : [text.slice(0, at), typed(part), text.slice(at + part.length)];
}

export const sentence = (words: Words, tone: Tone = 'plain'): Block => ({kind: 'line', words, tone});
export const notice = (words: Words, tone: Tone): Block => ({kind: 'notice', words, tone});

/** The words as one plain text. */
export const plainWords = (words: Words): string => {
	if (typeof words === 'string') return words;
	if ('typed' in words) return words.typed;
	return words.map(plainWords).join('');
};
