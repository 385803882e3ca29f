import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {readSigned, type SignedRead} from '../../source/procedure/read-signed.js';
import {frontBack, gaugeSides, leftRight, pushSides} from '../../source/procedure/readings.js';
import {refusalText} from '../../source/words/step-text.js';
import {factsWith} from '../helpers/facts.js';
import {inOrder, words} from '../helpers/said.js';

const value = (one: number) => ({kind: 'value', value: one});
const sideWanted = (size: number) => ({kind: 'side-wanted', size});
const refused = {kind: 'refused', refusal: {id: expect.any(String), values: expect.any(Object)}};
const sentenceOf = (read: SignedRead): string => (read.kind === 'refused' ? refusalText(read.refusal) : '');

const conventions = ['arm-out', 'arm-in', 'hand-out', 'hand-in'] as const;

describe('A reading of the gauge', () => {
	const read = (typed: string, convention = 'arm-out') =>
		readSigned(typed, 'percent', pushSides, factsWith({'gauge-sign': convention}));

	it.each([
		['4 out', 4],
		['4out', 4],
		['out 4', 4],
		['4 OUT', 4],
		['４ ｏｕｔ', 4],
		['4 o', 4],
		['4 outward', 4],
		['4 rim', 4],
		['3 in', -3],
		['3 i', -3],
		['3 inward', -3],
		['3 spindle', -3],
		['+4', 4],
		['-3', -3],
		['\u22123', -3],
		['-3 in', -3],
		['+4 out', 4],
		['4,5 % out', 4.5],
		['0', 0],
		['0 in', 0],
		['-0', 0],
		['2.5o', 2.5],
		['1,5i', -1.5],
		['2.5+', 2.5],
		['1.5 -', -1.5],
		['1.5 % \u2212', -1.5],
		['2.5 out +', 2.5],
	])("'%s' is %d, positive toward the rim", (typed, expected) => {
		expect(read(typed)).toEqual(value(expected));
	});

	it.each(['4', '4.5', '4 %', ' 0,5 '])("'%s' has no direction: it is asked for, never guessed", (typed) => {
		expect(read(typed)).toMatchObject({kind: 'side-wanted'});
	});

	it.each([
		'-3 out',
		'+3 in',
		'3 out -',
		'-3-',
		'3+-',
		'4 in out',
		'out',
		'4 left',
		'4 mm out',
		'',
		'-',
		'in in',
		'4 kg in',
	])("'%s' is refused in one sentence", (typed) => {
		expect(sentenceOf(read(typed))).toMatch(/\.$/);
	});

	it('shows both directions in a refusal', () => {
		expect(read('nonsense')).toMatchObject({refusal: {id: 'not-a-number', values: {sides: ['out', 'in']}}});
		expect(sentenceOf(read('nonsense'))).toMatch(inOrder(words.written.sides.out, words.written.sides.in));
	});

	it('keeps what was typed whole in a refusal, points and all', () => {
		expect(read('1.2.3')).toMatchObject({
			refusal: {id: 'more-than-one-mark', values: {typed: '1.2.3', sides: ['out', 'in']}},
		});
		expect(sentenceOf(read('1.2.3'))).toMatch(inOrder("'1.2.3'", words.written.sides.out, words.written.sides.in));
		// What is wrong, then how to type it; the points in numbers end no sentence.
		expect(sentenceOf(read('1.2.3'))).toMatch(/^(?:(?:[^.]|\.(?=\d))*\.){1,2}$/);
	});

	it("says nothing of the gauge's own sign where a direction counts", () => {
		expect(read('4 in out')).toMatchObject({refusal: {id: 'unit-not-known', values: {sides: ['out', 'in']}}});
	});

	// Convention of the program: positive when the arm pushes toward the rim. A hand that starts the arm pushes against it.
	it.each([
		['arm-out', 4],
		['arm-in', -4],
		['hand-out', -4],
		['hand-in', 4],
	])("on a gauge of kind %s, '+4' is %d", (convention, expected) => {
		expect(read('+4', convention)).toEqual(value(expected));
		expect(read('-4', convention)).toEqual(value(-expected));
	});

	it.each(conventions)("'4 out' says which way the arm pushes, on a gauge of kind %s too", (convention) => {
		expect(read('4 out', convention)).toEqual(value(4));
		expect(read('4 in', convention)).toEqual(value(-4));
	});
});

describe('A reading of the gauge turned end for end, or free of the arm', () => {
	const read = (typed: string, convention: string) =>
		readSigned(typed, 'percent', gaugeSides, factsWith({'gauge-sign': convention}));

	it.each(conventions)("means the gauge's own sign by word and by sign alike, on a gauge of kind %s", (convention) => {
		expect(read('4 plus', convention)).toEqual(read('+4', convention));
		expect(read('4 minus', convention)).toEqual(read('-4', convention));
		expect(read('4', convention)).toEqual(sideWanted(4));
		expect(read('-4 plus', convention)).toEqual(refused);
		expect(read('4 out', convention)).toMatchObject({refusal: {id: 'gauge-sign-counts'}});
		expect(read('nonsense', convention)).toMatchObject({
			refusal: {id: 'not-a-number', values: {sides: ['plus', 'minus']}},
		});
	});
});

describe('A sign that the gauge shows, turned or free of the arm', () => {
	// Kept in the program's sense like any other reading of that gauge, so that its zero is taken off the same way.
	it.each([
		['arm-out', 4],
		['arm-in', -4],
		['hand-out', -4],
		['hand-in', 4],
	])("'+4' on a gauge of kind %s is kept as %d", (convention, kept) => {
		const facts = factsWith({'gauge-sign': convention});
		expect(readSigned('+4', 'percent', gaugeSides, facts)).toEqual(value(kept));
		expect(readSigned('4 minus', 'percent', gaugeSides, facts)).toEqual(value(-kept));
	});
});

describe('A reading of the level', () => {
	it.each([
		['0.1 right', 0.1],
		['0.1 r', 0.1],
		['0.1r', 0.1],
		['0,1l', -0.1],
		['0,1 left', -0.1],
		['l 0.1', -0.1],
		['0.1° left', -0.1],
		['6 min right', 0.1],
		['0', 0],
	])("'%s' tilts by %d°, right side high positive", (typed, expected) => {
		const read = readSigned(typed, 'deg', leftRight, factsWith());
		expect(read.kind === 'value' ? read.value : read).toEqual(expect.closeTo(expected, 12));
	});

	it.each([
		['0.1 back', 0.1],
		['0.1 rear', 0.1],
		['0.1 b', 0.1],
		['0.1b', 0.1],
		['0.1f', -0.1],
		['0.1 front', -0.1],
		['0.1 f', -0.1],
	])("'%s' tilts by %d°, back high positive", (typed, expected) => {
		expect(readSigned(typed, 'deg', frontBack, factsWith())).toEqual(value(expected));
	});

	it.each(['0.1', '+0.1', '-0.1'])("'%s' names no side: a sign says nothing here", (typed) => {
		expect(readSigned(typed, 'deg', leftRight, factsWith())).toEqual(sideWanted(0.1));
	});

	it.each(['-0.1 right', '0.1 back', '0.1 out'])("'%s' is refused", (typed) => {
		expect(readSigned(typed, 'deg', leftRight, factsWith())).toEqual(refused);
	});
});

describe('Any text at all', () => {
	const text = fc.oneof(
		fc.string({unit: 'binary'}),
		fc.string({unit: fc.constantFrom('4', '0', '.', ',', '-', '+', ' ', 'in', 'out', 'o', 'i', 'plus', 'm', '%', 'g')}),
	);

	it('gives a finite value, asks for the side, or gives a sentence', () => {
		fc.assert(
			fc.property(
				text,
				fc.constantFrom(pushSides, gaugeSides, leftRight, frontBack),
				fc.constantFrom(...conventions),
				(typed, sides, convention) => {
					const read = readSigned(typed, 'percent', sides, factsWith({'gauge-sign': convention}));
					if (read.kind === 'refused') expect(refusalText(read.refusal)).toMatch(/\.$/);
					else if (read.kind === 'value') expect(Number.isFinite(read.value) && !Object.is(read.value, -0)).toBe(true);
					else expect(read.size).toBeGreaterThan(0);
				},
			),
			{numRuns: 500},
		);
	});

	it('turns its sign with the gauge', () => {
		fc.assert(
			fc.property(fc.integer({min: -2000, max: 2000}), (hundredths) => {
				const typed = `${hundredths < 0 ? '' : '+'}${hundredths / 100}`;
				const of = (convention: string) => {
					const read = readSigned(typed, 'percent', pushSides, factsWith({'gauge-sign': convention}));
					return read.kind === 'value' ? read.value + 0 : Number.NaN;
				};
				expect(of('arm-in')).toBe(0 - of('arm-out'));
				expect(of('hand-out')).toBe(0 - of('arm-out'));
				expect(of('hand-in')).toBe(of('arm-out'));
			}),
		);
	});
});
