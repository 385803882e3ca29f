import limits from '../../shared/limits.json' with {type: 'json'};
import {isBelow, isWithin} from '../measures/compare.js';
import {type ArmGeometry, reaches, reachMm} from '../measures/geometry.js';
import type {Facts} from './facts.js';
import {pivotPlaces} from './pivot-places.js';
import type {OffPlace} from './places.js';
import type {Problem, Trouble, Way, WayId} from './problem.js';
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

export type ProbePlace = {readonly place: 'inner' | 'outer' | 'extra'; readonly radiusMm: number};

/** The radii at which this check probes, in the order in which they are probed. */
export const probeRadii = (facts: Facts): readonly ProbePlace[] =>
	(['inner', 'outer', 'extra'] as const).flatMap((place) => {
		const radiusMm = facts.number(`radius-${place}`);
		return radiusMm === undefined ? [] : [{place, radiusMm}];
	});

/** Where the rounds of a place without bias are taken; the closing one is an inner one. */
export const offRadiusMm = (facts: Facts, place: OffPlace): number | undefined =>
	facts.number(`radius-${place === 'closing' ? 'inner' : place}`);

const wayTo = (id: WayId, step: StepId): Way => ({id, do: 'ask-again', steps: [step]});

/** An arm whose stylus cannot cross a record. */
export function armProblem(facts: Facts): Problem | undefined {
	const arm = armOf(facts);
	if (!arm || reaches(arm, middleOfRecordMm)) return;
	const [leastMm, mostMm] = reachMm(arm);
	return {
		id: 'never-crosses-record',
		values: {leastMm, mostMm},
		ways: [wayTo('correct-length', 'arm-length'), wayTo('correct-pivot', 'arm-pivot-distance')],
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
	const [leastMm, mostMm] = believablePivotMm;
	const trouble: Trouble = arm
		? {id: 'pivot-not-believable', values: {pivotMm: arm.pivotDistanceMm, leastMm, mostMm}}
		: {id: 'no-such-arm', values: {}};
	return {
		...trouble,
		ways: [
			wayTo('correct-other-null', 'arm-null-other'),
			wayTo('correct-null', 'arm-null-radius'),
			wayTo('correct-length', 'arm-length'),
			{id: 'measure-pivot', do: 'ask-again', steps: ['arm-pivot-distance']},
		],
	};
}

/** A radius in the middle of the recorded part of a 30 cm disc. */
const middleOfRecordMm = 100;

const corrections = {inner: 'correct-inner', outer: 'correct-outer', extra: 'correct-third'} as const;

/** A probe radius that cannot be probed, or not beside the others asked before it. */
export function radiusProblem(place: ProbePlace['place'], facts: Facts): Problem | undefined {
	const radiusMm = facts.number(`radius-${place}`);
	if (radiusMm === undefined) return;
	const own = wayTo(corrections[place], `radius-${place}`);
	const trouble = unreachable(radiusMm, facts) ?? clash(place, radiusMm, facts);
	if (trouble !== undefined)
		return {...trouble, ways: place === 'outer' ? [own, wayTo('correct-inner', 'radius-inner')] : [own]};
	const leastMm = limits.linkageInnerRadiusMm.value;
	if (place !== 'inner' || !facts.is('arm-auto-stop', 'yes') || !isBelow(radiusMm, leastMm)) return;
	return {
		id: 'stop-takes-hold',
		values: {leastMm},
		ways: [own, wayTo('correct-stop', 'arm-auto-stop')],
	};
}

function unreachable(radiusMm: number, facts: Facts): Trouble | undefined {
	const arm = armOf(facts);
	if (!arm || reaches(arm, radiusMm)) return;
	const [leastMm, mostMm] = reachMm(arm);
	return {id: 'radius-out-of-reach', values: {radiusMm, leastMm, mostMm}};
}

function clash(place: ProbePlace['place'], radiusMm: number, facts: Facts): Trouble | undefined {
	const inner = facts.number('radius-inner');
	const outer = facts.number('radius-outer');
	if (place === 'outer' && inner !== undefined && !isBelow(inner, radiusMm))
		return {id: 'outer-not-larger', values: {outerMm: radiusMm, innerMm: inner}};
	if (place === 'extra' && (radiusMm === inner || radiusMm === outer)) return {id: 'radius-taken', values: {radiusMm}};
	return;
}
