/** Which reading stands in which row. Row 0 is the axis at the bottom; the plot has rows 1 to its height. */
export type CurveScale = {
	readonly height: number;
	/** From row to row, in percent. */
	readonly stepPct: number;
	/** A whole row, which may lie outside the plot. */
	readonly rowOf: (pct: number) => number;
	/** The reading in the middle of a row. */
	readonly pctAt: (row: number) => number;
};

// Every second row has a number: these give 2, 2.5, 3, 4, 5, 6, 8 and 10. Finer than half a percent no arm is read.
const steps = [0.1, 1, 10, 100, 1000, 1e4, 1e5]
	.flatMap((decade) => [1, 1.25, 1.5, 2, 2.5, 3, 4, 5].map((one) => Number((one * decade).toPrecision(3))))
	.filter((step) => step >= 0.25);

/**
 * The finest scale that holds all readings. Zero is on it where that costs nothing, or where it is nearer to the
 * readings than a third of what they span; then it is the axis, unless readings lie below it.
 */
export function curveScale(pcts: readonly number[], height: number): CurveScale {
	const [least, most] = [Math.min(...pcts), Math.max(...pcts)];
	const isZeroNear = Math.max(least, -most) <= (most - least) / 3;
	const [low, high] = isZeroNear ? [Math.min(0, least), Math.max(0, most)] : [least, most];
	for (const stepPct of steps) {
		const [bottom, top] = [Math.round(low / stepPct), Math.round(high / stepPct)];
		if (bottom >= 0 && top <= height) return scaleFrom(0, stepPct, height);
		const spare = height - 1 - (top - bottom);
		const isZeroMissed = isZeroNear && bottom >= 0;
		if (spare >= 0 && !isZeroMissed) return scaleFrom(bottom - Math.floor(spare / 2) - 1, stepPct, height);
	}
	return scaleFrom(0, steps.at(-1) ?? 1, height);
}

const scaleFrom = (axis: number, stepPct: number, height: number): CurveScale => ({
	height,
	stepPct,
	rowOf: (pct) => Math.round(pct / stepPct) - axis,
	pctAt: (row) => (row + axis) * stepPct,
});
