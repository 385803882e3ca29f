import {type BiasProblem, biasFit} from './bias-fit.js';
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
