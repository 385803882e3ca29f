import * as z from 'zod/mini';
import * as field from '../procedure/fields.js';

const sentence = (phrase: string): string => `${phrase.charAt(0).toUpperCase()}${phrase.slice(1)}.`;

// What one key asks of another is beyond the shape, but a JSON Schema can say it.
type Condition = {readonly anyOf: readonly object[]};

const part = <T extends z.core.$ZodLooseShape>(phrase: string, shape: T, condition?: Condition) =>
	z.strictObject(shape, field.worded(phrase)).check(z.meta({description: sentence(phrase), ...condition}));

const listOf = <T extends z.core.$ZodType>(phrase: string, item: T, least: number) =>
	z.array(item, field.worded(phrase)).check(z.minLength(least, field.worded(phrase)), z.describe(sentence(phrase)));

const arm = part('a group of keys about the arm: its geometry and what makes its tracking force', {
	effectiveLengthMm: field.effectiveLengthMm,
	pivotDistanceMm: field.pivotDistanceMm,
	loading: field.loading,
	pivotDirectionDeg: z.optional(field.pivotDirectionDeg),
});

const gauge = part(
	'a group of keys about the gauge, all but relativeUncertaintyPct and setAnew in its own unit',
	{
		unit: field.gaugeUnit,
		step: field.gaugeStep,
		topOfScale: field.topOfScale,
		relativeUncertaintyPct: z.optional(field.relativeUncertaintyPct),
		zero: z.optional(field.gaugeZero),
		zeroUncertainty: z.optional(field.zeroUncertainty),
		nudge: z.optional(field.nudge),
		setAnew: z.optional(field.setAnew),
	},
	{anyOf: [{required: ['zero']}, {not: {required: ['zeroUncertainty']}}]},
);

const trackingForce = part(
	'a group of keys about the tracking force: in play, and as weighed for the probe',
	{
		playingMn: field.playingForceMn,
		scaleReadingMn: field.scaleReadingMn,
		guard: field.guardHandling,
		guardMassG: z.optional(field.guardMassG),
		relativeUncertaintyPct: z.optional(field.relativeUncertaintyPct),
	},
	{anyOf: [{properties: {guard: {enum: ['included', 'none']}}}, {required: ['guardMassG']}]},
);

const level = part('a group of keys about the level, read in both directions; left out when it was not read', {
	stepDeg: field.levelStepDeg,
	leftRightDeg: field.tiltReadingsDeg,
	frontBackDeg: field.tiltReadingsDeg,
});

const clearance = part('a group of keys about the height of the stylus during the probe', {
	stylusMm: field.stylusClearanceMm,
	matRemovedMm: z.optional(field.matRemovedMm),
	guardDepthMm: z.optional(field.guardDepthMm),
});

const cartridge = part('a group of keys about the cartridge', {
	staticComplianceUmPerMn: z.optional(field.staticComplianceUmPerMn),
	cantileverMm: z.optional(field.cantileverMm),
});

const limits = part('a group of limits in percent of the tracking force; those left out are the usual ones', {
	pullGoodPct: z.optional(field.pullGoodPct),
	pullUsablePct: z.optional(field.pullUsablePct),
	bandGoodPct: z.optional(field.bandGoodPct),
	bandUsablePct: z.optional(field.bandUsablePct),
});

const round = part('a round with its inner and its outer limit', {
	innerLimit: field.innerLimit,
	outerLimit: field.outerLimit,
});
const rounds = listOf('a list of at least one round', round, 1);

const probeRound = part('a round with its inner and its outer limit', {
	innerLimit: field.innerLimit,
	outerLimit: field.outerLimit,
	gauge: z.optional(field.gaugeTurned),
	closing: z.optional(field.closing),
});

const probe = listOf(
	'a list of probe radii: exactly one inner, exactly one outer, and any others',
	part('a probe radius with its rounds', {
		place: field.placeName,
		radiusMm: field.radiusMm,
		rounds: listOf('a list of at least one round as used', probeRound, 1),
	}),
	1,
);

const bias = part('a group of keys about the bias device, and readings with it on', {
	device: field.biasDevice,
	effectiveDrag: z.optional(field.effectiveDrag),
	readings: z.optional(
		listOf(
			'a list of at least two radii read with the bias on',
			part('a radius with its rounds read with the bias on', {
				radiusMm: field.radiusMm,
				rounds,
				leverClock: z.optional(field.leverClock),
			}),
			2,
		),
	),
});

/** The shape of a compute document: strict, every key known. Rules across fields are in `cross-field-faults.ts`. */
export const documentSchema = part('a document with at least arm, gauge, trackingForce and probe', {
	arm,
	gauge,
	trackingForce,
	level: z.optional(level),
	clearance: z.optional(clearance),
	cartridge: z.optional(cartridge),
	probe,
	limits: z.optional(limits),
	bias: z.optional(bias),
});

/** One series of a check as numbers: everything that the figures are worked out from. */
export type Document = z.infer<typeof documentSchema>;
export type ProbeRadius = Document['probe'][number];
export type PlaceName = ProbeRadius['place'];
