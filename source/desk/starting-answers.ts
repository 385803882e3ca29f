import {differenceInMinutes} from 'date-fns/differenceInMinutes';
import type {Action} from '../check/actions.js';
import {answerOf, type Check, isSameValue} from '../check/check.js';
import {deckOf} from '../check/deck-state.js';
import {isReadyToPlay, progressOf} from '../check/progress.js';
import type {Profile} from '../procedure/facts.js';
import {profileSteps, stepById} from '../procedure/index.js';
import type {AnswerValue, ProfileKind, StepId} from '../procedure/step-ids.js';
import {profileNamed} from '../results/profiles.js';
import {words} from '../words/index.js';
import {titleOf} from '../words/step-text.js';
import type {Unfinished} from '../workbench.js';

type Answers = Record<string, {readonly value: AnswerValue; readonly typed: string}>;

/** What makes a new check repeat an earlier one, with what was changed in its profiles since. */
export function recheckAction(last: Check, profiles: readonly Profile[], at: string): Action {
	const answers = answersOfLast(last, profiles);
	return {type: 'recheck', of: last.id, answers, changedSince: changedSince(last, answers), at};
}

/**
 * What a check that repeats an earlier one starts with: arm and tools from their profiles, which may have been corrected
 * since, else as they were then. All that hands do at the deck is asked as in any check.
 */
const answersOfLast = (last: Check, profiles: readonly Profile[]): Answers => ({
	...profileAnswers(last, 'arm', profiles),
	...profileAnswers(last, 'tools', profiles),
});

/** What of these answers is another one than it was in the last check: by step, what had been typed then. */
const changedSince = (last: Check, answers: Answers): Readonly<Record<string, string>> =>
	Object.fromEntries(
		Object.entries(answers).flatMap(([id, {value}]) => {
			const then = answerOf(last, id);
			return !then || stepById(id)?.profile === undefined || isSameValue(then.value, value) ? [] : [[id, then.typed]];
		}),
	);

const pick = ({answers}: Check, id: StepId) => ({value: answers[id]?.value ?? null, typed: answers[id]?.typed ?? ''});

function profileAnswers(last: Check, kind: ProfileKind, profiles: readonly Profile[]): Answers {
	const name = String(last.answers[`${kind}-name`]?.value ?? '');
	const profile = profileNamed(profiles, kind, name);
	const ids = profileSteps(kind).filter((id) => last.answers[id]);
	const then = Object.fromEntries(ids.map((id) => [id, pick(last, id)]));
	if (!profile) return then;
	// A profile of an earlier version may lack what belongs to it today.
	return {...then, [`${kind}-profile`]: {value: profile.id, typed: profile.name}, ...profile.answers};
}

/** What is known of an arm when its check starts: its profile, or its name alone. */
export function answersFor(armName: string | undefined, profiles: readonly Profile[]) {
	if (armName === undefined) return {};
	const known = profileNamed(profiles, 'arm', armName);
	if (!known) return {'arm-name': {value: armName, typed: armName}};
	return {'arm-profile': {value: known.id, typed: known.name}, ...known.answers};
}

/** The check in progress, in words for the first screen. */
export function unfinishedOf(check: Check, profiles: readonly Profile[], savedAt: string, now: Date): Unfinished {
	const progress = progressOf(check, profiles);
	const {facts, current} = progress;
	return {
		deck: deckOf(check, progress),
		isReady: isReadyToPlay(progress),
		arm: facts.text('arm-name') ?? words.commands.desk.newArm,
		step: current ? titleOf(current.id) : words.commands.desk.itsEnd,
		minutesAgo: differenceInMinutes(now, savedAt),
	};
}
