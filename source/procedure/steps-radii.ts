import limits from '../../shared/limits.json' with {type: 'json'};
import {radiusProblem} from './geometry.js';
import {type Step, step} from './step.js';

/** Where the rounds are taken; kept with the arm. */
export const radiusSteps: readonly Step[] = [
	step('radius-inner', {
		stage: 'arm',
		title: 'Inner probe radius',
		ask: 'Distance from the spindle at which the inner probe is taken.',
		why: 'Always the same radius makes checks comparable. Near the label is where wires wind up and stops engage.',
		mistake: 'With an automatic stop, going below 75 mm: the linkage then holds the arm.',
		input: {kind: 'number', unit: 'mm', between: [50, 110]},
		suggest: (facts) =>
			String((facts.is('arm-auto-stop', 'yes') ? limits.linkageInnerRadiusMm : limits.innerRadiusMm).value),
		verify: (facts) => radiusProblem('inner', facts),
		touches: ['rounds'],
	}),
	step('radius-outer', {
		stage: 'arm',
		title: 'Outer probe radius',
		ask: 'Distance from the spindle at which the outer probe is taken.',
		why: 'The two radii together tell a spring-like wire from a steady pull.',
		mistake: 'Choosing it so far out that the arm leans on its rest.',
		input: {kind: 'number', unit: 'mm', between: [90, 160]},
		suggest: () => String(limits.outerRadiusMm.value),
		verify: (facts) => radiusProblem('outer', facts),
		touches: ['rounds'],
	}),
	step('radius-extra', {
		stage: 'arm',
		title: 'One more probe radius',
		ask: 'A third radius to probe, if you want one, or - for none.',
		why: 'A rub that sits in mid-record shows at neither end.',
		mistake: 'Two are enough for most arms.',
		input: {kind: 'number', unit: 'mm', between: [50, 160], optional: true},
		verify: (facts) => radiusProblem('extra', facts),
		touches: ['rounds'],
	}),
];
