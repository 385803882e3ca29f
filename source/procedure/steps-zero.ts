import {topOfScale} from './hold-limits.js';
import {gaugeSides, gaugeUnitOf} from './readings.js';
import {type Step, step} from './step.js';
import type {freeZeroSteps} from './step-groups.js';

/** The pointer of a gauge that cannot be turned, read with nothing touching it. */
const freeZero = (id: (typeof freeZeroSteps)[number]): Step =>
	step(id, {
		stage: 'probe',
		input: {
			kind: 'signed',
			unit: gaugeUnitOf,
			sides: gaugeSides,
			between: (facts) => [0, topOfScale(facts) ?? Number.MAX_VALUE],
			optional: true,
		},
		when: (facts) => facts.is('gauge-turns', 'no'),
	});

/** Before the first round, and after the last. */
export const [zeroBeforeStep, zeroAfterStep] = [freeZero('zero-free-before'), freeZero('zero-free-after')] as const;
