import {expect, it} from 'vitest';
import {countdownText} from '../../source/screens/use-countdown.js';
import {words} from '../helpers/said.js';

const {faces} = words;

const drawn = {unicode: true, screenReader: false};

it.each([
	['as a bar', drawn, faces.keepStillBar({bar: '██░░░', seconds: 3})],
	['as a bar of plain characters', {...drawn, unicode: false}, faces.keepStillBar({bar: '##...', seconds: 3})],
	['in words where the screen is read out', {...drawn, screenReader: true}, faces.keepStill({seconds: 3})],
])('The settle countdown says %s how long to keep still', (_, look, text) => {
	expect(countdownText(3, 5, look)).toBe(text);
	expect(countdownText(0, 5, look)).toBe(faces.settled);
});
