import type {StepSentences} from '../../step-sentences.js';

export const arm = {
	'arm-name': {
		title: "The arm's name",
		short: 'Name?',
		ask: 'What do you call this arm?',
		why: 'Past checks are found by this name, so it stays the same over the years.',
		mistake: 'Naming the deck when two arms take turns on it: each arm needs its own name.',
	},
	'arm-serial': {
		title: 'Serial number',
		ask: "The arm's serial number, or - if there is none.",
		why: 'A maker who is asked to look at the figures will ask for it.',
		mistake: "Taking the deck's number for the arm's.",
	},
	'arm-length': {
		title: 'Effective length',
		short: 'Pivot to stylus?',
		ask: 'Pivot to stylus, seen from above.',
		why: 'Torque is force times this length.',
		mistake: 'Measuring along the tube to the headshell instead of to the stylus.',
	},
	'arm-pivot-distance': {
		title: 'Pivot distance',
		short: 'Spindle to pivot, or - if not known?',
		ask: 'Spindle to pivot, seen from above, or - to work it out from null radii.',
		why: 'With the length it says where the stylus stands at each radius.',
		mistake: 'Measuring from the edge of the pivot housing instead of its middle.',
	},
	'arm-offset': {
		title: 'Offset angle',
		ask: 'Offset angle, or - if not known.',
		why: ({isWorkedOut}) =>
			isWorkedOut
				? 'With it one null radius is enough to work out the pivot distance.'
				: "With it the arm's own overhang and null radii are shown, as information. No figure of this check needs it.",
		mistake: 'Guessing: no answer is better.',
	},
	'arm-pivot-place': {
		title: 'Where the pivot stands',
		short: 'Pivot where?',
		ask: 'Stand in front of the deck. Where is the pivot, from the spindle?',
		why: 'It decides which way a tilt of the deck pushes the stylus.',
		mistake: 'Answering for the rest instead of the pivot.',
	},
	'arm-bearing': {
		title: 'Bearing',
		short: 'Bearing?',
		ask: 'What kind of bearing does the arm swing on?',
		why: 'A unipivot rocks: it is nudged at the height of its pivot and set upright afterwards.',
		mistake: 'Pressing a unipivot down: never do, not on its stylus guard either.',
	},
	'arm-gravity-centre': {
		title: 'Centre of gravity',
		ask: 'Seen from the side: is the counterweight about level with the horizontal pivot, or well below or above it?',
		why: 'When it hangs far from the pivot the tracking force changes with the height of the arm, so height matters more.',
		mistake: 'Judging it from above.',
	},
	'arm-loading': {
		title: 'What makes the tracking force',
		short: 'Force by?',
		ask: 'What makes the tracking force?',
		why: 'An arm loaded by gravity leans sideways with its whole tracking force when the deck tilts; a spring does not care about level.',
		mistake: 'Many spring-loaded arms also have a counterweight: what counts is what you turn to set the force.',
	},
	'arm-auto-stop': {
		title: 'Automatic stop',
		ask: 'Is there an automatic stop or return that the arm works near the label?',
		why: 'Its linkage is the first suspect when friction is high only at the inner radius; the inner probe then stays at 75 mm or more.',
		mistake: 'Forgetting a lifter that is tripped by the arm.',
	},
	'arm-wire-path': {
		title: 'Where the wires leave',
		short: 'Wires?',
		ask: 'How do the signal wires leave the arm?',
		why: 'Wires are the usual cause of a pull that changes over the record.',
		mistake: 'Looking only at the outside: a tight twist inside the column pulls just as well.',
	},
	'arm-wire-stiffness': {
		title: 'Stiffness of the wires',
		ask: 'How stiff are they?',
		why: 'Stiff wires act as a spring and creep over the seasons, so they are checked more often.',
		mistake: 'Judging by the thickness of the insulation alone.',
	},
	'arm-bias-device': {
		title: 'Bias device',
		short: 'Bias device?',
		ask: 'Which bias (anti-skating) device does it have?',
		why: 'Each kind is switched off in its own way before the probe, and put back in its own way after it.',
		mistake: 'A device that is set to zero is still there: name it.',
	},
	'arm-damping': {
		title: 'Damping fluid',
		short: 'Damping?',
		ask: 'Has the arm a damping trough or paddle?',
		why: 'Fluid in the trough hides friction behind its drag.',
		mistake: 'A dry trough with the paddle touching its wall is a damper too. Oil in a bearing stays.',
	},
	'deck-sprung': {
		title: 'Suspension',
		short: 'Sprung?',
		ask: 'Does the deck stand on a spring suspension?',
		why: 'A sprung deck changes its level with everything that is put on it.',
		mistake: 'Feet of soft rubber are no suspension.',
	},
	'arm-profile': {
		title: 'Which arm?',
		ask: 'Pick an arm from the list, or enter a new one.',
		why: 'Its answers are filled in; each of them can be corrected from the list of steps (Tab).',
		mistake: 'Picking the same name for a rewired arm without looking through its answers.',
	},
} satisfies Partial<StepSentences>;
