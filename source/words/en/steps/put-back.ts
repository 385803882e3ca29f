import {scaleText} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {deviceWords} from '../bias-devices.js';

export const putBack = {
	'back-lock': {
		title: 'Lock the arm',
		short: 'Arm locked?',
		ask: 'Lift the arm, into its rest, lock it. Done?',
		why: 'Everything that follows is done beside a stylus: locked and covered it is safest.',
		mistake: 'Taking the gauge away with the arm still on it.',
	},
	'back-gauge': {
		title: 'Gauge away',
		short: 'Gauge away?',
		ask: 'Take the gauge off the platter. Done?',
		why: 'The mat and a record need its place.',
		mistake: 'Touching the arm with it on the way out.',
	},
	'back-blocks': {
		title: 'Blocks and ties',
		short: 'Blocks and ties out?',
		ask: 'Blocks, wedges, packing and ties out, but the tie of the rest. Done?',
		why: 'What stays holds the platter or rubs on the arm.',
		mistake: 'Forgetting the packing under the stylus scale.',
	},
	'back-weight': {
		title: 'Counterweight for play',
		ask: ({playingMn, guardMn}) =>
			`Guard on: set the counterweight until the scale shows ${scaleText((playingMn ?? 0) + guardMn)}. Done?`,
		why: ({playingMn, guardMn}) =>
			`Playing force ${scaleText(playingMn ?? 0)} and guard ${scaleText(guardMn)}: so the stylus is set while it is covered.`,
		mistake: 'Turning the counterweight with the arm on the scale: arm in its rest first.',
	},
	'back-leads': {
		title: 'Leads and cartridge',
		short: 'Leads on?',
		ask: 'Cartridge in, each lead on its own pin by its colour. Done?',
		why: 'Two leads swapped turn a channel over: listen in mono for a thin bass with the first record.',
		mistake: 'Pushing a tag on with the guard off, or gripping the wire instead of the tag.',
		caution: 'Arm locked, guard on, amplifier off. A soldered pin breaks: leave it to a licensed person.',
	},
	'back-upright': {
		title: 'Upright',
		short: 'Upright?',
		ask: 'Seen from the front: does the arm stand upright?',
		why: 'Turning the counterweight can tip a unipivot.',
		mistake: 'Looking from the side.',
	},
	'back-mat': {
		title: 'Mat',
		short: 'Mat on?',
		ask: 'Put the mat back on the platter. Done?',
		why: 'Without it the stylus comes down on a record that lies too low.',
		mistake: 'Putting it back upside down.',
	},
	'back-damping': {
		title: 'Damping',
		short: 'Damping back?',
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
		short: 'Height as played?',
		ask: 'Set the arm to its playing height, if it was moved. Done?',
		why: 'Height changes the angle of the stylus, and on some arms the tracking force.',
		mistake: 'Forgetting the height that was set for the guard.',
	},
	'back-guard': {
		title: 'Guard off',
		ask: ({isUnipivot}) =>
			`Arm locked: pull the guard straight off.${isUnipivot ? ' Never press a unipivot down.' : ''} Done?`,
		why: "The guard's mass must not stay in the tracking force.",
		mistake: 'Pulling it sideways.',
		caution: 'The stylus is bare from here on: it is sharp, and its cantilever breaks at a touch.',
	},
	'back-force': {
		title: 'Weigh as played',
		ask: ({setToMn}) =>
			setToMn === undefined
				? 'Guard off, pan at record height: what does the scale show, or - if not weighed?'
				: `Guard off, pan at record height: set the counterweight until the scale shows ${scaleText(setToMn)}. What does it show, or - if not weighed?`,
		why: 'It is the last thing that can go wrong unnoticed: within 2 % of the playing force.',
		mistake: 'Weighing with the guard on again.',
		caution: 'The stylus is bare. Lower it by the lifter, then lock the arm again.',
	},
	'back-level': {
		title: 'A last look at the level',
		short: 'Level still so?',
		ask: 'Look at the level once more. Still so?',
		why: 'A deck that was pushed about is no longer where it was.',
		mistake: 'Levelling now without probing again.',
	},
	'back-covers': {
		title: 'Covers and first record',
		ask: 'Clamp, belt, mains back; tie of the rest off; volume down. Done?',
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
