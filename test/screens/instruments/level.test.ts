import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {LevelScale} from '../../../source/pages/instruments/level.js';
import {levelPicture} from '../../../source/screens/instruments/level-picture.js';
import {cellsOf, expectToFit, inAscii, onScreen, textOf, usualRooms} from '../../helpers/instruments.js';
import {words} from '../../helpers/said.js';

/** Invented. */
const read: LevelScale = {
	kind: 'level',
	axis: 'leftRight',
	firstDeg: 0.35,
	turnedDeg: -0.05,
	tiltDeg: 0.15,
	allowedDeg: 0.2,
	stepDeg: 0.05,
	tone: 'good',
	caption: 'In words.',
};
const lean = fc.option(fc.double({min: -5, max: 5, noNaN: true}), {nil: undefined});
const anyLevel: fc.Arbitrary<LevelScale> = fc.record({
	kind: fc.constant('level' as const),
	axis: fc.constantFrom('leftRight' as const, 'frontBack' as const),
	firstDeg: lean,
	turnedDeg: lean,
	tiltDeg: lean,
	allowedDeg: fc.double({min: 0.05, max: 1, noNaN: true}),
	stepDeg: fc.constantFrom(0.01, 0.05, 0.1),
	tone: fc.constantFrom(undefined, 'good' as const, 'bad' as const),
	caption: fc.constant('In words.'),
});

describe('A level, read both ways round', () => {
	it('stays within any room', () => {
		expectToFit(anyLevel, levelPicture);
	});

	it('has both readings, the tilt and the brackets where the scale says, in every usual room', () => {
		for (const room of usualRooms)
			for (const [look, left, right, zero, tilt] of [
				[onScreen, '├', '┤', '┼', '●'],
				[inAscii, '<', '>', '|', '#'],
			] as const) {
				const rows = levelPicture(read, room, look);
				const at = (mark: string, row: number) =>
					cellsOf(rows.slice(0, row + 1), mark).find((one) => one.row === row)?.column;
				const [from, to] = [at(left, 1) ?? 0, at(right, 1) ?? 0];
				const columnOf = (deg: number) => Math.round(from + ((deg + 0.5) / 1) * (to - from));
				expect(at(zero, 1)).toBe(columnOf(0));
				expect([at('1', 0), at('2', 0), at(tilt, 1)]).toEqual([columnOf(0.35), columnOf(-0.05), columnOf(0.15)]);
				expect([at('[', 1), at(']', 1)]).toEqual([columnOf(-0.2), columnOf(0.2)]);
				expect(textOf(rows)[2]).toMatch(/-0\.5 +-0\.20 +0 +\+0\.20 +\+0\.5/);
			}
	});

	it.each([76, 24])('says how each reading and the tilt lean, and what is allowed, in %i columns', (columns) => {
		const {mark, first, turned, tilt, allowed} = words.instruments.level;
		const text = textOf(levelPicture(read, {columns, rows: 11}, onScreen)).join('\n');
		for (const [name, deg] of [
			[first, 0.35],
			[turned, -0.05],
			[tilt, 0.15],
		] as const)
			expect(text).toContain(mark({name, deg, axis: 'leftRight', decimals: 2}));
		// The brackets of the scale have their numbers.
		if (columns < 60) expect(text).toContain(allowed({deg: 0.2, decimals: 2}));
		else for (const end of ['-0.20', '+0.20']) expect(text).toContain(end);
	});

	it('shows two readings that are the same side by side', () => {
		const rows = levelPicture({...read, turnedDeg: 0.35}, {columns: 76, rows: 11}, onScreen);
		expect(textOf(rows)[0]?.trim()).toBe('12');
	});
});
