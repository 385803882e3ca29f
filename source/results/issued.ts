import type {Check} from '../check/check.js';
import type {Finding} from './diagnose.js';
import {documentOfCheck} from './document-of-check.js';
import {type Figures, figuresOf} from './figures.js';

/** A finding as it was issued: with the words of the day, which are history. */
export type IssuedFinding = Pick<Finding, 'code' | 'places' | 'who'> & {
	/** What was found, with value, uncertainty and limit. */
	readonly found: string;
	/** The likely cause; empty where the figures name none. */
	readonly likely: string;
	readonly next: string;
	/** All of it in plain sentences. */
	readonly text: string;
};

/** What the day made of a check. */
export type Issued = {
	readonly figures: Figures;
	readonly findings: readonly IssuedFinding[];
	/** Issued in the first stored form: its ± do not hold what setting arm and gauge up makes of a pull. */
	readonly form?: 1 | undefined;
};

/** What was issued, without its words. */
export type IssuedFigures = Pick<Issued, 'figures' | 'form'>;

/** The figures of a check as they would be issued now; null before there are any. */
export function figuresOfCheck(check: Check): IssuedFigures | null {
	const found = documentOfCheck(check);
	return found.ok ? {figures: figuresOf(found.document)} : null;
}
