import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import {wantedReadingPct} from '../../source/measures/skating.js';
import {plainText} from '../../source/plain/ask.js';
import {rowsOf} from '../../source/screens/body.js';
import {curvePicture} from '../../source/screens/curve-picture.js';
import {anyCurve, at, type Curve, nineInch, pctOfRow, placesOf, plotOf, underhung} from '../helpers/curves.js';
import {words} from '../helpers/said.js';

describe('The curve over the record', () => {
	it('is never wider than its window, nor taller than its plot, axis, radii and two lines of legend', () => {
		fc.assert(
			fc.property(
				anyCurve,
				fc.integer({min: 4, max: 130}),
				fc.boolean(),
				fc.integer({min: 4, max: 20}),
				(curve, width, unicode, height) => {
					const picture = curvePicture(curve, width, unicode, height);
					for (const row of picture) expect(stringWidth(row)).toBeLessThanOrEqual(width);
					expect(picture.length).toBeLessThanOrEqual(height + 4);
				},
			),
		);
	});

	it('leaves room for the question: 11 rows in 78 columns, 9 in 38', () => {
		for (const unicode of [true, false]) {
			expect(curvePicture(nineInch(), 78, unicode)).toHaveLength(11);
			expect(curvePicture(nineInch(), 38, unicode)).toHaveLength(9);
			expect(curvePicture(underhung, 78, unicode)).toHaveLength(11);
			expect(curvePicture(underhung, 38, unicode)).toHaveLength(9);
		}
	});

	it('holds only ASCII where the terminal has no more', () => {
		fc.assert(
			fc.property(anyCurve, fc.integer({min: 20, max: 130}), (curve, width) => {
				expect(curvePicture(curve, width, false).join('')).toMatch(/^[ -~]*$/);
			}),
		);
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
					// The axis is drawn like the line; a reading may stand on it, the line does not here.
					const line = placesOf(plot.slice(0, -1), '▁─▔').filter(({column}) => column === point?.column);
					expect(line).toHaveLength(1);
					expect(Math.sign((line[0]?.row ?? 0) - (point?.row ?? 0))).toBe(way);
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
		const line = inColumn('▁─▔')[0]?.row ?? Number.NaN;
		const strokes = inColumn('│').map(({row}) => row);
		expect(strokes).toEqual(Array.from({length: (point?.row ?? 0) - line - 1}, (_, index) => line + 1 + index));
		expect(strokes.length).toBeGreaterThan(0);
	});

	it('lays readings over the own pull, the own pull over the line, and the line over the band', () => {
		const wantedPct = wantedReadingPct({effectiveLengthMm: 233, pivotDistanceMm: 215.4}, 0.3, 100);
		const marks = (curve: Curve) => plotOf(curvePicture(curve, 78, true)).join('');
		expect(marks(nineInch([at(100, wantedPct)], [at(100, wantedPct)]))).toContain('●');
		expect(marks(nineInch([at(100, wantedPct)], [at(100, wantedPct)]))).not.toContain('○');
		expect(marks(nineInch([], [at(100, wantedPct)]))).toContain('○');
		for (const column of placesOf(plotOf(curvePicture(nineInch(), 78, true)), '░').map((one) => one.column))
			expect(placesOf(plotOf(curvePicture(nineInch(), 78, true)), '▁─▔').some((one) => one.column === column)).toBe(
				true,
			);
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
		expect(placesOf(plotOf(picture).slice(zero + 1, -1), '▁─▔').length).toBeGreaterThan(0);
	});

	it('starts at zero where the own pull is nearly nothing', () => {
		const picture = curvePicture(nineInch(undefined, [at(68, 0.5), at(136, -0.25)]), 78, true);
		expect(picture.find((row) => row.includes('└'))).toMatch(/^ *0%└.*○.*○/);
	});

	it('names what is drawn, and nothing else', () => {
		const {marks, up} = words.pictures.curve;
		const legend = (curve: Curve, width: number) => curvePicture(curve, width, true).at(-1);
		expect(legend(nineInch([], []), 78)).toBe(`─ ${marks.wanted.brief}  ░ ${marks.band.brief}  ${up}`);
		expect(legend(nineInch([]), 78)).toContain(`○ ${marks.own.brief}`);
		expect(legend(nineInch([]), 78)).not.toContain(marks.measured.brief);
		expect(legend(nineInch(), 78)).toContain(`● ${marks.measured.brief}`);
	});

	it('gives way to its sentence where the arm reaches no part of the record', () => {
		const nowhere: Curve = {...nineInch([]), wanted: []};
		expect(curvePicture(nowhere, 78, true)).toEqual([]);
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
