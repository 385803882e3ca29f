import type {BiasProblem} from '../../measures/bias-fit.js';
import {isAbove, isAtMost} from '../../measures/compare.js';
import {clockDeg, clockText, leverShare} from '../../measures/lever.js';
import {type LeverFit, leastExplained, leverFit, unexplainedPct} from '../../measures/lever-fit.js';
import {skatingFraction} from '../../measures/skating.js';
import {biasDeviceOf} from '../../procedure/bias-devices.js';
import {onRadii} from '../../procedure/bias-on.js';
import type {Facts} from '../../procedure/facts.js';
import {radiusOf} from '../../procedure/places.js';
import {type Figures, isMeasured} from '../../results/figures.js';
import {words} from '../../words/index.js';
import {type LeverAt, line, type Shown} from '../shown-lines.js';
import {worthwhilePct} from './advice.js';

/** A weighted lever is read by the clock, a thread by its angle to the bias pin. */
type Reads = 'clock' | 'angle';

/** How lever or thread stood at each radius, in degrees of the clock face or between thread and bias pin. */
function anglesOf(facts: Facts): readonly LeverAt[] {
	const {reads} = biasDeviceOf(facts);
	if (reads === undefined) return [];
	return onRadii(facts).flatMap(({place, radiusMm}) => {
		const radius = radiusOf(place);
		const deg =
			reads === 'clock' ? clockDeg(facts.text(`bias-clock-${radius}`) ?? '') : facts.number(`bias-angle-${radius}`);
		return deg === undefined ? [] : [{radiusMm, clockDeg: deg}];
	});
}

/** Raising the weight turns the lever toward 12 o'clock: back on the right half of the face, on on the left. */
const isRaised = (byDeg: number, deg: number): boolean => (deg % 360 < 180 ? byDeg < 0 : byDeg > 0);

/**
 * The smallest change of the bias between two radii that can be told, in percent: the friction floor, or what the
 * uncertainty of the pulls leaves open. The change is made of four pulls, with the bias on and off at both radii, and
 * independent uncertainties add as squares (JCGM 100:2008 5.1.2): √4 times that of one.
 */
export function leastChangePct({bias, probe}: Pick<Figures, 'bias' | 'probe'>): number {
	const pullPct = Math.max(0, ...probe.filter(isMeasured).map(({pullUncertaintyPct}) => pullUncertaintyPct));
	return Math.max(bias?.fit?.frictionFloorPct ?? 0, Math.sqrt(4) * pullPct);
}

const partsOfMost = (sizes: readonly number[]): number[] => sizes.map((size) => size / Math.max(...sizes));

/** What skating asks for at each bias radius, as part of the most. */
const askedShares = ({arm, bias}: BiasProblem): number[] =>
	partsOfMost(bias.map(({radiusMm}) => Math.abs(skatingFraction(arm, radiusMm))));

/** Whether the lever lets act what skating asks for, radius by radius, as far as can be told. */
function followsSkating(problem: BiasProblem, anglesDeg: readonly number[], leastPct: number): boolean {
	const asked = askedShares(problem);
	const mostPct = Math.max(...problem.bias.map(({pct}) => Math.abs(pct)));
	return partsOfMost(anglesDeg.map(leverShare)).every((share, index) =>
		isAtMost(Math.abs(share - (asked[index] ?? 0)) * mostPct, leastPct),
	);
}

type LeverOf = {
	readonly problem: BiasProblem;
	readonly facts: Facts;
	/** A change of bias between radii smaller than this cannot be told, in percent. */
	readonly leastChangePct: number;
	/** The setting was chosen, so nothing is to be done now. */
	readonly isKept?: boolean;
	/** What is smaller than this friction hides, in percent; undefined where no setting was worked out. */
	readonly hiddenPct?: number | undefined;
};

/** What lever or thread do to the bias over the record, and what another place of the pulley would gain. */
export function leverLines({
	problem,
	facts,
	leastChangePct: leastPct,
	isKept = false,
	hiddenPct = 0,
}: LeverOf): Shown[] {
	const {reads} = biasDeviceOf(facts);
	const places = anglesOf(facts);
	if (reads === undefined || places.length === 0) return [];
	const stands = standsOf(places, reads);
	const anglesDeg = problem.bias.flatMap(
		({radiusMm}) => places.find((one) => one.radiusMm === radiusMm)?.clockDeg ?? [],
	);
	if (anglesDeg.length < problem.bias.length) return [stands];
	const fit = leverFit(problem, anglesDeg);
	const doubt = leverDoubt(problem, anglesDeg, reads, leastPct);
	const askedShare = Math.min(...askedShares(problem));
	// What another place would gain is worked out from the angles: of no use where they do not explain the readings.
	const isAlike = doubt.length === 0 && followsSkating(problem, anglesDeg, leastPct);
	return [
		stands,
		...(fit ? [line(words.bias.lever.weightThatActs({reads, shares: fit.shares, askedShare}))] : []),
		...doubt,
		...(fit && doubt.length === 0
			? [gains({fit, firstDeg: places[0]?.clockDeg ?? 90, reads, isKept, isAlike, hiddenPct})]
			: []),
	];
}

const standsOf = (places: readonly LeverAt[], reads: Reads): Shown =>
	reads === 'clock'
		? {
				kind: 'lever',
				places,
				caption: words.bias.lever.leverStands({
					places: places.map(({radiusMm, clockDeg: deg}) => ({radiusMm, clock: clockText(deg)})),
				}),
			}
		: line(words.bias.lever.threadStands({places: places.map(({radiusMm, clockDeg: deg}) => ({radiusMm, deg}))}));

/** One sentence where the measured bias changes otherwise between radii than lever or thread would make it. */
function leverDoubt(problem: BiasProblem, anglesDeg: readonly number[], reads: Reads, leastPct: number): Shown[] {
	const change = leastExplained(problem.bias, anglesDeg);
	const openPct = Math.hypot(leastPct, change?.openPct ?? 0);
	if (!change || !isAbove(unexplainedPct(change), openPct)) return [];
	return [line(words.bias.lever.doubt({...change, reads, openPct}), 'warn')];
}

type GainsOf = {
	readonly fit: LeverFit;
	/** Where it stands at the first radius that was read. */
	readonly firstDeg: number;
	readonly reads: Reads;
	readonly isKept: boolean;
	/** The lever does what skating asks for, as far as can be told. */
	readonly isAlike: boolean;
	readonly hiddenPct: number;
};

function gains({fit: {nowPct, turned, heldPct}, firstDeg, reads, isKept, isAlike, hiddenPct}: GainsOf): Shown {
	const isWorth = (worstPct: number) => isAbove(nowPct - worstPct, worthwhilePct);
	if (isWorth(turned.worstPct) || isWorth(heldPct))
		return line(
			words.bias.lever.gain({
				reads,
				nowPct,
				isKept,
				isHidden: isAtMost(nowPct, hiddenPct),
				turned: isWorth(turned.worstPct) ? {...turned, isRaised: isRaised(turned.byDeg, firstDeg)} : undefined,
				heldPct: isWorth(heldPct) ? heldPct : undefined,
			}),
		);
	return line(isAlike ? words.bias.lever.gainsNothing : words.bias.lever.leavesLeast({nowPct}), 'aside');
}
