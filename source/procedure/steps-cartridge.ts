import {isAbove, isBelow} from '../measures/compare.js';
import {grams} from '../units.js';
import {type Step, step} from './step.js';
import {forceSteps} from './step-groups.js';
import {withProfile} from './with-profile.js';

const asked = [
	step('cartridge-name', {
		stage: 'cartridge',
		title: "The cartridge's name",
		ask: 'What do you call this cartridge?',
		why: 'Checks with different cartridges are told apart by it.',
		mistake: 'Keeping the old name after a new stylus: write that down in the name.',
		input: {kind: 'text'},
	}),
	step('playing-force', {
		stage: 'cartridge',
		title: 'Playing tracking force',
		ask: 'Tracking force as it is played.',
		why: 'All figures are given in percent of this force.',
		mistake: 'Typing grams as millinewtons: 1.8 g is 17.7 mN.',
		input: {kind: 'number', unit: 'gf', between: [grams(0.2), grams(8)]},
		touches: ['force-low', 'force-high', 'back-force'],
	}),
	step('force-low', {
		stage: 'cartridge',
		title: 'Lowest tracking force',
		ask: "Lowest tracking force of the maker's range, or - if you do not know it.",
		why: 'The force that the gauge carries must stay inside the range.',
		mistake: 'Reading the recommended value as the lowest.',
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
		title: 'Highest tracking force',
		ask: "Highest tracking force of the maker's range, or - if you do not know it.",
		why: 'Too much force, with the guard on top, can bend the suspension.',
		mistake: 'Forgetting that the guard adds to the force.',
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
		title: 'Static lateral compliance',
		ask: 'Static lateral compliance, or - if you do not know it.',
		why: 'With it the sideways lean of the stylus is worked out.',
		mistake: 'Many data sheets give the dynamic value at 10 or 100 Hz, which is far lower than the static one.',
		input: {kind: 'number', unit: 'umPerMn', between: [1, 120], optional: true},
	}),
	step('cartridge-cantilever', {
		stage: 'cartridge',
		title: 'Cantilever length',
		ask: 'Length of the cantilever, or - if you do not know it.',
		why: 'It turns the lean into an angle.',
		mistake: 'Measuring it: look it up, or leave it out. A cantilever breaks at a touch.',
		input: {kind: 'number', unit: 'mm', between: [2, 12], optional: true},
	}),
	step('guard-mass', {
		stage: 'cartridge',
		title: 'Mass of the stylus guard',
		ask: 'Mass of the stylus guard, or - if you do not know it or there is no guard.',
		why: 'The guard stays on to protect the cantilever, and its mass counts in the tracking force.',
		mistake: 'Weighing it with the arm: lay the guard alone on the scale.',
		input: {kind: 'number', unit: 'g', between: [0, 5], optional: true},
		touches: ['weighed', 'guard-account', 'rounds'],
	}),
	step('guard-depth', {
		stage: 'cartridge',
		title: 'How far the guard hangs down',
		ask: 'How far does the guard hang below the stylus? Type - if not known.',
		why: 'It is the guard, not the stylus, that touches first.',
		mistake: 'Measuring from the cartridge body instead of from the stylus.',
		input: {kind: 'number', unit: 'mm', between: [0, 8], optional: true},
		touches: ['mat', 'clearance'],
	}),
];

/** The cartridge. */
export const cartridgeSteps: readonly Step[] = withProfile(
	step('cartridge-profile', {
		stage: 'cartridge',
		title: 'Which cartridge?',
		ask: 'Pick a cartridge from the list, or enter a new one.',
		why: 'Its answers are filled in; each of them can be corrected from the list of steps (Tab).',
		mistake: 'Picking the old entry after the playing force was changed.',
		input: {kind: 'profile', of: 'cartridge'},
	}),
	asked,
);
