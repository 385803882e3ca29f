import type {StepSentences} from '../../step-text.js';
import {deviceWords} from '../bias-devices.js';

export const putBack = {
	'back-lock': {
		title: 'Lock the arm',
		ask: 'Raise the arm with its lifter, lock it in its rest, guard still on; then take the gauge away. Done?',
		why: 'Everything that follows is done around a stylus; locked and guarded it is safest.',
		mistake: 'Lifting the gauge with the arm still lying on it.',
	},
	'back-mat': {
		title: 'Mat',
		ask: 'Put the mat back on the platter. Done?',
		why: 'Without it the stylus comes down on a record that lies too low.',
		mistake: 'Putting it back upside down.',
	},
	'back-damping': {
		title: 'Damping',
		ask: 'Restore the damping: fluid in the trough, paddle at its usual depth. Done?',
		why: 'The arm is played with it.',
		mistake: 'Overfilling: fluid creeps up the paddle into the bearing.',
	},
	'back-bias': {
		title: 'Bias device',
		ask: ({device, chosen, setting}) =>
			chosen
				? `Leave the bias device at the setting that you chose, number ${chosen.number}${chosen.setting === '' ? '' : `: ${chosen.setting}`}. Done?`
				: `${deviceWords[device].restore}${setting === undefined ? '' : ` It was set to: ${setting}.`} Done?`,
		why: 'Without bias the stylus leans on the inner groove wall.',
		mistake: 'Leaving the thread off its guide.',
	},
	'back-height': {
		title: 'Arm height',
		ask: 'Set the arm to its playing height, if it was moved. Done?',
		why: 'Height changes the angle of the stylus, and on some arms the tracking force.',
		mistake: 'Forgetting the height that was set for the guard.',
	},
	'back-guard': {
		title: 'Guard off',
		ask: 'Take the stylus guard off the way its maker says, the headshell held. Done?',
		why: "The guard's mass must not stay in the tracking force of a record.",
		mistake: 'Pulling it sideways. A unipivot arm is never pressed down while this is done.',
		caution:
			'The stylus is bare from here on: it is sharp, and its cantilever breaks at a touch. Never press a unipivot arm down.',
	},
	'back-force': {
		title: 'Weigh as played',
		ask: 'Weigh at record height, bias and damping as played, without the guard. Type - if it cannot be weighed.',
		why: 'It is the last thing that can go wrong unnoticed: within 2 % of the playing force is wanted.',
		mistake: 'Weighing with the guard on again.',
	},
	'back-level': {
		title: 'A last look at the level',
		ask: 'Look at the level once more. Still so?',
		why: 'A deck that was pushed about is no longer where it was.',
		mistake: 'Levelling now without probing again.',
	},
	'back-covers': {
		title: 'Covers and first record',
		ask: 'Covers back, nothing left on the platter. Turn the volume down before the stylus first meets a record. Done?',
		why: 'A stylus that lands wrong at full volume can destroy loudspeakers. If anything was opened: mains only when it is closed again, by licensed or authorised people where local codes ask for it.',
		mistake: 'Trying it out with the volume where it was.',
	},
	'next-check': {
		title: 'Next check',
		ask: 'Keep this date for the next check? n means no date.',
		why: 'Six months is common practice (no source). A stiff wire or a free loop creeps sooner, and an open question should not wait.',
		mistake: 'Waiting until something is heard.',
	},
} satisfies Partial<StepSentences>;
