export type WallShare = {readonly inner: number; readonly outer: number};

/**
 * Share of the load on each groove wall under a side pull. Walls stand at 45° (IEC 60098:2020 6.1); a pull toward
 * the spindle loads the inner wall, which is the left channel (6.2.1).
 */
export const wallShares = (sidePullPct: number): WallShare => ({
	inner: (1 - sidePullPct / 100) / 2,
	outer: (1 + sidePullPct / 100) / 2,
});
