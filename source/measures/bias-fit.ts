import constants from '../../shared/constants.json' with {type: 'json'};
import limits from '../../shared/limits.json' with {type: 'json'};
import {isBelow} from './compare.js';
import {type ArmGeometry, reaches, swingAngleDeg} from './geometry.js';
import {wantedReadingPct} from './skating.js';
import {mean} from './statistics.js';

/** A force at the stylus at a radius, in percent of tracking force, positive toward the rim. */
export type ForceAt = {readonly radiusMm: number; readonly pct: number};

/** The arm's own pull at any radius: straight between the probe radii in swing angle, level outside them. */
export const ownPullAt = (arm: ArmGeometry, probe: readonly ForceAt[], radiusMm: number): number =>
	interpolated(
		probe.map((one) => ({x: swingAngleDeg(arm, one.radiusMm), y: one.pct})),
		swingAngleDeg(arm, radiusMm),
	);

/** What the bias device alone does at any radius: straight between the radii measured, level outside them. */
export const biasAt = (bias: readonly ForceAt[], radiusMm: number): number =>
	interpolated(
		bias.map((one) => ({x: one.radiusMm, y: one.pct})),
		radiusMm,
	);

/** What acts at one radius of the record. */
type Sample = {readonly ownPct: number; readonly biasPct: number; readonly wantedPct: number};

const {from, to, step} = {
	from: limits.recordFromMm.value,
	to: limits.recordToMm.value,
	step: limits.recordStepMm.value,
};

/** The radii over which a bias setting is judged, in mm: 60 to 146 by halves, as far as the arm reaches. */
export const recordRadiiMm = (arm: ArmGeometry): number[] =>
	Array.from({length: Math.round((to - from) / step) + 1}, (_, index) => from + index * step).filter((radiusMm) =>
		reaches(arm, radiusMm),
	);

const leftover = ({ownPct, biasPct, wantedPct}: Sample, factor: number): number =>
	ownPct + factor * biasPct - wantedPct;

const worst = (samples: readonly Sample[], factor: number): number =>
	Math.max(...samples.map((sample) => Math.abs(leftover(sample, factor))));

const rootMeanSquare = (samples: readonly Sample[], factor: number): number =>
	Math.sqrt(mean(samples.map((sample) => leftover(sample, factor) ** 2)));

/** How well a bias device can balance skating over the record; forces in percent of tracking force. */
export type BiasFit = {
	/** How many times the present bias is best; 0 to 5. */
	readonly factor: number;
	readonly worstBeforePct: number;
	readonly worstAfterPct: number;
	/** The worst leftover of the best setting, were the drag as much more or less as it is not known. */
	readonly worstAfterDragPct: number;
	readonly rmsBeforePct: number;
	readonly rmsAfterPct: number;
};

export type BiasProblem = {
	readonly arm: ArmGeometry;
	/** Effective drag. */
	readonly drag: number;
	/** The arm's own pull at the probe radii that have figures: one at least. */
	readonly own: readonly ForceAt[];
	/** The present bias alone: two radii at least. */
	readonly bias: readonly ForceAt[];
};

const samplesOf = ({arm, drag, own, bias}: BiasProblem): Sample[] =>
	recordRadiiMm(arm).map((radiusMm) => ({
		ownPct: ownPullAt(arm, own, radiusMm),
		biasPct: biasAt(bias, radiusMm),
		wantedPct: wantedReadingPct(arm, drag, radiusMm),
	}));

/** Whether a bias device does nothing worth the name at any radius. */
export const isIdle = (bias: readonly ForceAt[]): boolean =>
	bias.every(({pct}) => isBelow(Math.abs(pct), limits.leastBiasPct.value));

/**
 * The factor on the present bias that makes the worst leftover over the record smallest, and what is left before and
 * after. Null with fewer than two radii, with no bias worth the name at any, or for an arm that reaches no part of the
 * record.
 */
export function biasFit(problem: BiasProblem): BiasFit | null {
	const samples = samplesOf(problem);
	if (problem.bias.length < 2 || isIdle(problem.bias) || samples.length === 0) return null;
	const factor = bestFactor(samples);
	return {
		factor,
		worstBeforePct: worst(samples, 1),
		worstAfterPct: worst(samples, factor),
		worstAfterDragPct: Math.max(
			...[-1, 1].map((sign) =>
				worst(samplesOf({...problem, drag: problem.drag + sign * limits.effectiveDragBand.value}), factor),
			),
		),
		rmsBeforePct: rootMeanSquare(samples, 1),
		rmsAfterPct: rootMeanSquare(samples, factor),
	};
}

const mostFactor = limits.mostBiasFactor.value;
// (2/3)^100 of the range is below the last digit of a factor.
const halvings = 100;

/** The worst leftover is convex in the factor, so thirds close in on its bottom; of all within 1e-9 of it, the place nearest 1. */
function bestFactor(samples: readonly Sample[]): number {
	let [low, high] = [0, mostFactor];
	for (let round = 0; round < halvings; round++) {
		const third = (high - low) / 3;
		if (worst(samples, low + third) <= worst(samples, high - third)) high -= third;
		else low += third;
	}
	// Thirds never reach an end of the range, and the bottom may lie there.
	const [bottom = 1] = [(low + high) / 2, 0, mostFactor].sort(
		(one, other) => worst(samples, one) - worst(samples, other),
	);
	const least = worst(samples, bottom);
	const isBottom = (factor: number) => worst(samples, factor) <= least + constants.comparisonSlack.value;
	if (isBottom(1)) return 1;
	let [inside, outside] = [bottom, 1];
	for (let round = 0; round < halvings; round++) {
		const middle = (inside + outside) / 2;
		if (isBottom(middle)) inside = middle;
		else outside = middle;
	}
	return inside;
}

/** The leftover at one radius with a factor on the bias. */
export const leftoverAt = ({arm, drag, own, bias}: BiasProblem, radiusMm: number, factor: number): number =>
	leftover(
		{
			ownPct: ownPullAt(arm, own, radiusMm),
			biasPct: biasAt(bias, radiusMm),
			wantedPct: wantedReadingPct(arm, drag, radiusMm),
		},
		factor,
	);

export type Point = {readonly x: number; readonly y: number};

/** The straight line from point to point, level outside them; NaN without any point. */
export function interpolated(points: readonly Point[], x: number): number {
	const sorted = points.toSorted((one, other) => one.x - other.x);
	const after = sorted.findIndex((point) => point.x >= x);
	const right = sorted[after] ?? sorted.at(-1);
	const left = sorted[after - 1] ?? right;
	if (!left || !right) return Number.NaN;
	if (right.x === left.x) return right.y;
	return left.y + ((right.y - left.y) * (x - left.x)) / (right.x - left.x);
}
