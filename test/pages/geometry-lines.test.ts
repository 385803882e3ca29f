import {describe, expect, it} from 'vitest';
import {geometryLines} from '../../source/pages/geometry-lines.js';
import type {AnswerValue} from '../../source/procedure/step.js';
import {factsWith} from '../helpers/facts.js';

const shownFor = (values: Readonly<Record<string, AnswerValue>>) => geometryLines(factsWith(values));
const tableOf = (values: Readonly<Record<string, AnswerValue>>) =>
	shownFor(values).find((one) => one.kind === 'table')?.rows;
const wordsOf = (values: Readonly<Record<string, AnswerValue>>) =>
	shownFor(values)
		.map((one) => (one.kind === 'line' ? one.text : one.caption))
		.join('\n');

const nineInch = {'arm-length': 228.6, 'arm-pivot-distance': 210.4266};

describe('The lengths of an arm', () => {
	it('say where the stylus reaches and by how much it overhangs', () => {
		// |L − D| = 18.1734 mm and L + D = 439.0266 mm.
		expect(wordsOf(nineInch)).toBe(
			'The stylus reaches radii from 18.2 to 439.0 mm, and overhangs the spindle by 18.2 mm.',
		);
	});

	it('stand beside the published layouts where the offset angle is known', () => {
		// Loefgren 1938 and Baerwald 1941 (A), Loefgren 1938 (B), Stevenson 1966 (A), nine inches: 65.998 and 120.891,
		// 18.1734; 70.285 and 116.604, 18.6896; 60.325 and 117.421, 16.057; to the one decimal that is shown.
		expect(tableOf({...nineInch, 'arm-offset': 24.1276})).toEqual([
			['this arm', '66.0 and 120.9', '18.2'],
			['Loefgren A', '66.0 and 120.9', '18.2'],
			['Loefgren B', '70.3 and 116.6', '18.7'],
			['Stevenson', '60.3 and 117.4', '16.1'],
		]);
		expect(tableOf(nineInch)).toBeUndefined();
		expect(tableOf({'arm-length': 228.6, 'arm-offset': 24})).toBeUndefined();
	});

	it('stand there for information only, for a usual pair of grooves and no standard', () => {
		const words = wordsOf({...nineInch, 'arm-offset': 24.1276});
		expect(words).toContain('For information only. Grooves: a usual pair, 146.05 and 60.325 mm.');
		expect(words).not.toMatch(/IEC|standard/);
	});

	it('say the table in words for those who hear it', () => {
		expect(wordsOf({...nineInch, 'arm-offset': 24.1276})).toContain(
			'this arm: null radii 66.0 and 120.9, overhang 18.2 mm. Loefgren A: null radii',
		);
	});

	it('tell an arm without two null radii as one', () => {
		expect(tableOf({'arm-length': 228.6, 'arm-pivot-distance': 240, 'arm-offset': 0})?.[0]).toEqual([
			'this arm',
			'no two',
			'-11.4',
		]);
	});

	it('ask to be looked at again where the overhang is unusual', () => {
		expect(wordsOf({'arm-length': 228.6, 'arm-pivot-distance': 240})).toContain('look at both lengths again');
		expect(wordsOf(nineInch)).not.toContain('look at both lengths again');
	});
});

describe('A pivot distance that is worked out', () => {
	const nulls = {'arm-length': 228.6, 'arm-pivot-distance': null, 'arm-pivot-way': 'nulls', 'arm-null-radius': 65.998};

	it('gives the offset angle too, so the layouts stand beside it', () => {
		expect(tableOf({...nulls, 'arm-null-other': 120.891})?.[0]).toEqual(['this arm', '66.0 and 120.9', '18.2']);
	});

	it('shows nothing before it is known', () => {
		expect(shownFor(nulls)).toEqual([]);
		expect(shownFor({'arm-length': 228.6, 'arm-pivot-distance': null})).toEqual([]);
	});
});
