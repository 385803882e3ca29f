import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {
	allowedTiltSharePct,
	levelIsFine,
	levelPasses,
	levelTilt,
	tiltUncertaintyDeg,
	wholeTiltDeg,
} from '../../source/measures/level.js';
import {outwardDirection, slantPct, tiltSharePct, tiltShareUncertaintyPct} from '../../source/measures/tilt-share.js';

const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
const toTheRight = {x: 1, y: 0};

// Where the stylus stands, by crossing circles, written apart from the program: turned back from the pivot's
// direction, since a clockwise record plays toward the pivot.
const stylusAt = (pivotDeg: number, radiusMm: number) => {
	const {effectiveLengthMm: l, pivotDistanceMm: d} = arm;
	const along = (d * d + radiusMm * radiusMm - l * l) / (2 * d);
	const aside = Math.sqrt(radiusMm * radiusMm - along * along);
	const [cos, sin] = [Math.cos((pivotDeg * Math.PI) / 180), Math.sin((pivotDeg * Math.PI) / 180)];
	return {x: along * cos + aside * sin, y: along * sin - aside * cos};
};

describe('a level turned end for end', () => {
	it("gives H. E. Burton's three quarters of a division toward the east (thesis, 1903, p. 32)", () => {
		// Bubble ends 15 E 13 W, then 14.5 E 13.5 W: centres −1 and −0.5 to the west, the second on a turned scale.
		expect(levelTilt([-1, 0.5])).toEqual({tiltDeg: -0.75, zeroErrorDeg: -0.25});
	});

	it('leaves its own error unknown after one reading', () => {
		expect(levelTilt([0.3])).toEqual({tiltDeg: 0.3, zeroErrorDeg: null});
	});

	it('is surer as a pair: each reading to step/√12 (JCGM 100:2008 F.2.2.1), half their difference to step/√24', () => {
		expect(tiltUncertaintyDeg(0.1, [0, 0])).toBeCloseTo(Math.hypot(0.05 / Math.sqrt(3), 0.05 / Math.sqrt(3)) / 2, 12);
	});

	it('holds its own unknown error, 0.2° by default, after one reading: sides of a box with step/√12', () => {
		expect(tiltUncertaintyDeg(0, [0])).toBeCloseTo(0.2, 12);
		// 0.2·√12 is a step that is as uncertain as that: √2 times as much together.
		expect(tiltUncertaintyDeg(0.2 * Math.sqrt(12), [0])).toBeCloseTo(0.2 * Math.SQRT2, 12);
	});

	it('makes one tilt of two directions, as the sides of a right angle', () => {
		expect(wholeTiltDeg(levelTilt([0.3]), levelTilt([-0.4]))).toBeCloseTo(0.5, 12);
	});
});

describe('a level', () => {
	it('may spend a quarter of the good pull limit at every radius, either way, and passes', () => {
		expect(allowedTiltSharePct(2)).toBe(0.5);
		const passes = (...sharesPct: readonly number[]) => levelPasses(sharesPct, 0, 2);
		expect([passes(0.5, -0.5), passes(0.501, 0), passes(0, 0.501), passes(0, -0.501)]).toEqual([
			true,
			false,
			false,
			false,
		]);
		expect(levelPasses([0.9], 0, 4)).toBe(true);
	});

	it('is fine at a tenth or less', () => {
		const isFine = (...sharesPct: readonly number[]) => levelIsFine(sharesPct, 0, 2);
		expect([isFine(0.2, -0.2), isFine(0.201, 0), isFine(0, -0.201)]).toEqual([true, false, false]);
	});

	it('neither passes nor is fine above half a degree, whatever the arm makes of it', () => {
		expect([0.5, 0.501].map((wholeDeg) => levelPasses([0, 0], wholeDeg, 2))).toEqual([true, false]);
		expect([0.5, 0.501].map((wholeDeg) => levelIsFine([0, 0], wholeDeg, 2))).toEqual([true, false]);
	});
});

describe("tilt's share of the pull", () => {
	it('is tan 31.0° = 0.6009 of the force normal to the slope (OpenStax University Physics 1, 6.3)', () => {
		// Four printed digits.
		const share = tiltSharePct(1, {leftRightDeg: 31, frontBackDeg: 0}, toTheRight);
		expect(Math.abs(share + 60.09)).toBeLessThanOrEqual(0.005);
	});

	it('is 1.745 % for a degree across, between the sine and the tangent of handbooks', () => {
		const share = -tiltSharePct(1, {leftRightDeg: 1, frontBackDeg: 0}, toTheRight);
		// Sine table: 1.74524 %, of the weight; of the normal force it is larger by 1/cos 1°, 0.0003 %.
		expect(share).toBeGreaterThan(1.74524);
		expect(share).toBeLessThan(1.7456);
	});

	it('pulls away from the higher side', () => {
		expect(tiltSharePct(1, {leftRightDeg: 1, frontBackDeg: 0}, toTheRight)).toBeLessThan(0);
		expect(tiltSharePct(1, {leftRightDeg: 0, frontBackDeg: 1}, {x: 0, y: -1})).toBeGreaterThan(0);
	});

	it('vanishes where no force leans with the deck', () => {
		expect(Math.abs(tiltSharePct(0, {leftRightDeg: 1, frontBackDeg: 1}, toTheRight))).toBe(0);
		expect(tiltShareUncertaintyPct(0, 0.2)).toBe(0);
	});

	it('takes outward as the way the stylus goes when its radius grows, wherever the pivot stands', () => {
		const pivots = fc.double({min: -360, max: 720, noNaN: true});
		fc.assert(
			fc.property(pivots, fc.double({min: 30, max: 150, noNaN: true}), (pivotDeg, radiusMm) => {
				const step = 1e-4;
				const before = stylusAt(pivotDeg, radiusMm - step);
				const after = stylusAt(pivotDeg, radiusMm + step);
				const length = Math.hypot(after.x - before.x, after.y - before.y);
				const outward = outwardDirection(arm, pivotDeg, radiusMm);
				// A central difference over 0.2 µm: about 1e-6 of rounding.
				expect(Math.abs(outward.x - (after.x - before.x) / length)).toBeLessThan(1e-5);
				expect(Math.abs(outward.y - (after.y - before.y) / length)).toBeLessThan(1e-5);
			}),
		);
	});

	it('stands at the right front of the record for a pivot at the right rear', () => {
		const stylus = stylusAt(45, 68);
		expect(stylus.x).toBeGreaterThan(0);
		expect(stylus.y).toBeLessThan(0);
	});

	it('turns with the deck: pivot and tilt turned together change nothing', () => {
		const angles = fc.double({min: -180, max: 180, noNaN: true});
		const shareOf = (pivotDeg: number, x: number, y: number) =>
			tiltSharePct(
				1,
				{leftRightDeg: (Math.atan(x) * 180) / Math.PI, frontBackDeg: (Math.atan(y) * 180) / Math.PI},
				outwardDirection(arm, pivotDeg, 100),
			);
		fc.assert(
			fc.property(angles, angles, (turn, downhill) => {
				const [a, b] = [(downhill * Math.PI) / 180, ((downhill + turn) * Math.PI) / 180];
				const still = shareOf(45, 0.01 * Math.cos(a), 0.01 * Math.sin(a));
				const turned = shareOf(45 + turn, 0.01 * Math.cos(b), 0.01 * Math.sin(b));
				expect(turned).toBeCloseTo(still, 9);
			}),
		);
	});

	it('of the worked example is −0.174481 % at 68 mm and −0.179451 % at 136 mm, each ± 0.0349132 %', () => {
		// Readings 0.15 and −0.05 across, 0.05 and 0.1 to the back: tilts 0.1° and −0.025°; a step of 0.05°.
		const tilt = {leftRightDeg: 0.1, frontBackDeg: -0.025};
		const shareAt = (radiusMm: number) => tiltSharePct(1, tilt, outwardDirection(arm, 45, radiusMm));
		expect(shareAt(68)).toBeCloseTo(-0.174481, 6);
		expect(shareAt(136)).toBeCloseTo(-0.179451, 6);
		expect(tiltShareUncertaintyPct(1, tiltUncertaintyDeg(0.05, [0.15, -0.05]))).toBeCloseTo(0.0349132, 7);
	});
});

describe('what an uncertain tilt leaves of the difference between two radii', () => {
	it('is its share along the way from one outward direction to the other', () => {
		// Directions 3 and 4 parts apart in each axis are 5 apart; 100·0.5·tan 45° of that.
		const [one, other] = [
			{x: 0.1, y: 0.2},
			{x: 0.4, y: -0.2},
		];
		expect(slantPct(0.5, 45, [one, other])).toBeCloseTo(25, 9);
		expect(slantPct(0.5, 45, [other, one])).toBeCloseTo(25, 9);
		expect(slantPct(0.5, 45, [one, one])).toBe(0);
	});

	it('is nothing where no force leans, and as much as the swing turns the arm', () => {
		const directions = [outwardDirection(arm, 45, 68), outwardDirection(arm, 45, 136)] as const;
		expect(slantPct(0, 1, directions)).toBe(0);
		// The chord of the swing between both radii, by the law of cosines.
		const swing = (radiusMm: number) => Math.acos((233 ** 2 + 215.4 ** 2 - radiusMm ** 2) / (2 * 233 * 215.4));
		const chord = 2 * Math.sin((swing(136) - swing(68)) / 2);
		expect(slantPct(1, 45, directions)).toBeCloseTo(100 * chord, 9);
	});
});
