import type {Facts} from '../procedure/facts.js';
import {closingOf} from '../procedure/hold-limits.js';
import {plainNumber} from '../words/wording.js';
import {line, type Shown} from './shown-lines.js';

/** What the closing round says: something moved, nothing moved, or that it cannot be told. */
export function closingLines(facts: Facts): Shown[] {
	const closing = closingOf(facts);
	if (!closing) return [];
	const {movedPct, allowedPct, moved, tells} = closing;
	const off = `${Math.abs(movedPct).toFixed(2)} % off the inner mean`;
	const allowed = `up to ${allowedPct.toFixed(2)} % is no change`;
	if (moved) return [line(`${off} (${allowed}): something moved. Probe again.`, 'bad')];
	if (tells) return [line(`${off} (${allowed}): nothing moved.`, 'good')];
	return [
		line(
			`${off}, but the rounds scatter too much to tell whether anything moved: up to ${allowedPct.toFixed(2)} % would count as no change, more than a good pull of ${plainNumber(facts.limits.pullGoodPct)} %.`,
			'warn',
		),
	];
}
