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
		? `${count} ${plural(count, {one: 'Runde', other: 'Runden'})}, Skalenende`
		: `${count} ${plural(count, {one: 'Runde zählt', other: 'Runden zählen'})}`;

// Held together, so that a line never breaks within a round.
const taken = ({number, innerLimit, outerLimit, isTurned, isStruck}: Taken): string =>
	`${number}: ${innerLimit} / ${outerLimit}${isTurned ? ' gedreht' : ''}${isStruck ? ' (gestrichen)' : ''}`.replaceAll(
		' ',
		'\u00a0',
	);

const heard = ({number, innerLimit, outerLimit, isTurned, isStruck}: Taken): string =>
	`Runde ${number}: ${innerLimit} bis ${outerLimit}${isTurned ? ', gedreht' : ''}${isStruck ? ', gestrichen' : ''}.`;

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
	`Die Schlussrunde weicht um ${percent(Math.abs(movedPct), 2)} von den anderen inneren Runden ab`;
const allowed = ({allowedPct}: Closing): string => `erlaubt ${percent(allowedPct, 2)}`;

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
	innerHeard: ({innerLimit}: {innerLimit: string}) => `Innere Grenze ${innerLimit}.`,
	begun: ({innerLimit}: {innerLimit: string}) => `Diese Runde: ${innerLimit} / …`,
	offScale: ({top, unit, isBiasOn}: {top: number | undefined; unit: GaugeUnit; isBiasOn: boolean}) =>
		`Skalenende: ${top === undefined ? '?' : plainNumber(top)} ${units[unit].label} oder mehr ergibt keine Zahl. ${
			isBiasOn
				? 'Messwert zurücknehmen, dann Antiskating verringern.'
				: 'Nachsehen: Laufwerk waagrecht? Antiskating aus?'
		}`,
	pull: (one: Judged) => `Zug ${pullAt(one.figures)} ${pullJudged(one)}`,
	band: (one: Judged) => `Reibung ${bandAt(one.figures)} ${bandJudged(one)}`,
	/** The radius was told with the question. */
	pullHeard: (one: Judged) =>
		`Zug ${sideForce(one.figures.pullPct, one.figures.pullUncertaintyPct)} ${pullJudged(one)}.`,
	bandHeard: (one: Judged) =>
		`Reibung ${span(one.figures.bandPct, one.figures.bandUncertaintyPct)} ${bandJudged(one)}.`,
	pullWouldDecide: (wanted: WouldDecideIt) => `Zug: ${wouldDecideIt(wanted.by, wanted.atWorst)}.`,
	bandWouldDecide: (wanted: WouldDecideIt) => `Reibung: ${wouldDecideIt(wanted.by, wanted.atWorst)}.`,
	somethingMoved: (closing: Closing) =>
		`Etwas hat sich verschoben. ${off(closing)} (${allowed(closing)}). Noch einmal messen.`,
	nothingMoved: (closing: Closing) => `Nichts hat sich verschoben. ${off(closing)} (${allowed(closing)}).`,
	cannotTell: ({pullGoodPct, ...closing}: Closing & {pullGoodPct: number}) =>
		`${off(closing)}. Die Runden streuen zu stark, um zu sagen, ob sich etwas verschoben hat. Erlaubt wären ${percent(closing.allowedPct, 2)}, mehr als ein guter Zug von ${plainNumber(pullGoodPct)} %.`,
};
