import {lessonArms} from './arms.js';
import type {FigureTally} from './coverage.js';
import type {Proof, Way, WayTally} from './proof.js';

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

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** How a way of probing is named in a sentence. */
export const wayText = ({rounds, stepPct, scatterPct, setAnew}: Way): string =>
	`${rounds} rounds, step ${stepPct} %, scatter ${scatterPct} %, ${setAnew ? 'set anew' : 'not set anew'}`;

/** A share counts as too small only where chance does not explain it. */
const isTooSmall = (counted: number, of: number, wanted: number): boolean => shareInterval(counted, of)[1] < wanted;

function shortWay({way, tally}: WayTally): string[] {
	const narrow = (['pull', 'band'] as const)
		.filter((figure) => isTooSmall(tally[figure].holding, tally[figure].intervals, bars.holding))
		.map((figure) => `${wayText(way)}: the interval of the ${figure} holds in ${percent(holdingShare(tally[figure]))}`);
	const rightly = tally.beyond - tally.beyondCalledGood;
	return isTooSmall(rightly, tally.beyond, 1 - bars.wronglyGood)
		? [
				...narrow,
				`${wayText(way)}: ${percent(1 - rightly / tally.beyond)} of the arms beyond the limits are called good`,
			]
		: narrow;
}

/** Where a proof falls short of what it must reach, a sentence each without its full stop; empty when it holds. */
export const shortfalls = (proof: Proof): string[] => [
	...proof.ways.flatMap(shortWay),
	...lessonArms.flatMap(({id, finding}) => {
		const {named, of} = lessonTotal(proof, id);
		return isTooSmall(named, of, bars.lesson) ? [`${id}: ${finding} is named in ${named} of ${of}`] : [];
	}),
];
