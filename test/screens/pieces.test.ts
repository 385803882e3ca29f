import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import {piecesOf} from '../../source/screens/pieces.js';

describe('A line that is meant differently from cell to cell', () => {
	it('is cut where its spans begin and end, with what lies between them plain', () => {
		expect(
			piecesOf('+8.5 out of 9', [
				{from: 0, to: 4, tone: 'strong'},
				{from: 9, to: 11, tone: 'curve'},
			]),
		).toEqual([
			{text: '+8.5', tone: 'strong', from: 0},
			{text: ' out ', tone: 'plain', from: 4},
			{text: 'of', tone: 'curve', from: 9},
			{text: ' 9', tone: 'plain', from: 11},
		]);
	});

	it('counts in cells: a wide letter takes two, a mark over a letter none', () => {
		expect(piecesOf('漢e\u0301x', [{from: 2, to: 3, tone: 'bad'}])).toEqual([
			{text: '漢', tone: 'plain', from: 0},
			{text: 'e\u0301', tone: 'bad', from: 2},
			{text: 'x', tone: 'plain', from: 3},
		]);
	});

	it('stays the same text, whatever its spans', () => {
		const span = fc.record({from: fc.nat(30), to: fc.nat(30), tone: fc.constantFrom('good' as const, 'bad' as const)});
		fc.assert(
			fc.property(fc.string({unit: 'grapheme', maxLength: 30}), fc.array(span, {maxLength: 4}), (text, spans) => {
				const pieces = piecesOf(text, spans);
				expect(pieces.map((piece) => piece.text).join('')).toBe(text);
				expect(stringWidth(pieces.map((piece) => piece.text).join(''))).toBe(stringWidth(text));
			}),
		);
	});
});
