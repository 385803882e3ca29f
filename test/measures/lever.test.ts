import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {angleOfShare, clockDeg, clockText, leverShare} from '../../source/measures/lever.js';

const shareAt = (time: string): number => leverShare(clockDeg(time) ?? Number.NaN);

describe('a weighted lever', () => {
	// OpenStax University Physics vol. 1, 15.4: torque of a hanging weight −L·m·g·sin θ; half at 30°, .70711 at 45°, all at 90°.
	it('lets the sine of its angle act', () => {
		expect(shareAt('1:00')).toBeCloseTo(0.5, 12);
		expect(shareAt('10:30')).toBeCloseTo(Math.SQRT1_2, 12);
		expect(shareAt('9:00')).toBeCloseTo(1, 12);
	});

	it('has all its weight at 3 and 9, half at 1, none at 12 and 6 (common practice, no source)', () => {
		expect(
			['3:00', '9:00', '1:00', '5:00', '7:00', '11:00', '12:00', '6:00'].map(shareAt).map((one) => one.toFixed(9)),
		).toEqual([1, 1, 0.5, 0.5, 0.5, 0.5, 0, 0].map((one) => one.toFixed(9)));
		expect([shareAt('12:00'), shareAt('6:00')]).toEqual([0, 0]);
	});

	it('stands half an hour past twelve at 15 degrees', () => {
		expect(clockDeg('12:30')).toBe(15);
		expect(clockDeg('11:59')).toBe(359.5);
	});

	it.each(['0:30', '13:00', '3:60', '3', '3:5', '3:000', '3:00 pm', ' 3:00', 'three', ''])(
		'does not take %j for a place',
		(time) => {
			expect(clockDeg(time)).toBeUndefined();
		},
	);

	it('is read back as it is written', () => {
		fc.assert(
			fc.property(fc.integer({min: 1, max: 12}), fc.integer({min: 0, max: 59}), (hours, minutes) => {
				const time = `${hours}:${String(minutes).padStart(2, '0')}`;
				expect(clockText(clockDeg(time) ?? 0)).toBe(time);
			}),
		);
		expect([clockText(-30), clockText(360), clockText(390)]).toEqual(['11:00', '12:00', '1:00']);
	});

	it('has an angle for every share', () => {
		expect(angleOfShare(0.5)).toBeCloseTo(30, 12);
		expect(angleOfShare(1)).toBeCloseTo(90, 12);
	});
});
