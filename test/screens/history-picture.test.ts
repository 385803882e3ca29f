import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import type {Shown} from '../../source/pages/shown-lines.js';
import {historyPicture} from '../../source/screens/history-picture.js';
import {words} from '../helpers/said.js';

type History = Extract<Shown, {kind: 'history'}>;

/** Invented half-yearly figures. */
const historyOf = (figures: readonly number[], uncertaintyPct = 0.5): History => ({
	kind: 'history',
	label: 'pull, inner 68 mm',
	points: figures.map((pct, index) => ({
		date: new Date(Date.UTC(2021, 3 + 6 * index, 4)).toISOString().slice(0, 10),
		pct,
		uncertaintyPct,
	})),
	limitsPct: [-4, -2, 2, 4],
	caption: 'In words.',
});

/** Row and column of every check in a picture, from the left. */
const pointsIn = (rows: readonly string[], mark: string) =>
	rows
		.slice(1, -1)
		.flatMap((text, row) => [...text].flatMap((cell, column) => (cell === mark ? [{row, column}] : [])))
		.sort((one, other) => one.column - other.column);

describe('A figure over the years', () => {
	it('goes from left to right by its day, and up where it grows', () => {
		const marks = pointsIn(historyPicture(historyOf([-3, 0, 3]), 78, true), '●');
		expect(marks).toHaveLength(3);
		const [first, second, third] = marks;
		expect(first?.row).toBeGreaterThan(second?.row ?? 0);
		expect(second?.row).toBeGreaterThan(third?.row ?? 0);
		expect(Math.abs((third?.column ?? 0) - 2 * (second?.column ?? 0) + (first?.column ?? 0))).toBeLessThanOrEqual(1);
	});

	it('names its first and last day, and how many checks there are', () => {
		const text = historyPicture(historyOf([1, 2, 3, 4]), 78, true).join('\n');
		expect(text).toContain(words.pictures.history.heading({label: 'pull, inner 68 mm', count: 4}));
		expect(text).toContain('2021-04-04');
		expect(text).toContain('2022-10-04');
	});

	it('is never wider than its room, nor taller than a page, and keeps to ASCII where that is all there is', () => {
		const figure = fc.double({min: -30, max: 30, noNaN: true});
		fc.assert(
			fc.property(
				fc.array(figure, {minLength: 2, maxLength: 12}),
				fc.integer({min: 30, max: 120}),
				fc.double({min: 0.05, max: 5, noNaN: true}),
				(figures, width, uncertaintyPct) => {
					const rows = historyPicture(historyOf(figures, uncertaintyPct), width, false);
					expect(rows.length).toBeLessThanOrEqual(12);
					for (const row of rows) expect(stringWidth(row)).toBeLessThanOrEqual(width);
					expect(rows.join('')).toMatch(/^[\x20-\x7e]*$/);
				},
			),
		);
	});

	it('draws the limits that lie where the figure does', () => {
		const dashes = (figures: readonly number[]) =>
			historyPicture(historyOf(figures), 78, true).filter((row) => row.includes('┄┄┄')).length;
		expect(dashes([3, 3.5, 3])).toBe(2);
		expect(dashes([-0.2, 0.3, 0.1])).toBe(4);
	});
});
