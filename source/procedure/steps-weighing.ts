import {isAbove, isBelow} from '../measures/compare.js';
import {formatIn, grams} from '../units.js';
import {clearanceProblem} from './clearance.js';
import type {Facts} from './facts.js';
import type {Problem} from './problem.js';
import {type Step, step} from './step.js';
import {halfADay} from './step-groups.js';
import {carriedWith} from './weighing.js';

const guardUsed = (facts: Facts): boolean => facts.is('guard-on', 'on');
/** The carried force must be known to lie inside the cartridge's range. */
const forceProblem =
	(weighing: 'force-reading' | 'force-at-height') =>
	(facts: Facts): Problem | undefined => {
		const carried = carriedWith(facts, facts.number(weighing));
		const low = facts.number('force-low');
		const high = facts.number('force-high');
		if (carried === undefined) return;
		if (low === undefined || high === undefined)
			return {
				id: 'force-range-not-known',
				values: {carriedMn: carried},
				ways: [{id: 'type-range', do: 'ask-again', steps: ['force-low', 'force-high']}],
			};
		if (!isBelow(carried, low) && !isAbove(carried, high)) return;
		const side = isBelow(carried, low) ? 'below' : 'above';
		return {
			id: 'force-outside-range',
			values: {carriedMn: carried, side, lowMn: low, highMn: high},
			ways: [{id: 'set-force-guarded', do: 'ask-again', steps: [weighing]}],
		};
	};

/** Guard and tracking force, clearance. */
export const weighingSteps: readonly Step[] = [
	step('guard-on', {
		stage: 'force',
		title: 'Stylus guard',
		ask: (facts) =>
			`Is the stylus guard on, and will it stay on during the probe?${facts.is('arm-bearing', 'unipivot') ? ' Never press it down on a unipivot.' : ''}`,
		why: 'The guard protects the cantilever while the arm is nudged. Its mass then counts in the tracking force.',
		mistake: 'Taking it off between the weighing and the probe.',
		caution:
			'Without a guard the bare stylus hangs over everything you do: work slowly, and lift the arm by its lifter.',
		input: {
			kind: 'choice',
			options: [
				{id: 'on', label: 'the guard is on and stays on'},
				{id: 'no-guard', label: 'this cartridge has no guard'},
			],
		},
		touches: ['force-reading', 'clearance', 'rounds'],
		staysTrueMinutes: 30,
	}),
	step('weighed', {
		stage: 'force',
		title: 'How it is weighed',
		ask: 'Weigh with the guard on, and do not zero the scale on it. How do you weigh?',
		why: 'The percent scale of the gauge is percent of the force that it carries: that includes the guard.',
		mistake: 'Zeroing the scale with the guard lying on it: the guard is then left out.',
		input: {
			kind: 'choice',
			options: [
				{id: 'with', label: 'guard on, scale not zeroed on it'},
				{id: 'without', label: 'without the guard, or scale zeroed on it'},
			],
		},
		when: guardUsed,
		verify: (facts) =>
			facts.is('weighed', 'without') && facts.number('guard-mass') === undefined
				? {
						id: 'guard-mass-not-known',
						values: {},
						ways: [
							{id: 'weigh-guarded', do: 'ask-again', steps: ['weighed', 'force-reading']},
							{id: 'type-guard-mass', do: 'ask-again', steps: ['guard-mass']},
						],
					}
				: undefined,
		reasons: [],
		touches: ['force-reading', 'clearance', 'rounds'],
		staysTrueMinutes: 30,
	}),
	step('guard-account', {
		stage: 'force',
		title: 'The guard was left out',
		ask: (facts) =>
			`The guard adds ${formatIn(facts.number('guard-mass') ?? 0, 'g')} that the scale did not see. What do you want to do?`,
		why: 'Weighing again with the guard on is surer; adding its known mass is as good as that mass is known.',
		mistake: 'Ignoring it: half a gram on a force of 1.8 g is 28 %.',
		input: {
			kind: 'choice',
			options: [
				{id: 'again', label: 'weigh again with the guard on'},
				{id: 'add', label: "add the guard's known mass"},
			],
		},
		when: (facts) => guardUsed(facts) && facts.is('weighed', 'without') && facts.number('guard-mass') !== undefined,
		verify: (facts) =>
			facts.is('guard-account', 'again')
				? {
						id: 'weigh-with-guard',
						values: {},
						ways: [
							{
								id: 'weighed-guarded',
								do: 'set',
								step: 'weighed',
								value: 'with',
								typed: 'guard on, scale not zeroed on it',
							},
							{
								id: 'add-guard-mass',
								do: 'set',
								step: 'guard-account',
								value: 'add',
								typed: "add the guard's known mass",
							},
						],
					}
				: undefined,
		reasons: [],
	}),
	step('force-reading', {
		stage: 'force',
		title: 'Tracking force',
		ask: (facts) =>
			facts.is('weighed', 'with') && guardUsed(facts)
				? 'Scale reading with the guard on, at record height.'
				: 'Scale reading at record height.',
		why: 'All readings of a percent gauge are worth this much.',
		mistake:
			'A steel scale plate under a strong cartridge magnet reads wrong; and a scale that sits higher than the record shows too much.',
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(12)]},
		verify: forceProblem('force-reading'),
		reasons: ['guard-only', 'no-range'],
		touches: ['clearance', 'rounds'],
		staysTrueMinutes: halfADay,
	}),
	step('clearance', {
		stage: 'clearance',
		title: 'Clearance',
		ask: (facts) =>
			facts.is('arm-gravity-centre', 'far')
				? 'Gauge in place: height of the stylus above the surface under it. Stay at the low end for this arm.'
				: 'Gauge in place: height of the stylus above the surface under it.',
		why: 'Too low and the guard rubs, too high and the arm no longer stands as it plays. The window moves up by the mat that was taken off.',
		mistake: 'Measuring to the guard instead of to the stylus.',
		input: {kind: 'number', unit: 'mm', between: [0, 30]},
		verify: clearanceProblem,
		reasons: ['gauge-height-fixed', 'arm-touches-elsewhere'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	step('force-at-height', {
		stage: 'clearance',
		title: 'Weighed again at probe height',
		ask: 'Weigh once more at probe height, guard as before. Type - to keep the first reading.',
		why: 'With the centre of gravity far from the pivot, or a magnet near steel, the tracking force changes with height.',
		mistake: 'Guessing the height: stand the scale on blocks until the arm is where the gauge holds it.',
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		when: (facts) => facts.is('arm-gravity-centre', 'far') || facts.is('mat', 'on-steel'),
		verify: forceProblem('force-at-height'),
		reasons: ['guard-only', 'no-range'],
		touches: ['rounds'],
		staysTrueMinutes: halfADay,
	}),
];
