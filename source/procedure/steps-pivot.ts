import {nullsProblem} from './geometry.js';
import {type Step, step} from './step.js';
import {isWorkedOut, pivotWayOf} from './worked-out-arm.js';

/** Believable null radii, mm: within the grooves of a record, with something to spare. */
const believableNullMm = [40, 150] as const;

/** What the pivot distance is worked out from where it was left empty; kept with the arm. */
export const pivotSteps: readonly Step[] = [
	step('arm-pivot-way', {
		stage: 'arm',
		input: {kind: 'choice'},
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
							},
							{id: 'measure-pivot', do: 'ask-again', steps: ['arm-pivot-distance']},
						],
					}
				: undefined,
		touches: ['arm-null-radius', 'radius-inner', 'radius-outer'],
	}),
	step('arm-null-radius', {
		stage: 'arm',
		input: {kind: 'number', unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) !== undefined,
		touches: ['radius-inner', 'radius-outer'],
	}),
	step('arm-null-other', {
		stage: 'arm',
		input: {kind: 'number', unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) === 'nulls',
		verify: nullsProblem,
		touches: ['radius-inner', 'radius-outer'],
	}),
];
