import {isAbove, isBelow} from '../measures/compare.js';
import {grams} from '../units.js';
import {clearanceProblem} from './clearance.js';
import type {Facts} from './facts.js';
import {type Problem, problem, setTo, wayTo} from './problem.js';
import {type Step, stepsOf} from './step.js';
import {halfADay} from './step-groups.js';
import {carriedWith} from './weighing.js';

const [step, atHeight] = [stepsOf('force'), stepsOf('clearance')];

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
			return problem('force-range-not-known', {carriedMn: carried}, wayTo('type-range', 'force-low', 'force-high'));
		if (!isBelow(carried, low) && !isAbove(carried, high)) return;
		const side = isBelow(carried, low) ? 'below' : 'above';
		const values = {carriedMn: carried, side, lowMn: low, highMn: high} as const;
		return problem('force-outside-range', values, wayTo('set-force-guarded', weighing));
	};

/** Guard and tracking force, clearance. */
export const weighingSteps: readonly Step[] = [
	step('guard-on', {
		values: (facts) => ({isUnipivot: facts.is('arm-bearing', 'unipivot')}),
		touches: ['force-reading', 'clearance', 'rounds'],
		staysTrueMinutes: 30,
	}),
	step('weighed', {
		when: guardUsed,
		verify: (facts) =>
			facts.is('weighed', 'without') && facts.number('guard-mass') === undefined
				? problem(
						'guard-mass-not-known',
						{},
						wayTo('weigh-guarded', 'weighed', 'force-reading'),
						wayTo('type-guard-mass', 'guard-mass'),
					)
				: undefined,
		reasons: [],
		touches: ['force-reading', 'clearance', 'rounds'],
		staysTrueMinutes: 30,
	}),
	step('guard-account', {
		values: (facts) => ({guardG: facts.number('guard-mass') ?? 0}),
		when: (facts) => guardUsed(facts) && facts.is('weighed', 'without') && facts.number('guard-mass') !== undefined,
		verify: (facts) =>
			facts.is('guard-account', 'again')
				? problem(
						'weigh-with-guard',
						{},
						setTo('weighed-guarded', 'weighed', 'with'),
						setTo('add-guard-mass', 'guard-account', 'add'),
					)
				: undefined,
		reasons: [],
	}),
	step('force-reading', {
		values: (facts) => ({hasGuard: facts.is('weighed', 'with') && guardUsed(facts)}),
		input: {unit: 'gf', between: [grams(0.1), grams(12)]},
		verify: forceProblem('force-reading'),
		reasons: ['guard-only', 'no-range'],
		touches: ['clearance', 'rounds'],
		staysTrueMinutes: halfADay,
	}),
	atHeight('clearance', {
		values: (facts) => ({hangsFar: facts.is('arm-gravity-centre', 'far')}),
		input: {unit: 'mm', between: [0, 30]},
		verify: clearanceProblem,
		reasons: ['gauge-height-fixed', 'arm-touches-elsewhere'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	atHeight('force-at-height', {
		input: {unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		when: (facts) => facts.is('arm-gravity-centre', 'far') || facts.is('mat', 'on-steel'),
		verify: forceProblem('force-at-height'),
		reasons: ['guard-only', 'no-range'],
		touches: ['rounds'],
		staysTrueMinutes: halfADay,
	}),
];
