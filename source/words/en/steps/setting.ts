import type {StepSentences} from '../../step-sentences.js';
import {deviceWords} from '../bias-devices.js';

export const setting = {
	'room-temperature': {
		title: 'Room temperature',
		ask: 'How warm is the room, or - if not known?',
		why: 'Oil and wire stiffen in the cold: it tells the season from drift.',
		mistake: 'Checking an arm that has just come in from a cold car.',
	},
	'room-note': {
		title: 'Note',
		ask: 'A note for this check, if you want one, or - for none.',
		why: 'What you would like to know about today when you look back in a year.',
		mistake: 'Leaving out that the arm was just transported or rewired.',
	},
	mat: {
		title: 'Mat',
		short: 'Mat?',
		ask: ({deepGuardMm}) =>
			deepGuardMm === undefined
				? 'Leave the mat on, or take it off for a firm stand of the gauge?'
				: `The guard hangs more than ${deepGuardMm} mm down: take the mat off.`,
		why: 'A deep guard touches the mat. Near steel a magnet pulls harder: leave the mat on there.',
		mistake: 'Taking the mat off with the stylus bare.',
	},
	'mat-thickness': {
		title: 'Thickness of the mat',
		ask: 'How thick is the mat that you took off?',
		why: 'The stylus must hang that much higher above the bare platter to stand where it would stand over a record.',
		mistake: 'Measuring a felt mat while pressing it flat.',
		caution:
			'With the mat off the stylus can reach the bare platter: lower the lifter only with the gauge under the arm.',
	},
	'damping-off': {
		title: 'Damping',
		short: 'Free of damping?',
		ask: 'Empty the trough, or lift the paddle clear. Arm free of damping?',
		why: 'Damping fluid is friction that comes with speed; it hides what the bearings do.',
		mistake: 'A paddle that only just leaves the fluid drags a thread of it along.',
		caution: 'Keep the fluid clean in a closed vessel; it creeps, and it must not reach the bearing.',
	},
	'bias-setting': {
		title: 'Bias as it is set',
		short: 'Bias set at, or - if not known?',
		ask: 'How is the bias set now: notch, number, grams, or - if not known?',
		why: 'It is put back to this at the end.',
		mistake: 'Trusting your memory until the evening.',
	},
	'bias-off': {
		title: 'Bias off',
		ask: ({device}) => deviceWords[device].off,
		why: 'The probe is to show what the arm itself does. A bias that still pulls looks just like a twist in the wires.',
		mistake: ({device}) => deviceWords[device].mistake,
	},
	wires: {
		title: 'Look once along the arm',
		short: 'Look at each line. n asks them one by one.',
		ask: 'Arm locked. Tick each line.',
		why: 'Each of these can move the arm by more than its bearings do.',
		mistake:
			'Dressing the leads nicely for the check and letting them fall back afterwards: probe them as they are used.',
	},
} satisfies Partial<StepSentences>;
