import limits from '../../shared/limits.json' with {type: 'json'};
import type {Facts} from './facts.js';
import {gaugeSides, gaugeUnitOf, showsHandForce} from './readings.js';
import {type Problem, type Step, steps} from './step.js';
import {halfADay} from './step-groups.js';
import {isCrossed, type ZeroRound} from './zero-rounds.js';

/** Stage 11: the zero of the gauge, by turning it end for end. */
export const zeroStageSteps: readonly Step[] = steps([
	{
		id: 'zero-way',
		stage: 'zero',
		title: 'Zero of the gauge',
		ask: 'Can the gauge be turned end for end on its spot, so that its plus points the other way?',
		why: "A gauge that is off its zero shows a pull that is not there. Turned round, the arm changes sign and the gauge's own error does not.",
		mistake: 'Trusting the pointer because it rests on zero in the air: carrying the arm may shift it.',
		input: {
			kind: 'choice',
			options: [
				{id: 'turn', label: 'yes: check the zero'},
				{id: 'cannot', label: 'no: go on, zero not checked'},
			],
		},
		staysTrueMinutes: halfADay,
	},
	...zeroRound('first', 'Gauge as it stands, arm at the inner radius.'),
	...zeroRound('turned', 'Now turn the gauge end for end on the same spot.'),
]);

/** One round of the zero check: two limits, typed in the gauge's own sign. */
function zeroRound(round: ZeroRound, setting: string): readonly Step[] {
	return (['inner', 'outer'] as const).map((limit) => ({
		id: `zero-${round}-${limit}`,
		stage: 'zero' as const,
		title: `Zero, ${round === 'first' ? 'first round' : 'gauge turned'}: ${limit} limit`,
		ask: (facts: Facts) =>
			`${limit === 'inner' ? `${setting} ` : ''}${zeroAsk(facts, limit)} What does the gauge show, in its own sign?`,
		why: "Half the sum of both rounds, in the gauge's own sign, is its zero.",
		mistake: 'Turning the sign in your head: type + or − just as the gauge shows it.',
		input: {
			kind: 'signed' as const,
			unit: gaugeUnitOf,
			sides: gaugeSides,
			between: (facts: Facts) => [0, (facts.number('gauge-top') ?? limits.topOfScalePct.value) * 1.5] as const,
		},
		when: (facts: Facts) => facts.is('zero-way', 'turn'),
		...(limit === 'outer' ? {verify: (facts: Facts) => crossedZero(facts, round)} : {}),
		staysTrueMinutes: halfADay,
	}));
}

function crossedZero(facts: Facts, round: ZeroRound): Problem | undefined {
	if (!isCrossed(facts, round)) return;
	return {
		sentence: 'The two limits of this round lie the wrong way round: they are swapped, or a sign is wrong.',
		ways: [
			{
				label: 'read both limits of this round again',
				do: 'ask-again',
				steps: [`zero-${round}-inner`, `zero-${round}-outer`],
			},
		],
	};
}

function zeroAsk(facts: Facts, limit: 'inner' | 'outer'): string {
	if (showsHandForce(facts))
		return `Push the arm gently toward the ${limit === 'inner' ? 'rim' : 'spindle'} until it just starts.`;
	return `Nudge the arm to the ${limit === 'inner' ? 'innermost' : 'outermost'} place where it still stays put.`;
}
