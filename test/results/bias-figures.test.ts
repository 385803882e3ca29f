import {expect, test} from 'vitest';
import {compute} from '../../source/results/compute.js';
import {parseDocument} from '../../source/results/document.js';

test('A radius that is off scale with the bias on keeps its row and takes no part in the fit', () => {
	const document = parseDocument({
		arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading: 'gravity'},
		gauge: {unit: 'percent', step: 0.5, topOfScale: 20},
		trackingForce: {playingMn: 21, scaleReadingMn: 21, guard: 'included'},
		probe: [
			{place: 'inner', radiusMm: 68, rounds: [{innerLimit: -1, outerLimit: 1}]},
			{place: 'outer', radiusMm: 136, rounds: [{innerLimit: -1, outerLimit: 1}]},
		],
		bias: {
			device: 'spring',
			readings: [
				{radiusMm: 136, rounds: [{innerLimit: 11, outerLimit: 13}]},
				{radiusMm: 68, rounds: [{innerLimit: 19, outerLimit: 20}]},
			],
		},
	});
	if (!document.ok) throw new Error('the document was refused');
	const {bias, findings} = compute(document.document);
	expect(bias?.rows[1]).toMatchObject({radiusMm: 68, pullOnPct: null, biasPct: null, leftoverPct: null});
	expect(bias?.fit).toBeNull();
	expect(findings.map(({code}) => code)).toContain('bias-off-scale');
});
