/** From a value to a place in a picture. */
export type Scale = {readonly low: number; readonly high: number; readonly at: (value: number) => number};

/** A straight scale from the place of the lowest value to the place of the highest one. */
export function scaleOf([low, high]: readonly [number, number], [from, to]: readonly [number, number]): Scale {
	const span = high - low || 1;
	return {low, high, at: (value) => from + ((value - low) / span) * (to - from)};
}

const steps = [1, 2, 5].flatMap((one) => [-2, -1, 0, 1, 2, 3, 4, 5].map((power) => one * 10 ** power));

/** Round numbers within a range, at most so many steps apart. */
export function ticksOf(low: number, high: number, mostSteps: number): number[] {
	const step = steps.toSorted((one, other) => one - other).find((one) => (high - low) / one <= mostSteps) ?? high - low;
	const first = Math.ceil(low / step - 1e-9);
	const last = Math.floor(high / step + 1e-9);
	return Array.from({length: Math.max(0, last - first + 1)}, (_, index) =>
		Number(((first + index) * step).toPrecision(9)),
	);
}

/** The range widened to whole steps of its ticks. */
export function niceRange(low: number, high: number, mostSteps: number): readonly [number, number] {
	const [one = 0, other = 1] = ticksOf(low, Math.max(high, low + 1e-6), mostSteps);
	const step = other - one || 1;
	return [Math.floor(low / step + 1e-9) * step, Math.ceil(high / step - 1e-9) * step];
}

/** A number of an axis with its sign; plus is toward the rim. */
export const signed = (value: number): string => {
	const text = String(Number(Math.abs(value).toFixed(2)));
	if (Number(text) === 0) return '0';
	return `${value < 0 ? '\u2212' : '+'}${text}`;
};
