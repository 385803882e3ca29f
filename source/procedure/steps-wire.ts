import {type Step, step} from './step.js';

/** How the signal wires leave the arm; kept with it. They are the usual cause of a pull that changes over the record. */
export const wireSteps: readonly Step[] = [
	step('arm-wire-path', {
		stage: 'arm',
		title: 'Where the wires leave',
		ask: 'How do the signal wires leave the arm?',
		why: 'Wires are the usual cause of a side pull that changes over the record.',
		mistake: 'Looking only at the outside: a tight twist inside the column pulls just as well.',
		input: {
			kind: 'choice',
			options: [
				{id: 'inside', label: 'inside the column'},
				{id: 'free-loop', label: 'in a free loop'},
			],
		},
	}),
	step('arm-wire-stiffness', {
		stage: 'arm',
		title: 'Stiffness of the wires',
		ask: 'How stiff are they?',
		why: 'Stiff wires act as a spring and creep over the seasons, so they are checked more often.',
		mistake: 'Judging by the thickness of the insulation alone.',
		input: {
			kind: 'choice',
			options: [
				{id: 'limp', label: 'limp, hangs by itself'},
				{id: 'medium', label: 'medium'},
				{id: 'stiff', label: 'stiff, springs back'},
			],
		},
	}),
];
