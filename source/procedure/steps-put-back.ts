import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {grams} from '../units.js';
import {biasDeviceId, hasBias} from './bias-devices.js';
import type {Facts} from './facts.js';
import {mustBe, type Problem, problem, type UnconfirmedStep, wayTo} from './problem.js';
import {type Step, stepsOf} from './step.js';
import type {StepId} from './step-ids.js';
import type {StepValues} from './step-values.js';

const step = stepsOf('back');

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
const confirmed = (id: UnconfirmedStep) =>
	({verify: (facts: Facts) => mustBe(facts, id), reasons: ['someone-else', 'cannot-do-here']}) as const;

function playingForceProblem(facts: Facts): Problem | undefined {
	const weighed = facts.number('back-force');
	const playing = facts.number('playing-force');
	if (facts.unknown('back-force')) return problem('not-weighed', {}, wayTo('weigh-now', 'back-force'));
	if (weighed === undefined || playing === undefined) return;
	const offPct = 100 * (weighed / playing - 1);
	const allowedPct = 100 * limits.putBackForceShare.value;
	if (!isAbove(Math.abs(offPct), allowedPct)) return;
	const values = {weighedMn: weighed, playingMn: playing, offPct, allowedPct};
	return problem('playing-force-off', values, wayTo('set-force', 'back-force'));
}

/** The deck goes back so that it is safe to play, the stylus bare last; then the next date. */
export const putBackSteps: readonly Step[] = [
	step('back-lock', confirmed('back-lock')),
	step('back-mat', {...confirmed('back-mat'), when: (facts) => facts.is('mat', 'off')}),
	step('back-damping', {...confirmed('back-damping'), when: (facts) => facts.is('arm-damping', 'yes')}),
	step('back-bias', {...confirmed('back-bias'), values: biasBack, when: hasBias}),
	step('back-height', confirmed('back-height')),
	step('back-guard', {...confirmed('back-guard'), when: (facts) => !facts.is('guard-on', 'no-guard')}),
	step('back-force', {
		input: {unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		verify: playingForceProblem,
		reasons: ['owner-wants-force', 'no-scale'],
	}),
	step('back-level', confirmed('back-level')),
	step('back-covers', confirmed('back-covers')),
	stepsOf('next')('next-check', {}),
];

/** What a line of the put-back list undoes: it is asked by name before the probe goes on. */
export const undoneBy: Readonly<Partial<Record<StepId, readonly StepId[]>>> = {
	'back-mat': ['mat', 'mat-thickness'],
	'back-damping': ['damping-off'],
	'back-bias': ['bias-off'],
	'back-height': ['clearance'],
	'back-guard': ['guard-on', 'weighed'],
};
