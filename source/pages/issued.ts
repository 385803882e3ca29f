import type {Check} from '../check/check.js';
import {compute} from '../results/compute.js';
import {documentOfCheck} from '../results/document-of-check.js';
import type {Issued} from '../results/issued.js';
import {nextActionOf} from '../results/next-action.js';
import {caseOfCheck} from '../results/tried.js';
import {worded} from '../words/finding-text.js';
import {withAction} from './next-action.js';

/** The figures of a check and what they mean, in the words of today; null before there are any. */
export function issuedOf(check: Check): Issued | null {
	const given = caseOfCheck(check);
	if (!given) return null;
	const {figures, findings} = given.shown === undefined ? given : (countedIn(check) ?? given);
	return {figures, findings: withAction(findings.map(worded), nextActionOf(given))};
}

/** Issued is what was read last, also where the next action hangs on the series before it. */
function countedIn(check: Check) {
	const found = documentOfCheck(check);
	if (!found.ok) return;
	const {findings, ...figures} = compute(found.document);
	return {figures, findings};
}
