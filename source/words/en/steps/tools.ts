import type {StepSentences} from '../../step-sentences.js';

export const tools = {
	'tools-name': {
		title: 'Name of the gauge and tools',
		ask: 'What do you call this set of gauge, scale and level?',
		why: 'Figures taken with another gauge are compared with more care.',
		mistake: 'Keeping the name after the gauge was repaired or adjusted.',
	},
	'gauge-mount': {
		title: 'How the gauge is held',
		ask: 'How is the gauge held while it reads?',
		why: 'A gauge that is pushed by hand carries nothing: the arm is floated instead of weighed.',
		mistake: 'Naming a gauge on a stand of its own clamped: it stands.',
	},
	'gauge-unit': {
		title: 'Unit of the gauge',
		ask: 'What does the gauge read?',
		why: 'A percent scale is percent of the force that the gauge carries; millinewtons and grams are plain forces.',
		mistake: 'Changing it later: readings keep the unit in which they were taken.',
	},
	'gauge-step': {
		title: 'Smallest step of the gauge',
		ask: 'Smallest step that you can read on the gauge (half a percent of the tracking force, or finer, is advised).',
		why: 'A coarse step widens every uncertainty.',
		mistake: 'Naming the marks on the scale when you can read halfway between them.',
	},
	'gauge-top': {
		title: 'Top of the scale',
		ask: 'Where does the scale of the gauge end?',
		why: 'At the end of the scale the pointer no longer measures. Every gauge ends elsewhere, so there is no usual value.',
		mistake: 'Reading a pointer that leans on its stop.',
	},
	'gauge-sign': {
		title: 'Sign of the gauge',
		ask: 'What does the gauge show, and what does its plus mean?',
		why: 'Here a reading is the force that the arm exerts on the gauge, plus toward the rim. A gauge that shows the force of your hand, or has its plus the other way, is turned at entry.',
		mistake: 'Not sure? Push the pointer gently toward the rim as the arm would, and look which way it goes.',
	},
	'gauge-turns': {
		title: 'Turning the gauge',
		ask: ({isInHand}) =>
			`Can the gauge be turned end for end ${isInHand ? 'in the hand' : 'under the arm'}, so that its plus points the other way?`,
		why: "Turned, the gauge shows the arm's pull with the other sign and its own zero error with the same one: one such round tells them apart.",
		mistake: 'Trusting a pointer that rests on zero in the air: carrying the arm may shift it.',
	},
	'gauge-scale-uncertainty': {
		title: 'How true is the scale of the gauge',
		ask: 'The gauge is true to plus or minus how many percent of its reading?',
		why: 'It limits how well large pulls are known; repeating does not help against it.',
		mistake: 'Typing the smallest step here. If the maker says nothing, 2 is a careful guess.',
	},
	'gauge-nudge': {
		title: 'Size of a nudge',
		ask: 'By how much does the reading move with one nudge? One reading step is advised.',
		why: 'The last place that held falls short of the limit by half a nudge on average; the band is corrected for it. A reading taken when the arm just starts needs no correction: 0.',
		mistake: 'Nudging in jumps: the arm then starts early. Type 0 if you read halfway between holding and going.',
	},
	'scale-step': {
		title: 'Smallest step of the stylus scale',
		ask: 'Smallest step that the stylus scale shows.',
		why: 'A coarse scale cannot know the tracking force better than its step.',
		mistake: 'Taking a fine display for a true one.',
	},
	'scale-uncertainty': {
		title: 'Stylus scale',
		ask: 'The stylus scale is true to plus or minus how much?',
		why: 'It says how well the tracking force is known.',
		mistake: 'Typing its smallest step: that is usually finer than it is true.',
	},
	'level-step': {
		title: 'Smallest step of the level',
		ask: 'Smallest tilt that you can read on the level (degrees, or mm/m).',
		why: 'A tilt of 0.1° pushes the stylus sideways by 0.17 % of the tracking force.',
		mistake: 'A bubble without marks reads no finer than about 0.2°.',
	},
	'tools-profile': {
		title: 'Which gauge and tools?',
		ask: 'Pick a set from the list, or enter a new one.',
		why: 'Its answers are filled in; each of them can be corrected from the list of steps (Tab).',
		mistake: 'Picking the old set when the gauge was changed.',
	},
} satisfies Partial<StepSentences>;
