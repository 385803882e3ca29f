import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import {type GaugeReading, gaugeScale} from '../../../source/screens/instruments/gauge-scale.js';
import {words} from '../../helpers/said.js';

/** Invented, of ordinary size. */
const usual: GaugeReading = {readingPct: 0, topPct: 20, stepPct: 0.5, isTurned: false};
const gaugeWith = (changes: Partial<GaugeReading>): GaugeReading => ({...usual, ...changes});

const anyGauge: fc.Arbitrary<GaugeReading> = fc.record({
	readingPct: fc.double({min: -40, max: 40, noNaN: true}),
	topPct: fc.constantFrom(3, 5, 8, 10, 12.5, 16, 20, 30, 50),
	stepPct: fc.constantFrom(0.05, 0.1, 0.25, 0.5, 1),
	isTurned: fc.boolean(),
});
const anyWidth = fc.integer({min: 40, max: 100});

/** Columns from the middle of the scale to its pointer. */
function pointerOf(gauge: GaugeReading, width: number, unicode = true): number {
	const scale = gaugeScale(gauge, width, unicode)[1] ?? '';
	return scale.indexOf(unicode ? '●' : 'o') - (scale.length - 1) / 2;
}

describe('The scale of the gauge', () => {
	it.each([40, 59, 78, 100])('points in for what pushes inward, out for what pushes outward, at width %d', (width) => {
		const stepPct = 0.1;
		for (const unicode of [true, false]) {
			expect(pointerOf(gaugeWith({readingPct: 0}), width, unicode)).toBe(0);
			for (const readingPct of [0.1, 0.5, 4.5, 19.5, 20, 30]) {
				const outward = pointerOf(gaugeWith({readingPct, stepPct}), width, unicode);
				expect(outward).toBeGreaterThan(0);
				expect(pointerOf(gaugeWith({readingPct: -readingPct, stepPct}), width, unicode)).toBe(-outward);
			}
		}
	});

	it('labels zero and both ends of any scale, on three lines that fit', () => {
		fc.assert(
			fc.property(anyGauge, anyWidth, fc.boolean(), (gauge, width, unicode) => {
				const lines = gaugeScale(gauge, width, unicode);
				expect(lines).toHaveLength(3);
				for (const text of lines) expect(stringWidth(text)).toBeLessThanOrEqual(width);
				const numbers = (lines[2] ?? '').trim().split(/ +/);
				const ends = [`-${gauge.topPct}`, `+${gauge.topPct}`];
				const [left, right] = gauge.isTurned ? ends.toReversed() : ends;
				expect([numbers[0], numbers.at(-2), numbers.at(-1)]).toEqual([left, right, '%']);
				expect(lines[2]?.indexOf(' 0 ')).toBe(((lines[1]?.length ?? 0) - 1) / 2 - 1);
			}),
		);
	});

	it('stands the other way round when the gauge is turned, and says so', () => {
		fc.assert(
			fc.property(anyGauge, anyWidth, (gauge, width) => {
				const [plain, turned] = [gaugeWith({...gauge, isTurned: false}), gaugeWith({...gauge, isTurned: true})];
				expect(pointerOf(turned, width)).toBe(0 - pointerOf(plain, width));
			}),
		);
		const {spindle, rim} = words.pictures;
		const {turned} = words.pictures.gauge;
		// 40, or as wide as the words need: half of the scale holds one of them and half of another.
		const width = Math.max(40, 2 * (stringWidth(`◄ ${spindle}`) + Math.ceil(stringWidth(turned) / 2)) + 6);
		const [directions, , numbers] = gaugeScale(gaugeWith({isTurned: true}), width, true);
		expect(directions).toMatch(new RegExp(`^◄ ${spindle} +${turned.replace(/[()]/g, '\\$&')} +${rim} ►$`));
		expect(numbers).toMatch(/^\+20 .* 0 .* -20 %$/);
		const [plainDirections, , plainNumbers] = gaugeScale(usual, 40, true);
		expect(plainDirections).toMatch(new RegExp(`^◄ ${spindle} +${rim} ►$`));
		expect(plainNumbers).toMatch(/^-20 .* 0 .* \+20 %$/);
	});

	it('is even: the pointer stands within half a column of its reading', () => {
		fc.assert(
			fc.property(fc.integer({min: -40, max: 40}), anyWidth, (steps, width) => {
				const half = ((gaugeScale(usual, width, true)[1] ?? '').length - 1) / 2;
				const readingPct = steps * 0.5;
				if (Math.abs(readingPct / 20) * half < 0.5) return;
				expect(Math.abs(pointerOf(gaugeWith({readingPct}), width) - (readingPct / 20) * half)).toBeLessThanOrEqual(0.5);
			}),
		);
	});
});
