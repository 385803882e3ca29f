import {expect, it} from 'vitest';
import {agoText} from '../../source/words/en/ago.js';

it('How long ago is told in the largest unit of which one is full; a time still to come is told as one', () => {
	const texts = new Map([0, 1, 59, 60, 90, 1439, 1440, 100_000, -1].map((minutes) => [minutes, agoText(minutes)]));
	expect(texts.size).toBe(new Set(texts.values()).size);
	const countIn = (minutes: number): number => Number.parseInt(texts.get(minutes) ?? '', 10);
	expect([1, 59, 60, 90, 1439, 1440, 100_000].map(countIn)).toEqual([1, 59, 1, 2, 24, 1, 69]);
	expect([0, -1].map(countIn)).toEqual([Number.NaN, Number.NaN]);
});
