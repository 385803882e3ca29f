import type {PastCheck} from '../../check/past-check.js';
import {placeLabel} from '../../procedure/places.js';
import {line, type Shown, type Tone} from '../shown-lines.js';
import {listed, plainNumber} from '../wording.js';
import {type ComparedFigure, type Comparison, comparisonsOf, gravestOf} from './comparison.js';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** '2026-05-04' as '4 May 2026'. */
export function dayText(date: string): string {
	const [year, month, day] = date.split('-').map(Number);
	return `${day} ${months[(month ?? 1) - 1]} ${year}`;
}

const tones = {changed: 'warn', perhaps: 'warn', 'not changed': 'plain'} as const satisfies Record<string, Tone>;

/** Which way a figure went: a pull toward rim or spindle, a band wider or narrower. */
function way({figure, change: {differenceMn}}: ComparedFigure): string {
	if (figure === 'band') return differenceMn < 0 ? 'narrower' : 'wider';
	return differenceMn < 0 ? 'toward the spindle' : 'toward the rim';
}

const percentOf = (forceMn: number, {playingMn}: ComparedFigure): string =>
	((100 * Math.abs(forceMn)) / playingMn).toFixed(1);

/** '1.4 ± 0.6 % toward the rim'; a difference that prints as zero has no way. */
function size(one: ComparedFigure): string {
	const moved = percentOf(one.change.differenceMn, one);
	const text = `${moved} ± ${percentOf(one.change.uncertaintyMn, one)} %`;
	return Number(moved) === 0 ? text : `${text} ${way(one)}`;
}

const nameOf = ({figure, place, radiusMm}: ComparedFigure): string =>
	`${figure === 'pull' ? 'pull' : 'hold band'} at the ${placeLabel(place)} radius (${plainNumber(radiusMm)} mm)`;

/** 'The pull at the inner radius (65 mm) moved 1.4 ± 0.6 % toward the rim since 4 May 2026: changed.' */
function sentence(one: ComparedFigure, then: PastCheck): string {
	const {figure, change} = one;
	const more = change.verdict === 'perhaps' ? '; probe once more' : '';
	return `The ${nameOf(one)} ${figure === 'pull' ? 'moved' : 'became'} ${size(one)} since ${dayText(then.date)}: ${change.verdict}${more}.`;
}

/** All that stayed as it was, in one line. */
function unchanged(figures: readonly ComparedFigure[], then: PastCheck): Shown[] {
	const same = figures.filter(({change}) => change.verdict === 'not changed');
	if (same.length === 0) return [];
	return [
		line(`Not changed since ${dayText(then.date)}: ${listed(same.map((one) => `${nameOf(one)}, ${size(one)}`))}.`),
	];
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** One comparison in sentences: first what changed, then what did not. */
function linesOfComparison({then, figures, notes, obstacles}: Comparison): Shown[] {
	return [
		...figures
			.filter(({change}) => change.verdict !== 'not changed')
			.map((one) => line(sentence(one, then), tones[one.change.verdict])),
		...unchanged(figures, then),
		...obstacles.map((why) => line(`Not comparable with ${dayText(then.date)}: ${why}.`, 'warn')),
		...notes.map((note) => line(capital(note), 'dim')),
	];
}

const summaries = {
	changed: 'CHANGED since the last check.',
	perhaps: 'PERHAPS CHANGED since the last check: probe once more.',
	'not changed': 'Not changed since the last check.',
} as const;

/** A check against the last one and the first: the word first, then the sizes. */
export function comparisonLines(
	now: PastCheck,
	earlier: readonly PastCheck[],
	{wireMoves = false}: {readonly wireMoves?: boolean} = {},
): Shown[] {
	const [last, first] = comparisonsOf(now, earlier);
	if (!last) return [];
	const word = gravestOf(last);
	return [
		line(
			word ? summaries[word] : `Not comparable with the last check, of ${dayText(last.then.date)}.`,
			word ? tones[word] : 'warn',
		),
		...linesOfComparison(last),
		...(wireMoves && word && word !== 'not changed'
			? [line('Likely first: the wire, stiff or exposed as it is, relaxing or moving with the season.')]
			: []),
		...(first ? [line('Against the first check:', 'strong'), ...linesOfComparison(first)] : []),
	];
}
