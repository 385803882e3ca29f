import type {Limits, WouldDecide, Zone} from '../../measures/verdict.js';
import type {MeasuredRadius} from '../../results/figures-types.js';
import {decimalsFor, mm, percent, plainNumber, printsAsZero, rounded, span} from '../numbers.js';
import {entries} from './entries.js';

/** Which way the arm pushes: toward the rim, or toward the spindle. */
export const wayOf = (forcePct: number): 'nach außen' | 'nach innen' => (forcePct < 0 ? 'nach innen' : 'nach außen');

/** A size with its way, '6,8 % nach außen'; one that prints as zero has none. */
export const forceWithWay = (force: number, unit: string, decimals: number): string => {
	const size = `${rounded(Math.abs(force), decimals)} ${unit}`;
	return printsAsZero(force, decimals) ? size : `${size} ${wayOf(force)}`;
};

/** The same as it is read off and typed, '6,8 % außen'. */
export const forceAsTyped = (force: number, unit: string, decimals: number): string =>
	forceWithWay(force, unit, decimals).replace(' nach ', ' ');

/** A side force in words, such as '6,8 % ± 0,5 % nach außen'. */
export const sideForce = (forcePct: number, uncertaintyPct: number): string => {
	const decimals = decimalsFor(uncertaintyPct);
	const size = `${percent(Math.abs(forcePct), decimals)} ± ${percent(uncertaintyPct, decimals)}`;
	return printsAsZero(forcePct, decimals) ? size : `${size} ${wayOf(forcePct)}`;
};

export const pullAt = ({pullPct, pullUncertaintyPct, radiusMm}: MeasuredRadius): string =>
	`${sideForce(pullPct, pullUncertaintyPct)} bei ${mm(radiusMm)}`;

export const bandAt = ({bandPct, bandUncertaintyPct, radiusMm}: MeasuredRadius): string =>
	`${span(bandPct, bandUncertaintyPct)} bei ${mm(radiusMm)}`;

/** Where rounds are taken, where no radius is named beside it: the third one needs its noun. */
export const radiusName = (place: keyof typeof entries.places): string =>
	place === 'extra' || place === 'other' ? 'dritter Radius' : entries.places[place];

type Table = {readonly head: readonly string[]; readonly rows: readonly (readonly string[])[]};

/** A table read out: 'innen 68 mm: vorher 6,8 %, jetzt 1,2 %.' */
const rowsInWords = ({head, rows}: Table): string =>
	rows
		.map(([name, ...cells]) => `${name}: ${cells.map((cell, index) => `${head[index + 1]} ${cell}`).join(', ')}.`)
		.join(' ');

/** What is sure of an undecided figure, first. */
export const sureFirst = (atWorst: Zone): string => (atWorst === 'beyond' ? 'vielleicht zu viel' : 'brauchbar bis gut');

/** The limit that a figure is held against: what is good at worst against the first one, what may be beyond against the last. */
export const limitInQuestion = (atWorst: Zone, {good, usable}: Limits): string =>
	atWorst === 'beyond' ? `brauchbar bis ${plainNumber(usable)} %` : `gut bis ${plainNumber(good)} %`;

/** The word for a verdict in the middle of a sentence, in a list or a table. */
export const verdictName = {
	good: 'gut',
	usable: 'brauchbar',
	beyond: 'zu viel',
	undecided: 'unentschieden',
	'off-scale': 'Skalenende',
} as const;

/** What would decide an undecided figure: after a colon, without its last full stop. */
export const wouldDecideIt = (wouldDecide: WouldDecide, atWorst: Zone): string => {
	if ('rounds' in wouldDecide) return `insgesamt ${wouldDecide.rounds} Runden messen. Das entscheidet es wohl`;
	if ('finerStep' in wouldDecide) return 'feiner ablesen und feiner anstupsen. Das entscheidet es wohl';
	return `liegt genau an der Grenze von ${atWorst === 'beyond' ? 'brauchbar' : 'gut'}. Mehr Runden entscheiden es nicht. Sicherheitshalber als „${verdictName[atWorst]}“ werten`;
};

/** The word for a verdict, the same everywhere. */
export const verdictWord = {
	good: 'GUT',
	usable: 'BRAUCHBAR',
	beyond: 'ZU VIEL',
	undecided: 'UNENTSCHIEDEN',
	'off-scale': 'SKALENENDE',
} as const;

/** How figures, and what is thought of them, are put wherever they are named. */
export const figures = {
	wayOf,
	/** In cells, where readings stand side by side. */
	forceWithWay: forceAsTyped,
	sideForce,
	pullAt,
	bandAt,
	rowsInWords,
	sureFirst,
	wouldDecideIt,
	verdictName,
	verdictWord,
};
