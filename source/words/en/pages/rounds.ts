import type {WouldDecide, Zone} from '../../../measures/verdict.js';
import type {VerdictLimits} from '../../../procedure/facts.js';
import type {MeasuredRadius} from '../../../results/figures-types.js';
import {type GaugeUnit, units} from '../../../units.js';
import {percent, plainNumber, plural, span} from '../../numbers.js';
import {bandAt, limitInQuestion, pullAt, sideForce, sureFirst, verdictName, wouldDecideIt} from '../figures.js';

type Taken = {
	readonly number: number;
	/** Both limits as they were typed. */
	readonly innerLimit: string;
	readonly outerLimit: string;
	readonly isTurned: boolean;
	readonly isStruck: boolean;
};

const counted = (count: number, isOffScale: boolean): string =>
	isOffScale
		? `${count} ${plural(count, {one: 'round', other: 'rounds'})}, off scale`
		: `${count} ${plural(count, {one: 'round counts', other: 'rounds count'})}`;

// Held together, so that a line never breaks within a round.
const taken = ({number, innerLimit, outerLimit, isTurned, isStruck}: Taken): string =>
	`${number}: ${innerLimit} / ${outerLimit}${isTurned ? ' turned' : ''}${isStruck ? ' (struck)' : ''}`.replaceAll(
		' ',
		'\u00a0',
	);

const heard = ({number, innerLimit, outerLimit, isTurned, isStruck}: Taken): string =>
	`Round ${number}: ${innerLimit} to ${outerLimit}${isTurned ? ', turned' : ''}${isStruck ? ', struck' : ''}.`;

const verdictOf = (verdict: Zone | 'undecided', atWorst: Zone): string =>
	verdict === 'undecided' ? sureFirst(atWorst) : verdictName[verdict];

type Judged = {readonly figures: MeasuredRadius; readonly limits: VerdictLimits};

const pullJudged = ({figures, limits: {pullGoodPct, pullUsablePct}}: Judged): string =>
	`(${limitInQuestion(figures.pullAtWorst, {good: pullGoodPct, usable: pullUsablePct})}): ${verdictOf(figures.pullVerdict, figures.pullAtWorst)}`;
const bandJudged = ({figures, limits: {bandGoodPct, bandUsablePct}}: Judged): string =>
	`(${limitInQuestion(figures.bandAtWorst, {good: bandGoodPct, usable: bandUsablePct})}): ${verdictOf(figures.bandVerdict, figures.bandAtWorst)}`;

type WouldDecideIt = {readonly by: WouldDecide; readonly atWorst: Zone};

type Closing = {readonly movedPct: number; readonly allowedPct: number};

const off = ({movedPct}: Closing): string =>
	`The closing round differs by ${percent(Math.abs(movedPct), 2)} from the other inner rounds`;
const allowed = ({allowedPct}: Closing): string => `allowed ${percent(allowedPct, 2)}`;

/** The rounds of a place while they are taken. */
export const roundsTaken = {
	/** How many count, once they are taken; and the last ones. */
	soFar: ({
		isAsked,
		count,
		isOffScale,
		last,
	}: {
		/** Another round is being taken. */
		isAsked: boolean;
		count: number;
		isOffScale: boolean;
		last: readonly Taken[];
	}) => [...(isAsked ? [] : [counted(count, isOffScale)]), ...last.map(taken)].join(' · '),
	/** The round that was just taken, for a voice; and how many count, once no other is asked for. */
	heard: ({count, isOffScale, last}: {count: number | undefined; isOffScale: boolean; last: Taken | undefined}) =>
		[...(last ? [heard(last)] : []), ...(count === undefined ? [] : [`${counted(count, isOffScale)}.`])].join(' '),
	innerHeard: ({innerLimit}: {innerLimit: string}) => `Inner limit ${innerLimit}.`,
	begun: ({innerLimit}: {innerLimit: string}) => `This round: ${innerLimit} / …`,
	offScale: ({top, unit, isBiasOn}: {top: number | undefined; unit: GaugeUnit; isBiasOn: boolean}) =>
		`Off scale: ${top ?? '?'} ${units[unit].label} or more gives no figure. ${
			isBiasOn ? 'Take the reading back, then set less bias.' : 'Make sure the deck is level and the bias off.'
		}`,
	pull: (one: Judged) => `Pull ${pullAt(one.figures)} ${pullJudged(one)}`,
	band: (one: Judged) => `Friction ${bandAt(one.figures)} ${bandJudged(one)}`,
	/** The radius was told with the question. */
	pullHeard: (one: Judged) =>
		`Pull ${sideForce(one.figures.pullPct, one.figures.pullUncertaintyPct)} ${pullJudged(one)}.`,
	bandHeard: (one: Judged) =>
		`Friction ${span(one.figures.bandPct, one.figures.bandUncertaintyPct)} ${bandJudged(one)}.`,
	pullWouldDecide: (wanted: WouldDecideIt) => `Pull: ${wouldDecideIt(wanted.by, wanted.atWorst)}.`,
	bandWouldDecide: (wanted: WouldDecideIt) => `Friction: ${wouldDecideIt(wanted.by, wanted.atWorst)}.`,
	somethingMoved: (closing: Closing) => `Something moved. ${off(closing)} (${allowed(closing)}). Probe again.`,
	nothingMoved: (closing: Closing) => `Nothing moved. ${off(closing)} (${allowed(closing)}).`,
	cannotTell: ({pullGoodPct, ...closing}: Closing & {pullGoodPct: number}) =>
		`${off(closing)}. The rounds scatter too much to tell whether something moved. Allowed would be ${percent(closing.allowedPct, 2)}, more than a good pull of ${plainNumber(pullGoodPct)} %.`,
};
