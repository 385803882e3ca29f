import type {StepSentences} from '../../step-sentences.js';

export const radii = {
	'radius-inner': {
		title: 'Inner probe radius',
		ask: 'Distance from the spindle at which the inner probe is taken.',
		why: 'Always the same radius makes checks comparable. Near the label is where wires wind up and stops engage.',
		mistake: 'With an automatic stop, going below 75 mm: the linkage then holds the arm.',
	},
	'radius-outer': {
		title: 'Outer probe radius',
		ask: 'Distance from the spindle at which the outer probe is taken.',
		why: 'The two radii together tell a spring-like wire from a steady pull.',
		mistake: 'Choosing it so far out that the arm leans on its rest.',
	},
	'radius-extra': {
		title: 'One more probe radius',
		ask: 'A third radius to probe, if you want one, or - for none.',
		why: 'A rub that sits in mid-record shows at neither end.',
		mistake: 'Two are enough for most arms.',
	},
} satisfies Partial<StepSentences>;
