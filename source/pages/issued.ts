import type {Check} from '../check/check.js';
import type {Issued} from '../results/issued.js';
import {nextActionOf} from '../results/next-action.js';
import {caseOfCheck} from '../results/tried.js';
import {worded} from '../words/finding-text.js';
import {withAction} from './next-action.js';

/** The figures of a check and what they mean, in the words of today; null before there are any. */
export function issuedOf(check: Check): Issued | null {
	const given = caseOfCheck(check);
	if (!given) return null;
	const {figures, findings} = given;
	return {figures, findings: withAction(findings.map(worded), nextActionOf(given))};
}
