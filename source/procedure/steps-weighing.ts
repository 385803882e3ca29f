import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isBelow} from '../measures/compare.js';
import {grams} from '../units.js';
import {clearanceProblem, readsGap} from './clearance.js';
import {armLocked, type Finds} from './deck.js';
import type {Facts} from './facts.js';
import {mustBe, type Problem, problem, setTo, type Way, wayTo} from './problem.js';
import {gaugeMountOf, isPushedByHand} from './readings.js';
import {type Step, stepsOf} from './step.js';
import {halfADay, heightSteps, isBeforeRounds} from './step-groups.js';
import {besidePlaying, carriedWith} from './weighing.js';

const [step, atHeight] = [stepsOf('force'), stepsOf('clearance')];

/** A gauge that carries the arm: one that is pushed by hand stands under nothing. */
const isWeighed = (facts: Facts): boolean => !isPushedByHand(facts);

const guardUsed = (facts: Facts): boolean => facts.is('guard-on', 'on');

/** The stylus is covered, but where there is no guard. */
export const guardedArm = (facts: Facts): Finds => (guardUsed(facts) ? {stylus: ['covered']} : {});

/** Too little on the scale, with the guard counted in: it may have been left out. */
const weighedWithout = (facts: Facts, carriedMn: number): readonly Way[] =>
	facts.is('weighed', 'with') && isBelow(carriedMn, facts.number('playing-force') ?? 0)
		? [setTo('weighed-without', 'weighed', 'without')]
		: [];

/** The carried force must lie inside the cartridge's range, where that is known, and near the force of play. */
const forceProblem =
	(weighing: 'force-reading' | 'force-at-height') =>
	(facts: Facts): Problem | undefined => {
		const carriedMn = carriedWith(facts, facts.number(weighing));
		if (carriedMn === undefined) return;
		const ways = [wayTo('set-force-guarded', weighing), ...weighedWithout(facts, carriedMn)];
		const lowMn = facts.number('force-low');
		const highMn = facts.number('force-high');
		if (lowMn !== undefined && highMn !== undefined && (isBelow(carriedMn, lowMn) || isAbove(carriedMn, highMn))) {
			const side = isBelow(carriedMn, lowMn) ? 'below' : 'above';
			return problem('force-outside-range', {carriedMn, side, lowMn, highMn}, ...ways);
		}
		const off = besidePlaying(facts, carriedMn, limits.probeForceShare.value);
		if (!off || !isAbove(Math.abs(off.offPct), off.allowedPct)) return;
		return problem('force-off-target', {carriedMn, ...off}, ...ways);
	};

/** How high the stylus stands on the gauge, by the gap under its guard or by itself. */
const height = {
	verify: clearanceProblem,
	reasons: ['gauge-height-fixed', 'arm-touches-elsewhere'],
	touches: ['lifter-clear', 'rounds'],
	staysTrueMinutes: 30,
	finds: (facts: Facts): Finds => ({...guardedArm(facts), ...armLocked}),
	leaves: () => ({gauge: 'as-used', arm: 'in-rest'}) as const,
} as const satisfies Partial<Step>;

/** Guard and tracking force; then the gauge under the arm. */
export const weighingSteps: readonly Step[] = [
	// Said by the way out of a reading that is off by about the guard's mass.
	step('weighed', {
		when: (facts) => guardUsed(facts) && isWeighed(facts),
		usual: () => 'with',
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
		touches: ['force-reading', ...heightSteps, 'rounds'],
		staysTrueMinutes: 30,
		finds: guardedArm,
	}),
	step('guard-account', {
		values: (facts) => ({guardG: facts.number('guard-mass') ?? 0}),
		when: (facts) =>
			isWeighed(facts) &&
			guardUsed(facts) &&
			facts.is('weighed', 'without') &&
			facts.number('guard-mass') !== undefined,
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
		values: (facts) => ({
			hasGuard: facts.is('weighed', 'with') && guardUsed(facts),
			targetMn: facts.number('playing-force'),
			matMm: facts.number('mat-thickness'),
		}),
		input: {unit: 'gf', between: [grams(0.1), grams(12)]},
		when: isWeighed,
		verify: forceProblem('force-reading'),
		reasons: ['guard-only', 'no-range'],
		touches: [...heightSteps, 'rounds'],
		staysTrueMinutes: halfADay,
		finds: guardedArm,
		leaves: () => ({arm: 'locked'}),
	}),
	step('arm-afloat', {
		values: (facts) => ({hasGuard: guardUsed(facts), hasSpring: facts.is('arm-loading', 'spring')}),
		when: isPushedByHand,
		verify: (facts) => mustBe(facts, 'arm-afloat'),
		touches: ['rounds'],
		staysTrueMinutes: halfADay,
		finds: guardedArm,
		leaves: () => ({arm: 'locked'}),
	}),
	atHeight('guard-gap', {
		values: (facts) => ({depthMm: facts.number('guard-depth') ?? 0, mount: gaugeMountOf(facts)}),
		when: (facts) => isWeighed(facts) && readsGap(facts),
		input: {unit: 'mm', between: [0, 30]},
		...height,
	}),
	atHeight('clearance', {
		values: (facts) => ({hangsFar: facts.is('arm-gravity-centre', 'far'), mount: gaugeMountOf(facts)}),
		when: (facts) => isWeighed(facts) && !readsGap(facts),
		input: {unit: 'mm', between: [0, 30]},
		...height,
	}),
	atHeight('force-at-height', {
		input: {unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		when: (facts) => isWeighed(facts) && (facts.is('arm-gravity-centre', 'far') || facts.is('mat', 'on-steel')),
		verify: forceProblem('force-at-height'),
		reasons: ['guard-only', 'no-range'],
		touches: ['rounds'],
		staysTrueMinutes: halfADay,
		finds: guardedArm,
	}),
	atHeight('lifter-clear', {
		when: isBeforeRounds('lifter-clear'),
		verify: (facts) => mustBe(facts, 'lifter-clear'),
		reasons: ['part-of-fault', 'cannot-change-here'],
		touches: ['rounds'],
		finds: guardedArm,
		leaves: () => ({arm: 'in-rest'}),
	}),
];
