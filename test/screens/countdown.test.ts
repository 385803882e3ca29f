import {expect, it} from 'vitest';
import {countdownShown} from '../../source/screens/use-countdown.js';
import {words} from '../helpers/said.js';

const {faces} = words;

it('The settle countdown counts in large seconds, and in words where the screen is read out', () => {
	const drawn = countdownShown(3, 5, {screenReader: false});
	expect(drawn).toMatchObject({notice: '', countdown: {kind: 'countdown', seconds: 3, ofSeconds: 5}});
	expect(countdownShown(3, 5, {screenReader: true})).toEqual({notice: faces.keepStill({seconds: 3})});
});

it.each([true, false])(
	'Its end is said above the answer, and before it begins nothing is (read out: %s)',
	(screenReader) => {
		expect(countdownShown(0, 5, {screenReader})).toEqual({notice: faces.settled});
		expect(countdownShown(undefined, 5, {screenReader})).toEqual({notice: ''});
	},
);
