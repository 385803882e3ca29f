import type {Check} from '../check/check.js';
import {type Finding, findingsOf} from './diagnose.js';
import {documentOfCheck} from './document-of-check.js';
import {type Figures, figuresOf} from './figures.js';

/** What the day made of a check. */
export type Issued = {
	readonly figures: Figures;
	readonly findings: readonly Finding[];
	/** Issued in the first stored form: its ± do not hold what setting arm and gauge up makes of a pull. */
	readonly form?: 1 | undefined;
};

/** The figures of a check and what they mean; null before there are any. */
export function issuedOf(check: Check): Issued | null {
	const found = documentOfCheck(check);
	if (!found.ok) return null;
	const figures = figuresOf(found.document);
	return {figures, findings: findingsOf(found.document, figures)};
}
