import type {FindingCode} from '../results/diagnose.js';
import type {Said} from '../said.js';
import {type LessonId, lessonArms} from './arms.js';
import type {FigureTally} from './coverage.js';
import type {ProbingWay, Proof, WayTally} from './proof.js';

/** What a proof must reach. */
export const bars = {
	/** Share of stated 95 % intervals that hold the truth, at least, in every way. */
	holding: 0.94,
	/** Share of arms beyond the limits that are called good: less than this. */
	wronglyGood: 0.01,
	/** Share of probes that name the lesson, at least. */
	lesson: 0.95,
	/** With fewer arms a bar may be missed by chance. */
	arms: 200,
} as const;

export const holdingShare = ({holding, intervals}: FigureTally): number => (intervals === 0 ? 1 : holding / intervals);

// The 0.995 quantile of the normal distribution: two-sided 99 %, for more than a hundred shares are looked at together.
const quantile = 2.575829303548901;

/**
 * Interval for the true share behind a counted one, 99 %, after E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209 (from
 * memory).
 */
export function shareInterval(counted: number, of: number): readonly [number, number] {
	if (of === 0) return [0, 1];
	const share = counted / of;
	const scale = 1 + quantile ** 2 / of;
	const middle = (share + quantile ** 2 / (2 * of)) / scale;
	const half = (quantile * Math.sqrt((share * (1 - share)) / of + quantile ** 2 / (4 * of ** 2))) / scale;
	return [middle - half, middle + half];
}

/** How often the lesson of an arm was named, in all ways together. */
export function lessonTotal({lessons}: Proof, id: string): {readonly named: number; readonly of: number} {
	const own = lessons.filter(({arm}) => arm.id === id);
	const sum = (count: (one: (typeof own)[number]) => number) => own.reduce((all, one) => all + count(one), 0);
	return {named: sum(({named}) => named), of: sum((one) => one.of)};
}

/** Where a proof falls short of what it must reach; shares from 0 to 1. */
export type ShortfallValues = {
	'interval-too-narrow': {readonly way: ProbingWay; readonly figure: 'pull' | 'band'; readonly holding: number};
	'called-good': {readonly way: ProbingWay; readonly share: number};
	'lesson-not-named': {
		readonly arm: LessonId;
		readonly finding: FindingCode;
		readonly named: number;
		readonly of: number;
	};
};

type Shortfall = Said<ShortfallValues>;

/** A share counts as too small only where chance does not explain it. */
const isTooSmall = (counted: number, of: number, wanted: number): boolean => shareInterval(counted, of)[1] < wanted;

function shortWay({way, tally}: WayTally): Shortfall[] {
	const narrow = (['pull', 'band'] as const)
		.filter((figure) => isTooSmall(tally[figure].holding, tally[figure].intervals, bars.holding))
		.map((figure): Shortfall => {
			return {id: 'interval-too-narrow', values: {way, figure, holding: holdingShare(tally[figure])}};
		});
	const rightly = tally.beyond - tally.beyondCalledGood;
	return isTooSmall(rightly, tally.beyond, 1 - bars.wronglyGood)
		? [...narrow, {id: 'called-good', values: {way, share: 1 - rightly / tally.beyond}}]
		: narrow;
}

/** Where a proof falls short of what it must reach; empty when it holds. */
export const shortfalls = (proof: Proof): Shortfall[] => [
	...proof.ways.flatMap(shortWay),
	...lessonArms.flatMap(({id, finding}): Shortfall[] => {
		const total = lessonTotal(proof, id);
		return isTooSmall(total.named, total.of, bars.lesson)
			? [{id: 'lesson-not-named', values: {arm: id, finding, ...total}}]
			: [];
	}),
];
