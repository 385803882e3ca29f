import type {WouldDecide, Zone} from '../../measures/verdict.js';
import type {MeasuredRadius} from '../../results/figures-types.js';
import {decimalsFor, mm, percent, printsAsZero, rounded, span} from '../numbers.js';

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
export const sureFirst = (atWorst: Zone): string =>
	atWorst === 'beyond' ? 'beyond at worst, usable not proven' : 'usable at worst, good not proven';

/** What would decide an undecided figure. */
export const wouldDecideIt = (wouldDecide: WouldDecide, atWorst: Zone): string => {
	if ('rounds' in wouldDecide) return `${wouldDecide.rounds} rounds in all at that radius would probably decide it`;
	if ('finerStep' in wouldDecide) return 'a finer reading step and nudge would probably decide it';
	return `it stands on the limit and more rounds will not help, so take it as ${atWorst}`;
};

/** The word for a verdict, the same everywhere. */
export const verdictWord = {
	good: 'GOOD',
	usable: 'USABLE',
	beyond: 'BEYOND LIMITS',
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
	verdictWord,
};
