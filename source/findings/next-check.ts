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
import {changeSince} from './years/comparison.js';

export type NextCheck = {readonly date: string; readonly because: string};

/** When the arm is due again: calendar months from the local day of the check, clamped to the end of the month. */
export function nextCheckOf(check: Check, history: readonly PastCheck[] = []): NextCheck {
	const {months, because} = interval(check, history);
	const start = parse(check.startedAt.slice(0, 10), 'yyyy-MM-dd', new Date(0));
	return {date: format(addMonths(start, months), 'yyyy-MM-dd'), because};
}

function interval(check: Check, history: readonly PastCheck[]): {months: number; because: string} {
	const facts = factsOfSeries(check, openSeries(check));
	const found = documentOfCheck(check);
	if (found.ok && findingsOf(found.document, figuresOf(found.document)).some(({code}) => code === 'undecided'))
		return {months: 1, because: 'In a month: something is undecided (default of this program).'};
	const word = changeSince(rowOf(check), history);
	if (word === 'changed' || word === 'perhaps')
		return {
			months: 1,
			because: `In a month: ${word === 'changed' ? 'something changed' : 'something perhaps changed'} since the last check (default of this program).`,
		};
	if (facts.is('arm-wire-path', 'exposed-loop') || facts.is('arm-wire-stiffness', 'stiff'))
		return {months: 3, because: 'In three months: stiff or exposed wires relax sooner (default of this program).'};
	return {months: 6, because: 'In six months (common practice).'};
}
