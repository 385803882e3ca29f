import {degrees, radians} from './angles.js';
import type {ArmGeometry} from './geometry.js';

/** Both radii at which the cartridge stands tangent to the groove, in mm, smaller first. */
export type NullRadii = readonly [innerMm: number, outerMm: number];
/** Radii of the first and the last groove, in mm. */
export type Grooves = {readonly innermostMm: number; readonly outermostMm: number};
/** An arm in plan with the offset angle of its head. */
export type LaidOutArm = ArmGeometry & {readonly offsetDeg: number};

/** Two radii by their half sum and their product; their signs and sizes are the caller's business. */
const pairOf = (halfSum: number, product: number): NullRadii => {
	const half = Math.sqrt(halfSum ** 2 - product);
	return [halfSum - half, halfSum + half];
};

/**
 * Null radii of Loefgren A, which are Baerwald's too: the error over the radius, 1 − S/r + P/r² (S sum, P product of
 * the null radii), is equally large at both ends of the record and between the nulls.
 * E. Loefgren, Akust. Z., Nov 1938; H. G. Baerwald, J. SMPE, Dec 1941. The closed form is derived from that aim.
 */
export function loefgrenANullsMm({innermostMm, outermostMm}: Grooves): NullRadii {
	const near = 1 + Math.SQRT1_2;
	const far = 1 - Math.SQRT1_2;
	const twice = 2 * innermostMm * outermostMm;
	return [twice / (near * outermostMm + far * innermostMm), twice / (far * outermostMm + near * innermostMm)];
}

/**
 * Null radii of Loefgren B: the offset of A, and the overhang that makes the mean square of the error over the radius
 * least. With the offset held it is not the least that both together could reach.
 * E. Loefgren, Akust. Z., Nov 1938; the rule is from memory, the closed form derived from it.
 */
export function loefgrenBNullsMm(grooves: Grooves): NullRadii {
	const [inner, outer] = loefgrenANullsMm(grooves);
	const halfSum = (inner + outer) / 2;
	const difference = (power: number): number => grooves.innermostMm ** -power - grooves.outermostMm ** -power;
	// The mean square takes both signs into account, so the error has two zeros and the root is real.
	return pairOf(halfSum, (3 * (halfSum * difference(2) - difference(1))) / difference(3));
}

/**
 * Null radii after Stevenson, null at the innermost groove (from memory): one null at the innermost groove, and the error over the radius as large at the outermost
 * groove as between the nulls. J. K. Stevenson, "Pickup Arm Design", Wireless World, May and June 1966; the rule is from
 * memory, the closed form derived from it.
 */
export function stevensonANullsMm({innermostMm, outermostMm}: Grooves): NullRadii {
	const share = 2 * (Math.SQRT2 - 1);
	return [innermostMm, 1 / (1 / innermostMm - share * (1 / innermostMm - 1 / outermostMm))];
}

/** The published layouts, by the names that the trade calls them. */
export const layouts = [
	{name: 'Loefgren A', nullsMm: loefgrenANullsMm},
	{name: 'Loefgren B', nullsMm: loefgrenBNullsMm},
	{name: 'Stevenson', nullsMm: stevensonANullsMm},
] as const satisfies readonly {readonly name: string; readonly nullsMm: (grooves: Grooves) => NullRadii}[];

/**
 * The arm of an effective length in mm that is tangent at two radii in mm, in either order: D² = L² − P and
 * sin(offset) = S/2L (S sum, P product of the radii), by the law of cosines at the stylus, whose angle at a null is
 * 90° − offset. Null where no such arm can be.
 */
export function armFromNulls(effectiveLengthMm: number, [one, other]: readonly [number, number]): LaidOutArm | null {
	const square = effectiveLengthMm ** 2 - one * other;
	const sine = (one + other) / (2 * effectiveLengthMm);
	if (square <= 0 || sine > 1) return null;
	return {effectiveLengthMm, pivotDistanceMm: Math.sqrt(square), offsetDeg: degrees(Math.asin(sine))};
}

/**
 * The other null radius in mm, from effective length in mm, offset angle in degrees and one null radius in mm:
 * 2·L·sin(offset) less that one. Zero or negative for an arm that is tangent at one radius only.
 */
export const otherNullMm = (effectiveLengthMm: number, offsetDeg: number, nullMm: number): number =>
	2 * effectiveLengthMm * Math.sin(radians(offsetDeg)) - nullMm;

/**
 * The arm of an effective length in mm whose head is offset by an angle in degrees and tangent at a radius in mm: by
 * the law of cosines, D² = L² − r·(2·L·sin(offset) − r). There always is one; it may fall short of the spindle.
 */
export const armFromOffset = (effectiveLengthMm: number, offsetDeg: number, nullMm: number): LaidOutArm => ({
	effectiveLengthMm,
	pivotDistanceMm: Math.sqrt(
		Math.max(0, effectiveLengthMm ** 2 - nullMm * otherNullMm(effectiveLengthMm, offsetDeg, nullMm)),
	),
	offsetDeg,
});
