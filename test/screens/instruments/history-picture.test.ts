import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Shown} from '../../../source/pages/shown-lines.js';
import {historyPicture as historyRows} from '../../../source/screens/instruments/history-picture.js';
import {expectToFit, inAscii, onScreen, textOf, usualRooms} from '../../helpers/instruments.js';
import {words} from '../../helpers/said.js';

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

const anyHistory: fc.Arbitrary<History> = fc
	.record({
		figures: fc.array(fc.double({min: -30, max: 30, noNaN: true}), {minLength: 1, maxLength: 12}),
		uncertaintyPct: fc.double({min: 0.05, max: 5, noNaN: true}),
		events: fc.array(
			fc.record({
				date: fc.constantFrom('2021-01-04', '2021-06-30', '2022-12-01', '2026-02-02'),
				mark: fc.constantFrom('a', 'b', 'c'),
				label: fc.constantFrom('levelled', 'leads dressed'),
			}),
			{maxLength: 4},
		),
		isBand: fc.boolean(),
	})
	.map(({figures, uncertaintyPct, events, isBand}) => {
		const history = historyOf(isBand ? figures.map(Math.abs) : figures, uncertaintyPct);
		return {...history, events, ...(isBand ? {limitsPct: [3, 6]} : {})};
	});

const historyPicture = (history: History, columns: number, unicode: boolean): string[] =>
	textOf(historyRows(history, {columns, rows: 12}, unicode ? onScreen : inAscii));

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

	it('stays within any room', () => {
		expectToFit(anyHistory, historyRows);
	});

	it('has a picture in every usual room, with its limits named and numbered', () => {
		for (const room of usualRooms)
			for (const look of [onScreen, inAscii]) {
				const text = textOf(historyRows(historyOf([1, -2.5, 3]), room, look)).join('\n');
				expect(text).toContain(look.unicode ? '●' : 'o');
				const limit = look.unicode ? '┄' : '~';
				const told = words.instruments.history.limits({limit, goodPct: 2, usablePct: 4, isTwoSided: true});
				expect(text).toContain(look.unicode ? told : told.replaceAll('±', '+/-'));
			}
	});

	it('marks on the axis when something was done, between the checks about it, and says what', () => {
		// A quarter of the way, and three quarters.
		const events = [
			{date: '2021-07-04', mark: 'a', label: 'levelled'},
			{date: '2022-01-02', mark: 'b', label: 'leads dressed'},
		];
		const rows = historyPicture({...historyOf([1, 2, 3]), events}, 78, true);
		const axis = rows.find((row) => row.includes('└')) ?? '';
		const [first, , last] = pointsIn(rows, '●').map(({column}) => column);
		const at = (part: number) => (first ?? 0) + part * ((last ?? 0) - (first ?? 0));
		expect(Math.abs(axis.indexOf('a') - at(0.25))).toBeLessThanOrEqual(1);
		expect(Math.abs(axis.indexOf('b') - at(0.75))).toBeLessThanOrEqual(1);
		for (const event of events) expect(rows.join('\n')).toContain(words.instruments.history.event(event));
	});

	it('draws the limits that lie where the figure does', () => {
		const dashes = (figures: readonly number[]) =>
			historyPicture(historyOf(figures), 78, true).filter((row) => row.includes('┄┄┄')).length;
		expect(dashes([3, 3.5, 3])).toBe(2);
		expect(dashes([-0.2, 0.3, 0.1])).toBe(4);
	});
});
