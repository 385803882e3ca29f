import {armProblem, believablePivotMm} from './geometry.js';
import {type Step, step} from './step.js';
import {pivotSteps} from './steps-pivot.js';
import {radiusSteps} from './steps-radii.js';
import {withProfile} from './with-profile.js';
import {isWorkedOut} from './worked-out-arm.js';

const asked = [
	step('arm-name', {stage: 'arm', input: {kind: 'text'}}),
	step('arm-serial', {stage: 'arm', input: {kind: 'text', optional: true}}),
	step('arm-length', {
		stage: 'arm',
		input: {kind: 'number', unit: 'mm', between: [120, 420]},
		touches: ['arm-pivot-distance'],
	}),
	step('arm-pivot-distance', {
		stage: 'arm',
		input: {kind: 'number', unit: 'mm', between: believablePivotMm, optional: true},
		verify: armProblem,
		touches: ['radius-inner', 'radius-outer'],
	}),
	step('arm-offset', {
		stage: 'arm',
		values: (facts) => ({isWorkedOut: isWorkedOut(facts)}),
		input: {kind: 'number', unit: 'deg', between: [0, 45], optional: true},
		touches: ['arm-null-radius'],
	}),
	...pivotSteps,
	step('arm-pivot-place', {stage: 'arm', input: {kind: 'choice'}}),
	step('arm-bearing', {stage: 'arm', input: {kind: 'choice'}}),
	step('arm-gravity-centre', {
		stage: 'arm',
		input: {kind: 'choice'},
		touches: ['rounds'],
	}),
	step('arm-loading', {stage: 'arm', input: {kind: 'choice'}}),
	step('arm-auto-stop', {
		stage: 'arm',
		input: {kind: 'choice'},
		touches: ['radius-inner'],
	}),
	// The wires are the usual cause of a pull that changes over the record.
	step('arm-wire-path', {stage: 'arm', input: {kind: 'choice'}}),
	step('arm-wire-stiffness', {stage: 'arm', input: {kind: 'choice'}}),
	step('arm-bias-device', {
		stage: 'arm',
		input: {kind: 'choice'},
		touches: ['bias-setting', 'bias-off', 'rounds'],
	}),
	step('arm-damping', {
		stage: 'arm',
		input: {kind: 'choice'},
		touches: ['rounds'],
	}),
	step('deck-sprung', {stage: 'arm', input: {kind: 'choice'}}),
	...radiusSteps,
];

/** The arm. Picked from the profiles with one key, or entered once. */
export const armSteps: readonly Step[] = withProfile(
	step('arm-profile', {stage: 'arm', input: {kind: 'profile', of: 'arm'}}),
	asked,
);
