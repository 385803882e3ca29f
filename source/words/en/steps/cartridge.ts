import type {StepSentences} from '../../step-sentences.js';

export const cartridge = {
	'cartridge-name': {
		title: "The cartridge's name",
		ask: 'What do you call this cartridge?',
		why: 'It tells checks with different cartridges apart.',
		mistake: 'Keeping the old name after a new stylus. Say so in the name.',
	},
	'playing-force': {
		title: 'Playing force',
		short: 'Playing force?',
		ask: 'Type the tracking force you play with.',
		why: 'Called the playing force here. All figures are percent of it.',
		mistake: 'Typing grams as millinewtons. 1.8 g is 17.7 mN.',
	},
	'force-low': {
		title: 'Lowest tracking force',
		ask: "Type the lowest force of the maker's range, or - if not known.",
		why: 'The force on the gauge must stay inside this range.',
		mistake: 'Typing the recommended force.',
	},
	'force-high': {
		title: 'Highest tracking force',
		ask: "Type the highest force of the maker's range, or - if not known.",
		why: 'Too much force can bend the suspension of the stylus.',
		mistake: 'Forgetting that the guard adds force.',
	},
	'cartridge-compliance': {
		title: 'Static lateral compliance',
		ask: 'Type the static lateral compliance, or - if not known.',
		why: 'It tells how far the stylus leans sideways.',
		mistake: 'Typing the dynamic value at 10 or 100 Hz. It is far lower than the static one.',
	},
	'cartridge-cantilever': {
		title: 'Cantilever length',
		ask: 'Type the length of the cantilever, or - if not known.',
		why: 'It turns the lean of the stylus into an angle.',
		mistake: 'Measuring it. Look it up or type -: a cantilever breaks at a touch.',
	},
	'guard-mass': {
		title: "The guard's mass",
		short: 'Guard alone on the scale? Type - if not known.',
		ask: 'Lay the guard alone on the stylus scale. What does it show? Type - if not known.',
		why: 'The guard stays on while you probe, so its mass counts.',
		mistake: 'Weighing it with the arm.',
	},
	'guard-depth': {
		title: 'Guard below the stylus',
		short: 'Guard below the stylus? Type - if not known.',
		ask: 'How far does the guard hang below the stylus? Type - if not known.',
		why: 'The guard touches first. Its depth decides on mat and height.',
		mistake: 'Measuring from the cartridge body, not from the stylus.',
	},
	'cartridge-profile': {
		title: 'Which cartridge?',
		ask: 'Choose the cartridge, or enter a new one.',
		why: 'Its answers are filled in. Tab lists them: correct there what is wrong.',
		mistake: 'Choosing it after the playing force was changed. Correct that first.',
	},
} satisfies Partial<StepSentences>;
