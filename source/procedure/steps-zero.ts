import type {Facts} from './facts.js';
import {topOfScale} from './hold-limits.js';
import {gaugeSides, gaugeUnitOf} from './readings.js';
import type {Step} from './step.js';
import type {freeZeroSteps} from './step-groups.js';

/** The pointer of a gauge that cannot be turned, read with nothing touching it. */
const freeZero = (id: (typeof freeZeroSteps)[number], title: string, ask: string): Step => ({
	id,
	stage: 'probe',
	title,
	ask,
	why: 'A gauge that cannot be turned may be off its zero: read free before the first round and after the last, it shows by how much, and whether it drifted.',
	mistake: 'Turning its zero screw in between: leave it alone until the last round is read.',
	input: {
		kind: 'signed',
		unit: gaugeUnitOf,
		sides: gaugeSides,
		between: (facts: Facts) => [0, topOfScale(facts) ?? Number.MAX_VALUE],
		optional: true,
	},
	when: (facts) => facts.is('gauge-turns', 'no'),
});

/** Before the first round, and after the last. */
export const [zeroBeforeStep, zeroAfterStep] = [
	freeZero(
		'zero-free-before',
		'Zero of the gauge, before',
		'Arm in its rest, nothing on the gauge: what does it show, + or − as it stands there? Type - if it cannot be read free.',
	),
	freeZero(
		'zero-free-after',
		'Zero of the gauge, after',
		'Lift the arm into its rest. Nothing on the gauge: what does it show now? Type - if it cannot be read free.',
	),
] as const;
