import type {StepSentences} from '../../step-sentences.js';

export const cartridge = {
	'cartridge-name': {
		title: "The cartridge's name",
		ask: 'What do you call this cartridge?',
		why: 'Checks with different cartridges are told apart by it.',
		mistake: 'Keeping the old name after a new stylus: write that down in the name.',
	},
	'playing-force': {
		title: 'Playing force',
		short: 'Playing force?',
		ask: 'Tracking force as it is played.',
		why: 'All figures are given in percent of this force.',
		mistake: 'Typing grams as millinewtons: 1.8 g is 17.7 mN.',
	},
	'force-low': {
		title: 'Lowest tracking force',
		ask: "Lowest tracking force of the maker's range, or - if you do not know it.",
		why: 'The force that the gauge carries must stay inside the range.',
		mistake: 'Reading the recommended value as the lowest.',
	},
	'force-high': {
		title: 'Highest tracking force',
		ask: "Highest tracking force of the maker's range, or - if you do not know it.",
		why: 'Too much force, with the guard on top, can bend the suspension.',
		mistake: 'Forgetting that the guard adds to the force.',
	},
	'cartridge-compliance': {
		title: 'Static lateral compliance',
		ask: 'Static lateral compliance, or - if you do not know it.',
		why: 'With it the sideways lean of the stylus is worked out.',
		mistake: 'Many data sheets give the dynamic value at 10 or 100 Hz, which is far lower than the static one.',
	},
	'cartridge-cantilever': {
		title: 'Cantilever length',
		ask: 'Length of the cantilever, or - if you do not know it.',
		why: 'It turns the lean into an angle.',
		mistake: 'Measuring it: look it up, or leave it out. A cantilever breaks at a touch.',
	},
	'guard-mass': {
		title: "The guard's mass",
		short: 'Guard alone on the scale, or - if not known?',
		ask: 'Lay the guard alone on the stylus scale. What does it show, or - if not known?',
		why: 'The guard stays on while you probe, so its mass counts in the tracking force.',
		mistake: 'Weighing it with the arm.',
	},
	'guard-depth': {
		title: 'How far the guard hangs down',
		short: 'Guard below the stylus, or - if not known?',
		ask: 'How far does it hang below the stylus, or - if not known?',
		why: 'The guard touches first: from its depth come mat and height.',
		mistake: 'Measuring from the cartridge body instead of from the stylus.',
	},
	'cartridge-profile': {
		title: 'Which cartridge?',
		ask: 'Pick a cartridge from the list, or enter a new one.',
		why: 'Its answers are filled in; each of them can be corrected from the list of steps (Tab).',
		mistake: 'Picking the old entry after the playing force was changed.',
	},
} satisfies Partial<StepSentences>;
