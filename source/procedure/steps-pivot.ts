import {nullsProblem} from './geometry.js';
import {type Step, step} from './step.js';
import {isWorkedOut, pivotWayOf, pivotWays} from './worked-out-arm.js';

/** Believable null radii, mm: within the grooves of a record, with something to spare. */
const believableNullMm = [40, 150] as const;

/** What the pivot distance is worked out from where it was left empty; kept with the arm. */
export const pivotSteps: readonly Step[] = [
	step('arm-pivot-way', {
		stage: 'arm',
		title: 'Pivot distance, worked out',
		ask: 'How is the pivot distance to be worked out?',
		why: 'At a null radius the cartridge stands tangent to the groove; two of them, or one and the offset angle, say where the pivot is.',
		mistake: 'Taking the null radii of a protractor that the cartridge was not set to.',
		input: {kind: 'choice', options: pivotWays},
		when: isWorkedOut,
		verify: (facts) =>
			pivotWayOf(facts) === 'offset' && facts.number('arm-offset') === undefined
				? {
						id: 'offset-not-known',
						values: {},
						ways: [
							{id: 'type-offset', do: 'ask-again', steps: ['arm-offset']},
							{
								id: 'from-both-nulls',
								do: 'set',
								step: 'arm-pivot-way',
								value: 'nulls',
								typed: pivotWays[0].label,
							},
							{id: 'measure-pivot', do: 'ask-again', steps: ['arm-pivot-distance']},
						],
					}
				: undefined,
		touches: ['arm-null-radius', 'radius-inner', 'radius-outer'],
	}),
	step('arm-null-radius', {
		stage: 'arm',
		title: 'Null radius',
		ask: 'Either null radius: there the cartridge is tangent to the groove.',
		why: 'Read it off the protractor that the cartridge was set with, or look for the place where a line drawn along the cartridge is square to the radius.',
		mistake: 'Measuring from the edge of the label instead of from the spindle.',
		input: {kind: 'number', unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) !== undefined,
		touches: ['radius-inner', 'radius-outer'],
	}),
	step('arm-null-other', {
		stage: 'arm',
		title: 'The other null radius',
		ask: 'The second radius at which the cartridge is tangent to the groove.',
		why: 'Their sum gives the offset angle, their product the pivot distance.',
		mistake: 'Taking one null radius from one protractor and the other from another.',
		input: {kind: 'number', unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) === 'nulls',
		verify: nullsProblem,
		touches: ['radius-inner', 'radius-outer'],
	}),
];
