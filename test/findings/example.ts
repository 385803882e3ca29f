import type {Document} from '../../source/findings/document.js';

/** The worked example of the contract: invented readings of an arm whose wire acts as a spring. */
export const example = (): Document => ({
	arm: {effectiveLengthMm: 229, pivotDistanceMm: 211.3, loading: 'gravity', pivotDirectionDeg: 45},
	gauge: {
		unit: 'percent',
		step: 0.5,
		topOfScale: 16,
		relativeUncertaintyPct: 1,
		zero: 0.25,
		zeroUncertainty: 0.1,
		nudge: 0.5,
	},
	trackingForce: {
		playingMn: 18,
		scaleReadingMn: 18,
		guard: 'included',
		guardMassG: 0.5,
		relativeUncertaintyPct: 0.5,
	},
	level: {stepDeg: 0.05, leftRightDeg: [0.1, -0.05], frontBackDeg: [0.05, 0.05]},
	clearance: {stylusMm: 4.5, matRemovedMm: 2, guardDepthMm: 1},
	cartridge: {staticComplianceUmPerMn: 15, cantileverMm: 6},
	probe: [
		{
			place: 'inner',
			radiusMm: 65,
			rounds: [
				{innerLimit: 4, outerLimit: 10},
				{innerLimit: 4.5, outerLimit: 10},
				{innerLimit: 4, outerLimit: 9.5},
			],
		},
		{
			place: 'outer',
			radiusMm: 140,
			rounds: [
				{innerLimit: 3, outerLimit: 7.5},
				{innerLimit: 3, outerLimit: 7},
				{innerLimit: 3.5, outerLimit: 7.5},
			],
		},
	],
	limits: {pullGoodPct: 2, pullUsablePct: 4, bandGoodPct: 3, bandUsablePct: 6},
	bias: {
		effectiveDrag: 0.3,
		device: 'weighted-lever',
		readings: [
			{radiusMm: 140, rounds: [{innerLimit: 9, outerLimit: 13}], leverClock: '3:00'},
			{radiusMm: 65, rounds: [{innerLimit: 6.5, outerLimit: 12}], leverClock: '1:30'},
		],
	},
});

/** Hold band at a radius by its centre and width; three rounds that agree, so that the step alone is uncertain. */
type Band = {readonly pull: number; readonly band: number; readonly rounds?: number};

/** An invented document with the given bands, read on a fine percent gauge without nudge, zero error or level. */
export const documentWith = (inner: Band, outer: Band, more: Partial<Document> = {}): Document => {
	const roundsOf = ({pull, band, rounds = 3}: Band) =>
		Array.from({length: rounds}, () => ({innerLimit: pull - band / 2, outerLimit: pull + band / 2}));
	return {
		arm: {effectiveLengthMm: 229, pivotDistanceMm: 211.3, loading: 'gravity'},
		gauge: {unit: 'percent', step: 0.1},
		trackingForce: {playingMn: 20, scaleReadingMn: 20, guard: 'none'},
		probe: [
			{place: 'inner', radiusMm: 65, rounds: roundsOf(inner)},
			{place: 'outer', radiusMm: 140, rounds: roundsOf(outer)},
		],
		...more,
	};
};
