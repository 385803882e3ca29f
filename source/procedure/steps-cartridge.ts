import {isAbove, isBelow} from '../measures/compare.js';
import {grams} from '../units.js';
import {problem, wayTo} from './problem.js';
import {type Step, stepsOf, withProfile} from './step.js';
import {forceSteps} from './step-groups.js';

const step = stepsOf('cartridge');

const asked = [
	step('cartridge-name', {}),
	step('playing-force', {
		input: {unit: 'gf', between: [grams(0.2), grams(8)]},
		touches: ['force-low', 'force-high', 'back-force'],
	}),
	step('force-low', {
		input: {unit: 'gf', between: [grams(0.1), grams(8)], optional: true},
		verify: (facts) =>
			isAbove(facts.number('force-low') ?? 0, facts.number('playing-force') ?? 0)
				? problem(
						'low-force-too-high',
						{},
						wayTo('correct-lowest', 'force-low'),
						wayTo('correct-playing', 'playing-force', 'force-low'),
					)
				: undefined,
		touches: forceSteps,
	}),
	step('force-high', {
		input: {unit: 'gf', between: [grams(0.1), grams(10)], optional: true},
		verify: (facts) =>
			isBelow(facts.number('force-high') ?? 99, facts.number('playing-force') ?? 0)
				? problem(
						'high-force-too-low',
						{},
						wayTo('correct-highest', 'force-high'),
						wayTo('correct-playing', 'playing-force', 'force-high'),
					)
				: undefined,
		touches: forceSteps,
	}),
	step('cartridge-compliance', {input: {unit: 'umPerMn', between: [1, 120], optional: true}}),
	step('cartridge-cantilever', {input: {unit: 'mm', between: [2, 12], optional: true}}),
	step('guard-mass', {
		input: {unit: 'g', between: [0, 5], optional: true},
		touches: ['weighed', 'guard-account', 'rounds'],
	}),
	step('guard-depth', {
		input: {unit: 'mm', between: [0, 8], optional: true},
		touches: ['mat', 'clearance'],
	}),
];

/** The cartridge. */
export const cartridgeSteps: readonly Step[] = withProfile(
	step('cartridge-profile', {input: {of: 'cartridge'}}),
	asked,
);
