import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {grams} from '../units.js';
import {biasDeviceId, hasBias} from './bias-devices.js';
import {armLocked, type Finds} from './deck.js';
import type {Facts} from './facts.js';
import {mustBe, type Problem, problem, type UnconfirmedStep, wayTo} from './problem.js';
import {isPushedByHand} from './readings.js';
import {type Step, stepsOf} from './step.js';
import {heightSteps} from './step-groups.js';
import type {StepId} from './step-ids.js';
import type {StepValues} from './step-values.js';
import {guardedArm} from './steps-weighing.js';
import {besidePlaying, guardWeightMn} from './weighing.js';

const [step, next] = [stepsOf('back'), stepsOf('next')];

/** What the bias device is put back to: the setting that was chosen, else the one that it came with. */
function biasBack(facts: Facts): StepValues['back-bias'] {
	const [number, setting = ''] = facts.list('bias-result');
	return {
		device: biasDeviceId(facts),
		chosen: number === undefined ? undefined : {number, setting},
		setting: facts.text('bias-setting'),
	};
}

/** What the lines of the put-back list have in common that are confirmed by one key. */
const confirmed = (id: UnconfirmedStep, leaves: ReturnType<NonNullable<Step['leaves']>> = {}) =>
	({
		verify: (facts: Facts) => mustBe(facts, id),
		reasons: ['someone-else', 'cannot-do-here'],
		leaves: (facts: Facts) => (facts.yes(id) ? leaves : {}),
	}) as const;

/** A check whose list was done before it had this line is not led back to it. */
const isOnList =
	(id: UnconfirmedStep) =>
	(facts: Facts): boolean =>
		facts.everAnswered(id) || !facts.everAnswered('back-covers');

/** The arm locked, its stylus covered: so everything beside it is put back. */
const lockedAndCovered = (facts: Facts): Finds => ({...guardedArm(facts), ...armLocked});

/** With a guard of known mass the counterweight is set before the stylus is bare. */
const isSetWhileCovered = (facts: Facts): boolean => facts.is('guard-on', 'on') && guardWeightMn(facts) > 0;

function playingForceProblem(facts: Facts): Problem | undefined {
	const weighedMn = facts.number('back-force');
	if (facts.unknown('back-force')) return problem('not-weighed', {}, wayTo('weigh-now', 'back-force'));
	const off = besidePlaying(facts, weighedMn, limits.putBackForceShare.value);
	if (weighedMn === undefined || !off || !isAbove(Math.abs(off.offPct), off.allowedPct)) return;
	return problem('playing-force-off', {weighedMn, ...off}, wayTo('set-force', 'back-force'));
}

/** The deck goes back so that it is safe to play, the stylus bare last; then the next date. */
export const putBackSteps: readonly Step[] = [
	step('back-lock', {...confirmed('back-lock', {arm: 'locked'})}),
	step('back-gauge', {
		...confirmed('back-gauge', {gauge: 'away'}),
		when: (facts) => !isPushedByHand(facts) && isOnList('back-gauge')(facts),
		finds: armLocked,
	}),
	step('back-mat', {
		...confirmed('back-mat', {mat: 'on'}),
		when: (facts) => facts.is('mat', 'off'),
		finds: (facts) => ({...lockedAndCovered(facts), gauge: ['away']}),
	}),
	step('back-damping', {
		...confirmed('back-damping', {damping: 'in'}),
		when: (facts) => facts.is('arm-damping', 'yes'),
		finds: lockedAndCovered,
	}),
	step('back-blocks', {...confirmed('back-blocks'), when: isOnList('back-blocks'), finds: lockedAndCovered}),
	step('back-leads', {
		...confirmed('back-leads'),
		when: (facts) => facts.tried.some((remedy) => ['leads-off', 'cartridge-weight'].includes(remedy)),
		finds: lockedAndCovered,
	}),
	step('back-bias', {
		...confirmed('back-bias', {bias: 'set'}),
		values: biasBack,
		when: hasBias,
		finds: lockedAndCovered,
	}),
	step('back-level', {...confirmed('back-level'), finds: lockedAndCovered}),
	step('back-height', {...confirmed('back-height'), finds: lockedAndCovered}),
	// With the guard on nothing can happen to the stylus while the counterweight is turned.
	step('back-weight', {
		...confirmed('back-weight'),
		values: (facts) => ({playingMn: facts.number('playing-force'), guardMn: guardWeightMn(facts)}),
		when: (facts) => isSetWhileCovered(facts) && isOnList('back-weight')(facts),
		finds: lockedAndCovered,
	}),
	step('back-guard', {
		...confirmed('back-guard', {stylus: 'bare'}),
		values: (facts) => ({isUnipivot: facts.is('arm-bearing', 'unipivot')}),
		when: (facts) => !facts.is('guard-on', 'no-guard'),
		finds: lockedAndCovered,
	}),
	step('back-force', {
		values: (facts) => ({
			setToMn: isSetWhileCovered(facts) || !isPushedByHand(facts) ? undefined : facts.number('playing-force'),
		}),
		input: {unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		verify: playingForceProblem,
		reasons: ['owner-wants-force', 'no-scale'],
		finds: (facts) => (facts.yes('back-guard') ? {stylus: ['bare']} : {}),
		leaves: () => ({arm: 'locked'}),
	}),
	step('back-upright', {
		...confirmed('back-upright'),
		when: (facts) => facts.is('arm-bearing', 'unipivot') && isOnList('back-upright')(facts),
	}),
	step('back-covers', confirmed('back-covers')),
	next('room-temperature', {input: {unit: 'celsius', between: [-10, 50], optional: true}, suggest: () => ''}),
	next('room-note', {input: {optional: true}, usual: () => null}),
	next('next-check', {}),
];

/** What a line of the put-back list undoes: it is asked by name before the probe goes on. */
export const undoneBy: Readonly<Partial<Record<StepId, readonly StepId[]>>> = {
	'back-gauge': heightSteps,
	'back-mat': ['mat', 'mat-thickness'],
	'back-damping': ['damping-off'],
	'back-bias': ['bias-off'],
	'back-height': heightSteps,
	'back-weight': ['force-reading', 'arm-afloat'],
	'back-force': ['arm-afloat'],
	'back-guard': ['guard-on', 'weighed'],
};
