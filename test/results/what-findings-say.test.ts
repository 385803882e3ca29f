import {describe, expect, it} from 'vitest';
import {findingsOf} from '../../source/results/diagnose.js';
import type {Document} from '../../source/results/document.js';
import {figuresOf} from '../../source/results/figures.js';
import {worded} from '../../source/words/finding-text.js';
import {documentWith, example} from './example.js';

// Each finding shows what was found with its limits, at the places where it holds and at no other. The readings are
// invented so that a figure can be seen in them: three rounds alike, centre and width as written.

const finding = (code: string, document: Document) => {
	const found = findingsOf(document, figuresOf(document)).find((one) => one.code === code);
	if (!found) throw new Error(`no ${code} in this document`);
	return worded(found);
};

/** The numbers in what is found, in their order. */
const numbersOf = (code: string, document: Document): readonly string[] =>
	finding(code, document).found.match(/\d+(?:\.\d+)?/g) ?? [];

const level = (leftRightDeg: readonly number[], frontBackDeg: readonly number[]) => ({
	stepDeg: 0.05,
	leftRightDeg: [...leftRightDeg],
	frontBackDeg: [...frontBackDeg],
});
const across = (tiltDeg: number) => level([tiltDeg, -tiltDeg], [0, 0]);

/** Shares that the tilt makes, to the digits that are printed: worked out by the figures, held to the page elsewhere. */
const sharesOf = (document: Document): string[] =>
	figuresOf(document).probe.map(({tiltSharePct}) => Math.abs(tiltSharePct ?? 0).toFixed(2));

describe('A deck that is not level', () => {
	it('is told with share and allowed share at each radius, and with what the pull would be without it', () => {
		const document = documentWith({pull: 1, band: 1}, {pull: 1, band: 1}, {level: across(0.4)});
		const [inner, outer] = sharesOf(document);
		// Uncertain by 1.96·100·tan(0.05°/√24) = 0.035 %. The tilt pulls in: without it the arm pulls out by so much more.
		expect([inner, outer]).toEqual(['0.62', '0.69']);
		expect(numbersOf('not-level', document)).toEqual(
			[['0.62', '0.03', '68'], ['0.69', '0.03', '136'], ['0.5'], ['1.6', '68'], ['1.7', '136']].flat(),
		);
	});

	it('is told at the one radius where the tilt makes too much', () => {
		// 0.3° make three quarters of the above: 0.46 % at the inner radius, 0.52 % at the outer one.
		const document = documentWith({pull: 1, band: 1}, {pull: 1, band: 1}, {level: across(0.3)});
		expect(sharesOf(document)).toEqual(['0.46', '0.52']);
		expect(finding('not-level', document).places).toEqual(['outer']);
		expect(numbersOf('not-level', document).slice(0, 3)).toEqual(['0.52', '0.03', '136']);
	});

	it('says nothing of a pull without it where no radius has figures', () => {
		const document = documentWith({pull: 18, band: 8}, {pull: 18, band: 8}, {level: across(0.4)});
		expect(numbersOf('not-level', document)).toHaveLength(7);
	});

	it('says what the pull would be only at the radius that has figures', () => {
		const document = documentWith({pull: 18, band: 8}, {pull: 1, band: 1}, {level: across(0.4)});
		expect(numbersOf('not-level', document).slice(6)).toEqual(['0.5', '1.7', '136']);
	});
});

describe('A tilt that explains the pull', () => {
	it('is told with pull, limit and share where the pull is not good', () => {
		// 1.5° make 2.31 % at the inner and 2.58 % at the outer radius, toward the spindle.
		const document = documentWith({pull: -2.5, band: 1}, {pull: -1.5, band: 1}, {level: across(1.5)});
		expect(sharesOf(document)).toEqual(['2.31', '2.58']);
		expect(numbersOf('tilt-explains', document)).toEqual(['2.50', '0.04', '68', '2', '2.31', '0.03', '68']);
	});
});

describe('A pull with friction', () => {
	it('is told at the radius that has both, and says how fine bias can be set', () => {
		const document = documentWith({pull: 5, band: 7}, {pull: 3, band: 1});
		expect(numbersOf('pull-and-friction', document)).toEqual(['5.00', '0.04', '68', '4', '7.00', '0.08', '68', '6']);
		expect(finding('pull-and-friction', document).next).toContain('± 3.5 %');
	});
});

describe('A pull at both ends', () => {
	it('is constant only on one side, though a leaning deck may hide that it changes sides', () => {
		// Leaning back by 6°: without the tilt −3.0 and −3.9 %, less than a percent apart.
		const lean = {level: level([0, 0], [6.2, -6.2])};
		const codes = (document: Document) => findingsOf(document, figuresOf(document)).map(({code}) => code);
		const sides = documentWith({pull: 2.1, band: 1}, {pull: -2.1, band: 1}, lean);
		const [inner = 0, outer = 0] = figuresOf(sides).probe.map(({tiltSharePct}) => tiltSharePct ?? 0);
		expect(Math.abs(2.1 - inner - (-2.1 - outer))).toBeLessThan(1);
		expect(codes(sides)).not.toContain('constant-pull');
		expect(codes(documentWith({pull: -2.1, band: 1}, {pull: -2.1, band: 1}))).toContain('constant-pull');
	});

	it('that changes is told with its change, half the good limit, and its neutral place where there is one', () => {
		const spring = documentWith({pull: 3, band: 1}, {pull: 2, band: 1});
		expect(numbersOf('spring-pull', spring)).toEqual(['3.00', '0.04', '68', '2.00', '0.04', '136', '1.0', '1']);
		// As much out at 68 mm as in at 136 mm: neutral half-way in angle, near the mean radius, 102 mm.
		const crossing = documentWith({pull: 3, band: 1}, {pull: -3, band: 1});
		expect(numbersOf('spring-pull', crossing).slice(6)).toEqual(['6.0', '1', '102']);
		const runaway = documentWith({pull: -3, band: 1}, {pull: 3, band: 1});
		expect(numbersOf('runaway-pull', runaway).slice(6)).toEqual(['6.0', '1', '102']);
	});
});

describe('What is not decided', () => {
	const open = documentWith({pull: 2, band: 3}, {pull: 1, band: 1});
	const openIn = (document: Document) =>
		findingsOf(document, figuresOf(document)).flatMap((one) => (one.code === 'undecided' ? one.values.open : []));

	it('is named with its figures, radius by radius, and the limit it may pass', () => {
		expect(numbersOf('undecided', open)).toEqual(
			[
				['2.00', '0.04', '68', '2'],
				['3.00', '0.08', '68', '3'],
			].flat(),
		);
	});

	it('has one way on for each figure', () => {
		expect(openIn(open)).toMatchObject([
			{figure: 'pull', at: {radiusMm: 68}, wanted: {finerStep: true}},
			{figure: 'band', at: {radiusMm: 68}, wanted: {finerStep: true}},
		]);
	});

	it('wants the rounds taken again where they do not agree', () => {
		// Two rounds alike and one 4 % off.
		const [inner, outer] = open.probe;
		if (!inner || !outer) throw new Error('there are two radii');
		const rounds = [
			{innerLimit: 0, outerLimit: 2},
			{innerLimit: 0, outerLimit: 2},
			{innerLimit: 4, outerLimit: 6},
		];
		const apart = openIn({...open, probe: [{...inner, rounds}, outer]});
		expect(apart).toContainEqual(
			expect.objectContaining({figure: 'pull', at: expect.objectContaining({radiusMm: 68}), wanted: 'agreement'}),
		);
		for (const {wanted} of apart) expect(wanted).toBe('agreement');
	});

	it('of the worked example is the inner hold band alone', () => {
		expect(numbersOf('undecided', example())).toEqual(['5.9', '0.4', '68', '6']);
		expect(openIn(example())).toMatchObject([{figure: 'band', at: {radiusMm: 68}, wanted: {onLimit: true}}]);
	});
});

describe('A sound arm', () => {
	it('is told with pulls, bands and their limits', () => {
		const document = documentWith({pull: 1, band: 1}, {pull: 1.5, band: 2}, {limits: {pullGoodPct: 3.5}});
		expect(numbersOf('sound', document)).toEqual(
			[
				['1.00', '0.04', '68'],
				['1.50', '0.04', '136'],
				['3.5', '4'],
				['1.00', '0.08', '68'],
				['2.00', '0.08', '136'],
				['3', '6'],
			].flat(),
		);
	});
});
