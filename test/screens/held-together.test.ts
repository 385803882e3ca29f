import {expect, it} from 'vitest';
import {textRows} from '../../source/screens/body.js';

it.each([true, false])(
	'No line of a screen ends between a number and its unit, or beside a ± (beyond ASCII: %s)',
	(unicode) => {
		const text = 'The pull that was read at the inner radius is 5.4 % out ± 0.4 % there.';
		for (let width = 24; width < 70; width++) {
			const rows = textRows(text, width, {unicode, color: false, screenReader: false}).map((row) => row.text);
			expect(rows.filter((row) => /(?:\d|±|\+\/-|out)$/.test(row))).toEqual([]);
			expect(rows.join(' ')).toBe(unicode ? text : text.replace('±', '+/-'));
		}
	},
);
