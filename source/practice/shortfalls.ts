import {lessonArms} from './arms.js';
import type {FigureTally} from './coverage.js';
import type {Proof, Way, WayTally} from './proof.js';

/** What a proof must reach. */
export const bars = {
	/** Share of stated 95 % intervals that hold the truth, at least, in every way. */
	holding: 0.93,
	/** Share of arms beyond the limits that are called good: less than this. */
	wronglyGood: 0.01,
	/** Share of probes that name the lesson, at least: a finding that asks two 95 % intervals at once can't promise more. */
	lesson: 0.95 ** 2,
	/** With fewer arms a bar may be missed by chance. */
	arms: 200,
} as const;

export const holdingShare = ({holding, intervals}: FigureTally): number => (intervals === 0 ? 1 : holding / intervals);

/** How often the lesson of an arm was named, in all ways together. */
export function lessonTotal({lessons}: Proof, id: string): {readonly named: number; readonly of: number} {
	const own = lessons.filter(({arm}) => arm.id === id);
	const sum = (count: (one: (typeof own)[number]) => number) => own.reduce((all, one) => all + count(one), 0);
	return {named: sum(({named}) => named), of: sum((one) => one.of)};
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** How a way of probing is named in a sentence. */
export const wayText = ({rounds, stepPct, nudgeSteps}: Way): string =>
	`${rounds} rounds, step ${stepPct} %, nudge ${(nudgeSteps * stepPct).toFixed(1)} %`;

function shortWay({way, tally}: WayTally): string[] {
	const narrow = (['pull', 'band'] as const)
		.filter((figure) => holdingShare(tally[figure]) < bars.holding)
		.map((figure) => `${wayText(way)}: the interval of the ${figure} holds in ${percent(holdingShare(tally[figure]))}`);
	const wrong = tally.beyondCalledGood / Math.max(1, tally.beyond);
	return wrong < bars.wronglyGood
		? narrow
		: [...narrow, `${wayText(way)}: ${percent(wrong)} of the arms beyond the limits are called good`];
}

/** Where a proof falls short of what it must reach, a sentence each without its full stop; empty when it holds. */
export const shortfalls = (proof: Proof): string[] => [
	...proof.ways.flatMap(shortWay),
	...lessonArms.flatMap(({id, finding}) => {
		const {named, of} = lessonTotal(proof, id);
		return named < bars.lesson * of ? [`${id}: ${finding} is named in ${named} of ${of}`] : [];
	}),
];
