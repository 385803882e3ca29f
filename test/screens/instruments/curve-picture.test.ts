import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {wantedReadingPct} from '../../../source/measures/skating.js';
import {plainText} from '../../../source/plain/ask.js';
import {rowsOf} from '../../../source/screens/arrange.js';
import {curvePicture as curveRows} from '../../../source/screens/instruments/curve-picture.js';
import {anyCurve, at, type Curve, nineInch, pctOfRow, placesOf, plotOf, underhung} from '../../helpers/curves.js';
import {expectToFit, inAscii, onScreen, textOf} from '../../helpers/instruments.js';
import {words} from '../../helpers/said.js';

/** With as many rows as a small and an ordinary screen leave for it. */
const curvePicture = (curve: Curve, columns: number, unicode: boolean): string[] =>
	textOf(curveRows(curve, {columns, rows: columns < 60 ? 9 : 11}, unicode ? onScreen : inAscii));

/** Rows, from the top, in which a line has dots in a column. */
const linesIn = (plot: readonly string[], column: number | undefined): number[] =>
	plot.flatMap((text, row) => (/[\u2801-\u28ff]/.test([...text][column ?? -1] ?? '') ? [row] : []));

describe('The curve over the record', () => {
	it('stays within any room', () => {
		expectToFit(anyCurve, curveRows);
	});

	it('fills the room it has: 11 rows in 78 columns, 9 in 38', () => {
		for (const unicode of [true, false])
			for (const curve of [nineInch(), underhung]) {
				expect(curvePicture(curve, 78, unicode)).toHaveLength(11);
				expect(curvePicture(curve, 38, unicode)).toHaveLength(9);
			}
	});

	it.each([34, 38, 74, 78, 118])('draws a reading above the wanted one above its line, at %d columns', (width) => {
		fc.assert(
			fc.property(
				fc.constantFrom(-1, 1),
				fc.double({min: 6, max: 20, noNaN: true}),
				fc.integer({min: 64, max: 142}),
				(way, leftoverPct, radiusMm) => {
					const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
					const curve = nineInch([at(radiusMm, wantedReadingPct(arm, 0.3, radiusMm) + way * leftoverPct)], []);
					const plot = plotOf(curvePicture(curve, width, true));
					const [point] = placesOf(plot, '●');
					// The ends of the band lie nearer to the line than so much.
					const lines = linesIn(plot, point?.column);
					expect(lines.length).toBeGreaterThan(0);
					for (const row of lines) expect(Math.sign(row - (point?.row ?? 0))).toBe(way);
				},
			),
		);
	});

	it('draws each reading where the numbers at the side say, to half a row', () => {
		fc.assert(
			fc.property(
				anyCurve,
				fc.integer({min: 55, max: 155}),
				fc.double({min: -60, max: 60, noNaN: true}),
				fc.constantFrom(34, 38, 78, 118),
				(curve, radiusMm, readPct, width) => {
					const picture = curvePicture({...curve, measured: [at(radiusMm, readPct)]}, width, true);
					const points = placesOf(plotOf(picture), '●');
					expect(points.length).toBe(1);
					const {pct, stepPct} = pctOfRow(picture, points[0]?.row ?? Number.NaN);
					// Halves are rounded, and their last digit is a machine's.
					expect(Math.abs(pct - readPct)).toBeLessThanOrEqual(stepPct / 2 + 1e-9);
				},
			),
		);
	});

	it('shows what is left over as a stroke between reading and line', () => {
		const plot = plotOf(curvePicture(nineInch([at(100, 4)], []), 78, true));
		const [point] = placesOf(plot, '●');
		const inColumn = (marks: string) => placesOf(plot, marks).filter(({column}) => column === point?.column);
		const line = Math.max(...linesIn(plot, point?.column).filter((row) => row < (point?.row ?? 0)));
		const strokes = inColumn('│').map(({row}) => row);
		expect(strokes).toEqual(Array.from({length: (point?.row ?? 0) - line - 1}, (_, index) => line + 1 + index));
		expect(strokes.length).toBeGreaterThan(0);
	});

	it('lays readings over the own pull, and the own pull over the line', () => {
		const wantedPct = wantedReadingPct({effectiveLengthMm: 233, pivotDistanceMm: 215.4}, 0.3, 100);
		const marks = (curve: Curve) => plotOf(curvePicture(curve, 78, true)).join('');
		expect(marks(nineInch([at(100, wantedPct)], [at(100, wantedPct)]))).toContain('●');
		expect(marks(nineInch([at(100, wantedPct)], [at(100, wantedPct)]))).not.toContain('○');
		expect(marks(nineInch([], [at(100, wantedPct)]))).toContain('○');
	});

	it('has the wanted line whole from end to end, to a quarter of a row, between the thin ends of its band', () => {
		const curve = nineInch([], []);
		const picture = curvePicture(curve, 78, true);
		const plot = plotOf(picture);
		const from = (picture[0] ?? '').search(/[│┤]/) + 1;
		const radii = picture.find((row) => row.startsWith('mm')) ?? '';
		const column = radii.indexOf('120') + 1;
		for (let place = from; place < 78; place++) expect(linesIn(plot, place).length).toBeGreaterThan(0);
		const wantedPct = wantedReadingPct({effectiveLengthMm: 233, pivotDistanceMm: 215.4}, 0.3, 120);
		const nearest = Math.min(
			...linesIn(plot, column).map((row) => {
				const {pct, stepPct} = pctOfRow(picture, row);
				return Math.abs(pct - wantedPct) / stepPct;
			}),
		);
		expect(nearest).toBeLessThanOrEqual(0.625);
	});

	it('tells what is wanted from what was read by colour too', () => {
		const rows = curveRows(nineInch(), {columns: 78, rows: 11}, onScreen);
		const toneAt = (mark: RegExp) =>
			rows.flatMap(({text, spans = []}) =>
				[...text].flatMap((cell, column) =>
					mark.test(cell) ? [spans.find(({from, to}) => column >= from && column < to)?.tone] : [],
				),
			);
		const plot = (tones: readonly unknown[]) => new Set(tones.filter((tone) => tone !== undefined));
		expect(plot(toneAt(/[\u2801-\u28ff]/))).toEqual(new Set(['curve']));
		expect(plot(toneAt(/●/))).toEqual(new Set(['strong']));
	});

	it('marks the least radius under the axis between the numbers around it, and none on an arm without one', () => {
		for (const [unicode, mark] of [
			[true, '▲'],
			[false, '^'],
		] as const) {
			for (const width of [34, 38, 74, 78, 118]) {
				const radii = curvePicture(nineInch(), width, unicode).find((row) => row.startsWith('mm')) ?? '';
				expect(radii).toContain(`${mark} ${words.pictures.curve.least}`);
				const [before = [], after = []] = radii.split(mark).map((part) => part.match(/\d+/g)?.map(Number));
				expect(before).toContain(80);
				// In a narrow window a long word may take the place of the next number.
				expect(after).toContain(width < 60 ? after[0] : 120);
				// Skating is least at √(233² − 215.4²) = 88.8 mm.
				for (const radiusMm of before) expect(radiusMm).toBeLessThan(88.8);
				for (const radiusMm of after) expect(radiusMm).toBeGreaterThan(88.8);
			}
			expect(curvePicture(underhung, 78, unicode).join('')).not.toContain(mark);
		}
	});

	it('draws zero where readings lie to both sides of it', () => {
		const picture = curvePicture(underhung, 78, true);
		const zero = picture.findIndex((row) => /^ *0%/.test(row));
		expect(zero).toBeGreaterThan(0);
		expect(picture[zero]).toContain('╴ ╴ ╴');
		expect(
			plotOf(picture)
				.slice(zero + 1, -1)
				.join(''),
		).toMatch(/[\u2801-\u28ff]/);
	});

	it('starts at zero where the own pull is nearly nothing', () => {
		const picture = curvePicture(nineInch(undefined, [at(68, 0.5), at(136, -0.25)]), 78, true);
		expect(picture.find((row) => row.includes('└'))).toMatch(/^ *0%└.*○.*○/);
	});

	it('names what is drawn, and nothing else', () => {
		const {marks, up} = words.pictures.curve;
		const legend = (curve: Curve, width: number) => curvePicture(curve, width, true).at(-1);
		expect(legend(nineInch([], []), 78)).toBe(`⠒ ${marks.wanted.brief}  ⠂ ${marks.band.brief}  ${up}`);
		expect(legend(nineInch([]), 78)).toContain(`○ ${marks.own.brief}`);
		expect(legend(nineInch([]), 78)).not.toContain(marks.measured.brief);
		expect(legend(nineInch(), 78)).toContain(`● ${marks.measured.brief}`);
	});

	it('gives way to its sentence where the arm reaches no part of the record', () => {
		const nowhere: Curve = {...nineInch([]), wanted: []};
		expect(curvePicture(nowhere, 78, true)).toEqual(['In words.']);
		expect(rowsOf([nowhere], 78, {color: false, unicode: true, screenReader: false})).toEqual([
			{text: 'In words.', tone: 'plain'},
		]);
	});

	it('is a sentence for a screen reader and in plain lines', () => {
		expect(rowsOf([nineInch()], 78, {color: false, unicode: true, screenReader: true})).toEqual([
			{text: 'In words.', tone: 'plain'},
		]);
		expect(plainText(nineInch())).toBe('In words.');
	});
});
