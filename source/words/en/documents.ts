import limits from '../../../shared/limits.json' with {type: 'json'};
import type {FaultValues} from '../../results/document.js';
import type {DocumentKey} from '../../results/document-schema.js';
import type {Sentences} from '../../said.js';
import {escaped} from '../../visible-text.js';
import {plural} from '../numbers.js';

const longest = 60;

/** A value of a JSON document as one short piece of a sentence. */
const shownValue = (value: unknown): string => {
	if (value === undefined) return 'nothing';
	if (typeof value === 'number') return String(value);
	if (Array.isArray(value)) return plural(value.length, {one: 'a list of 1', other: `a list of ${value.length}`});
	if (typeof value === 'object' && value !== null) return 'a group of keys';
	const text = escaped(JSON.stringify(value) ?? String(value));
	return text.length > longest ? `${text.slice(0, longest)}…` : text;
};

const innerLimit = "the last reading that held, nudged inward, in the gauge's unit, positive toward the rim";
const outerLimit = "the last reading that held, nudged outward, in the gauge's unit, positive toward the rim";
const round = 'a round with its inner and its outer limit';
const radiusMm = 'the distance from spindle to stylus, in mm, above zero';
const tilt = "a reading in the level's own scale, in degrees, under 45 either way";
const tilts = 'a list of one reading of the level, or two with the level turned round between them';
const relativeUncertaintyPct =
	'the relative standard uncertainty in percent (a ± divided by √3), zero or more; 0 when left out';

/** What is wanted at each key: in the middle of a sentence. Where only some values are taken, they are told after it. */
const wanted: Readonly<Record<DocumentKey, string>> = {
	'': 'a document with at least arm, gauge, trackingForce and probe',
	arm: 'a group of keys about the arm: its geometry and what makes its tracking force',
	'arm.effectiveLengthMm': 'the effective length, pivot to stylus seen from above, in mm, above zero',
	'arm.pivotDistanceMm': 'the distance from spindle to pivot, seen from above, in mm, above zero',
	'arm.loading': 'what makes the tracking force',
	'arm.pivotDirectionDeg':
		'the direction from spindle to pivot, in degrees from the right, turning to the back; 45 when left out',
	gauge: 'a group of keys about the gauge, in its own unit but for relativeUncertaintyPct and setAnew',
	'gauge.unit': 'the unit of the gauge',
	'gauge.step': "the smallest step read on the gauge, in the gauge's unit, above zero",
	'gauge.topOfScale': "the end of the gauge's scale, where it no longer measures, in the gauge's unit, above zero",
	'gauge.relativeUncertaintyPct': relativeUncertaintyPct,
	'gauge.zero':
		'what the gauge shows when nothing touches it, in its unit; left out when not read, or with turned rounds',
	'gauge.zeroUncertainty':
		"the standard uncertainty of the zero, in the gauge's unit, zero or more; 0 when left out, only with zero",
	'gauge.nudge': "the size of one nudge, in the gauge's unit, zero or more; 0 when left out",
	'gauge.setAnew': 'true where arm and gauge were set up again between rounds, else false; false when left out',
	trackingForce: 'a group of keys about the tracking force: as played, and as weighed for the probe',
	'trackingForce.playingMn': 'the playing force, in mN, above zero',
	'trackingForce.scaleReadingMn':
		'what the stylus scale showed, in mN, zero or more; 0 (arm floated) only with an mN or gf gauge',
	'trackingForce.guard': 'how the guard was weighed',
	'trackingForce.guardMassG': 'the mass of the guard, in g, zero or more; needed when the guard was left out',
	'trackingForce.relativeUncertaintyPct': relativeUncertaintyPct,
	level: 'a group of keys about the level, read in both directions; left out when it was not read',
	'level.stepDeg': 'the smallest step read on the level, in degrees, zero or more',
	'level.leftRightDeg': tilts,
	'level.leftRightDeg[]': tilt,
	'level.frontBackDeg': tilts,
	'level.frontBackDeg[]': tilt,
	clearance: 'a group of keys about the height of the stylus during the probe',
	'clearance.stylusMm': 'the height of the stylus above the surface under it, in mm, zero or more',
	'clearance.matRemovedMm': 'the thickness of the mat taken off, in mm, zero or more; 0 when left out',
	'clearance.guardDepthMm': 'how far the guard hangs below the stylus, in mm, zero or more',
	cartridge: 'a group of keys about the cartridge',
	'cartridge.staticComplianceUmPerMn': 'the static lateral compliance, in µm/mN, above zero',
	'cartridge.cantileverMm': 'the length of the cantilever, in mm, above zero',
	probe: 'a list of radii: exactly one inner, exactly one outer, and any others',
	'probe[]': 'a radius with its rounds',
	'probe[].place': 'the place of the probe',
	'probe[].radiusMm': radiusMm,
	'probe[].rounds': 'a list of at least one round with the gauge as used',
	'probe[].rounds[]': round,
	'probe[].rounds[].innerLimit': innerLimit,
	'probe[].rounds[].outerLimit': outerLimit,
	'probe[].rounds[].gauge':
		'"turned" for a turned round, its limits in the sign of the gauge; left out for the gauge as used',
	'probe[].rounds[].closing': 'true for the closing round, which shows whether something moved; else left out',
	limits: 'a group of limits in percent of the tracking force; those left out are the usual ones',
	'limits.pullGoodPct': 'the largest good pull, in percent of the tracking force, above zero',
	'limits.pullUsablePct': 'the largest usable pull, in percent of the tracking force, above zero',
	'limits.bandGoodPct': 'the most friction that is good, in percent of the tracking force, above zero',
	'limits.bandUsablePct': 'the most friction that is usable, in percent of the tracking force, above zero',
	bias: 'a group of keys about the bias device, and readings with it on',
	'bias.device': 'the kind of bias device',
	'bias.effectiveDrag': `the effective drag, groove drag over tracking force, from ${limits.effectiveDragLeast.value} to ${limits.effectiveDragMost.value}; ${limits.effectiveDrag.value} when left out`,
	'bias.readings': 'a list of at least two radii read with the bias on',
	'bias.readings[]': 'a radius with its rounds read with the bias on',
	'bias.readings[].radiusMm': radiusMm,
	'bias.readings[].rounds': 'a list of at least one round',
	'bias.readings[].rounds[]': round,
	'bias.readings[].rounds[].innerLimit': innerLimit,
	'bias.readings[].rounds[].outerLimit': outerLimit,
	'bias.readings[].leverClock':
		'where the lever stands, as a clock time from 1:00 to 12:59 ("8:30"); only with a weighted lever',
};

/** What is wanted at a key, and of which values it takes one; a single one is told in its words already. */
const wantedAt = (key: DocumentKey, oneOf: readonly unknown[]): string =>
	`${wanted[key]}${oneOf.length < 2 ? '' : `, one of ${oneOf.map((one) => `"${one}"`).join(', ')}`}.`;

const faults: Sentences<FaultValues> = {
	shape: ({found, key, oneOf}) => `Found ${shownValue(found)}. Wanted: ${wantedAt(key, oneOf)}`,
	'unknown-key': ({found}) => `Found ${shownValue(found)}. Wanted: no such key.`,
	'usable-below-good': ({figure, usable, good}) =>
		`Found ${usable}, below ${figure}GoodPct ${good}. Wanted: usable at least as large as good.`,
	'uncertainty-without-zero': ({zeroUncertainty}) => `Found ${zeroUncertainty} without a zero. Wanted: the zero too.`,
	'zero-beside-turned': ({zero}) =>
		`Found ${zero} beside rounds with the gauge turned. Wanted: one of the two, because those rounds show the zero.`,
	'nothing-carried': ({scaleReadingMn}) =>
		`Found ${scaleReadingMn} with a percent gauge, which carries the arm. Wanted: what the stylus scale showed, above zero.`,
	'guard-mass-missing': () => 'Found nothing. Wanted: the mass of the guard in g, because it was weighed without.',
	'place-twice': ({place}) => `Found a second "${place}". Wanted: exactly one of each place.`,
	'place-missing': ({place}) => `Found no "${place}" radius. Wanted: exactly one.`,
	'out-of-reach': (values) =>
		`Found ${values.radiusMm} mm, out of reach with effectiveLengthMm ${values.effectiveLengthMm} and pivotDistanceMm ${values.pivotDistanceMm}. Wanted: a radius between ${values.leastMm} and ${values.mostMm} mm.`,
	'radius-twice': (values) => `Found ${values.radiusMm} mm a second time. Wanted: each radius once.`,
	'limits-crossed': (values) =>
		`Found ${values.innerLimit}, above the outer limit ${values.outerLimit}. Wanted: an inner limit no higher than the outer one.`,
	'turned-limits-crossed': (values) =>
		`Found ${values.innerLimit}, below the outer limit ${values.outerLimit}. Wanted: with the gauge turned, an inner limit no lower than the outer one.`,
	'turned-without-used': () => 'Found "turned". Wanted: a round with the gauge as used at this radius too.',
	'turned-at-two-radii': () => 'Found "turned". Wanted: turned rounds at one radius only.',
	'closing-turned': () => 'Found true. Wanted: a closing round with the gauge as used.',
	'closing-twice': () => 'Found true. Wanted: one closing round in all.',
	'closing-alone': () => 'Found true. Wanted: another round with the gauge as used at its radius.',
	'inner-outside-outer': ({innerMm, outerMm}) =>
		`Found ${innerMm} mm, outside the outer radius of ${outerMm} mm. Wanted: an inner radius smaller than the outer one.`,
	'clock-without-lever': ({leverClock, device}) =>
		`Found "${leverClock}" with the device "${device}". Wanted: no lever place without a weighted lever.`,
};

/** The document of figures: what is wanted at its keys, and what is wrong with one. */
export const documents = {
	shownValue,
	title: 'armdrift compute document',
	/** What a JSON Schema says of a key. */
	description: (key: DocumentKey, oneOf: readonly unknown[]): string => {
		const text = wantedAt(key, oneOf);
		return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
	},
	faults,
};
