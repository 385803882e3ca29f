import {addMonths} from 'date-fns/addMonths';
import {format} from 'date-fns/format';
import {parse} from 'date-fns/parse';
import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {factsOfSeries} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {findingsOf} from './diagnose.js';
import {documentOfCheck} from './document-of-check.js';
import {figuresOf} from './figures.js';
import {rowOf} from './past-row.js';
import {listed} from './wording.js';
import {changeSince} from './years/comparison.js';

export type NextCheck = {readonly date: string; readonly because: string};

/** When the arm is due again: calendar months from the local day of the check, clamped to the end of the month. */
export function nextCheckOf(check: Check, history: readonly PastCheck[] = []): NextCheck {
	const {months, because} = interval(check, history);
	const start = parse(check.startedAt.slice(0, 10), 'yyyy-MM-dd', new Date(0));
	return {date: format(addMonths(start, months), 'yyyy-MM-dd'), because};
}

function interval(check: Check, history: readonly PastCheck[]): {months: number; because: string} {
	const soon = [...(isUndecided(check) ? ['something is undecided'] : []), ...changedSince(check, history)];
	if (soon.length > 0) return {months: 1, because: `In a month: ${listed(soon)} (default of this program).`};
	const facts = factsOfSeries(check, openSeries(check));
	if (facts.is('arm-wire-path', 'exposed-loop') || facts.is('arm-wire-stiffness', 'stiff'))
		return {months: 3, because: 'In three months: stiff or exposed wires relax sooner (default of this program).'};
	return {months: 6, because: 'In six months (common practice).'};
}

function isUndecided(check: Check): boolean {
	const found = documentOfCheck(check);
	return found.ok && findingsOf(found.document, figuresOf(found.document)).some(({code}) => code === 'undecided');
}

function changedSince(check: Check, history: readonly PastCheck[]): string[] {
	const word = changeSince(rowOf(check), history);
	if (word === 'changed') return ['something changed since the last check'];
	return word === 'perhaps' ? ['something perhaps changed since the last check'] : [];
}
