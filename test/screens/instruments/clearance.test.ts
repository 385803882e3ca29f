import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Clearance} from '../../../source/pages/instruments/clearance.js';
import {clearancePicture} from '../../../source/screens/instruments/clearance-picture.js';
import {cellsOf, expectToFit, inAscii, onScreen, textOf, usualRooms} from '../../helpers/instruments.js';
import {words} from '../../helpers/said.js';

const said = words.instruments.clearance;

/** Invented heights. */
const high: Clearance = {
	kind: 'clearance',
	stylusMm: 5.6,
	stylusWindowMm: [5, 6],
	guard: {depthMm: 1.3, windowMm: [3.7, 4.7]},
	isMatOn: false,
	caption: 'In words.',
};
const anyClearance: fc.Arbitrary<Clearance> = fc
	.record({
		stylusMm: fc.option(fc.double({min: 0, max: 12, noNaN: true}), {nil: undefined}),
		lowMm: fc.double({min: 1, max: 8, noNaN: true}),
		depthMm: fc.option(fc.double({min: 0, max: 4, noNaN: true}), {nil: undefined}),
		isMatOn: fc.boolean(),
	})
	.map(({lowMm, depthMm, ...rest}) => ({
		...rest,
		kind: 'clearance',
		stylusWindowMm: [lowMm, lowMm + 1],
		guard: depthMm === undefined ? undefined : {depthMm, windowMm: [lowMm - depthMm, lowMm + 1 - depthMm]},
		caption: 'In words.',
	}));

describe('The clearance from the side', () => {
	it('stays within any room', () => {
		expectToFit(anyClearance, clearancePicture);
	});

	it('has each height in its window to scale, with the ends numbered, in every usual room', () => {
		for (const room of usualRooms)
			for (const [look, point] of [
				[onScreen, '●'],
				[inAscii, '#'],
			] as const) {
				const rows = clearancePicture(high, room, look);
				const text = textOf(rows);
				expect(text[0]).toMatch(/5\.0 \[.*\] 6\.0 mm .*5\.6$/);
				expect(text[1]).toMatch(/3\.7 \[.*\] 4\.7 mm .*4\.3$/);
				for (const [row, part] of [
					[0, 0.6],
					[1, 0.6],
				] as const) {
					const [left, right] = [text[row]?.indexOf('[') ?? 0, text[row]?.indexOf(']') ?? 0];
					const at = cellsOf(rows.slice(0, 2), point).find((cell) => cell.row === row);
					expect(at?.column).toBe(Math.round(left + part * (right - left)));
				}
			}
	});

	it('shows a height outside its window outside of the brackets, on its side', () => {
		const [above, below] = [6.3, 4.8].map((stylusMm) =>
			clearancePicture({...high, stylusMm}, {columns: 76, rows: 11}, onScreen),
		);
		expect(textOf(above ?? [])[0]).toMatch(/\[─+\] +● +6\.0 mm .*✗ 6\.3$/);
		expect(textOf(below ?? [])[0]).toMatch(/5\.0 +● +\[─+\] 6\.0 mm .*✗ 4\.8$/);
	});

	it('has the guard below the stylus and above the surface, each named with its height', () => {
		for (const room of usualRooms) {
			const rows = textOf(clearancePicture(high, room, onScreen));
			const rowOf = (name: string) => rows.findLastIndex((row) => row.includes(name));
			const stylus = rowOf(said.named({name: said.stylus, mm: 5.6, decimals: 1}));
			const guard = rowOf(said.named({name: said.guard, mm: 4.3, decimals: 1}));
			const platter = rowOf(said.platter);
			expect(rows[stylus]).toContain('▼');
			expect(rows[guard]).toContain('└───┘');
			expect(stylus).toBeGreaterThan(1);
			expect(guard).toBeGreaterThan(stylus);
			expect(platter).toBeGreaterThan(guard);
		}
	});

	it('says whether the surface is the mat or the platter', () => {
		const text = (isMatOn: boolean) =>
			textOf(clearancePicture({...high, isMatOn}, {columns: 76, rows: 11}, onScreen)).at(-1);
		expect(text(true)).toContain(said.mat);
		expect(text(true)).not.toContain(said.platter);
		expect(text(false)).toContain(said.platter);
	});
});
