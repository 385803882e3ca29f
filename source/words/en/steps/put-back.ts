import {scaleText} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {deviceWords} from '../bias-devices.js';

export const putBack = {
	'back-lock': {
		title: 'Lock the arm',
		short: 'Arm locked?',
		ask: 'Lift the arm into its rest and lock it. Done?',
		why: 'Your hands work beside the stylus now. Locked and covered it is safe.',
		mistake: 'Taking the gauge away with the arm on it.',
	},
	'back-gauge': {
		title: 'Gauge away',
		short: 'Gauge away?',
		ask: 'Take the gauge off the platter. Done?',
		why: 'Mat and record need its place.',
		mistake: 'Touching the arm with the gauge.',
	},
	'back-blocks': {
		title: 'Blocks and ties',
		short: 'Blocks and ties out?',
		ask: 'Take out blocks, wedges, packing and ties. Leave the tie of the arm rest. Done?',
		why: 'What stays holds the platter or the arm.',
		mistake: 'Forgetting the packing under the stylus scale.',
	},
	'back-weight': {
		title: 'Counterweight for play',
		ask: ({playingMn, guardMn}) =>
			`Guard on. Set the counterweight until arm and guard weigh ${scaleText((playingMn ?? 0) + guardMn)}. Done?`,
		why: ({playingMn, guardMn}) =>
			`The guard weighs ${scaleText(guardMn)} and comes off later. Then ${scaleText(playingMn ?? 0)} is left, the playing force. Until then the stylus stays covered.`,
		mistake: 'Turning the counterweight with the arm on the scale. Arm in its rest first.',
	},
	'back-leads': {
		title: 'Leads and cartridge',
		short: 'Leads on?',
		ask: 'Fit the cartridge. Push each lead on its pin by colour. Done?',
		why: 'Two swapped leads turn a channel over. Play the first record in mono: thin bass tells.',
		mistake: 'Pushing a tag on with the guard off, or gripping the lead, not the tag.',
		caution: 'Arm locked, guard on, amplifier off. Leave a soldered or broken pin to a licensed person.',
	},
	'back-upright': {
		title: 'Upright',
		short: 'Upright?',
		ask: 'Look from the front. Is the headshell parallel to the record?',
		why: 'Turning the counterweight can tip a unipivot.',
		mistake: 'Looking from the side.',
	},
	'back-mat': {
		title: 'Mat',
		short: 'Mat on?',
		ask: 'Put the mat back on the platter. Done?',
		why: 'Without it the record lies too low for the arm.',
		mistake: 'Putting it back upside down.',
	},
	'back-damping': {
		title: 'Damping',
		short: 'Damping back?',
		ask: 'Put the fluid back, paddle at its usual depth. Done?',
		why: 'The arm is played with it.',
		mistake: 'Overfilling. Fluid creeps into the bearing.',
	},
	'back-bias': {
		title: 'Bias device',
		ask: ({device, chosen, setting}) =>
			chosen
				? `Leave the bias as you chose: setting ${chosen.number}${chosen.setting === '' ? '' : ` (${chosen.setting})`}. Done?`
				: `${deviceWords[device].restore}${setting === undefined ? '' : ` It was set to: ${setting}.`} Done?`,
		why: 'Without bias the stylus leans on the inner wall of the groove.',
		mistake: 'Leaving the thread off its guide.',
	},
	'back-height': {
		title: 'Arm height',
		short: 'Height as played?',
		ask: 'Set the arm to its playing height. Done?',
		why: 'Height changes the angle of the stylus, on some arms the tracking force too.',
		mistake: 'Leaving the height that was set for the guard.',
	},
	'back-guard': {
		title: 'Guard off',
		ask: ({isUnipivot}) =>
			`Arm locked. Pull the guard straight off.${isUnipivot ? ' Never press a unipivot down.' : ''} Done?`,
		why: 'Its mass must not stay in the tracking force.',
		mistake: 'Pulling it sideways.',
		caution: 'The stylus is bare from here on. It is sharp, and its cantilever breaks at a touch.',
	},
	'back-force': {
		title: 'Weigh as played',
		ask: ({setToMn}) =>
			setToMn === undefined
				? 'Weigh at record height. What does the scale show? Type - if not weighed.'
				: `Weigh at record height, set the counterweight to ${scaleText(setToMn)}. What does the scale show? Type - if not weighed.`,
		why: 'A wrong force shows nowhere else. Within 2 % of the playing force is right.',
		mistake: 'Weighing with the guard on.',
		caution: 'The stylus is bare. Lower it by the lifter. Lock the arm again afterwards.',
	},
	'back-level': {
		title: 'A last look at the level',
		short: 'Level as before?',
		ask: 'Lay the level on the armboard as at the start. Does it show the same?',
		why: 'Hands at the deck may have moved it.',
		mistake: 'Levelling now and not probing again.',
	},
	'back-covers': {
		title: 'Covers and first record',
		ask: 'Put back belt, covers and mains. Untie the arm. Turn the volume down. Done?',
		why: 'A stylus that lands wrong at full volume destroys loudspeakers. Mains only on a closed deck. Local codes may ask for a licensed person.',
		mistake: 'Trying it with the volume up.',
	},
	'next-check': {
		title: 'Next check',
		ask: 'Keep this date for the next check? n: no date.',
		why: 'Six months is common practice (no source). Leads that are stiff or hang in a free loop creep sooner. What is undecided should not wait.',
		mistake: 'Waiting until you hear something.',
	},
} satisfies Partial<StepSentences>;
