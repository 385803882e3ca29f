import {describe, expect, it} from 'vitest';
import {dotCanvas} from '../../../source/screens/instruments/dot-canvas.js';

/** One cell with the dots at these places. */
function cellOf(unicode: boolean, ...dots: readonly (readonly [x: number, y: number])[]): string {
	const canvas = dotCanvas(1, 1);
	for (const [x, y] of dots) canvas.dot(x, y);
	return canvas.lines(unicode).join('\n');
}

describe('A canvas of dots', () => {
	// Names of the characters in the Unicode chart U+2800: 'BRAILLE PATTERN DOTS-1' and so on.
	it.each([
		['1', 0, 0, 0x2801],
		['2', 0, 1, 0x2802],
		['3', 0, 2, 0x2804],
		['4', 1, 0, 0x2808],
		['5', 1, 1, 0x2810],
		['6', 1, 2, 0x2820],
		['7', 0, 3, 0x2840],
		['8', 1, 3, 0x2880],
	])('draws dot %s at column %d, row %d', (_, x, y, code) => {
		expect(cellOf(true, [x, y])).toBe(String.fromCodePoint(code));
	});

	it('joins the dots of a cell, and leaves a cell without any blank', () => {
		const all = [0, 1].flatMap((x) => [0, 1, 2, 3].map((y) => [x, y] as const));
		expect(cellOf(true, ...all, [0, 0])).toBe('\u28ff');
		expect(cellOf(true)).toBe(' ');
	});

	it('takes the plain character that comes nearest', () => {
		const column = (x: number) => [0, 1, 2, 3].map((y) => [x, y] as const);
		const row = (y: number) => [0, 1].map((x) => [x, y] as const);
		expect(cellOf(false, ...column(0))).toBe('|');
		expect(cellOf(false, ...column(1))).toBe('|');
		expect(cellOf(false, ...row(0))).toBe("'");
		expect(cellOf(false, ...row(1))).toBe('-');
		expect(cellOf(false, ...row(3))).toBe('.');
		expect(cellOf(false, [1, 0], [1, 1], [0, 2], [0, 3])).toBe('/');
		expect(cellOf(false, [0, 0], [0, 1], [1, 2], [1, 3])).toBe('\\');
		expect(cellOf(false)).toBe(' ');
	});

	it('leaves out dots beside it, and brings marks to its edge over the dots there', () => {
		const canvas = dotCanvas(3, 2);
		for (const [x, y] of [
			[-1, 0],
			[6, 0],
			[0, -1],
			[0, 8],
			[Number.NaN, 0],
		] as const)
			canvas.dot(x, y);
		expect(canvas.lines(true)).toEqual(['   ', '   ']);
		canvas.dot(5, 7);
		canvas.mark(50, 50, '#');
		canvas.mark(-50, -50, 'o');
		expect(canvas.lines(true)).toEqual(['o  ', '  #']);
	});
});
