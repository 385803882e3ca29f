import {mm} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {deviceWords} from '../bias-devices.js';

export const setting = {
	'room-temperature': {
		title: 'Room temperature',
		ask: 'How warm is the room? Type - if not known.',
		why: 'Oil and leads stiffen in the cold. So a cold room is not taken for drift.',
		mistake: 'Checking an arm just in from a cold car.',
	},
	'room-note': {
		title: 'Note',
		ask: 'Type a note for this check, or - for none.',
		why: 'In a year you want to know what was special today.',
		mistake: 'Leaving out that the arm was moved or rewired.',
	},
	mat: {
		title: 'Mat',
		short: 'Mat?',
		ask: ({deepGuardMm}) =>
			deepGuardMm === undefined
				? 'Can the mat stay on? The gauge must stand firm on it.'
				: `Take the mat off: the guard hangs down over ${mm(deepGuardMm)}.`,
		why: "A deep guard touches the mat. Over a steel platter leave the mat on: the cartridge's magnet pulls.",
		mistake: 'Taking the mat off with the stylus bare.',
	},
	'mat-thickness': {
		title: 'Thickness of the mat',
		ask: 'How thick is the mat you took off?',
		why: 'The stylus must hang that much higher over the bare platter.',
		mistake: 'Pressing a felt mat flat.',
		caution: 'With the mat off the stylus can hit the platter. Lower the lifter only with the gauge under the arm.',
	},
	'damping-off': {
		title: 'Damping',
		short: 'Free of damping?',
		ask: 'Lift the paddle clear, or empty the trough. Done?',
		why: 'Fluid hides the friction of the bearings.',
		mistake: 'Lifting the paddle too little. It drags a thread of fluid along.',
		caution: 'Fluid creeps. Keep it in a closed vessel, away from the bearing.',
	},
	'bias-setting': {
		title: 'Bias setting',
		short: 'Bias set at? Type - if not known.',
		ask: 'Type the bias setting: notch, number or grams, or - if not known.',
		why: 'You set it back to this at the end.',
		mistake: 'Trusting your memory.',
	},
	'bias-off': {
		title: 'Bias off',
		ask: ({device}) => deviceWords[device].off,
		why: 'You probe what the arm itself does. Bias left on looks like a twist in the leads.',
		mistake: ({device}) => deviceWords[device].mistake,
	},
	wires: {
		title: 'Look along the arm',
		short: 'Look at each line. Type n to go line by line.',
		ask: 'Arm locked. Tick each line.',
		why: 'Each of these can push the arm more than its bearings do.',
		mistake: 'Dressing the leads for the check only. Probe them as they are used.',
	},
} satisfies Partial<StepSentences>;
