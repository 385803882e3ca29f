import type {PastCheck} from '../check/past-check.js';
import {isPassed, type Progress} from '../check/progress.js';
import {roundsToSee} from '../procedure/facts.js';
import type {Step} from '../procedure/step.js';

/** Seconds that an answer of each kind takes at the bench in a typical check: defaults of this project, from practice. */
const secondsOf: Readonly<Record<Step['input']['kind'], number>> = {
	text: 10,
	choice: 8,
	several: 10,
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

/**
 * Minutes until the deck is ready to play again, whole ones: of the steps that still want something, at the pace of the
 * last whole check of this arm where there is one, else at that of a typical one.
 */
export function minutesLeft({visible, stateOf, facts}: Progress, history: readonly PastCheck[]): number {
	const roundsEach = facts.shownAt ? roundsToSee : facts.roundsEach;
	const secondsFor = ({input}: Step, isLeft: boolean): number => {
		if (input.kind !== 'rounds') return secondsOf[input.kind];
		const wanted = input.place === 'inner' || input.place === 'outer' || input.place === 'extra' ? roundsEach : 1;
		return secondsOf.rounds * Math.max(0, wanted - (isLeft ? facts.rounds(input.place).length : 0));
	};
	const sum = (steps: readonly Step[], isLeft: boolean): number =>
		steps.reduce((total, step) => total + secondsFor(step, isLeft), 0);
	const left = sum(
		visible.filter((step) => !isPassed(stateOf(step))),
		true,
	);
	return Math.ceil((left * paceOf(history, sum(visible, false))) / 60);
}

/** How much longer than typical the last whole check took; one that was only tried out, or left lying, tells nothing. */
function paceOf(history: readonly PastCheck[], typicalSeconds: number): number {
	const took = history.find(({tookMinutes, outcome}) => outcome === 'complete' && tookMinutes !== null)?.tookMinutes;
	const pace = ((took ?? 0) * 60) / typicalSeconds;
	return pace >= 1 / mostPace && pace <= mostPace ? pace : 1;
}

const mostPace = 3;
