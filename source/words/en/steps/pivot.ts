import type {StepSentences} from '../../step-sentences.js';

export const pivot = {
	'arm-pivot-way': {
		title: 'Pivot distance, worked out',
		ask: 'How is the pivot distance to be worked out?',
		why: 'At a null radius the cartridge stands tangent to the groove; two of them, or one and the offset angle, say where the pivot is.',
		mistake: 'Taking the null radii of a protractor that the cartridge was not set to.',
	},
	'arm-null-radius': {
		title: 'Null radius',
		ask: 'Either null radius: there the cartridge is tangent to the groove.',
		why: 'Read it off the protractor that the cartridge was set with, or look for the place where a line drawn along the cartridge is square to the radius.',
		mistake: 'Measuring from the edge of the label instead of from the spindle.',
	},
	'arm-null-other': {
		title: 'The other null radius',
		ask: 'The second radius at which the cartridge is tangent to the groove.',
		why: 'Their sum gives the offset angle, their product the pivot distance.',
		mistake: 'Taking one null radius from one protractor and the other from another.',
	},
} satisfies Partial<StepSentences>;
