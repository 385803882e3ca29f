import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import byLength from '../../shared/check-values/arm-geometry.json' with {type: 'json'};
import byGrooves from '../../shared/check-values/layouts.json' with {type: 'json'};
import {radians} from '../../source/measures/angles.js';
import {nullRadiiMm, overhangMm, reaches} from '../../source/measures/geometry.js';
import {
	armFromNulls,
	armFromOffset,
	layouts,
	loefgrenANullsMm,
	loefgrenBNullsMm,
	type NullRadii,
	otherNullMm,
	stevensonANullsMm,
} from '../../source/measures/layouts.js';
import {skatingFraction} from '../../source/measures/skating.js';

const usual = {innermostMm: 60.325, outermostMm: 146.05};
const layoutOf = (rule: string) => {
	const found = layouts.find(({name}) => name === rule);
	if (!found) throw new Error(`no layout ${rule}`);
	return found;
};
const armOf = (lengthMm: number, nulls: readonly [number, number]) => {
	const arm = armFromNulls(lengthMm, nulls);
	if (!arm) throw new Error('no such arm');
	return arm;
};
const sum = ([inner, outer]: NullRadii) => inner + outer;
const product = ([inner, outer]: NullRadii) => inner * outer;

const radius = (min: number, max: number) => fc.double({min, max, noNaN: true});
const someGrooves = fc.record({innermostMm: radius(45, 75), outermostMm: radius(80, 160)});
const somePair = fc.tuple(radius(45, 85), radius(90, 145));
const someLength = fc.double({min: 180, max: 400, noNaN: true});

describe('The published layouts', () => {
	// Loefgren 1938, Baerwald 1941, Stevenson 1966; derived numbers, printed to 0.001 mm, which is the tolerance.
	it.each(byGrooves.rows)('$rule has its null radii for the grooves $groovesMm', ({rule, groovesMm, nullsMm}) => {
		const [innermostMm = 0, outermostMm = 0] = groovesMm;
		const nulls = layoutOf(rule).nullsMm({innermostMm, outermostMm});
		expect(Math.abs(nulls[0] - (nullsMm[0] ?? 0))).toBeLessThanOrEqual(0.001);
		expect(Math.abs(nulls[1] - (nullsMm[1] ?? 0))).toBeLessThanOrEqual(0.001);
	});

	// The same papers, carried on by sin(offset) = S/2L and D² = L² − P; printed to 0.0001, tolerance 0.001 mm and 0.001°.
	it.each(byLength.arms)('$rule makes an arm of $lengthMm mm', (row) => {
		const arm = armOf(row.lengthMm, layoutOf(row.rule).nullsMm(usual));
		expect(Math.abs(arm.pivotDistanceMm - row.pivotMm)).toBeLessThanOrEqual(0.001);
		expect(Math.abs(overhangMm(arm) - row.overhangMm)).toBeLessThanOrEqual(0.001);
		expect(Math.abs(arm.offsetDeg - row.offsetDeg)).toBeLessThanOrEqual(0.001);
	});
});

describe('What each layout aims at, for any grooves', () => {
	// The error over the radius goes as 1 − S/r + P/r²; where it turns between the nulls, r = 2P/S. It is a small number
	// of the order of 0.01 made of ones, so 1e-9 leaves room for rounding only.
	const errorOf = (nulls: NullRadii) => (radiusMm: number) =>
		1 - sum(nulls) / radiusMm + product(nulls) / radiusMm ** 2;
	const between = (nulls: NullRadii) => (2 * product(nulls)) / sum(nulls);

	it('Loefgren A: equal errors at both ends and between the nulls (aim of Loefgren 1938 and Baerwald 1941)', () => {
		fc.assert(
			fc.property(someGrooves, (grooves) => {
				const nulls = loefgrenANullsMm(grooves);
				const error = errorOf(nulls);
				expect(error(grooves.innermostMm)).toBeCloseTo(error(grooves.outermostMm), 9);
				expect(error(between(nulls))).toBeCloseTo(-error(grooves.outermostMm), 9);
			}),
		);
	});

	it('Loefgren B: the offset of A, and no other overhang has a smaller mean square (rule from memory)', () => {
		fc.assert(
			fc.property(someGrooves, (grooves) => {
				const nulls = loefgrenBNullsMm(grooves);
				expect(sum(nulls)).toBeCloseTo(sum(loefgrenANullsMm(grooves)), 9);
				const {innermostMm, outermostMm} = grooves;
				const meanSquare = (productMm2: number) =>
					Array.from({length: 400}, (_, index) => {
						const radiusMm = innermostMm + ((outermostMm - innermostMm) * (index + 0.5)) / 400;
						return (1 - sum(nulls) / radiusMm + productMm2 / radiusMm ** 2) ** 2;
					}).reduce((total, one) => total + one, 0);
				// One percent of the product moves the mean square far more than 400 strips leave out.
				const best = meanSquare(product(nulls));
				expect(meanSquare(1.01 * product(nulls))).toBeGreaterThan(best);
				expect(meanSquare(0.99 * product(nulls))).toBeGreaterThan(best);
			}),
		);
	});

	it('Stevenson, null at the innermost groove: no error at the innermost groove, equal ones outermost and between (rule from memory)', () => {
		fc.assert(
			fc.property(someGrooves, (grooves) => {
				const nulls = stevensonANullsMm(grooves);
				const error = errorOf(nulls);
				expect(nulls[0]).toBe(grooves.innermostMm);
				expect(error(between(nulls))).toBeCloseTo(-error(grooves.outermostMm), 9);
			}),
		);
	});

	it('each has its nulls on the record', () => {
		fc.assert(
			fc.property(someGrooves, fc.constantFrom(...layouts), (grooves, {nullsMm}) => {
				const [inner, outer] = nullsMm(grooves);
				expect(inner).toBeGreaterThanOrEqual(grooves.innermostMm);
				expect(outer).toBeGreaterThan(inner);
				expect(outer).toBeLessThan(grooves.outermostMm);
			}),
		);
	});

	it('meets the rule of small angles that gives overhang and offset of the A layout at once', () => {
		// B. B. Bauer, "Tracking angle in phonograph pickups", Electronics, Mar 1945; the rule is from memory. Its overhang
		// is P/2L and its offset S/2L with the nulls of Loefgren A, to rounding.
		fc.assert(
			fc.property(someGrooves, someLength, (grooves, lengthMm) => {
				const {innermostMm: inner, outermostMm: outer} = grooves;
				const share = (1 + inner / outer) ** 2 / 4 + inner / outer;
				const nulls = loefgrenANullsMm(grooves);
				expect(product(nulls) / (2 * lengthMm)).toBeCloseTo(inner ** 2 / (lengthMm * share), 9);
				expect(sum(nulls) / (2 * lengthMm)).toBeCloseTo((inner * (1 + inner / outer)) / (lengthMm * share), 9);
			}),
		);
	});
});

describe('From null radii to the arm and back', () => {
	it('gives the same null radii, in whichever order they were told', () => {
		fc.assert(
			fc.property(someLength, somePair, (lengthMm, [inner, outer]) => {
				const arm = armOf(lengthMm, [outer, inner]);
				expect(arm).toEqual(armOf(lengthMm, [inner, outer]));
				const nulls = nullRadiiMm(arm, arm.offsetDeg);
				expect(nulls?.[0]).toBeCloseTo(inner, 9);
				expect(nulls?.[1]).toBeCloseTo(outer, 9);
			}),
		);
	});

	it('gives one radius twice where both nulls meet', () => {
		fc.assert(
			fc.property(someLength, radius(45, 145), (lengthMm, nullMm) => {
				const arm = armOf(lengthMm, [nullMm, nullMm]);
				const nulls = nullRadiiMm(arm, arm.offsetDeg);
				// The root of what rounding leaves of a difference of squares (some 1e-10 mm²) is some 1e-5 mm.
				expect(nulls?.[0]).toBeCloseTo(nullMm, 4);
				expect(nulls?.[1]).toBeCloseTo(nullMm, 4);
			}),
		);
	});

	it('gives the same arm from its offset angle and either null radius', () => {
		fc.assert(
			fc.property(someLength, somePair, (lengthMm, nulls) => {
				const {offsetDeg, pivotDistanceMm} = armOf(lengthMm, nulls);
				for (const nullMm of nulls)
					expect(armFromOffset(lengthMm, offsetDeg, nullMm).pivotDistanceMm).toBeCloseTo(pivotDistanceMm, 9);
				expect(otherNullMm(lengthMm, offsetDeg, nulls[0])).toBeCloseTo(nulls[1], 9);
			}),
		);
	});

	it('makes groove and arm meet at the null by the angle of the offset', () => {
		fc.assert(
			fc.property(someLength, somePair, (lengthMm, nulls) => {
				const arm = armOf(lengthMm, nulls);
				for (const radiusMm of nulls)
					expect(skatingFraction(arm, radiusMm)).toBeCloseTo(Math.sin(radians(arm.offsetDeg)), 9);
			}),
		);
	});

	it('finds a straight arm that falls short of the spindle: a right angle at the stylus', () => {
		// 3-4-5, and the one null radius of an arm without offset is where the arm stands square to the radius.
		const arm = armFromOffset(240, 0, 100);
		expect(arm.pivotDistanceMm).toBeCloseTo(260, 12);
		expect(otherNullMm(240, 0, 100)).toBe(-100);
		expect(nullRadiiMm(arm, 0)).toBeNull();
	});

	it('has no arm whose nulls lie too far out for its length', () => {
		expect(armFromNulls(120, [130, 125])).toBeNull();
		// By arithmetic: 10 · 140 is below 70², the sine 150/140 above 1.
		expect(armFromNulls(70, [10, 140])).toBeNull();
		// 100 · 100 is 100²: the pivot would stand in the spindle.
		expect(armFromNulls(100, [100, 100])).toBeNull();
	});

	it('has nulls at both ends of its reach where the head stands across', () => {
		// √(100² − 80·120) = 20: from 100 − 20 to 100 + 20, and a sine of 200/200.
		const arm = armOf(100, [80, 120]);
		expect(arm.pivotDistanceMm).toBeCloseTo(20, 12);
		expect(arm.offsetDeg).toBeCloseTo(90, 9);
	});

	it('always finds an arm from an offset angle, and its stylus stands at the null radius', () => {
		fc.assert(
			fc.property(someLength, radius(0, 45), radius(40, 150), (lengthMm, offsetDeg, nullMm) => {
				expect(reaches(armFromOffset(lengthMm, offsetDeg, nullMm), nullMm)).toBe(true);
			}),
		);
	});
});
