import {describe, expect, it} from 'vitest';
import {units} from '../../source/units.js';
import {heldTogether} from '../../source/words/held-together.js';

const shown = (text: string): string => heldTogether(text).replaceAll('\u00a0', '_');

describe('A line does not end', () => {
	it.each([
		['at 68 mm', 'at 68_mm'],
		['Pull 5.4 % out ± 0.4 % (usable to 4 %).', 'Pull 5.4_%_out_±_0.4_% (usable to 4_%).'],
		['6 % ± 0.4 %: beyond', '6_%_±_0.4_%: beyond'],
		['torque 263 µN·m out ± 12 µN·m', 'torque 263_µN·m_out_±_12_µN·m'],
		['0.25° ± 0.02°', '0.25°_±_0.02°'],
		['2.14 g = 21 mN', '2.14_g = 21_mN'],
		['0.4 µm/mN, 1 mm per 100 mm', '0.4_µm/mN, 1_mm per 100_mm'],
		['about 1.9 +/- 0.4', 'about 1.9_+/-_0.4'],
		['a scatter of ± 0.3', 'a scatter of_±_0.3'],
	])('within a figure: %s', (text, held) => {
		expect(shown(text)).toBe(held);
	});

	it('before a dash that is to be typed', () => {
		expect(shown('Type - if not known.')).toBe('Type_- if not known.');
	});

	it.each(Object.values(units).map(({label}) => label))('between a number and %s', (label) => {
		expect(shown(`1 ${label}, and 2 ${label}.`)).toBe(`1_${label}, and 2_${label}.`);
	});

	it.each(['2 rounds at 3 gauges', 'round 2 more', '3 minutes, 5 small steps', 'the ± is too small', 'no number'])(
		'only there: %s',
		(text) => {
			expect(heldTogether(text)).toBe(text);
		},
	);
});
