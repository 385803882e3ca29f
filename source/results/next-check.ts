import {addMonths} from 'date-fns/addMonths';
import {formatISO} from 'date-fns/formatISO';
import {parseISO} from 'date-fns/parseISO';
import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {factsOfSeries} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import type {ChangeVerdict} from '../measures/change.js';
import type {Nothing, Said} from '../said.js';
import {partialDocument} from './document-of-check.js';
import {figuresOf} from './figures.js';
import type {Figures, RadiusFigures} from './figures-types.js';
import {figuresOfCheck} from './issued.js';
import {rowOf} from './past-row.js';
import {changeSince} from './years/comparison.js';

/** Why an arm is due again then. */
export type NextCheckValues = {
	'to-put-right': Nothing;
	/** Undecided is what more rounds or a finer step would probably decide; `change` since the last check, where it was. */
	soon: {readonly isUndecided: boolean; readonly change: Exclude<ChangeVerdict, 'unchanged'> | undefined};
	/** A stiff wire or a free loop creeps. */
	'wire-creeps': Nothing;
	usual: Nothing;
};

export type NextCheck = {readonly date: string; readonly because: Said<NextCheckValues>};

/** When the arm is due again: calendar months from the local day of the check, clamped to the end of the month. */
export function nextCheckOf(check: Check, history: readonly PastCheck[] = []): NextCheck {
	const because = reasonOf(check, history);
	const start = parseISO(check.startedAt.slice(0, 10));
	return {date: formatISO(addMonths(start, months[because.id]), {representation: 'date'}), because};
}

// What puts right and what is open are defaults of this program; six months are common practice, no source.
const months = {'to-put-right': 1, soon: 1, 'wire-creeps': 3, usual: 6} as const satisfies Record<
	keyof NextCheckValues,
	number
>;

function reasonOf(check: Check, history: readonly PastCheck[]): NextCheck['because'] {
	const {figures} = figuresOfCheck(check) ?? {};
	const probe = figures?.probe ?? figuresSoFar(check);
	if (probe.some(isToPutRight)) return {id: 'to-put-right', values: {}};
	const isUndecided = figures !== undefined && canBeDecided(figures);
	const word = changeSince(rowOf(check), history);
	const change = word === 'unchanged' ? undefined : word;
	if (isUndecided || change) return {id: 'soon', values: {isUndecided, change}};
	const facts = factsOfSeries(check, openSeries(check));
	if (facts.is('arm-wire-path', 'free-loop') || facts.is('arm-wire-stiffness', 'stiff'))
		return {id: 'wire-creeps', values: {}};
	return {id: 'usual', values: {}};
}

/** Beyond a limit, or off scale: that is put right first, also where the check did not come to a verdict. */
const isToPutRight = ({pullVerdict, bandVerdict}: RadiusFigures): boolean =>
	[pullVerdict, bandVerdict].some((one) => one === 'beyond' || one === 'off-scale');

/** What was measured in a check that came to no verdict. */
function figuresSoFar(check: Check): readonly RadiusFigures[] {
	const document = partialDocument(factsOfSeries(check, openSeries(check)));
	return document ? figuresOf(document).probe : [];
}

/** Something is undecided that more rounds or a finer step would probably decide; a figure on its limit stays there. */
const canBeDecided = ({probe}: Figures): boolean =>
	probe
		.flatMap(({pullWouldDecide, bandWouldDecide}) => [pullWouldDecide, bandWouldDecide])
		.some((one) => one !== null && !('onLimit' in one));
