import {expect, it} from 'vitest';
import {lastBands} from '../../source/pages/band-rows.js';
import {earlierRows} from '../../source/pages/before-and-after.js';
import {storySource} from './support.js';

it('Bands of an earlier series and of the last check carry their day', () => {
	const {history, record} = storySource;
	const closed = record.check.series.findLast((one) => one.closed)?.closed?.at.slice(0, 10);
	expect(closed).toBeDefined();
	const [series, last] = [earlierRows(record.check), lastBands(history)].map((rows) => rows.map(({date}) => date));
	expect(new Set(series)).toEqual(new Set([closed]));
	expect(new Set(last)).toEqual(new Set([history[0]?.date]));
});
