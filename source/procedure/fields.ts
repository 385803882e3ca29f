/**
 * The fields that documents and saved checks are made of. Each carries one phrase that serves three times: as the
 * refusal ('Wanted: …'), as the description in the JSON Schema, and as documentation here.
 */
import * as z from 'zod/mini';
import defaults from '../../shared/limits.json' with {type: 'json'};
import {gaugeUnits} from '../units.js';
import {biasDeviceIds} from './bias-devices.js';

/** What a refusal says and a JSON Schema describes. */
export const worded = (phrase: string) => ({error: `Wanted: ${phrase}.`});

// Metadata sits on the last schema made, so each builder ends with it.
const described = (phrase: string) => z.describe(`${phrase.charAt(0).toUpperCase()}${phrase.slice(1)}.`);

const anyNumber = (phrase: string) => z.number(worded(phrase)).check(described(phrase));

const aboveZero = (what: string) => {
	const phrase = `${what}, above zero`;
	return z.number(worded(phrase)).check(z.gt(0, worded(phrase)), described(phrase));
};

const zeroOrMore = (what: string) => {
	const phrase = `${what}, zero or more`;
	return z.number(worded(phrase)).check(z.gte(0, worded(phrase)), described(phrase));
};

const oneOf = <const T extends readonly [string, ...string[]]>(what: string, ids: T) => {
	const phrase = `${what}: ${ids.map((id) => `"${id}"`).join(', ')}`;
	return z.enum(ids, worded(phrase)).check(described(phrase));
};

export const loadings = ['gravity', 'spring'] as const;
export const guardHandlings = ['included', 'left-out', 'none'] as const;
export const placeNames = ['inner', 'outer', 'other'] as const;

export const effectiveLengthMm = aboveZero('the effective length, pivot to stylus in plan, in mm');
export const pivotDistanceMm = aboveZero('the distance from pivot to spindle, in mm');
export const loading = oneOf('what makes the tracking force', loadings);
export const pivotDirectionDeg = anyNumber(
	'the direction of the pivot seen from the spindle, in degrees from the right, turning to the back; 45 when left out',
);

export const gaugeUnit = oneOf('the unit of the gauge', gaugeUnits);
export const gaugeStep = aboveZero("the smallest step read on the gauge, in the gauge's unit");
export const topOfScale = aboveZero("the end of the gauge's scale, where it no longer measures, in the gauge's unit");
export const relativeUncertaintyPct = zeroOrMore(
	'the relative standard uncertainty in percent (a ± divided by √3); 0 when left out',
);
export const gaugeZero = anyNumber(
	"what the gauge shows with nothing pushing it, in the gauge's unit; left out where nobody looked, or the gauge was turned",
);
export const zeroUncertainty = zeroOrMore(
	"the standard uncertainty of the gauge's zero, in its unit; 0 when left out, only with a zero",
);
export const nudge = zeroOrMore("the size of one nudge, in the gauge's unit; 0 when left out");

const setAnewPhrase = 'true where arm and gauge were set up anew between rounds, else false; false when left out';
export const setAnew = z.boolean(worded(setAnewPhrase)).check(described(setAnewPhrase));

const turnedPhrase =
	'"turned" for a round with the gauge turned end for end, its limits in the sign of the gauge; left out as used';
export const gaugeTurned = z.literal('turned', worded(turnedPhrase)).check(described(turnedPhrase));
const closingPhrase = 'true for the round that was taken last, to see whether something moved; else left out';
export const closing = z.literal(true, worded(closingPhrase)).check(described(closingPhrase));

export const playingForceMn = aboveZero('the tracking force in play, in mN');
export const scaleReadingMn = zeroOrMore(
	'what the stylus scale showed, in mN; 0 for a floated arm, with an mN or gf gauge only',
);
export const guardHandling = oneOf('how the stylus guard was weighed', guardHandlings);
export const guardMassG = zeroOrMore('the mass of the stylus guard, in g; needed when the guard was left out');

export const levelStepDeg = zeroOrMore('the smallest step read on the level, in degrees');
const tiltPhrase = "a reading in the level's own scale, in degrees, under 45 either way";
export const tiltDeg = z
	.number(worded(tiltPhrase))
	.check(z.gt(-45, worded(tiltPhrase)), z.lt(45, worded(tiltPhrase)), described(tiltPhrase));
const tiltPairPhrase = 'a list of one reading of the level, or two with the level turned round in between';
export const tiltReadingsDeg = z
	.array(tiltDeg, worded(tiltPairPhrase))
	.check(z.minLength(1, worded(tiltPairPhrase)), z.maxLength(2, worded(tiltPairPhrase)), described(tiltPairPhrase));

export const stylusClearanceMm = zeroOrMore('the height of the stylus above the surface under it, in mm');
export const matRemovedMm = zeroOrMore('the thickness of the mat taken off, in mm; 0 when left out');
export const guardDepthMm = zeroOrMore('how far the guard hangs below the stylus, in mm');

export const staticComplianceUmPerMn = aboveZero('the static lateral compliance, in µm/mN');
export const cantileverMm = aboveZero('the length of the cantilever, in mm');

export const placeName = oneOf('the place of the probe', placeNames);
export const radiusMm = aboveZero('the distance from spindle to stylus, in mm');
export const innerLimit = anyNumber(
	"the reading at the innermost place where the arm still holds, in the gauge's unit, positive toward the rim",
);
export const outerLimit = anyNumber(
	"the reading at the outermost place where the arm still holds, in the gauge's unit, positive toward the rim",
);

export const pullGoodPct = aboveZero('the largest good side pull, in percent of the tracking force');
export const pullUsablePct = aboveZero('the largest usable side pull, in percent of the tracking force');
export const bandGoodPct = aboveZero('the widest good hold band, in percent of the tracking force');
export const bandUsablePct = aboveZero('the widest usable hold band, in percent of the tracking force');

const [firstDevice = 'none', ...otherDevices] = biasDeviceIds;
export const biasDevice = oneOf('the kind of bias device', [firstDevice, ...otherDevices]);
const dragPhrase = `the effective drag, groove drag over tracking force, from ${defaults.effectiveDragLeast.value} to ${defaults.effectiveDragMost.value}; ${defaults.effectiveDrag.value} when left out`;
export const effectiveDrag = z
	.number(worded(dragPhrase))
	.check(
		z.gte(defaults.effectiveDragLeast.value, worded(dragPhrase)),
		z.lte(defaults.effectiveDragMost.value, worded(dragPhrase)),
		described(dragPhrase),
	);
const clockPhrase =
	'the place of the lever as a clock time from 1:00 to 12:59, such as "8:30"; only with a weighted lever';
export const leverClock = z
	.string(worded(clockPhrase))
	.check(z.regex(/^(?:[1-9]|1[0-2]):[0-5]\d$/, worded(clockPhrase)), described(clockPhrase));
