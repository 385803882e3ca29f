import limits from '../../shared/limits.json' with {type: 'json'};
import {radiusProblem} from './geometry.js';
import {type Step, step} from './step.js';

/** Where the rounds are taken; kept with the arm. */
export const radiusSteps: readonly Step[] = [
	step('radius-inner', {
		stage: 'arm',
		input: {kind: 'number', unit: 'mm', between: [50, 110]},
		suggest: (facts) =>
			String((facts.is('arm-auto-stop', 'yes') ? limits.linkageInnerRadiusMm : limits.innerRadiusMm).value),
		verify: (facts) => radiusProblem('inner', facts),
		touches: ['rounds'],
	}),
	step('radius-outer', {
		stage: 'arm',
		input: {kind: 'number', unit: 'mm', between: [90, 160]},
		suggest: () => String(limits.outerRadiusMm.value),
		verify: (facts) => radiusProblem('outer', facts),
		touches: ['rounds'],
	}),
	step('radius-extra', {
		stage: 'arm',
		input: {kind: 'number', unit: 'mm', between: [50, 160], optional: true},
		verify: (facts) => radiusProblem('extra', facts),
		touches: ['rounds'],
	}),
];
