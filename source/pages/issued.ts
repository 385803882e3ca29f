import type {Check} from '../check/check.js';
import {compute} from '../results/compute.js';
import {documentOfCheck} from '../results/document-of-check.js';
import type {Issued} from '../results/issued.js';
import {actionOfCheck} from '../results/tried.js';
import {worded} from '../words/finding-text.js';
import {withAction} from './next-action.js';

/** The figures of a check and what they mean, in the words of today; null before there are any. */
export function issuedOf(check: Check): Issued | null {
	const found = documentOfCheck(check);
	if (!found.ok) return null;
	const {findings, ...figures} = compute(found.document);
	return {figures, findings: withAction(findings.map(worded), actionOfCheck(check))};
}
