import type {BandBars} from '../pages/pictures/bands-layout.js';
import type {ShownAs, Tone} from '../pages/shown-lines.js';
import type {AtWorst, Verdict} from '../results/figures-types.js';
import type {IssuedFinding} from '../results/issued.js';
import {reportWords} from '../words/reports.js';

/** A text that somebody typed: set apart, so that its direction disturbs nothing around it. */
export type Typed = {readonly typed: string};
export type Phrase = string | Typed | readonly (string | Typed)[];

/** A figure with the verdict on it, which is shown as a shape beside the words. */
export type JudgedPhrase = {readonly phrase: Phrase; readonly verdict: Verdict; readonly atWorst: AtWorst};
export type TableCell = Phrase | JudgedPhrase;

/** What can be drawn; its caption says the same in sentences. */
export type Drawing = NamedBands | ShownAs<'curve' | 'lever' | 'history'>;

/** Hold bands; with names of their own for what is drawn, where a reader has no words of the trade. */
export type NamedBands = BandBars & {readonly names?: {readonly band: string; readonly pull: string}};

export type LineBlock = {readonly kind: 'line'; readonly phrase: Phrase; readonly tone: Tone};

/** What a report is made of. Each format shows every kind. */
export type ReportBlock =
	| LineBlock
	/** Must not be overlooked: the deck is not ready, the check is void. */
	| {readonly kind: 'notice'; readonly phrase: Phrase; readonly tone: Tone}
	/** The verdict as a whole, and what stands in one box with it. */
	| ({readonly kind: 'verdict'; readonly beside?: readonly LineBlock[]} & JudgedPhrase)
	| {readonly kind: 'list'; readonly items: readonly Phrase[]}
	/** The first cell of each row is its heading. */
	| {
			readonly kind: 'table';
			readonly caption: Phrase;
			readonly head: readonly string[];
			readonly rows: TableRows;
	  }
	/** Names and what is known of each: a narrow table. */
	| {
			readonly kind: 'facts';
			readonly caption: Phrase;
			readonly facts: readonly (readonly [name: Phrase, value: TableCell])[];
	  }
	/** In order of weight. */
	| {readonly kind: 'findings'; readonly findings: readonly IssuedFinding[]}
	| {
			readonly kind: 'picture';
			readonly title: string;
			readonly drawing: Drawing;
			/** Its figures stand in a table too, so that a format without pictures need not repeat them. */
			readonly isTold: boolean;
	  };

export type ReportPart = {readonly title: string; readonly blocks: readonly ReportBlock[]};
export type Section = ReportPart & {
	/** Smaller parts, each under a heading of its own. */
	readonly parts?: readonly ReportPart[];
};

/** A report before it has a format. */
export type Report = {
	readonly title: Phrase;
	/** At the head of every printed page: the arm, and the day of its figures as it is printed. */
	readonly running: {readonly arm: string; readonly day: string};
	/** What it is about, before anything else: names and values. */
	readonly about: readonly (readonly [name: string, value: Phrase])[];
	/** What the owner of the arm is told, on a page of its own before everything else. */
	readonly sheet?: readonly Section[];
	readonly sections: readonly Section[];
	/** Where it comes from. */
	readonly foot: string;
};

export const isJudged = (cell: TableCell): cell is JudgedPhrase => typeof cell === 'object' && 'verdict' in cell;

export const typed = (text: string): Typed => ({typed: text});

/** A sentence round something that somebody typed, which is set apart in it. */
export function around(text: string, sentenceOf: (text: string) => string): Phrase {
	const [before = '', after = ''] = sentenceOf(placeOfText).split(placeOfText);
	return [before, typed(text), after];
}

// Private use (Unicode 23.5): no sentence has it.
const placeOfText = '\u{F0000}';

export const sentenceBlock = (phrase: Phrase, tone: Tone = 'plain'): LineBlock => ({kind: 'line', phrase, tone});
export const notice = (phrase: Phrase, tone: Tone): ReportBlock => ({kind: 'notice', phrase, tone});

type TableRows = readonly (readonly TableCell[])[];
/** A table under headings of its columns. */
export const tableBlock = (
	caption: Phrase,
	columns: readonly (keyof typeof reportWords.columns)[],
	rows: TableRows,
): ReportBlock => ({kind: 'table', caption, head: columns.map((one) => reportWords.columns[one]), rows});

/** A phrase as one text, with its words put otherwise; what somebody typed stays as it is. */
export const phraseWith = (phrase: Phrase, put: (text: string) => string): string => {
	if (typeof phrase === 'string') return put(phrase);
	if ('typed' in phrase) return phrase.typed;
	return phrase.map((part) => phraseWith(part, put)).join('');
};

/** A phrase as one plain text. */
export const phraseText = (phrase: Phrase): string => phraseWith(phrase, (text) => text);
