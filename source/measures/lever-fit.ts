import limits from '../../shared/limits.json' with {type: 'json'};
import {radians} from './angles.js';
import {type BiasProblem, biasFit, type ForceAt} from './bias-fit.js';
import {leverShare} from './lever.js';

/** What a lever, or the angle of a thread, costs and what another one would gain; worst leftovers in percent. */
export type LeverFit = {
	/** Least and most of the weight that acts over the radii. */
	readonly shares: readonly [number, number];
	/** At the best setting, as it stands. */
	readonly nowPct: number;
	/** Turned by so many degrees at every radius, as another length of thread would: the best such turn. */
	readonly turned: {readonly byDeg: number; readonly worstPct: number};
	/** If it let all of its weight act at every radius. */
	readonly heldPct: number;
};

const turnsDeg = Array.from({length: 25}, (_, index) => (index - 12) * 5);

/** Below this share of the weight the reading says nothing about what a whole share would do. */
const leastShare = 0.2;

const scaled = (problem: BiasProblem, by: (index: number) => number): number | undefined =>
	biasFit({...problem, bias: problem.bias.map((one, index) => ({...one, pct: one.pct * by(index)}))})?.worstAfterPct;

/**
 * How the place of the lever shapes the bias over the record: each measured bias is scaled by the share of the weight
 * that would act, all else as measured. Angles in degrees, one for each bias radius of the problem, from a direction in
 * which nothing acts. Undefined where there is no fit, or nearly nothing of the weight acts somewhere.
 */
export function leverFit(problem: BiasProblem, anglesDeg: readonly number[]): LeverFit | undefined {
	const shares = anglesDeg.map(leverShare);
	if (shares.length !== problem.bias.length || shares.some((share) => share < leastShare)) return;
	const turnedBy = (deg: number) =>
		scaled(problem, (index) => leverShare((anglesDeg[index] ?? 0) + deg) / (shares[index] ?? 1));
	const nowPct = turnedBy(0);
	const heldPct = scaled(problem, (index) => 1 / (shares[index] ?? 1));
	if (nowPct === undefined || heldPct === undefined) return;
	const turned = turnsDeg
		.map((byDeg) => ({byDeg, worstPct: turnedBy(byDeg) ?? Number.POSITIVE_INFINITY}))
		.reduce((best, one) =>
			one.worstPct < best.worstPct - 1e-9 ||
			(one.worstPct < best.worstPct + 1e-9 && Math.abs(one.byDeg) < Math.abs(best.byDeg))
				? one
				: best,
		);
	return {shares: [Math.min(...shares), Math.max(...shares)], nowPct, turned, heldPct};
}

/** How the bias changes from one radius to another: as measured, and as the lever would have it; in percent. */
export type LeverChange = {
	readonly fromMm: number;
	readonly toMm: number;
	readonly measuredPct: number;
	readonly expectedPct: number;
	/** What reading the angles by eye leaves open of the expected change. */
	readonly openPct: number;
};

/** By how much a change differs from what the lever would make of it, in percent. */
export const unexplainedPct = ({measuredPct, expectedPct}: LeverChange): number => Math.abs(measuredPct - expectedPct);

/**
 * The change of bias between two radii that a lever, or the angle of a thread, explains least. The lever's share of the
 * weight, the sine of its angle (`leverShare`), is scaled to all measured bias at once by least squares. Of an angle
 * that is off by a little, the share is off by its cosine times that (JCGM 100:2008 5.1.3), and the two ends add as
 * squares. One angle in degrees for each radius; undefined with fewer than two radii, or where nothing of the weight
 * acts anywhere.
 */
export function leastExplained(bias: readonly ForceAt[], anglesDeg: readonly number[]): LeverChange | undefined {
	const square = anglesDeg.reduce((sum, deg) => sum + leverShare(deg) ** 2, 0);
	if (bias.length < 2 || anglesDeg.length !== bias.length || square === 0) return;
	const scale = bias.reduce((sum, {pct}, index) => sum + pct * leverShare(anglesDeg[index] ?? 0), 0) / square;
	const ends = bias.map(({radiusMm, pct}, index) => {
		const deg = anglesDeg[index] ?? 0;
		const openPct = scale * Math.cos(radians(deg)) * radians(limits.leverReadDeg.value);
		return {radiusMm, pct, expectedPct: scale * leverShare(deg), openPct};
	});
	const changes = ends.flatMap((from, index) =>
		ends.slice(index + 1).map((to) => ({
			fromMm: from.radiusMm,
			toMm: to.radiusMm,
			measuredPct: to.pct - from.pct,
			expectedPct: to.expectedPct - from.expectedPct,
			openPct: Math.hypot(from.openPct, to.openPct),
		})),
	);
	return changes.reduce((worst, one) => (unexplainedPct(one) > unexplainedPct(worst) ? one : worst));
}
