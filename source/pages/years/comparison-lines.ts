import limits from '../../../shared/limits.json' with {type: 'json'};
import type {PastCheck} from '../../check/past-check.js';
import {isAbove} from '../../measures/compare.js';
import {placeLabel} from '../../procedure/places.js';
import {eventLabel} from '../../procedure/steps-since.js';
import {type ComparedFigure, type Comparison, comparisonsOf, gravestOf} from '../../results/years/comparison.js';
import {noteText, obstacleText} from '../../words/results-text.js';
import {forceWithWay, listed, plainNumber} from '../../words/wording.js';
import {line, type Shown, type Tone} from '../shown-lines.js';
import {dayText} from './day-text.js';
import {slopesOf} from './trend-lines.js';

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

/** 'The pull at the inner radius (68 mm) moved 1.4 ± 0.6 % toward the rim since 4 May 2026: changed.' */
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

/** One comparison in sentences: first what changed, then what did not. */
function linesOfComparison({then, figures, notes, obstacles}: Comparison): Shown[] {
	return [
		...figures
			.filter(({change}) => change.verdict !== 'not changed')
			.map((one) => line(sentence(one, then), tones[one.change.verdict])),
		...unchanged(figures, then),
		...obstacles.map((one) => line(obstacleText(one), 'warn')),
		...notes.map((one) => line(noteText(one), 'dim')),
	];
}

const summaries = {
	changed: 'CHANGED since the last check.',
	perhaps: 'PERHAPS CHANGED since the last check: probe once more.',
	'not changed': 'Not changed since the last check.',
} as const;

/** What was done between two checks, where something was. */
const doneLine = ({doneSince}: PastCheck): Shown[] => {
	const label = doneSince === null ? undefined : eventLabel(doneSince);
	return label === undefined
		? []
		: [line(`Done since the last check: ${label}. A new stretch of its history begins here.`)];
};

/**
 * How much of a change the warmer or colder room would make, where the arm is known to go with the temperature and the rooms
 * differ enough.
 */
function temperatureLines(now: PastCheck, then: PastCheck, earlier: readonly PastCheck[]): Shown[] {
	const [warm, before] = [now.measuredWith?.temperatureC ?? null, then.measuredWith?.temperatureC ?? null];
	if (warm === null || before === null || !isAbove(Math.abs(warm - before), limits.otherRoomC.value)) return [];
	return slopesOf(earlier).map(({place, radiusMm, pctPerC}) =>
		line(
			`The room is ${Math.abs(warm - before).toFixed(0)} °C ${warm > before ? 'warmer' : 'colder'}: from its history that alone would move the pull at the ${placeLabel(place)} radius (${plainNumber(radiusMm)} mm) by ${forceWithWay(pctPerC * (warm - before), '%', 1)}.`,
			'dim',
		),
	);
}

/** A check against the last one and the first of its stretch: the word first, then the sizes. */
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
			? [line('Likely first: the wire, stiff or in a free loop as it is, creeps over the seasons.')]
			: []),
		...temperatureLines(now, last.then, earlier),
		...doneLine(now),
		...(first ? [line('Against the first check of this stretch:', 'strong'), ...linesOfComparison(first)] : []),
	];
}
