import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {decimalsApart, formatIn, grams} from '../units.js';
import type {Facts} from './facts.js';
import {type Problem, type Step, steps} from './step.js';
import {biasDeviceOf} from './steps-setting.js';

const settingOf = (facts: Facts): string => {
	const setting = facts.text('bias-setting');
	return setting === undefined ? '' : ` It was set to: ${setting}.`;
};

const notYet = (id: string, sentence: string) => ({
	verify: (facts: Facts): Problem | undefined =>
		facts.yes(id)
			? undefined
			: {sentence, ways: [{label: 'do it now, then confirm', do: 'ask-again' as const, steps: [id]}]},
	reasons: ['it will be done by someone else, who knows', 'it cannot be done here'],
});

function playingForceProblem(facts: Facts): Problem | undefined {
	const weighed = facts.number('back-force');
	const playing = facts.number('playing-force');
	if (facts.unknown('back-force'))
		return {
			sentence: 'It was not weighed as played.',
			ways: [{label: 'weigh it now', do: 'ask-again', steps: ['back-force']}],
		};
	if (weighed === undefined || playing === undefined) return;
	const offPct = 100 * (weighed / playing - 1);
	const allowedPct = 100 * limits.putBackForceShare.value;
	if (!isAbove(Math.abs(offPct), allowedPct)) return;
	const size = Math.abs(offPct).toFixed(decimalsApart(Math.abs(offPct), allowedPct, 1));
	return {
		sentence: `${formatIn(weighed, 'gf')} is ${size} % ${offPct > 0 ? 'more' : 'less'} than the playing force of ${formatIn(playing, 'gf')}; within ${allowedPct} % is wanted.`,
		ways: [{label: 'set the tracking force, weigh again', do: 'ask-again', steps: ['back-force']}],
	};
}

/** Stages 15 and 16: the deck goes back so that it is safe to play, the stylus bare last; then the next date. */
export const putBackSteps: readonly Step[] = steps([
	{
		id: 'back-lock',
		stage: 'back',
		title: 'Lock the arm',
		ask: 'Take the gauge away and lock the arm in its rest, guard still on. Done?',
		why: 'Everything that follows is done around a stylus; locked and guarded it is safest.',
		mistake: 'Lifting the gauge with the arm still lying on it.',
		input: {kind: 'confirm'},
		...notYet('back-lock', 'Lock the arm before anything else is touched.'),
	},
	{
		id: 'back-mat',
		stage: 'back',
		title: 'Mat',
		ask: 'Put the mat back on the platter. Done?',
		why: 'Without it the stylus comes down on a record that lies too low.',
		mistake: 'Putting it back upside down.',
		input: {kind: 'confirm'},
		when: (facts) => facts.is('mat', 'off'),
		...notYet('back-mat', 'The mat is still off.'),
	},
	{
		id: 'back-damping',
		stage: 'back',
		title: 'Damping',
		ask: 'Restore the damping: fluid in the trough, paddle at its usual depth. Done?',
		why: 'The arm is played with it.',
		mistake: 'Overfilling: fluid creeps up the paddle into the bearing.',
		input: {kind: 'confirm'},
		when: (facts) => facts.is('arm-damping', 'yes'),
		...notYet('back-damping', 'The damping is not restored yet.'),
	},
	{
		id: 'back-bias',
		stage: 'back',
		title: 'Bias device',
		ask: (facts) => `${biasDeviceOf(facts).restore}${settingOf(facts)} Done?`,
		why: 'Without bias the stylus leans on the inner groove wall.',
		mistake: 'Leaving the thread off its guide.',
		input: {kind: 'confirm'},
		when: (facts) => facts.text('arm-bias-device') !== undefined && !facts.is('arm-bias-device', 'none'),
		...notYet('back-bias', 'The bias device is still out of action.'),
	},
	{
		id: 'back-height',
		stage: 'back',
		title: 'Arm height',
		ask: 'Set the arm to its playing height, if it was moved. Done?',
		why: 'Height changes the angle of the stylus, and on some arms the tracking force.',
		mistake: 'Forgetting the height that was set for the guard.',
		input: {kind: 'confirm'},
		...notYet('back-height', 'The arm is not at its playing height yet.'),
	},
	{
		id: 'back-guard',
		stage: 'back',
		title: 'Guard off',
		ask: 'Take the stylus guard off the way its maker says, the headshell held. Done?',
		caution:
			'The stylus is bare from here on: it is sharp, and its cantilever breaks at a touch. Never press a unipivot arm down.',
		why: "The guard's mass must not stay in the tracking force of a record.",
		mistake: 'Pulling it sideways. A unipivot arm is never pressed down while this is done.',
		input: {kind: 'confirm'},
		when: (facts) => !facts.is('guard-on', 'no-guard'),
		...notYet('back-guard', 'With the guard on, its mass is in the tracking force and the deck cannot play.'),
	},
	{
		id: 'back-force',
		stage: 'back',
		title: 'Weigh as played',
		ask: 'Weigh at record height, bias and damping as played, without the guard. Leave it empty if it cannot be weighed.',
		why: 'It is the last thing that can go wrong unnoticed: within 2 % of the playing force is wanted.',
		mistake: 'Weighing with the guard on again.',
		input: {kind: 'number', unit: 'gf', between: [grams(0.1), grams(12)], optional: true},
		verify: playingForceProblem,
		reasons: ['the owner wants this force', 'the scale is not at hand'],
	},
	{
		id: 'back-level',
		stage: 'back',
		title: 'A last look at the level',
		ask: 'Look at the level once more. Still so?',
		why: 'A deck that was pushed about is no longer where it was.',
		mistake: 'Levelling now without probing again.',
		input: {kind: 'confirm'},
		...notYet('back-level', 'Level the deck again.'),
	},
	{
		id: 'back-covers',
		stage: 'back',
		title: 'Covers and first record',
		ask: 'Covers back, nothing left on the platter. Turn the volume down before the stylus first meets a record. Done?',
		why: 'A stylus that lands wrong at full volume can destroy loudspeakers. If anything was opened: mains only when it is closed again, by licensed or authorised people where local codes ask for it.',
		mistake: 'Trying it out with the volume where it was.',
		input: {kind: 'confirm'},
		...notYet('back-covers', 'The deck is not ready to play yet.'),
	},
	{
		id: 'next-check',
		stage: 'next',
		title: 'Next check',
		ask: 'Keep this date for the next check? n means no date.',
		why: 'Six months is common practice. Stiff or exposed wires relax sooner, and an open question should not wait.',
		mistake: 'Waiting until something is heard.',
		input: {kind: 'confirm'},
	},
]);
