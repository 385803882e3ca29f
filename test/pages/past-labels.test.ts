import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/desk/filing.js';
import type {FaceRoom} from '../../source/pages/beside/page.js';
import {pastLabels} from '../../source/pages/beside/past-labels.js';
import {summaryOf} from '../../source/results/record.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const long = 'a very long name of an arm on an invented deck, left';
const named = (arm: string) =>
	summaryOf(finishedCheck(follow(freshDialogue(), northDeckWith({'arm-name': arm})).check, '2026-03-02T12:00:00Z'));
const rows = [named('our deck'), named(long), named(`${long} two`)];
const room = (columns: number, hasKeys = true): FaceRoom => ({listRows: 9, columns, hasKeys});
/** The mark, the number and the blanks before an option. */
const before = 4;

describe('A long name of an arm in the list of past checks', () => {
	it.each([40, 80, 120])(
		'is cut so that its row stays one line of %i columns, and the names still differ',
		(columns) => {
			const [short = '', ...others] = pastLabels(rows, room(columns));
			for (const one of [short, ...others]) expect(one.length).toBeLessThanOrEqual(columns - before);
			expect(short).toContain('our deck');
			for (const one of others) expect(one).toContain(' a ');
			expect(new Set(others).size).toBe(2);
		},
	);

	it('is whole where there is room for it, and where it is told line by line', () => {
		expect(pastLabels(rows, room(150))[1]).toContain(`${long} `);
		for (const columns of [40, 100]) expect(pastLabels(rows, room(columns, false))[1]).toContain(long);
	});

	it('leaves the figures of all rows in one column', () => {
		for (const columns of [80, 120]) {
			const places = pastLabels(rows, room(columns)).map((one) => one.indexOf('68: '));
			expect(new Set(places).size).toBe(1);
		}
	});
});
