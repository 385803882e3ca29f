import {addMonths} from 'date-fns/addMonths';
import {format} from 'date-fns/format';
import {parse} from 'date-fns/parse';
import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {factsOfSeries} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {listed} from '../words/wording.js';
import {type Issued, issuedOf} from './issued.js';
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
	const issued = issuedOf(check);
	if (issued && isToBePutRight(issued))
		return {
			months: 1,
			because: 'Check again after it was put right; the reminder comes in a month (default of this program).',
		};
	const soon = [...(issued && canBeDecided(issued) ? ['something is undecided'] : []), ...changedSince(check, history)];
	if (soon.length > 0) return {months: 1, because: `In a month: ${listed(soon)} (default of this program).`};
	const facts = factsOfSeries(check, openSeries(check));
	if (facts.is('arm-wire-path', 'free-loop') || facts.is('arm-wire-stiffness', 'stiff'))
		return {
			months: 3,
			because: 'In three months: a stiff wire or a free loop creeps sooner (default of this program).',
		};
	return {months: 6, because: 'In six months (common practice, no source).'};
}

const isToBePutRight = ({figures: {verdict}}: Issued): boolean => verdict === 'beyond' || verdict === 'off-scale';

/** Something is undecided that more rounds or a finer step would probably decide; a figure on its limit stays there. */
const canBeDecided = ({figures: {probe}}: Issued): boolean =>
	probe
		.flatMap(({pullWouldDecide, bandWouldDecide}) => [pullWouldDecide, bandWouldDecide])
		.some((one) => one !== null && !('onLimit' in one));

function changedSince(check: Check, history: readonly PastCheck[]): string[] {
	const word = changeSince(rowOf(check), history);
	if (word === 'changed') return ['something changed since the last check'];
	return word === 'perhaps' ? ['something perhaps changed since the last check'] : [];
}
