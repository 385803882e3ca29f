export type WallShare = {readonly inner: number; readonly outer: number};

/**
 * Share of the load on each groove wall under a side pull. Walls stand at 45° (IEC 60098:2020 6.1); a pull toward
 * the spindle loads the inner wall, which is the left channel (6.2.1).
 */
export const wallShares = (sidePullPct: number): WallShare => ({
	inner: (1 - sidePullPct / 100) / 2,
	outer: (1 + sidePullPct / 100) / 2,
});

/**
 * Force that the groove walls give along the radius, in the unit of the force handed in: a leftover torque (over the
 * effective length) over the cosine of the angle between groove tangent and the line stylus–pivot. Without bias that is
 * drag times the tangent of the angle, where the torque alone is drag times its sine. Resolution of forces at the
 * stylus (OpenStax University Physics vol. 1, 5.6).
 *
 * @param fraction sine of that angle
 */
export const wallForce = (leftoverForce: number, fraction: number): number =>
	leftoverForce / Math.sqrt(1 - fraction ** 2);
