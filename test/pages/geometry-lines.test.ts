import {describe, expect, it} from 'vitest';
import {geometryLines} from '../../source/pages/geometry-lines.js';
import {inWords} from '../../source/pages/shown-lines.js';
import type {AnswerValue} from '../../source/procedure/step.js';
import {factsWith} from '../helpers/facts.js';
import {words} from '../helpers/said.js';

const shownFor = (values: Readonly<Record<string, AnswerValue>>) => geometryLines(factsWith(values));
const tableOf = (values: Readonly<Record<string, AnswerValue>>) =>
	shownFor(values).find((one) => one.kind === 'table')?.rows;
const wordsOf = (values: Readonly<Record<string, AnswerValue>>) => shownFor(values).map(inWords).join('\n');
const {geometry} = words.pages;
const layout = (name: string | undefined, nulls: readonly [number, number] | null, overhangMm: number) => ({
	name,
	nulls,
	overhangMm,
});
const rowOf = (one: ReturnType<typeof layout>) => [
	geometry.cells.name(one),
	geometry.cells.nulls(one),
	geometry.cells.overhang(one),
];

const nineInch = {'arm-length': 228.6, 'arm-pivot-distance': 210.4266};

describe('The lengths of an arm', () => {
	it('say where the stylus reaches and by how much it overhangs', () => {
		// |L − D| = 18.1734 mm and L + D = 439.0266 mm.
		expect(wordsOf(nineInch)).toBe(
			geometry.reachesAndOverhangs({leastMm: 18.1734, mostMm: 439.0266, overhangMm: 18.1734}),
		);
	});

	it('stand beside the published layouts where the offset angle is known', () => {
		// Loefgren 1938 and Baerwald 1941 (A), Loefgren 1938 (B), Stevenson 1966 (A), nine inches: 65.998 and 120.891,
		// 18.1734; 70.285 and 116.604, 18.6896; 60.325 and 117.421, 16.057; to the one decimal that is shown.
		expect(tableOf({...nineInch, 'arm-offset': 24.1276})).toEqual([
			rowOf(layout(undefined, [65.998, 120.891], 18.1734)),
			rowOf(layout('Loefgren A', [65.998, 120.891], 18.1734)),
			rowOf(layout('Loefgren B', [70.285, 116.604], 18.6896)),
			rowOf(layout('Stevenson', [60.325, 117.421], 16.057)),
		]);
		expect(tableOf(nineInch)).toBeUndefined();
		expect(tableOf({'arm-length': 228.6, 'arm-offset': 24})).toBeUndefined();
	});

	it('stand there for information only, for a usual pair of grooves and no standard', () => {
		const text = wordsOf({...nineInch, 'arm-offset': 24.1276});
		expect(text).toContain(geometry.forInformation({outermostMm: 146.05, innermostMm: 60.325}));
		expect(text).not.toMatch(/IEC|standard/);
	});

	it('say the table in words for those who hear it', () => {
		expect(wordsOf({...nineInch, 'arm-offset': 24.1276})).toContain(
			[
				geometry.layout(layout(undefined, [65.998, 120.891], 18.1734)),
				geometry.layout(layout('Loefgren A', [65.998, 120.891], 18.1734)),
			].join(' '),
		);
	});

	it('tell an arm without two null radii as one', () => {
		expect(tableOf({'arm-length': 228.6, 'arm-pivot-distance': 240, 'arm-offset': 0})?.[0]).toEqual(
			rowOf(layout(undefined, null, -11.4)),
		);
	});

	it('ask to be looked at again where the overhang is unusual', () => {
		expect(wordsOf({'arm-length': 228.6, 'arm-pivot-distance': 240})).toContain(geometry.lookAgain);
		expect(wordsOf(nineInch)).not.toContain(geometry.lookAgain);
	});
});

describe('A pivot distance that is worked out', () => {
	const nulls = {'arm-length': 228.6, 'arm-pivot-distance': null, 'arm-pivot-way': 'nulls', 'arm-null-radius': 65.998};

	it('gives the offset angle too, so the layouts stand beside it', () => {
		expect(tableOf({...nulls, 'arm-null-other': 120.891})?.[0]).toEqual(
			rowOf(layout(undefined, [65.998, 120.891], 18.1734)),
		);
	});

	it('shows nothing before it is known', () => {
		expect(shownFor(nulls)).toEqual([]);
		expect(shownFor({'arm-length': 228.6, 'arm-pivot-distance': null})).toEqual([]);
	});
});
