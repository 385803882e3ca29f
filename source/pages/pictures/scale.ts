import type {Zone} from '../../measures/verdict.js';

/** What has a limit: where a figure is good, and where it is usable. */
export type LimitZone = Exclude<Zone, 'beyond'>;

/** The values of an axis, from one end to the other. */
export type Axis = {readonly low: number; readonly high: number};

/** Where a value stands on an axis that lies straight from one place to another. */
export function placesOn({low, high}: Axis, [from, to]: readonly [number, number]): (value: number) => number {
	const span = high - low || 1;
	return (value) => from + ((value - low) / span) * (to - from);
}

const roundSteps = [0.01, 0.1, 1, 10, 100, 1000, 1e4, 1e5].flatMap((decade) => [1, 2, 5].map((one) => one * decade));

/** Round numbers on an axis, at most so many steps apart. */
export function ticksOn({low, high}: Axis, mostSteps: number): number[] {
	const step = roundSteps.find((one) => (high - low) / one <= mostSteps) ?? high - low;
	const first = Math.ceil(low / step - 1e-9);
	const last = Math.floor(high / step + 1e-9);
	return Array.from({length: Math.max(0, last - first + 1)}, (_, index) =>
		Number(((first + index) * step).toPrecision(9)),
	);
}

/**
 * An upright axis in percent of tracking force, positive toward the rim. It is cut into rows, for those who draw in
 * them: row 0 is its foot, the others stand above it. All values of the picture lie on it.
 */
export type ForceAxis = Axis & {
	/** Rows above the foot. */
	readonly rows: number;
	/** From row to row, in percent. */
	readonly stepPct: number;
	/** The nearest row. */
	readonly rowOf: (pct: number) => number;
	/** The rows that have a number, zero among them. */
	readonly ticks: readonly {readonly row: number; readonly pct: number}[];
};

// Every second row has a number: these give 2, 2.5, 3, 4, 5, 6, 8 and 10. Finer than half a percent no arm is read.
const rowSteps = [0.1, 1, 10, 100, 1000, 1e4, 1e5]
	.flatMap((decade) => [1, 1.25, 1.5, 2, 2.5, 3, 4, 5].map((one) => Number((one * decade).toPrecision(3))))
	.filter((step) => step >= 0.25);

/**
 * The finest axis that holds all values. Zero is on it where that costs nothing, or where it is nearer to the values
 * than a third of what they span; then it is the foot, unless values lie below it.
 */
export function forceAxis(pcts: readonly number[], rows: number): ForceAxis {
	const [least, most] = [Math.min(...pcts), Math.max(...pcts)];
	const {foot, stepPct} = footAndStep(least, most, rows);
	return {
		low: Math.min(least, foot * stepPct),
		high: Math.max(most, (foot + rows) * stepPct),
		rows,
		stepPct,
		rowOf: (pct) => Math.round(pct / stepPct) - foot,
		ticks: Array.from({length: rows + 1}, (_, row) => ({row, pct: Number(((row + foot) * stepPct).toFixed(2))})).filter(
			({row}) => (row + foot) % 2 === 0,
		),
	};
}

function footAndStep(least: number, most: number, rows: number): {readonly foot: number; readonly stepPct: number} {
	const isZeroNear = Math.max(least, -most) <= (most - least) / 3;
	const [low, high] = isZeroNear ? [Math.min(0, least), Math.max(0, most)] : [least, most];
	for (const stepPct of rowSteps) {
		const [bottom, top] = [Math.round(low / stepPct), Math.round(high / stepPct)];
		if (bottom >= 0 && top <= rows) return {foot: 0, stepPct};
		const spare = rows - 1 - (top - bottom);
		const isZeroMissed = isZeroNear && bottom >= 0;
		if (spare >= 0 && !isZeroMissed) return {foot: bottom - Math.floor(spare / 2) - 1, stepPct};
	}
	return {foot: 0, stepPct: rowSteps.at(-1) ?? 1};
}
