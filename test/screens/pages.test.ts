import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Row} from '../../source/screens/body.js';
import {pageOf} from '../../source/screens/pages.js';

const blocks = fc.array(fc.integer({min: 1, max: 12}), {maxLength: 20});
const heights = fc.integer({min: 1, max: 20});

/** Lines of blocks of so many lines, each line with a text of its own. */
const rowsOf = (sizes: readonly number[]): Row[] =>
	sizes.flatMap((size, block) =>
		Array.from(
			{length: size},
			(_, index): Row => ({
				text: `${block}:${index}`,
				tone: 'plain',
				...(index > 0 ? {goesOn: true} : {}),
			}),
		),
	);

describe('Pages', () => {
	it('show every line once, in order, none of them taller than the room', () => {
		fc.assert(
			fc.property(blocks, heights, (sizes, height) => {
				const rows = rowsOf(sizes);
				const {pages} = pageOf(rows, 0, height);
				const all = Array.from({length: pages}, (_, page) => pageOf(rows, page, height).rows);
				expect(all.flat().map(({text}) => text)).toEqual(rows.map(({text}) => text));
				for (const page of all) expect(page.length).toBeLessThanOrEqual(height);
			}),
		);
	});

	it('keep a picture whole where a page can hold it', () => {
		fc.assert(
			fc.property(blocks, heights, (sizes, height) => {
				const rows = rowsOf(sizes);
				const {pages} = pageOf(rows, 0, height);
				for (let page = 1; page < pages; page++) {
					const [first] = pageOf(rows, page, height).rows;
					const block = Number(first?.text.split(':')[0]);
					if (first?.goesOn) expect(sizes[block]).toBeGreaterThan(height);
				}
			}),
		);
	});

	it('stop at the last', () => {
		expect(pageOf(rowsOf([3, 3]), 9, 4)).toMatchObject({page: 1, pages: 2});
		expect(pageOf([], 0, 4)).toMatchObject({rows: [], page: 0, pages: 1});
	});
});
