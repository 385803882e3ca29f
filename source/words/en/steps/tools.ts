import type {StepSentences} from '../../step-sentences.js';

export const tools = {
	'tools-name': {
		title: 'Name of the gauge and tools',
		ask: 'What do you call this gauge, scale and level?',
		why: 'Checks with another gauge are compared with more care.',
		mistake: 'Keeping the name after a repair of the gauge.',
	},
	'gauge-mount': {
		title: 'How the gauge is held',
		ask: 'How is the gauge held?',
		why: 'A gauge in your hand carries nothing. Then the arm floats and is not weighed.',
		mistake: "Answering 'clamped' for a gauge on its own stand. It stands.",
	},
	'gauge-unit': {
		title: 'Unit of the gauge',
		ask: 'Which unit does the gauge read?',
		why: 'A gauge in percent reads percent of the force it carries.',
		mistake: 'Changing it later. Readings keep their unit.',
	},
	'gauge-step': {
		title: 'Smallest step of the gauge',
		ask: 'Type the smallest step you can read on the gauge.',
		why: 'A coarse step makes every ± larger. Half a percent or finer is good.',
		mistake: 'Typing the distance of the marks where you can read halfway between.',
	},
	'gauge-top': {
		title: 'End of the scale',
		ask: "Type the last mark of the gauge's scale.",
		why: 'At the end of its scale the pointer measures no more.',
		mistake: 'Reading a pointer that leans on its stop.',
	},
	'gauge-sign': {
		title: 'Sign of the gauge',
		ask: 'What does the gauge show, and which way is its plus?',
		why: "A reading here is the push of the arm on the gauge, plus toward the rim. Your gauge's readings are turned to that.",
		mistake: 'Guessing. Push the pointer gently toward the rim, and look which way it goes.',
	},
	'gauge-turns': {
		title: 'Turning the gauge',
		ask: ({isInHand}) => `Can you turn the gauge end for end ${isInHand ? 'in your hand' : 'under the arm'}?`,
		why: 'Turned end for end, the gauge shows the pull with the other sign, but its zero with the same. One turned round tells them apart.',
		mistake: 'Trusting a pointer at zero in the air. Under the arm its zero may shift.',
	},
	'gauge-scale-uncertainty': {
		title: '± of the gauge',
		ask: 'Type the ± of the gauge, in percent of its reading.',
		why: 'It limits how well a large pull is known. More rounds do not help.',
		mistake: 'Typing the smallest step. If the maker says nothing, 2 is a careful guess.',
	},
	'gauge-nudge': {
		title: 'Size of a nudge',
		ask: 'By how much does one nudge move the reading?',
		why: 'The last reading that held lies half a nudge short of the limit, on average. The friction is corrected for that.',
		mistake: 'Nudging in jumps: the arm starts early. Type 0 if you read the moment it starts.',
	},
	'scale-step': {
		title: 'Smallest step of the stylus scale',
		ask: 'Type the smallest step of the stylus scale.',
		why: 'The tracking force is known no better than this step.',
		mistake: 'Trusting a fine display. It need not be true.',
	},
	'scale-uncertainty': {
		title: '± of the stylus scale',
		ask: 'Type the ± of the stylus scale.',
		why: 'It tells how well the tracking force is known.',
		mistake: 'Typing its smallest step. Its ± is usually larger.',
	},
	'level-step': {
		title: 'Smallest step of the level',
		ask: 'Type the smallest tilt you can read on the level.',
		why: 'A tilt of 0.1° makes 0.17 % of pull. Degrees or mm/m will do.',
		mistake: 'Typing less than 0.2° for a bubble without marks.',
	},
	'tools-profile': {
		title: 'Which gauge and tools?',
		ask: 'Choose the gauge and tools, or enter new ones.',
		why: 'The answers are filled in. Tab lists them: correct there what is wrong.',
		mistake: 'Choosing the old set with another gauge.',
	},
} satisfies Partial<StepSentences>;
