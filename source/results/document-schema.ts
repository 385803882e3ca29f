import * as z from 'zod/mini';
import defaults from '../../shared/limits.json' with {type: 'json'};
import {biasDeviceIds} from '../procedure/bias-devices.js';
import {gaugeUnits} from '../units.js';

// What one key asks of another is beyond the shape, but a JSON Schema can say it.
const withCondition = (...anyOf: readonly object[]) => z.meta({anyOf});

const aboveZero = () => z.number().check(z.gt(0));
const zeroOrMore = () => z.number().check(z.gte(0));
const optional = {
	aboveZero: () => z.optional(aboveZero()),
	zeroOrMore: () => z.optional(zeroOrMore()),
	number: () => z.optional(z.number()),
};

const arm = z.strictObject({
	effectiveLengthMm: aboveZero(),
	pivotDistanceMm: aboveZero(),
	loading: z.enum(['gravity', 'spring']),
	pivotDirectionDeg: optional.number(),
});

/** All but relativeUncertaintyPct and setAnew in the gauge's own unit. */
const gauge = z
	.strictObject({
		unit: z.enum(gaugeUnits),
		step: aboveZero(),
		topOfScale: aboveZero(),
		relativeUncertaintyPct: optional.zeroOrMore(),
		zero: optional.number(),
		zeroUncertainty: optional.zeroOrMore(),
		nudge: optional.zeroOrMore(),
		setAnew: z.optional(z.boolean()),
	})
	.check(withCondition({required: ['zero']}, {not: {required: ['zeroUncertainty']}}));

const trackingForce = z
	.strictObject({
		playingMn: aboveZero(),
		scaleReadingMn: zeroOrMore(),
		guard: z.enum(['included', 'left-out', 'none']),
		guardMassG: optional.zeroOrMore(),
		relativeUncertaintyPct: optional.zeroOrMore(),
	})
	.check(withCondition({properties: {guard: {enum: ['included', 'none']}}}, {required: ['guardMassG']}));

const tiltReadingsDeg = () => z.array(z.number().check(z.gt(-45), z.lt(45))).check(z.minLength(1), z.maxLength(2));

const level = z.strictObject({
	stepDeg: zeroOrMore(),
	leftRightDeg: tiltReadingsDeg(),
	frontBackDeg: tiltReadingsDeg(),
});

const clearance = z.strictObject({
	stylusMm: zeroOrMore(),
	matRemovedMm: optional.zeroOrMore(),
	guardDepthMm: optional.zeroOrMore(),
});

const cartridge = z.strictObject({
	staticComplianceUmPerMn: optional.aboveZero(),
	cantileverMm: optional.aboveZero(),
});

const limits = z.strictObject({
	pullGoodPct: optional.aboveZero(),
	pullUsablePct: optional.aboveZero(),
	bandGoodPct: optional.aboveZero(),
	bandUsablePct: optional.aboveZero(),
});

const round = {innerLimit: z.number(), outerLimit: z.number()};

const probe = z
	.array(
		z.strictObject({
			place: z.enum(['inner', 'outer', 'other']),
			radiusMm: aboveZero(),
			rounds: z
				.array(
					z.strictObject({
						...round,
						gauge: z.optional(z.literal('turned')),
						closing: z.optional(z.literal(true)),
					}),
				)
				.check(z.minLength(1)),
		}),
	)
	.check(z.minLength(1));

const [firstDevice = 'none', ...otherDevices] = biasDeviceIds;

const biasReadings = z
	.array(
		z.strictObject({
			radiusMm: aboveZero(),
			rounds: z.array(z.strictObject(round)).check(z.minLength(1)),
			leverClock: z.optional(z.string().check(z.regex(/^(?:[1-9]|1[0-2]):[0-5]\d$/))),
		}),
	)
	.check(z.minLength(2));

const bias = z.strictObject({
	device: z.enum([firstDevice, ...otherDevices]),
	effectiveDrag: z.optional(
		z.number().check(z.gte(defaults.effectiveDragLeast.value), z.lte(defaults.effectiveDragMost.value)),
	),
	readings: z.optional(biasReadings),
});

/**
 * The shape of a compute document: strict, every key known. Rules across fields are in `cross-field-faults.ts`; what is
 * wanted at each key, with its unit, stands in `words/en/documents.ts` by its {@link DocumentKey}.
 */
export const documentSchema = z.strictObject({
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
export type ProbedRadius = Document['probe'][number];
export type PlaceName = ProbedRadius['place'];

type KeyIn<Value, Key extends string> =
	| Key
	| (Value extends readonly (infer Item)[]
			? KeyIn<Item, `${Key}[]`>
			: Value extends object
				? {
						[Name in keyof Value & string]-?: KeyIn<NonNullable<Value[Name]>, Key extends '' ? Name : `${Key}.${Name}`>;
					}[keyof Value & string]
				: never);

/** Where something stands in a document, whatever its number in a list: `probe[].rounds[].innerLimit`; the whole is ''. */
export type DocumentKey = KeyIn<Document, ''>;
