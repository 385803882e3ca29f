import type {Facts} from './facts.js';
import {offRadiusMm} from './geometry.js';
import {closingProblem} from './hold-limits.js';
import {type OffPlace, stepOfRounds} from './places.js';
import {showsHandForce} from './readings.js';
import {type Step, step} from './step.js';
import {zeroAfterStep, zeroBeforeStep} from './steps-zero.js';

type Limit = {readonly which: 'innerLimit' | 'outerLimit'; readonly gauge?: 'turned'};

/** How a limit is found, in the words of the gauge's convention. The place names the limit, not its sign. */
export function limitAsk(facts: Facts, {which, gauge}: Limit): string {
	const shown =
		gauge === 'turned' ? 'what does the turned gauge show, + or − as it stands there?' : 'what does the gauge show?';
	if (showsHandForce(facts)) {
		const side = which === 'innerLimit' ? 'RIM' : 'SPINDLE';
		const start = `Push the arm gently toward the ${side} until it just starts:`;
		return gauge === 'turned'
			? `${start} ${shown}`
			: `${start} what does the gauge show, + or − as it stands there? (out and in mean the way the ARM pushes.)`;
	}
	return which === 'innerLimit'
		? `Nudge the arm INWARD in small steps. At the INNERMOST place where it still holds: ${shown}`
		: `Nudge the arm OUTWARD in small steps. At the OUTERMOST place where it still holds: ${shown}`;
}

/** What the hands do before a round after the first at a place. */
export const roundHeads = {
	turned: 'Lift the arm. Turn the gauge end for end on its mark. Lower the arm onto it.',
	turnedBack: 'Lift the arm. Turn the gauge back and set it on its mark. Lower the arm onto it.',
	anew: 'Lift the arm. Take the gauge away and set it anew on its mark. Lower the arm onto it.',
} as const;

const why =
	'Between the two limits friction holds the arm wherever it is put. Their middle is the pull of wiring, bearings and level; their distance is the friction.';
const mistake =
	'Nudging too far, or reading before the arm has settled. An inner limit that reads out is quite normal: the arm may push outward at both limits.';

/** Said where the gauge goes to another radius: dragged along under the arm it would bend the cantilever. */
export const gaugeMoves = 'Lift the arm with its lifter, move the gauge, lower the arm onto it.';

const where = (place: OffPlace, facts: Facts): string => {
	const radius = offRadiusMm(facts, place);
	return radius === undefined ? '' : ` at ${Number(radius.toFixed(1))} mm`;
};

const probe = (place: OffPlace, title: string, extra: Partial<Omit<Step, 'id' | 'input'>> = {}): Step =>
	step(stepOfRounds(place), {
		stage: 'probe',
		title,
		ask: (facts) => `Set the gauge${where(place, facts)} from the spindle and let it carry the arm.`,
		why,
		mistake,
		input: {kind: 'rounds', place},
		...extra,
	});

/** The probe, the closing round and the verdict. */
export const probeSteps: readonly Step[] = [
	zeroBeforeStep,
	probe('inner', 'Probe at the inner radius', {
		caution: 'Lower the arm onto the gauge with the lifter; do not swing it on.',
	}),
	probe('outer', 'Probe at the outer radius'),
	probe('extra', 'Probe at the third radius', {when: (facts) => facts.number('radius-extra') !== undefined}),
	probe('closing', 'Closing round at the inner radius', {
		// One round does not show how well rounds repeat, so there is nothing to hold a closing one against.
		when: (facts) => facts.roundsEach > 1,
		ask: (facts) => `Go back to the inner radius${where('closing', facts)} for one round more.`,
		why: 'It shows whether anything moved while you probed. It counts like any other round.',
		mistake: 'Skipping it because the figures look fine already.',
		verify: closingProblem,
		reasons: ['known-what-moved', 'time-short'],
	}),
	zeroAfterStep,
	step('verdict', {
		stage: 'verdict',
		title: 'Verdict',
		ask: '',
		why: 'A verdict is given only where value and uncertainty together lie on one side of a limit. Otherwise it is undecided, with what would decide it.',
		mistake: 'Taking undecided for bad: it says how well you measured, not how bad the arm is.',
		input: {kind: 'verdict'},
	}),
];
