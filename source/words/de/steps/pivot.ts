import type {StepSentences} from '../../step-sentences.js';

export const pivot = {
	'arm-pivot-way': {
		title: 'Pivot distance, worked out',
		ask: 'Choose how to work out the pivot distance.',
		why: 'At a null radius the cartridge is tangent to the groove. Two null radii give the pivot distance; so do one and the offset angle.',
		mistake: 'Typing the null radii of another protractor.',
	},
	'arm-null-radius': {
		title: 'Null radius',
		ask: 'Type one null radius: the cartridge is tangent to the groove there.',
		why: 'Read it off the protractor that set the cartridge. Or find where a line along the cartridge is square to the radius.',
		mistake: 'Measuring from the label, not from the spindle.',
	},
	'arm-null-other': {
		title: 'The other null radius',
		ask: 'Type the other null radius.',
		why: 'The sum of both gives the offset angle, their product the pivot distance.',
		mistake: 'Mixing the null radii of two protractors.',
	},
} satisfies Partial<StepSentences>;
