import {isAbove, isBelow} from '../measures/compare.js';
import {grams} from '../units.js';
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
		values: (facts) => ({isUnipivot: facts.is('arm-bearing', 'unipivot')}),
		input: {kind: 'choice'},
		touches: ['force-reading', 'clearance', 'rounds'],
		staysTrueMinutes: 30,
	}),
	step('weighed', {
		stage: 'force',
		input: {kind: 'choice'},
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
		values: (facts) => ({guardG: facts.number('guard-mass') ?? 0}),
		input: {kind: 'choice'},
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
							},
							{
								id: 'add-guard-mass',
								do: 'set',
								step: 'guard-account',
								value: 'add',
							},
						],
					}
				: undefined,
		reasons: [],
	}),
	step('force-reading', {
		stage: 'force',
		values: (facts) => ({hasGuard: facts.is('weighed', 'with') && guardUsed(facts)}),
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(12)]},
		verify: forceProblem('force-reading'),
		reasons: ['guard-only', 'no-range'],
		touches: ['clearance', 'rounds'],
		staysTrueMinutes: halfADay,
	}),
	step('clearance', {
		stage: 'clearance',
		values: (facts) => ({hangsFar: facts.is('arm-gravity-centre', 'far')}),
		input: {kind: 'number', unit: 'mm', between: [0, 30]},
		verify: clearanceProblem,
		reasons: ['gauge-height-fixed', 'arm-touches-elsewhere'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	step('force-at-height', {
		stage: 'clearance',
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		when: (facts) => facts.is('arm-gravity-centre', 'far') || facts.is('mat', 'on-steel'),
		verify: forceProblem('force-at-height'),
		reasons: ['guard-only', 'no-range'],
		touches: ['rounds'],
		staysTrueMinutes: halfADay,
	}),
];
