import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import type {BigFigure, Countdown} from '../../../source/pages/instruments/figure.js';
import {bigText} from '../../../source/screens/instruments/big-text.js';
import {countdownPicture, figurePicture} from '../../../source/screens/instruments/figure-picture.js';
import {expectToFit, inAscii, onScreen, textOf, usualRooms} from '../../helpers/instruments.js';

const characters = [...'0123456789.,:+-±%°'];
/** Invented. */
const reading: BigFigure = {
	kind: 'figure',
	text: '+8.5',
	unit: '%',
	side: 'out',
	note: 'inner limit 3.0 out',
	caption: 'The reading is 8.5 % out.',
};
const down: Countdown = {kind: 'countdown', seconds: 3, ofSeconds: 5, note: 'Keep still.', caption: '3 s left.'};

const anyFigure = fc.record({
	kind: fc.constant('figure' as const),
	text: fc.oneof(
		fc.constant(''),
		fc.double({min: -199, max: 199, noNaN: true}).map((value) => value.toFixed(2)),
	),
	unit: fc.constantFrom('', '%', 'g', 'mm', '°'),
	side: fc.constantFrom(undefined, 'out', 'in', 'LEFT high'),
	note: fc.constantFrom(undefined, 'inner limit 3.0 out', 'allowed ± 0.20 °'),
	caption: fc.constant('In words.'),
});
const anyCountdown = fc.record({
	kind: fc.constant('countdown' as const),
	seconds: fc.integer({min: 0, max: 60}),
	ofSeconds: fc.integer({min: 1, max: 60}),
	note: fc.constantFrom(undefined, 'Keep still.'),
	caption: fc.constant('In words.'),
});

describe('Large characters', () => {
	it.each([3, 5] as const)('are all different at %d rows, and each even in width', (rows) => {
		const drawn = characters.map((character) => bigText(character, {rows, unicode: true}));
		expect(new Set(drawn.map((lines) => lines.join('\n'))).size).toBe(characters.length);
		for (const lines of drawn) {
			expect(lines).toHaveLength(rows);
			expect(new Set(lines.map((line) => stringWidth(line))).size).toBe(1);
			expect(lines.join('')).toMatch(/[▀▄█]/);
			expect(lines.join('')).toMatch(/^[▀▄█ ]*$/);
		}
	});

	it('differ by two squares or more where they are digits, all but nought and eight by their middle alone', () => {
		const dots = (digit: string) => [...bigText(digit, {rows: 5, unicode: true}).join('')].map((cell) => cell === '█');
		const digits = characters.slice(0, 10).map(dots);
		const near = digits.flatMap((one, index) =>
			digits.slice(0, index).flatMap((other, before) =>
				// A square is two cells wide.
				one.filter((cell, place) => cell !== other[place]).length < 4 ? [[before, index]] : [],
			),
		);
		expect(near).toEqual([[0, 8]]);
	});

	it('are plain in one row and in ASCII, and leave a unit small at the foot', () => {
		expect(bigText('+8.5', {rows: 1, unicode: true})).toEqual(['+8.5']);
		expect(bigText('+8.5', {rows: 5, unicode: false})).toEqual(['+8.5']);
		const lines = bigText('2mm', {rows: 3, unicode: true});
		expect(lines.map((line) => line.includes('mm'))).toEqual([false, false, true]);
	});
});

describe('A figure across the bench', () => {
	it('stays within any room', () => {
		// Before something is typed there is nothing to read.
		expectToFit(anyFigure, figurePicture, ({text}) => text !== '');
	});

	it('is five rows high where there is room, three beside something else, one where there is none', () => {
		const heightIn = (columns: number, rows: number) =>
			figurePicture(reading, {columns, rows}, onScreen).filter(({text}) => /[▀▄█]/.test(text)).length;
		expect([heightIn(76, 11), heightIn(100, 24), heightIn(76, 4), heightIn(38, 5), heightIn(20, 3)]).toEqual([
			5, 5, 3, 3, 0,
		]);
	});

	it('has its unit, side and what it stands against beside it, in every usual room', () => {
		for (const room of usualRooms)
			for (const look of [onScreen, inAscii]) {
				const text = textOf(figurePicture(reading, room, look)).join('\n');
				for (const said of ['% out', 'inner limit 3.0 out']) expect(text).toContain(said);
				if (!look.unicode) expect(text).toContain('+8.5');
			}
	});
});

describe('A countdown', () => {
	it('stays within any room', () => {
		expectToFit(anyCountdown, countdownPicture);
	});

	it('has a bar as long as the time that is left', () => {
		const barOf = (seconds: number) =>
			textOf(countdownPicture({...down, seconds}, {columns: 76, rows: 11}, inAscii))
				.at(-1)
				?.trim() ?? '';
		const whole = barOf(5).length;
		expect([5, 4, 3, 2, 1, 0].map((seconds) => barOf(seconds).split('#').length - 1)).toEqual(
			[5, 4, 3, 2, 1, 0].map((seconds) => (seconds / 5) * whole),
		);
		expect(new Set([5, 3, 0].map((seconds) => barOf(seconds).length)).size).toBe(1);
	});
});
