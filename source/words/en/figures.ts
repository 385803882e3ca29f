import type {Limits, WouldDecide, Zone} from '../../measures/verdict.js';
import type {MeasuredRadius} from '../../results/figures-types.js';
import {decimalsFor, mm, percent, plainNumber, printsAsZero, rounded, span} from '../numbers.js';

/** Which way the arm pushes: toward the rim, or toward the spindle. */
export const wayOf = (forcePct: number): 'out' | 'in' => (forcePct < 0 ? 'in' : 'out');

/** A size with its way, '6.8 % out'; one that prints as zero has none. */
export const forceWithWay = (force: number, unit: string, decimals: number): string => {
	const size = `${rounded(Math.abs(force), decimals)} ${unit}`;
	return printsAsZero(force, decimals) ? size : `${size} ${wayOf(force)}`;
};

/** A side force in words, such as '6.8 % out ± 0.5 %'. */
export const sideForce = (forcePct: number, uncertaintyPct: number): string => {
	const decimals = decimalsFor(uncertaintyPct);
	return `${forceWithWay(forcePct, '%', decimals)} ± ${percent(uncertaintyPct, decimals)}`;
};

export const pullAt = ({pullPct, pullUncertaintyPct, radiusMm}: MeasuredRadius): string =>
	`${sideForce(pullPct, pullUncertaintyPct)} at ${mm(radiusMm)}`;

export const bandAt = ({bandPct, bandUncertaintyPct, radiusMm}: MeasuredRadius): string =>
	`${span(bandPct, bandUncertaintyPct)} at ${mm(radiusMm)}`;

type Table = {readonly head: readonly string[]; readonly rows: readonly (readonly string[])[]};

/** A table read out: 'inner 68 mm: before 6.8 %, now 1.2 %.' */
const rowsInWords = ({head, rows}: Table): string =>
	rows
		.map(([name, ...cells]) => `${name}: ${cells.map((cell, index) => `${head[index + 1]} ${cell}`).join(', ')}.`)
		.join(' ');

/** What is sure of an undecided figure, first. */
export const sureFirst = (atWorst: Zone): string => (atWorst === 'beyond' ? 'maybe too much' : 'usable, maybe good');

/** The limit that a figure is held against: what is good at worst against the first one, what may be beyond against the last. */
export const limitInQuestion = (atWorst: Zone, {good, usable}: Limits): string =>
	atWorst === 'beyond' ? `usable up to ${plainNumber(usable)} %` : `good up to ${plainNumber(good)} %`;

/** The word for a verdict in the middle of a sentence, in a list or a table. */
export const verdictName = {
	good: 'good',
	usable: 'usable',
	beyond: 'too much',
	undecided: 'undecided',
	'off-scale': 'off scale',
} as const;

/** What would decide an undecided figure: after a colon, without its last full stop. */
export const wouldDecideIt = (wouldDecide: WouldDecide, atWorst: Zone): string => {
	if ('rounds' in wouldDecide) return `take ${wouldDecide.rounds} rounds in all. That will probably decide it`;
	if ('finerStep' in wouldDecide) return 'read and nudge in finer steps. That will probably decide it';
	return `it lies right at the limit of ${atWorst === 'beyond' ? 'usable' : 'good'}. More rounds will not decide it. To be safe, treat it as ${verdictName[atWorst]}`;
};

/** The word for a verdict, the same everywhere. */
export const verdictWord = {
	good: 'GOOD',
	usable: 'USABLE',
	beyond: 'TOO MUCH',
	undecided: 'UNDECIDED',
	'off-scale': 'OFF SCALE',
} as const;

/** How figures, and what is thought of them, are put wherever they are named. */
export const figures = {
	wayOf,
	forceWithWay,
	sideForce,
	pullAt,
	bandAt,
	rowsInWords,
	sureFirst,
	wouldDecideIt,
	verdictName,
	verdictWord,
};
