import limits from '../../shared/limits.json' with {type: 'json'};
import {isBelow, isWithin} from '../measures/compare.js';
import {type ArmGeometry, reaches, reachMm} from '../measures/geometry.js';
import {armFromNulls, armFromOffset, type LaidOutArm} from '../measures/layouts.js';
import type {Facts} from './facts.js';
import type {OffPlace} from './places.js';
import {type Problem, problem, type Trouble, wayTo} from './problem.js';
import {answerKinds, type OptionOf} from './step-ids.js';

/** The pivot distance was left empty, so it is worked out. */
export const isWorkedOut = (facts: Facts): boolean => facts.unknown('arm-pivot-distance');

/** How it is worked out where it was not measured: the way that was chosen. */
export const pivotWayOf = (facts: Facts): OptionOf<'arm-pivot-way'> | undefined =>
	isWorkedOut(facts) ? answerKinds['arm-pivot-way'].find((way) => facts.is('arm-pivot-way', way)) : undefined;

/**
 * The arm from effective length and null radii, or offset angle and one null radius: undefined while one of them is
 * missing, null where no arm can be like that.
 */
export function workedOutArm(facts: Facts): LaidOutArm | null | undefined {
	const way = pivotWayOf(facts);
	const lengthMm = facts.number('arm-length');
	const nullMm = facts.number('arm-null-radius');
	if (way === undefined || lengthMm === undefined || nullMm === undefined) return;
	if (way === 'nulls') {
		const otherMm = facts.number('arm-null-other');
		return otherMm === undefined ? undefined : armFromNulls(lengthMm, [nullMm, otherMm]);
	}
	const offsetDeg = facts.number('arm-offset');
	return offsetDeg === undefined ? undefined : armFromOffset(lengthMm, offsetDeg, nullMm);
}

/** The offset angle in degrees: what goes with both null radii, else as it was typed. */
export const offsetOf = (facts: Facts): number | undefined =>
	(pivotWayOf(facts) === 'nulls' ? workedOutArm(facts)?.offsetDeg : undefined) ?? facts.number('arm-offset');

/** Length and pivot distance, once both are known; the pivot distance as it was typed or, left empty, worked out. */
export function armOf(facts: Facts): ArmGeometry | undefined {
	const effectiveLengthMm = facts.number('arm-length');
	const pivotDistanceMm = facts.number('arm-pivot-distance') ?? workedOutArm(facts)?.pivotDistanceMm;
	if (effectiveLengthMm === undefined || pivotDistanceMm === undefined) return;
	return {effectiveLengthMm, pivotDistanceMm};
}

/** Where the pivot stands, seen from the spindle by someone in front of the deck; degrees anticlockwise from 'right', from above. */
export const pivotPlaces = [
	{id: 'right-rear', degrees: 45},
	{id: 'right', degrees: 0},
	{id: 'rear', degrees: 90},
	{id: 'left-rear', degrees: 135},
	{id: 'left', degrees: 180},
	{id: 'left-front', degrees: 225},
	{id: 'front', degrees: 270},
	{id: 'right-front', degrees: 315},
] as const satisfies readonly {readonly id: OptionOf<'arm-pivot-place'>; readonly degrees: number}[];

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

/** An arm whose stylus cannot cross a record. */
export function armProblem(facts: Facts): Problem | undefined {
	const arm = armOf(facts);
	if (!arm || reaches(arm, middleOfRecordMm)) return;
	const [leastMm, mostMm] = reachMm(arm);
	return problem(
		'never-crosses-record',
		{leastMm, mostMm},
		wayTo('correct-length', 'arm-length'),
		wayTo('correct-pivot', 'arm-pivot-distance'),
	);
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
	const ways = [
		wayTo('correct-other-null', 'arm-null-other'),
		wayTo('correct-null', 'arm-null-radius'),
		wayTo('correct-length', 'arm-length'),
		wayTo('measure-pivot', 'arm-pivot-distance'),
	];
	if (!arm) return problem('no-such-arm', {}, ...ways);
	return problem('pivot-not-believable', {pivotMm: arm.pivotDistanceMm, leastMm, mostMm}, ...ways);
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
	return problem('stop-takes-hold', {leastMm}, own, wayTo('correct-stop', 'arm-auto-stop'));
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
