import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {grams} from '../units.js';
import {biasDeviceOf, hasBias} from './bias-devices.js';
import type {Facts} from './facts.js';
import {mustBe} from './must-be.js';
import type {Problem, UnconfirmedStep} from './problem.js';
import {type Step, step} from './step.js';

/** What the bias device is put back to: the setting that was chosen, else the one that it came with. */
function biasBack(facts: Facts): string {
	const [number, chosen = ''] = facts.list('bias-result');
	if (number !== undefined)
		return `Leave the bias device at the setting that you chose, number ${number}${chosen === '' ? '' : `: ${chosen}`}.`;
	const setting = facts.text('bias-setting');
	return `${biasDeviceOf(facts).restore}${setting === undefined ? '' : ` It was set to: ${setting}.`}`;
}

type Confirmation = Omit<Step, 'id' | 'stage' | 'input' | 'verify' | 'reasons'> & {
	readonly id: UnconfirmedStep;
};

/** A line of the put-back list that is confirmed by one key. */
const confirmation = (line: Confirmation): Step => ({
	...line,
	stage: 'back',
	input: {kind: 'confirm'},
	verify: (facts) => mustBe(facts, line.id),
	reasons: ['someone-else', 'cannot-do-here'],
});

function playingForceProblem(facts: Facts): Problem | undefined {
	const weighed = facts.number('back-force');
	const playing = facts.number('playing-force');
	if (facts.unknown('back-force'))
		return {
			id: 'not-weighed',
			values: {},
			ways: [{id: 'weigh-now', do: 'ask-again', steps: ['back-force']}],
		};
	if (weighed === undefined || playing === undefined) return;
	const offPct = 100 * (weighed / playing - 1);
	const allowedPct = 100 * limits.putBackForceShare.value;
	if (!isAbove(Math.abs(offPct), allowedPct)) return;
	return {
		id: 'playing-force-off',
		values: {weighedMn: weighed, playingMn: playing, offPct, allowedPct},
		ways: [{id: 'set-force', do: 'ask-again', steps: ['back-force']}],
	};
}

/** The deck goes back so that it is safe to play, the stylus bare last; then the next date. */
export const putBackSteps: readonly Step[] = [
	confirmation({
		id: 'back-lock',
		title: 'Lock the arm',
		ask: 'Raise the arm with its lifter, lock it in its rest, guard still on; then take the gauge away. Done?',
		why: 'Everything that follows is done around a stylus; locked and guarded it is safest.',
		mistake: 'Lifting the gauge with the arm still lying on it.',
	}),
	confirmation({
		id: 'back-mat',
		title: 'Mat',
		ask: 'Put the mat back on the platter. Done?',
		why: 'Without it the stylus comes down on a record that lies too low.',
		mistake: 'Putting it back upside down.',
		when: (facts) => facts.is('mat', 'off'),
	}),
	confirmation({
		id: 'back-damping',
		title: 'Damping',
		ask: 'Restore the damping: fluid in the trough, paddle at its usual depth. Done?',
		why: 'The arm is played with it.',
		mistake: 'Overfilling: fluid creeps up the paddle into the bearing.',
		when: (facts) => facts.is('arm-damping', 'yes'),
	}),
	confirmation({
		id: 'back-bias',
		title: 'Bias device',
		ask: (facts) => `${biasBack(facts)} Done?`,
		why: 'Without bias the stylus leans on the inner groove wall.',
		mistake: 'Leaving the thread off its guide.',
		when: hasBias,
	}),
	confirmation({
		id: 'back-height',
		title: 'Arm height',
		ask: 'Set the arm to its playing height, if it was moved. Done?',
		why: 'Height changes the angle of the stylus, and on some arms the tracking force.',
		mistake: 'Forgetting the height that was set for the guard.',
	}),
	confirmation({
		id: 'back-guard',
		title: 'Guard off',
		ask: 'Take the stylus guard off the way its maker says, the headshell held. Done?',
		caution:
			'The stylus is bare from here on: it is sharp, and its cantilever breaks at a touch. Never press a unipivot arm down.',
		why: "The guard's mass must not stay in the tracking force of a record.",
		mistake: 'Pulling it sideways. A unipivot arm is never pressed down while this is done.',
		when: (facts) => !facts.is('guard-on', 'no-guard'),
	}),
	step('back-force', {
		stage: 'back',
		title: 'Weigh as played',
		ask: 'Weigh at record height, bias and damping as played, without the guard. Type - if it cannot be weighed.',
		why: 'It is the last thing that can go wrong unnoticed: within 2 % of the playing force is wanted.',
		mistake: 'Weighing with the guard on again.',
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		verify: playingForceProblem,
		reasons: ['owner-wants-force', 'no-scale'],
	}),
	confirmation({
		id: 'back-level',
		title: 'A last look at the level',
		ask: 'Look at the level once more. Still so?',
		why: 'A deck that was pushed about is no longer where it was.',
		mistake: 'Levelling now without probing again.',
	}),
	confirmation({
		id: 'back-covers',
		title: 'Covers and first record',
		ask: 'Covers back, nothing left on the platter. Turn the volume down before the stylus first meets a record. Done?',
		why: 'A stylus that lands wrong at full volume can destroy loudspeakers. If anything was opened: mains only when it is closed again, by licensed or authorised people where local codes ask for it.',
		mistake: 'Trying it out with the volume where it was.',
	}),
	step('next-check', {
		stage: 'next',
		title: 'Next check',
		ask: 'Keep this date for the next check? n means no date.',
		why: 'Six months is common practice (no source). A stiff wire or a free loop creeps sooner, and an open question should not wait.',
		mistake: 'Waiting until something is heard.',
		input: {kind: 'confirm'},
	}),
];
