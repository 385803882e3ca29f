import type {StepSentences} from '../../step-sentences.js';

export const arm = {
	'arm-name': {
		title: "The arm's name",
		short: 'Name?',
		ask: 'What do you call this arm?',
		why: 'Past checks are found by this name. Keep it over the years.',
		mistake: 'Typing the name of the deck. Two arms on one deck need two names.',
	},
	'arm-serial': {
		title: 'Serial number',
		ask: "Type the arm's serial number, or - for none.",
		why: 'The maker asks for it.',
		mistake: "Typing the deck's number.",
	},
	'arm-length': {
		title: 'Effective length',
		short: 'Pivot to stylus?',
		ask: 'Measure from pivot to stylus, seen from above.',
		why: 'It turns the force at the stylus into torque.',
		mistake: 'Measuring to the headshell, not to the stylus.',
	},
	'arm-pivot-distance': {
		title: 'Pivot distance',
		short: 'Spindle to pivot? Type - if not known.',
		ask: 'Measure from spindle to pivot, seen from above. Type - if not known.',
		why: 'With the effective length it tells where the stylus stands at each radius. After - it is worked out from the null radii.',
		mistake: 'Measuring to the edge of the pivot housing, not to its middle.',
	},
	'arm-offset': {
		title: 'Offset angle',
		ask: 'Type the offset angle, or - if not known.',
		why: ({isWorkedOut}) =>
			isWorkedOut
				? 'With it one null radius gives the pivot distance.'
				: "It gives the arm's overhang and null radii, for information. No figure of this check needs it.",
		mistake: 'Guessing. Better type -.',
	},
	'arm-pivot-place': {
		title: 'Where the pivot stands',
		short: 'Pivot where?',
		ask: 'Stand in front of the deck. On which side of the spindle is the pivot?',
		why: 'It tells which way a tilt pushes the stylus.',
		mistake: 'Answering for the arm rest, not for the pivot.',
	},
	'arm-bearing': {
		title: 'Bearing',
		short: 'Bearing?',
		ask: 'Which bearing does the arm swing on?',
		why: 'A unipivot rocks. Nudge it at the height of its pivot, and set it upright afterwards.',
		mistake: 'Pressing a unipivot down. Never do, not on its guard either.',
	},
	'arm-gravity-centre': {
		title: 'Height of the counterweight',
		ask: 'Look from the side. How high is the counterweight, against the pivot?',
		why: 'Far above or below the pivot, it changes the tracking force with the height of the arm.',
		mistake: 'Judging it from above.',
	},
	'arm-loading': {
		title: 'What makes the tracking force',
		short: 'Tracking force by?',
		ask: 'What makes the tracking force?',
		why: 'On a tilted deck gravity drives the arm downhill. A spring does not.',
		mistake: 'Many arms with a spring have a counterweight too. Answer for what you turn to set the force.',
	},
	'arm-auto-stop': {
		title: 'Automatic stop',
		ask: 'Does the arm work an automatic stop or return?',
		why: 'Its linkage can hold the arm near the label. So the inner radius stays at 75 mm or more.',
		mistake: 'Forgetting a lifter that the arm trips.',
	},
	'arm-wire-path': {
		title: 'Where the leads leave',
		short: 'Leads?',
		ask: 'How do the leads leave the arm?',
		why: 'Leads are the usual cause where the pull changes over the record.',
		mistake: 'Looking at the outside only. A tight twist inside the column pulls too.',
	},
	'arm-wire-stiffness': {
		title: 'Stiffness of the leads',
		ask: 'How stiff are the leads?',
		why: 'Stiff leads act as a spring and creep over the seasons. Such an arm is due sooner.',
		mistake: 'Judging by how thick the insulation is.',
	},
	'arm-bias-device': {
		title: 'Bias device',
		short: 'Bias device?',
		ask: 'Which bias (anti-skating) device has the arm?',
		why: 'Each kind is taken off and put back in its own way.',
		mistake: "Answering 'none' for a device at zero. Name it.",
	},
	'arm-damping': {
		title: 'Damping fluid',
		short: 'Damping?',
		ask: 'Has the arm a damping trough with a paddle?',
		why: 'Fluid hides the friction of the bearing.',
		mistake: 'Forgetting a dry trough: a paddle that touches its wall damps too. Oil in a bearing does not count.',
	},
	'deck-sprung': {
		title: 'Suspension',
		short: 'Sprung?',
		ask: 'Does the deck hang on springs?',
		why: 'A sprung deck tilts with all you put on it.',
		mistake: 'Answering yes for soft rubber feet.',
	},
	'arm-profile': {
		title: 'Which arm?',
		ask: 'Choose the arm, or enter a new one.',
		why: 'Its answers are filled in. Tab lists them: correct there what is wrong.',
		mistake: 'Choosing a rewired arm without a look at its answers.',
	},
} satisfies Partial<StepSentences>;
