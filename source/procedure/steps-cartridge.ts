import {isAbove, isBelow} from '../measures/compare.js';
import {grams} from '../units.js';
import {type Step, step} from './step.js';
import {forceSteps} from './step-groups.js';
import {withProfile} from './with-profile.js';

const asked = [
	step('cartridge-name', {stage: 'cartridge', input: {kind: 'text'}}),
	step('playing-force', {
		stage: 'cartridge',
		input: {kind: 'number', unit: 'gf', between: [grams(0.2), grams(8)]},
		touches: ['force-low', 'force-high', 'back-force'],
	}),
	step('force-low', {
		stage: 'cartridge',
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(8)], optional: true},
		verify: (facts) =>
			isAbove(facts.number('force-low') ?? 0, facts.number('playing-force') ?? 0)
				? {
						id: 'low-force-too-high',
						values: {},
						ways: [
							{id: 'correct-lowest', do: 'ask-again', steps: ['force-low']},
							{id: 'correct-playing', do: 'ask-again', steps: ['playing-force', 'force-low']},
						],
					}
				: undefined,
		touches: forceSteps,
	}),
	step('force-high', {
		stage: 'cartridge',
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(10)], optional: true},
		verify: (facts) =>
			isBelow(facts.number('force-high') ?? 99, facts.number('playing-force') ?? 0)
				? {
						id: 'high-force-too-low',
						values: {},
						ways: [
							{id: 'correct-highest', do: 'ask-again', steps: ['force-high']},
							{id: 'correct-playing', do: 'ask-again', steps: ['playing-force', 'force-high']},
						],
					}
				: undefined,
		touches: forceSteps,
	}),
	step('cartridge-compliance', {
		stage: 'cartridge',
		input: {kind: 'number', unit: 'umPerMn', between: [1, 120], optional: true},
	}),
	step('cartridge-cantilever', {
		stage: 'cartridge',
		input: {kind: 'number', unit: 'mm', between: [2, 12], optional: true},
	}),
	step('guard-mass', {
		stage: 'cartridge',
		input: {kind: 'number', unit: 'g', between: [0, 5], optional: true},
		touches: ['weighed', 'guard-account', 'rounds'],
	}),
	step('guard-depth', {
		stage: 'cartridge',
		input: {kind: 'number', unit: 'mm', between: [0, 8], optional: true},
		touches: ['mat', 'clearance'],
	}),
];

/** The cartridge. */
export const cartridgeSteps: readonly Step[] = withProfile(
	step('cartridge-profile', {stage: 'cartridge', input: {kind: 'profile', of: 'cartridge'}}),
	asked,
);
