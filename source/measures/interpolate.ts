export type Point = {readonly x: number; readonly y: number};

/** The straight line from point to point, level outside them; NaN without any point. */
export function interpolated(points: readonly Point[], x: number): number {
	const sorted = points.toSorted((one, other) => one.x - other.x);
	const after = sorted.findIndex((point) => point.x >= x);
	const right = sorted[after] ?? sorted.at(-1);
	const left = sorted[after - 1] ?? right;
	if (!left || !right) return Number.NaN;
	if (right.x === left.x) return right.y;
	return left.y + ((right.y - left.y) * (x - left.x)) / (right.x - left.x);
}
