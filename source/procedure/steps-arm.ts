import limits from '../../shared/limits.json' with {type: 'json'};
import {armProblem, believablePivotMm, isWorkedOut, nullsProblem, pivotWayOf, radiusProblem} from './geometry.js';
import {problem, setTo, wayTo} from './problem.js';
import {type Step, stepsOf, withProfile} from './step.js';

const step = stepsOf('arm');

/** Believable null radii, mm: within the grooves of a record, with something to spare. */
const believableNullMm = [40, 150] as const;

/** What the pivot distance is worked out from where it was left empty; kept with the arm. */
const pivotSteps = [
	step('arm-pivot-way', {
		when: isWorkedOut,
		verify: (facts) =>
			pivotWayOf(facts) === 'offset' && facts.number('arm-offset') === undefined
				? problem(
						'offset-not-known',
						{},
						wayTo('type-offset', 'arm-offset'),
						setTo('from-both-nulls', 'arm-pivot-way', 'nulls'),
						wayTo('measure-pivot', 'arm-pivot-distance'),
					)
				: undefined,
		touches: ['arm-null-radius', 'radius-inner', 'radius-outer'],
	}),
	step('arm-null-radius', {
		input: {unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) !== undefined,
		touches: ['radius-inner', 'radius-outer'],
	}),
	step('arm-null-other', {
		input: {unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) === 'nulls',
		verify: nullsProblem,
		touches: ['radius-inner', 'radius-outer'],
	}),
];

/** Where the rounds are taken; kept with the arm. */
const radiusSteps = [
	step('radius-inner', {
		input: {unit: 'mm', between: [50, 110]},
		suggest: (facts) =>
			String((facts.is('arm-auto-stop', 'yes') ? limits.linkageInnerRadiusMm : limits.innerRadiusMm).value),
		verify: (facts) => radiusProblem('inner', facts),
		touches: ['rounds'],
	}),
	step('radius-outer', {
		input: {unit: 'mm', between: [90, 160]},
		suggest: () => String(limits.outerRadiusMm.value),
		verify: (facts) => radiusProblem('outer', facts),
		touches: ['rounds'],
	}),
	step('radius-extra', {
		input: {unit: 'mm', between: [50, 160], optional: true},
		verify: (facts) => radiusProblem('extra', facts),
		touches: ['rounds'],
	}),
];

const asked = [
	step('arm-name', {}),
	step('arm-serial', {input: {optional: true}}),
	step('arm-length', {
		input: {unit: 'mm', between: [120, 420]},
		touches: ['arm-pivot-distance'],
	}),
	step('arm-pivot-distance', {
		input: {unit: 'mm', between: believablePivotMm, optional: true},
		verify: armProblem,
		touches: ['radius-inner', 'radius-outer'],
	}),
	step('arm-offset', {
		values: (facts) => ({isWorkedOut: isWorkedOut(facts)}),
		input: {unit: 'deg', between: [0, 45], optional: true},
		touches: ['arm-null-radius'],
	}),
	...pivotSteps,
	step('arm-pivot-place', {}),
	step('arm-bearing', {}),
	step('arm-gravity-centre', {touches: ['rounds']}),
	step('arm-loading', {}),
	step('arm-auto-stop', {touches: ['radius-inner']}),
	// The wires are the usual cause of a pull that changes over the record.
	step('arm-wire-path', {}),
	step('arm-wire-stiffness', {}),
	step('arm-bias-device', {touches: ['bias-setting', 'bias-off', 'rounds']}),
	step('arm-damping', {touches: ['rounds']}),
	step('deck-sprung', {}),
	...radiusSteps,
];

/** The arm. Picked from the profiles with one key, or entered once. */
export const armSteps: readonly Step[] = withProfile(step('arm-profile', {input: {of: 'arm'}}), asked);
