import {expect, it} from 'vitest';
import {countdownText} from '../../source/screens/use-countdown.js';

const drawn = {unicode: true, screenReader: false};

it.each([
	['as a bar', drawn, 'Keep still ██░░░ 3 s'],
	['as a bar of plain characters', {...drawn, unicode: false}, 'Keep still ##... 3 s'],
	['in words where the screen is read out', {...drawn, screenReader: true}, 'Keep still: 3 s'],
])('The settle countdown says %s how long to keep still', (_, look, text) => {
	expect(countdownText(3, 5, look)).toBe(text);
	expect(countdownText(0, 5, look)).toBe('Settled: read the gauge now.');
});
