import type {Progress} from '../check/progress.js';
import {isPassed} from '../check/progress.js';
import {roundsToSee} from '../procedure/facts.js';
import type {Step} from '../procedure/step.js';

/** Seconds that an answer of each kind takes at the bench in a typical check: defaults of this project, from practice. */
const secondsOf: Readonly<Record<Step['input']['kind'], number>> = {
	text: 10,
	choice: 8,
	profile: 5,
	still: 20,
	confirm: 30,
	ticks: 60,
	number: 25,
	signed: 45,
	clock: 20,
	// For one round.
	rounds: 75,
	verdict: 60,
	'bias-result': 60,
};

/** Minutes until the deck is ready to play again, whole ones: of the steps that still want something. */
export function minutesLeft({visible, stateOf, facts}: Progress): number {
	const roundsEach = facts.shownAt ? roundsToSee : facts.roundsEach;
	const secondsFor = ({input}: Step): number => {
		if (input.kind !== 'rounds') return secondsOf[input.kind];
		const wanted = input.place === 'inner' || input.place === 'outer' || input.place === 'extra' ? roundsEach : 1;
		return secondsOf.rounds * Math.max(0, wanted - facts.rounds(input.place).length);
	};
	const open = visible.filter((step) => !isPassed(stateOf(step)));
	return Math.ceil(open.reduce((sum, step) => sum + secondsFor(step), 0) / 60);
}
