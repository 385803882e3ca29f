import type {BiasProblem} from '../../measures/bias-fit.js';
import {isAbove, isAtMost} from '../../measures/compare.js';
import {leverShare} from '../../measures/lever.js';
import {type LeverChange, leastExplained, unexplainedPct} from '../../measures/lever-change.js';
import {skatingFraction} from '../../measures/skating.js';
import {type Figures, isMeasured} from '../../results/figures.js';
import {plainNumber} from '../../words/wording.js';
import {line, type Shown} from '../shown-lines.js';

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
export const askedShares = ({arm, bias}: BiasProblem): number[] =>
	partsOfMost(bias.map(({radiusMm}) => Math.abs(skatingFraction(arm, radiusMm))));

/** Whether the lever lets act what skating asks for, radius by radius, as far as can be told. */
export function followsSkating(problem: BiasProblem, anglesDeg: readonly number[], leastPct: number): boolean {
	const asked = askedShares(problem);
	const mostPct = Math.max(...problem.bias.map(({pct}) => Math.abs(pct)));
	return partsOfMost(anglesDeg.map(leverShare)).every((share, index) =>
		isAtMost(Math.abs(share - (asked[index] ?? 0)) * mostPct, leastPct),
	);
}

type DoubtOf = {
	readonly problem: BiasProblem;
	readonly anglesDeg: readonly number[];
	readonly reads: 'clock' | 'angle';
	readonly leastChangePct: number;
};

/** One sentence where the measured bias changes otherwise between radii than lever or thread would make it. */
export function leverDoubt({problem, anglesDeg, reads, leastChangePct: leastPct}: DoubtOf): Shown[] {
	const change = leastExplained(problem.bias, anglesDeg);
	const openPct = Math.hypot(leastPct, change?.openPct ?? 0);
	if (!change || !isAbove(unexplainedPct(change), openPct)) return [];
	return [line(doubtText(change, reads, openPct), 'warn')];
}

/** A change in words; less than the last digit shown is none. */
function moves(pct: number): string {
	const size = Math.abs(pct).toFixed(1);
	if (Number(size) === 0) return 'stay as it is';
	return `${pct > 0 ? 'grow' : 'fall'} by ${size} %`;
}

function doubtText(
	{fromMm, toMm, measuredPct, expectedPct}: LeverChange,
	reads: 'clock' | 'angle',
	openPct: number,
): string {
	const name = reads === 'clock' ? 'The lever' : 'The thread';
	const part = name.toLowerCase();
	return `${name} as read does not explain the bias: from ${plainNumber(fromMm)} to ${plainNumber(toMm)} mm ${part} would make it ${moves(expectedPct)}, but the readings make it ${moves(measuredPct)} (friction and reading leave ${openPct.toFixed(1)} % open); read ${part} and limits again before pulley or thread is moved.`;
}
