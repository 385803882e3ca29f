import type {Document} from '../../source/results/document.js';

/** The worked example of the JSON document: invented readings of an arm whose wire acts as a spring. */
export const example = (): Document => ({
	arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading: 'gravity', pivotDirectionDeg: 45},
	gauge: {unit: 'percent', step: 0.5, topOfScale: 20, relativeUncertaintyPct: 1, nudge: 0.5, setAnew: true},
	trackingForce: {
		playingMn: 21,
		scaleReadingMn: 21,
		guard: 'included',
		guardMassG: 0.4,
		relativeUncertaintyPct: 0.5,
	},
	level: {stepDeg: 0.05, leftRightDeg: [0.15, -0.05], frontBackDeg: [0.05, 0.1]},
	clearance: {stylusMm: 5.6, matRemovedMm: 3, guardDepthMm: 1.3},
	cartridge: {staticComplianceUmPerMn: 12, cantileverMm: 5.5},
	probe: [
		{
			place: 'inner',
			radiusMm: 68,
			rounds: [
				{innerLimit: -2.5, outerLimit: -8, gauge: 'turned'},
				{innerLimit: 3, outerLimit: 8.5},
				{innerLimit: 3, outerLimit: 8},
				{innerLimit: 2.5, outerLimit: 8, closing: true},
			],
		},
		{
			place: 'outer',
			radiusMm: 136,
			rounds: [
				{innerLimit: 1.5, outerLimit: 5.5},
				{innerLimit: 1.5, outerLimit: 5},
				{innerLimit: 2, outerLimit: 5.5},
			],
		},
	],
	limits: {pullGoodPct: 2, pullUsablePct: 4, bandGoodPct: 3, bandUsablePct: 6},
	bias: {
		effectiveDrag: 0.3,
		device: 'weighted-lever',
		readings: [
			{radiusMm: 136, rounds: [{innerLimit: 7.5, outerLimit: 11}], leverClock: '8:30'},
			{radiusMm: 68, rounds: [{innerLimit: 6.5, outerLimit: 11.5}], leverClock: '7:15'},
		],
	},
});

/** Hold band at a radius by its centre and width; three rounds that agree, so that the step alone is uncertain. */
type Band = {readonly pull: number; readonly band: number; readonly rounds?: number};

/** An invented document with the given bands, read on a fine percent gauge without nudge or level, its
 * zero stated as nothing. */
export const documentWith = (inner: Band, outer: Band, more: Partial<Document> = {}): Document => {
	const roundsOf = ({pull, band, rounds = 3}: Band) =>
		Array.from({length: rounds}, () => ({innerLimit: pull - band / 2, outerLimit: pull + band / 2}));
	return {
		arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading: 'gravity'},
		gauge: {unit: 'percent', step: 0.1, topOfScale: 20, zero: 0, setAnew: true},
		trackingForce: {playingMn: 20, scaleReadingMn: 20, guard: 'none'},
		probe: [
			{place: 'inner', radiusMm: 68, rounds: roundsOf(inner)},
			{place: 'outer', radiusMm: 136, rounds: roundsOf(outer)},
		],
		...more,
	};
};
