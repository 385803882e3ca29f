import limits from '../../shared/limits.json' with {type: 'json'};
import {isBelow, isWithin} from '../measures/compare.js';
import {type ArmGeometry, reaches, reachMm} from '../measures/geometry.js';
import {formatIn} from '../units.js';
import type {Facts} from './facts.js';
import {pivotPlaces} from './pivot-places.js';
import type {OffPlace} from './places.js';
import type {Problem, Way} from './step.js';
import type {StepId} from './step-ids.js';
import {workedOutArm} from './worked-out-arm.js';

/** Length and pivot distance, once both are known; the pivot distance as it was typed or, left empty, worked out. */
export function armOf(facts: Facts): ArmGeometry | undefined {
	const effectiveLengthMm = facts.number('arm-length');
	const pivotDistanceMm = facts.number('arm-pivot-distance') ?? workedOutArm(facts)?.pivotDistanceMm;
	if (effectiveLengthMm === undefined || pivotDistanceMm === undefined) return;
	return {effectiveLengthMm, pivotDistanceMm};
}

/** Direction of the pivot from the spindle, degrees anticlockwise from the right. */
export const pivotDirectionDeg = (facts: Facts): number =>
	pivotPlaces.find(({id}) => facts.is('arm-pivot-place', id))?.degrees ?? limits.pivotDirectionDeg.value;

export type ProbeRadius = {readonly place: 'inner' | 'outer' | 'extra'; readonly radiusMm: number};

/** The radii at which this check probes, in the order in which they are probed. */
export const probeRadii = (facts: Facts): readonly ProbeRadius[] =>
	(['inner', 'outer', 'extra'] as const).flatMap((place) => {
		const radiusMm = facts.number(`radius-${place}`);
		return radiusMm === undefined ? [] : [{place, radiusMm}];
	});

/** Where the rounds of a place without bias are taken; the closing one is an inner one. */
export const offRadiusMm = (facts: Facts, place: OffPlace): number | undefined =>
	facts.number(`radius-${place === 'closing' ? 'inner' : place}`);

const wayTo = (id: StepId, name: string): Way => ({label: `correct the ${name}`, do: 'ask-again', steps: [id]});
const reachText = ([least, most]: readonly [number, number]): string =>
	`from ${least.toFixed(1)} to ${most.toFixed(1)} mm`;

/** An arm whose stylus cannot cross a record. */
export function armProblem(facts: Facts): Problem | undefined {
	const arm = armOf(facts);
	if (!arm || reaches(arm, middleOfRecordMm)) return;
	return {
		sentence: `With these lengths the stylus reaches only radii ${reachText(reachMm(arm))}: it never crosses the record.`,
		ways: [wayTo('arm-length', 'effective length'), wayTo('arm-pivot-distance', 'pivot distance')],
	};
}

/** Believable pivot distances, mm. */
export const believablePivotMm = [80, 450] as const;

/**
 * Two null radii that give no pivot distance, or none to be believed. The offset angle and one null radius always give
 * one: within what is believed of them it lies from 84.8 to 446 mm, by the law of cosines.
 */
export function nullsProblem(facts: Facts): Problem | undefined {
	const arm = workedOutArm(facts);
	if (arm === undefined || (arm && isWithin(arm.pivotDistanceMm, believablePivotMm))) return;
	const [least, most] = believablePivotMm;
	return {
		sentence: arm
			? `The pivot distance would come out as ${formatIn(arm.pivotDistanceMm, 'mm')}; ${least} to ${most} mm is believable.`
			: 'No arm of this effective length has these two null radii.',
		ways: [
			wayTo('arm-null-other', 'other null radius'),
			wayTo('arm-null-radius', 'first null radius'),
			wayTo('arm-length', 'effective length'),
			{label: 'measure the pivot distance', do: 'ask-again', steps: ['arm-pivot-distance']},
		],
	};
}

/** A radius in the middle of the recorded part of a 30 cm disc. */
const middleOfRecordMm = 100;

const radiusNames = {inner: 'inner radius', outer: 'outer radius', extra: 'third radius'} as const;

/** A probe radius that cannot be probed, or not beside the others asked before it. */
export function radiusProblem(place: ProbeRadius['place'], facts: Facts): Problem | undefined {
	const radiusMm = facts.number(`radius-${place}`);
	if (radiusMm === undefined) return;
	const own = wayTo(`radius-${place}`, radiusNames[place]);
	const sentence = unreachable(radiusMm, facts) ?? clash(place, radiusMm, facts);
	if (sentence !== undefined)
		return {sentence, ways: place === 'outer' ? [own, wayTo('radius-inner', 'inner radius')] : [own]};
	const leastMm = limits.linkageInnerRadiusMm.value;
	if (place !== 'inner' || !facts.is('arm-auto-stop', 'yes') || !isBelow(radiusMm, leastMm)) return;
	return {
		sentence: `The automatic stop takes hold of the arm inside ${leastMm} mm; choose ${leastMm} mm or more.`,
		ways: [own, wayTo('arm-auto-stop', 'automatic stop')],
	};
}

function unreachable(radiusMm: number, facts: Facts): string | undefined {
	const arm = armOf(facts);
	if (!arm || reaches(arm, radiusMm)) return;
	return `The stylus does not reach a radius of ${formatIn(radiusMm, 'mm')}: this arm reaches ${reachText(reachMm(arm))}.`;
}

function clash(place: ProbeRadius['place'], radiusMm: number, facts: Facts): string | undefined {
	const inner = facts.number('radius-inner');
	const outer = facts.number('radius-outer');
	if (place === 'outer' && inner !== undefined && !isBelow(inner, radiusMm))
		return `The outer radius (${formatIn(radiusMm, 'mm')}) must be larger than the inner one (${formatIn(inner, 'mm')}).`;
	if (place === 'extra' && (radiusMm === inner || radiusMm === outer))
		return `There is a probe at ${formatIn(radiusMm, 'mm')} already; choose another radius.`;
	return;
}
