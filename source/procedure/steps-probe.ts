import type {Facts} from './facts.js';
import {offRadiusMm} from './geometry.js';
import {closingProblem} from './hold-limits.js';
import type {OffPlace} from './places.js';
import {showsHandForce} from './readings.js';
import {type Step, steps} from './step.js';

/** How a limit is found, in the words of the gauge's convention. The place names the limit, not its sign. */
export function limitAsk(facts: Facts, which: 'innerLimit' | 'outerLimit'): string {
	if (showsHandForce(facts))
		return which === 'innerLimit'
			? 'Push the arm gently toward the RIM: what does the gauge show when it just starts, + or − as it stands there? (out and in mean the way the ARM pushes.)'
			: 'Push the arm gently toward the SPINDLE: what does the gauge show when it just starts, + or − as it stands there? (out and in mean the way the ARM pushes.)';
	return which === 'innerLimit'
		? 'Nudge the arm INWARD in small steps. At the INNERMOST place where it stays still: what does the gauge show?'
		: 'Nudge the arm OUTWARD in small steps. At the OUTERMOST place where it stays still: what does the gauge show?';
}

const why =
	'Between the two limits friction holds the arm wherever it is put. Their middle is the pull of wiring, bearings and level; their distance is the friction.';
const mistake =
	"Nudging too far, or reading before the arm has settled. An inner limit of '4 out' is quite normal: the arm may push outward at both limits.";

/** Said where the gauge goes to another radius: dragged along under the arm it would bend the cantilever. */
export const gaugeMoves = 'Lift the arm with its lifter, move the gauge, lower the arm onto it.';

const where = (place: OffPlace, facts: Facts): string => {
	const radius = offRadiusMm(facts, place);
	return radius === undefined ? '' : ` at ${Number(radius.toFixed(1))} mm`;
};

const probe = (place: OffPlace, title: string, extra: Partial<Step> = {}): Step => ({
	id: `probe-${place}`,
	stage: 'probe',
	title,
	ask: (facts) => `Set the gauge${where(place, facts)} from the spindle and let it carry the arm.`,
	why,
	mistake,
	input: {kind: 'rounds', place},
	...extra,
});

/** Stages 12 and 13: the probe, the closing round and the verdict. */
export const probeSteps: readonly Step[] = steps([
	probe('inner', 'Probe at the inner radius', {
		caution:
			'A gauge that was turned for its zero is turned back first. Lower the arm onto it with the lifter; do not swing it on.',
	}),
	probe('outer', 'Probe at the outer radius'),
	probe('extra', 'Probe at the third radius', {when: (facts) => facts.number('radius-extra') !== undefined}),
	probe('closing', 'Closing round at the inner radius', {
		// One round does not show how well rounds repeat, so there is nothing to hold a closing one against.
		when: (facts) => facts.roundsEach > 1,
		ask: (facts) => `Go back to the inner radius${where('closing', facts)} for one round more.`,
		why: 'It shows whether anything moved while you probed. It enters no figure.',
		mistake: 'Skipping it because the figures look fine already.',
		verify: closingProblem,
		reasons: ['the gauge was set anew and may stand a little differently', 'time is short'],
	}),
	{
		id: 'verdict',
		stage: 'verdict',
		title: 'Verdict',
		ask: '',
		why: 'A verdict is given only where value and uncertainty together lie on one side of a limit. Otherwise it is undecided, with what would decide it.',
		mistake: 'Taking undecided for bad: it says how well you measured, not how bad the arm is.',
		input: {kind: 'verdict'},
	},
]);
