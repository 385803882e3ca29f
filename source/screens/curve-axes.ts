import type {Across, Curve} from './curve-plot.js';
import type {CurveScale} from './curve-scale.js';

/** Every second row has a number, zero among them. */
export function numberAt(row: number, {pctAt, stepPct}: CurveScale): string {
	const pct = pctAt(row);
	return Math.round(pct / stepPct) % 2 === 0 ? `${Number(pct.toFixed(2))}%` : '';
}

/** Radii in round numbers, as many as have room for their numbers. */
export function ticksMm({columns, fromMm, toMm}: Across): number[] {
	const every = [10, 20, 40, 100, 200, 500].find((one) => one * (columns - 1) >= 6 * (toMm - fromMm)) ?? 1000;
	const first = Math.ceil(fromMm / every);
	return Array.from({length: Math.max(0, Math.floor(toMm / every) - first + 1)}, (_, index) => (first + index) * every);
}

/** The numbers under the axis. One is left out where it would seem to belong to what stands there already. */
export function radiiLine(
	{leastRadiusMm}: Curve,
	over: Across,
	ticks: readonly number[],
	margin: number,
	mark: string,
): string {
	const cells = Array.from({length: margin + 1 + over.columns}, () => ' ');
	const write = (text: string, start: number, space = 1): boolean => {
		const around = cells.slice(Math.max(0, start - space), start + text.length + space);
		if (start < 0 || start + text.length > cells.length || around.some((cell) => cell !== ' ')) return false;
		cells.splice(start, text.length, ...text);
		return true;
	};
	if (leastRadiusMm !== null && leastRadiusMm >= over.fromMm && leastRadiusMm <= over.toMm) {
		const at = margin + 1 + over.columnOf(leastRadiusMm);
		write(`${mark} least`, at) || write(`least ${mark}`, at - 6) || write(mark, at);
	}
	for (const tick of ticks) {
		const text = String(tick);
		write(text, margin + 1 + over.columnOf(tick) - Math.floor(text.length / 2), 2);
	}
	write('mm', 0);
	return cells.join('');
}
