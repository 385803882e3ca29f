import {describe, expect, it} from 'vitest';
import {compute} from '../../source/results/compute.js';
import {parseDocument} from '../../source/results/document.js';
import {worded} from '../../source/words/finding-text.js';

// An invented arm under an invented gauge that carries just the playing force, so that it reads in percent of it. Each
// case stands close on both sides of one rule, worked out by hand.
const [lengthMm, pivotMm] = [233, 215.4];
const [innerMm, outerMm] = [68, 136];

type Limits = readonly [innerLimit: number, outerLimit: number];

const rounds = (limits: readonly Limits[]) => limits.map(([innerLimit, outerLimit]) => ({innerLimit, outerLimit}));

const documentOf = (inner: readonly Limits[], outer: readonly Limits[], more: object = {}) => ({
	arm: {effectiveLengthMm: lengthMm, pivotDistanceMm: pivotMm, loading: 'gravity'},
	gauge: {unit: 'percent', step: 0.1, topOfScale: 20, setAnew: true, zero: 0},
	trackingForce: {playingMn: 20, scaleReadingMn: 20, guard: 'none'},
	probe: [
		{place: 'inner', radiusMm: innerMm, rounds: rounds(inner)},
		{place: 'outer', radiusMm: outerMm, rounds: rounds(outer)},
	],
	...more,
});

const printedOf = (document: object) => {
	const parsed = parseDocument(document);
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
	return compute(parsed.document);
};

const codesOf = (document: object): string[] => printedOf(document).findings.map(({code}) => code);

/** The way outward at a radius, square to the line pivot–stylus; the stylus stands where two circles cross. */
const outwardAt = (radiusMm: number) => {
	const along = (pivotMm ** 2 + radiusMm ** 2 - lengthMm ** 2) / (2 * pivotMm);
	const aside = Math.sqrt(radiusMm ** 2 - along ** 2);
	// The pivot stands at 45°: turned back from there, since a clockwise record plays toward the pivot.
	const half = Math.SQRT1_2;
	const stylus = {x: half * (along + aside), y: half * (along - aside)};
	const pivot = half * pivotMm;
	return {x: -(stylus.y - pivot) / lengthMm, y: (stylus.x - pivot) / lengthMm};
};

const degrees = (tangent: number): number => (Math.atan(tangent) * 180) / Math.PI;

/** A deck so tilted that it makes these shares of the pull, in percent; read twice with a level that has no error. */
const tiltedBy = (innerPct: number, outerPct: number) => {
	const [one, other] = [outwardAt(innerMm), outwardAt(outerMm)];
	// Two equations −100·(x·s_x + y·s_y) = share.
	const determinant = one.x * other.y - one.y * other.x;
	const x = -(innerPct * other.y - outerPct * one.y) / (100 * determinant);
	const y = -(outerPct * one.x - innerPct * other.x) / (100 * determinant);
	const read = (tangent: number) => [degrees(tangent), -degrees(tangent)];
	return {level: {stepDeg: 0.01, leftRightDeg: read(x), frontBackDeg: read(y)}};
};

describe("the ± of the gauge's zero", () => {
	it('stands in the unit of the gauge, as the zero itself', () => {
		// 20 mN play, so 1 mN is 5 %; 1.959964 × 0.05 mN, whatever it is in percent.
		const {zero} = printedOf({
			...documentOf([[0.4, 0.8]], [[0.4, 0.8]]),
			gauge: {unit: 'mN', step: 0.02, topOfScale: 4, setAnew: true, zero: 0.1, zeroUncertainty: 0.05},
		});
		expect(zero).toEqual({
			source: 'stated',
			zero: expect.closeTo(0.1, 12),
			zeroUncertainty: expect.closeTo(0.0979982, 7),
		});
	});

	it('stands in it too where the gauge was turned', () => {
		// Middles 0.6 and −0.4 mN: half the sum is 0.1 mN. One round each: 0.3 % of 20 mN is 0.06 mN assumed, and the step
		// leaves 0.02/√24 mN: variances (0.0036·2)/4 and (0.0004/24)/2.
		const document = documentOf([[0.4, 0.8]], [[0.4, 0.8]]);
		const [inner, outer] = document.probe;
		const {zero} = printedOf({
			...document,
			gauge: {unit: 'mN', step: 0.02, topOfScale: 4, setAnew: true},
			probe: [
				{
					...inner,
					rounds: [...(inner?.rounds ?? []), {innerLimit: -0.2, outerLimit: -0.6, gauge: 'turned'}],
				},
				outer,
			],
		});
		expect(zero).toEqual({
			source: 'turned',
			zero: expect.closeTo(0.1, 12),
			zeroUncertainty: expect.closeTo(1.959964 * Math.sqrt(0.0018 + 0.0004 / 48), 7),
		});
	});
});

describe('a tilt that explains the pull', () => {
	// Pulls of 3 % at both ends, where 2 % is good: without the tilt they are good from a share of 1 % on.
	const pulls: readonly Limits[] = Array(3).fill([2.5, 3.5]);
	const codesWith = (innerPct: number, outerPct: number) =>
		codesOf(documentOf(pulls, pulls, tiltedBy(innerPct, outerPct)));

	it('makes half of it at least: 1.5 % and no less', () => {
		expect(codesWith(1.5, 1.5)).toContain('tilt-explains');
		expect(codesWith(1.49, 1.49)).not.toContain('tilt-explains');
		expect(codesWith(1.49, 1.49)).toContain('not-level');
	});

	it('makes half of it at each radius whose pull is not good', () => {
		expect(codesWith(1.49, 1.6)).not.toContain('tilt-explains');
		expect(codesWith(1.6, 1.49)).not.toContain('tilt-explains');
		// 1.9 % is good: there the tilt need not make half of it.
		const good: readonly Limits[] = Array(3).fill([1.4, 2.4]);
		expect(codesOf(documentOf(good, pulls, tiltedBy(0.6, 1.6)))).toContain('tilt-explains');
	});

	it('leaves an own pull that is good', () => {
		// 4.5 % less 2.4 % is 2.1 %; less 2.6 % it is 1.9 %.
		const strong: readonly Limits[] = Array(3).fill([4, 5]);
		expect(codesOf(documentOf(strong, strong, tiltedBy(2.4, 2.6)))).not.toContain('tilt-explains');
		expect(codesOf(documentOf(strong, strong, tiltedBy(2.6, 2.6)))).toContain('tilt-explains');
	});

	it('is surely a tilt', () => {
		// One reading each way is good to 0.2° only: 1.96·100·tan 0.2° is 0.68 %, on top of the step 0.69 %. Pulls of 1.3 %
		// where 1 % is good: half of that is 0.65 %.
		const weak: readonly Limits[] = Array(3).fill([0.8, 1.8]);
		const codesOnce = (sharePct: number) => {
			const {level} = tiltedBy(sharePct, sharePct);
			const once = {
				...level,
				leftRightDeg: level.leftRightDeg.slice(0, 1),
				frontBackDeg: level.frontBackDeg.slice(0, 1),
			};
			return codesOf(documentOf(weak, weak, {level: once, limits: {pullGoodPct: 1}}));
		};
		expect(codesOnce(0.67)).not.toContain('tilt-explains');
		expect(codesOnce(0.7)).toContain('tilt-explains');
	});

	it('leaves no constant pull to look for', () => {
		expect(codesWith(1.6, 1.6)).not.toContain('constant-pull');
		// The same pulls on a level deck, and where the tilt makes too little of them.
		expect(codesOf(documentOf(pulls, pulls))).toContain('constant-pull');
		expect(codesWith(1.4, 1.4)).toContain('constant-pull');
	});
});

describe('a constant pull', () => {
	// One round each, so ± 0.6 % and more: where 0.5 % is good, none of these is surely good. Half the limit is 0.25 %.
	const codesAt = (inner: number, outer: number) =>
		codesOf(
			documentOf([[inner - 1, inner + 1]], [[outer - 1, outer + 1]], {limits: {pullGoodPct: 0.5, pullUsablePct: 4}}),
		);

	it('goes the same way at both ends', () => {
		expect(codesAt(0.3, 0.1)).toContain('constant-pull');
		expect(codesAt(-0.3, -0.1)).toContain('constant-pull');
		expect(codesAt(0.1, -0.1)).not.toContain('constant-pull');
		expect(codesAt(-0.1, 0.1)).not.toContain('constant-pull');
		// None at all goes no way.
		expect(codesAt(0.2, 0)).not.toContain('constant-pull');
	});

	it('changes by less than half the good limit', () => {
		expect(codesAt(0.4, 0.16)).toContain('constant-pull');
		expect(codesAt(0.4, 0.15)).not.toContain('constant-pull');
	});
});

describe('a deck that is not level', () => {
	const pulls: readonly Limits[] = Array(3).fill([2.5, 3.5]);
	const notLevel = (innerPct: number, outerPct: number, more: object = {}) =>
		printedOf({...documentOf(pulls, pulls, tiltedBy(innerPct, outerPct)), ...more}).findings.find(
			({code}) => code === 'not-level',
		);

	it('is so where the tilt makes more than a quarter of the good limit of 2 %', () => {
		expect(notLevel(0.6, 0.4)?.places).toEqual(['inner']);
		expect(notLevel(0.4, -0.6)?.places).toEqual(['outer']);
		expect(notLevel(0.6, 0.6)?.places).toEqual(['inner', 'outer']);
		expect(notLevel(0.4, 0.4)).toBeUndefined();
	});

	it('is so all over where only the whole tilt is too large', () => {
		// Outward turns by some 18° from one radius to the other: a tilt square to the middle of both makes 100·tan(tilt)·sin 9°
		// at each, in and out; 0.17 % are 0.6° and more.
		expect(notLevel(0.17, -0.17)?.places).toEqual(['inner', 'outer']);
		expect(notLevel(0.1, -0.1)).toBeUndefined();
	});

	it('says how much the tilt makes, and what is left without it', () => {
		const found = notLevel(0.6, 0.8);
		const text = found && worded(found).text;
		expect(text).toMatch(/ 0\.60* % out ±[^;]* 68 mm/);
		expect(text).toMatch(/ 0\.80* % out ±[^;]* 136 mm/);
		// 3 % less each.
		expect(text).toMatch(/ 2\.40* % out [^±;]*\b68 mm/);
		expect(text).toMatch(/ 2\.20* % out [^±;]*\b136 mm/);
	});
});

describe('friction at one end', () => {
	// Spans of 2 and 3.6 % about one middle: 1.6 % apart, where half the good limit of 3 % is 1.5 %.
	const about = (middle: number, ...spans: readonly number[]): Limits[] =>
		spans.map((span) => [middle - span / 2, middle + span / 2]);

	it('is told where the bands surely differ, whether the pulls do or not', () => {
		const narrow = about(1, 2, 2.1, 1.9);
		expect(codesOf(documentOf(narrow, about(1, 3.6, 3.7, 3.5)))).toContain('friction-local');
		expect(codesOf(documentOf(narrow, about(-1, 3.6, 3.7, 3.5)))).toContain('friction-local');
	});

	it('is not told where rounds scatter so much that the bands may be equal, though the pulls differ', () => {
		// Spans 2 ± 1 and 3.6 ± 1: s is 1, so u² is 2/3 of 1, and with t = 2.78 for 4 degrees of freedom U is 2.27.
		const inner = about(1.5, 1, 2, 3);
		expect(codesOf(documentOf(inner, about(-1.5, 2.6, 3.6, 4.6)))).not.toContain('friction-local');
		const {betweenRadii} = printedOf(documentOf(inner, about(-1.5, 2.6, 3.6, 4.6)));
		expect(betweenRadii).toMatchObject({differs: true, bandDiffers: false});
	});

	it('is not told of less than half the good limit, however sure', () => {
		expect(codesOf(documentOf(about(1, 2, 2, 2), about(1, 3.4, 3.4, 3.4)))).not.toContain('friction-local');
		expect(codesOf(documentOf(about(1, 2, 2, 2), about(1, 3.5, 3.5, 3.5)))).toContain('friction-local');
	});
});
