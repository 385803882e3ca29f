import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import {clockText} from '../../../source/measures/lever.js';
import type {LeverAt, Shown} from '../../../source/pages/shown-lines.js';
import {plainText} from '../../../source/plain/ask.js';
import {rowsOf} from '../../../source/screens/arrange.js';
import {leverPicture as leverRows} from '../../../source/screens/instruments/lever-picture.js';
import {expectToFit, inAscii, onScreen, textOf} from '../../helpers/instruments.js';

const leverPicture = (lever: Extract<Shown, {kind: 'lever'}>, columns: number, unicode: boolean): string[] =>
	textOf(leverRows(lever, {columns, rows: 7}, unicode ? onScreen : inAscii));

const leverOf = (...places: readonly LeverAt[]): Extract<Shown, {kind: 'lever'}> => ({
	kind: 'lever',
	places,
	caption: 'In words.',
});
const at = (radiusMm: number, clockDeg: number): LeverAt => ({radiusMm, clockDeg});

const anyPlaces = fc.array(
	fc.record({
		radiusMm: fc.double({min: 55, max: 155, noNaN: true}),
		clockDeg: fc.double({min: 0, max: 360, noNaN: true}),
	}),
	{minLength: 1, maxLength: 6},
);

/** Row and column of a mark on the face, which ends where the list begins. */
function placeOf(picture: readonly string[], mark: string): {row: number; column: number} | undefined {
	const faces = picture.map((row) => row.slice(0, 17));
	const row = faces.findIndex((text) => text.includes(mark));
	return row < 0 ? undefined : {row, column: faces[row]?.indexOf(mark) ?? -1};
}

describe('The lever on its clock face', () => {
	it('stays within any room', () => {
		expectToFit(
			anyPlaces.map((places) => leverOf(...places)),
			leverRows,
		);
	});

	it('has seven rows and at most 40 columns, and is never wider than its window', () => {
		fc.assert(
			fc.property(anyPlaces, fc.integer({min: 1, max: 120}), fc.boolean(), (places, width, unicode) => {
				const picture = leverPicture(leverOf(...places), width, unicode);
				for (const row of picture) expect(stringWidth(row)).toBeLessThanOrEqual(Math.min(40, width));
				expect(picture.length).toBeLessThanOrEqual(7);
			}),
		);
	});

	it('holds only ASCII where the terminal has no more', () => {
		fc.assert(
			fc.property(anyPlaces, fc.integer({min: 1, max: 120}), (places, width) => {
				expect(leverPicture(leverOf(...places), width, false).join('')).toMatch(/^[ -~]*$/);
			}),
		);
	});

	it.each([
		[0, -1, 0],
		[30, -1, 1],
		[90, 0, 1],
		[120, 1, 1],
		[180, 1, 0],
		[225, 1, -1],
		[270, 0, -1],
		[300, -1, -1],
	])('points %d degrees from 12 o’clock clockwise, row %d and column %d from the pivot', (clockDeg, down, right) => {
		for (const [unicode, pivotMark] of [
			[true, '◉'],
			[false, 'o'],
		] as const) {
			const picture = leverPicture(leverOf(at(136, clockDeg)), 38, unicode);
			const [pivot, tip] = [placeOf(picture, pivotMark), placeOf(picture, 'a')];
			expect(Math.sign((tip?.row ?? Number.NaN) - (pivot?.row ?? Number.NaN))).toBe(down);
			expect(Math.sign((tip?.column ?? Number.NaN) - (pivot?.column ?? Number.NaN))).toBe(right);
		}
	});

	it('lists every radius with the time at which the lever stands, with room for a face or without', () => {
		fc.assert(
			fc.property(anyPlaces, fc.constantFrom(20, 34, 38, 78), (places, width) => {
				const text = leverPicture(leverOf(...places), width, true).join('\n');
				for (const {radiusMm, clockDeg} of places)
					expect(text.replaceAll(/ +/g, ' ')).toContain(`${Number(radiusMm.toFixed(1))} mm ${clockText(clockDeg)}`);
			}),
		);
	});

	it('shows the letters of all three radii side by side where the lever does not move', () => {
		for (const [clockDeg, letters] of [
			[90, 'abc'],
			[270, 'cba'],
			[0, 'abc'],
		] as const) {
			const places = [136, 98, 68].map((radiusMm) => at(radiusMm, clockDeg));
			expect(placeOf(leverPicture(leverOf(...places), 38, true), letters)).toBeDefined();
		}
	});

	it('is nothing without a radius', () => {
		expect(leverPicture(leverOf(), 38, true)).toEqual([]);
	});

	it('is a sentence for a screen reader and in plain lines', () => {
		const lever = leverOf(at(136, 270));
		expect(rowsOf([lever], 78, {color: false, unicode: true, screenReader: true})).toEqual([
			{text: 'In words.', tone: 'plain'},
		]);
		expect(plainText(lever)).toBe('In words.');
	});
});
