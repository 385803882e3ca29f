import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {deckOf, keptBy, movesBefore} from '../../source/check/deck-state.js';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {reduce} from '../../source/check/reduce.js';
import {recheckAction} from '../../source/desk/starting-answers.js';
import {isPutBack} from '../../source/procedure/index.js';
import {profilesWith} from '../../source/results/profiles.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue, say, yes} from '../helpers/script.js';
import {finish, type Move, move, moves, stations} from '../helpers/wandering.js';

const later = '2026-09-01T09:00:00Z';
const whole = stations.at(-1) ?? freshDialogue();
const profiles = profilesWith([], whole.check, later);

/** A check of the same arm half a year later. */
const recheck = (): Dialogue => {
	const {check} = freshDialogue([], 'sample-2');
	const empty = {...check, startedAt: later, touchedAt: later};
	return startDialogue(reduce(empty, recheckAction(whole.check, profiles, later)), profiles);
};
const starts = [...stations, recheck()];

const walks = fc.record({
	from: fc.nat(starts.length - 1),
	path: fc.array(moves, {minLength: 1, maxLength: 60}),
});
const runs = (numRuns: number) => ({numRuns, seed: 20_260_302});

function wander(from: number, path: readonly Move[]): Dialogue[] {
	const states = [starts[from] ?? freshDialogue()];
	let now = Date.parse(states[0]?.check.touchedAt ?? '');
	for (const one of path) {
		now += 60_000 * (one.kind === 'leave' ? one.minutes : 0.3);
		const here = states.at(-1);
		if (here) states.push(move(here, one, new Date(now).toISOString()));
	}
	return states;
}

/** How the deck stands at a question that wants an answer; undefined where nothing is asked, or only looked at again. */
function askedAt(dialogue: Dialogue) {
	const {step, progress} = positionOf(dialogue);
	if (dialogue.mode.kind !== 'ask' || !step || progress.stateOf(step) === 'done') return;
	const deck = deckOf(dialogue.check, progress);
	return {step: step.id, deck, kept: keptBy(deck, step, progress), facts: progress.facts};
}

const isGivenBack = (dialogue: Dialogue, step: 'back-guard'): boolean => {
	const answer = dialogue.check.answers[step];
	return answer?.value === true && !answer.again;
};

describe('Wherever someone wanders, the deck', () => {
	it('stands as a question wants it, but for what hands are told to do first', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				for (const asked of wander(from, path).map(askedAt))
					expect([asked?.step, asked?.kept ?? []]).toEqual([asked?.step, []]);
			}),
			runs(Number(process.env.RUNS ?? 150)),
		);
	});

	it('has its stylus covered from when the guard went on until it is taken off last', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				for (const here of wander(from, path)) {
					const asked = askedAt(here);
					const guard = here.check.answers['guard-on'];
					if (!asked || guard?.value !== 'on' || guard.again || isGivenBack(here, 'back-guard')) continue;
					expect([asked.step, asked.deck.stylus]).toEqual([asked.step, 'covered']);
				}
			}),
			runs(Number(process.env.RUNS ?? 150)),
		);
	});

	it('has its arm locked by the list where the check was stopped in the midst of its rounds', () => {
		const stopped = say(follow(freshDialogue(), northDeck, {until: 'probe-outer'}), [{kind: 'stop'}, yes]);
		expect(askedAt(stopped)).toMatchObject({step: 'back-lock', deck: {arm: 'on-gauge'}});
		const locked = say(stopped, [yes]);
		const {step, progress} = positionOf(locked);
		expect(askedAt(locked)).toMatchObject({step: 'back-gauge', deck: {arm: 'locked', gauge: 'as-used'}});
		expect(step && movesBefore(deckOf(locked.check, progress), step, progress)).toEqual([]);
	});

	it('is fit to play once its list is done with yes', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				const end = finish(wander(from, path).at(-1) ?? freshDialogue(), '2026-10-04T12:00:00Z');
				const {progress} = positionOf(end);
				const listed = progress.visible.filter(({id, input}) => isPutBack(id) && input.kind === 'confirm');
				if (listed.some(({id}) => end.check.answers[id]?.value !== true)) return;
				const deck = deckOf(end.check, progress);
				expect(deck).toMatchObject({arm: 'locked', stylus: 'bare', mat: 'on', gauge: 'away'});
				expect(['set', 'none']).toContain(deck.bias);
				expect(['in', 'none']).toContain(deck.damping);
			}),
			runs(20),
		);
	});
});
