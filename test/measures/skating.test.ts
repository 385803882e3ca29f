import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/skating.json' with {type: 'json'};
import {degrees, radians} from '../../source/measures/angles.js';
import {swingAngleDeg} from '../../source/measures/geometry.js';
import {leastSkatingRadiusMm, skatingFraction, wallForce, wantedReadingPct} from '../../source/measures/skating.js';

const armOf = ({lengthMm, pivotMm}: {lengthMm: number; pivotMm: number}) => ({
	effectiveLengthMm: lengthMm,
	pivotDistanceMm: pivotMm,
});

describe('skating', () => {
	// The table is printed to 1e-5; its lengths are rounded to 0.00005 mm, which moves no fifth digit.
	it.each(published.rows)('pulls as the vectors of an arm of $lengthMm mm say', (row) => {
		for (const {radiusMm, fraction} of row.at)
			expect(Math.abs(skatingFraction(armOf(row), radiusMm) - fraction)).toBeLessThanOrEqual(1e-5);
	});

	it.each(published.rows)('presses on the walls by the tangent, a little more, on an arm of $lengthMm mm', (row) => {
		for (const {fraction, tangent} of row.at) {
			// Fraction and tangent are both printed to 1e-5.
			expect(Math.abs(wallForce(fraction, fraction) - tangent)).toBeLessThanOrEqual(2e-5);
			expect(wallForce(fraction, fraction)).toBeGreaterThan(fraction);
		}
	});

	it.each(published.rows)('is least at the geometric mean of both nulls for an arm of $lengthMm mm', (row) => {
		const least = leastSkatingRadiusMm(armOf(row)) ?? 0;
		expect(Math.abs(least - 89.323)).toBeLessThanOrEqual(0.001);
		for (const radiusMm of [least - 1, least + 1])
			expect(skatingFraction(armOf(row), radiusMm)).toBeGreaterThan(skatingFraction(armOf(row), least));
		expect(skatingFraction(armOf(row), least)).toBeCloseTo(least / row.lengthMm, 12);
	});

	it('is least near 90 mm on a nine-inch arm (common practice, no source)', () => {
		expect(Math.abs((leastSkatingRadiusMm({effectiveLengthMm: 233, pivotDistanceMm: 215.4}) ?? 0) - 90)).toBeLessThan(
			5,
		);
	});

	it('turns round for an arm that falls short of the spindle', () => {
		const arm = armOf(published.underhung);
		expect(leastSkatingRadiusMm(arm)).toBeNull();
		expect(Math.abs(skatingFraction(arm, published.underhung.zeroAtMm))).toBeLessThanOrEqual(1e-5);
		expect(Math.abs(skatingFraction(arm, 60) - published.underhung.at60)).toBeLessThanOrEqual(1e-5);
	});

	it('has no least radius, and grows with the radius, where length and pivot distance are equal', () => {
		const arm = {effectiveLengthMm: 230, pivotDistanceMm: 230};
		expect(leastSkatingRadiusMm(arm)).toBeNull();
		expect(skatingFraction(arm, 115)).toBeCloseTo(115 / 460, 12);
	});

	it('is the sine of the angle that groove and arm make at the stylus, by the triangle', () => {
		const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
		fc.assert(
			fc.property(fc.double({min: 55, max: 150, noNaN: true}), (radiusMm) => {
				// Law of sines at the stylus; the groove stands square to the radius.
				const sine = (arm.pivotDistanceMm * Math.sin(radians(swingAngleDeg(arm, radiusMm)))) / radiusMm;
				const atStylusDeg = degrees(Math.asin(Math.min(1, sine)));
				expect(Math.abs(skatingFraction(arm, radiusMm))).toBeCloseTo(Math.cos(radians(atStylusDeg)), 9);
			}),
		);
	});

	it('asks for a reading in proportion to the drag', () => {
		const arm = armOf({lengthMm: 228.6, pivotMm: 210.4266});
		// Nine inches, drag 0.25 and 0.30: 9.77 to 10.97 % and 11.72 to 13.17 % (from the table above).
		const percent = (drag: number, radiusMm: number) => wantedReadingPct(arm, drag, radiusMm).toFixed(2);
		expect([percent(0.25, 89.323), percent(0.25, 146.05)]).toEqual(['9.77', '10.97']);
		expect([percent(0.3, 89.323), percent(0.3, 146.05)]).toEqual(['11.72', '13.17']);
	});
});
