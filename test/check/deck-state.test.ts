import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {deckOf, keptBy, movesBefore} from '../../source/check/deck-state.js';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {reduce} from '../../source/check/reduce.js';
import {respond} from '../../source/check/respond.js';
import {recheckAction} from '../../source/desk/starting-answers.js';
import {isPutBack} from '../../source/procedure/index.js';
import {profilesWith} from '../../source/results/profiles.js';
import {biasAnswers, northDeck} from '../helpers/sample-check.js';
import {
	choose,
	clockOf,
	follow,
	freshDialogue,
	goTo,
	refusalOf,
	type Script,
	say,
	text,
	yes,
} from '../helpers/script.js';
import {everyStep, finish, type Move, move, moves, stations} from '../helpers/wandering.js';

const later = '2026-09-01T09:00:00Z';
const whole = stations.at(-1) ?? freshDialogue();
const profiles = profilesWith([], whole.check, later);

/** Every question of a check of the same arm half a year later, with its bias tried twice. */
const recheck: readonly Dialogue[] = (() => {
	const {check} = freshDialogue([], 'sample-2');
	const empty = {...check, startedAt: later, touchedAt: later};
	const start = startDialogue(reduce(empty, recheckAction(whole.check, profiles, later)), profiles);
	const seen: Dialogue[] = [];
	const options = {seen: (dialogue: Dialogue) => seen.push(dialogue)};
	// Weighed with the guard on: that it was left out is said of a reading only.
	const weighed: Script = {...everyStep, answers: {...everyStep.answers, 'force-reading': '21 mN'}};
	const again: Script = {...weighed, answers: {...weighed.answers, 'bias-weight': '3.1', 'bias-result': 'keep:2'}};
	const first = follow(start, weighed, {...options, until: 'bias-result'});
	return [...seen, follow(say(first, [choose('adjust')]), again, options)];
})();
const starts = [...stations, ...recheck];

/** By the list of steps to any of them. */
const jumps = fc.tuple(fc.nat(30), fc.nat(12)).map(([stage, step]): Move[] => [
	{kind: 'entry', entry: {kind: 'steps'}},
	{kind: 'pick', index: stage},
	{kind: 'pick', index: step},
]);
const walks = fc.record({
	from: fc.nat(starts.length - 1),
	path: fc
		.array(fc.oneof({weight: 4, arbitrary: moves.map((one) => [one])}, {weight: 1, arbitrary: jumps}), {
			minLength: 1,
			maxLength: 50,
		})
		.map((parts) => parts.flat()),
});
// One seed, so that the run takes the same time everywhere; change it to look elsewhere.
const runs = (numRuns: number) => ({
	numRuns,
	seed: 20_260_302,
});

function wander(from: number, path: readonly Move[]): Dialogue[] {
	const first = starts[from] ?? whole;
	const states = [first];
	let now = Date.parse(clockOf(first)());
	for (const one of path) {
		now += 60_000 * (one.kind === 'leave' ? one.minutes : 0.3);
		states.push(move(states.at(-1) ?? first, one, new Date(now).toISOString()));
	}
	return states;
}

/** How the deck stands at a question that wants an answer; undefined where nothing is asked, or only looked at again. */
function askedAt(dialogue: Dialogue) {
	const {step, progress} = positionOf(dialogue);
	if (dialogue.mode.kind !== 'ask' || !step || progress.stateOf(step) === 'done') return;
	const deck = deckOf(dialogue.check, progress);
	return {step: step.id, deck, kept: keptBy(deck, step, progress)};
}

const isGiven = ({check}: Dialogue, step: 'guard-on' | 'back-guard', value: string | boolean): boolean => {
	const answer = check.answers[step];
	return answer?.value === value && !answer.again;
};

describe('Wherever someone wanders, the deck', () => {
	it('stands as a question wants it, but for what hands are told to do first', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				for (const asked of wander(from, path).map(askedAt))
					expect({step: asked?.step, kept: asked?.kept ?? []}).toEqual({step: asked?.step, kept: []});
			}),
			runs(100),
		);
	});

	it('has its stylus covered from when the guard went on until it is taken off last', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				for (const here of wander(from, path)) {
					const asked = askedAt(here);
					if (!asked || !isGiven(here, 'guard-on', 'on') || isGiven(here, 'back-guard', true)) continue;
					expect([asked.step, asked.deck.stylus]).toEqual([asked.step, 'covered']);
				}
			}),
			runs(100),
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
				const end = finish(wander(from, path).at(-1) ?? whole, '2026-10-04T12:00:00Z');
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

describe('A deck that was being put back', () => {
	const stepOf = (dialogue: Dialogue) => positionOf(dialogue).step?.id;
	const until = (step: string) => follow(freshDialogue(), northDeck, {until: step});
	const atEnd = until('next-check');

	it('is covered again before anything else is asked, once a condition of the readings was another one', () => {
		const changed = say(atEnd, [...goTo('level', 'level-lr-1'), text('0.2 right')]);
		expect(stepOf(changed)).toBe('still-conditions');
		const asked = new Set<string | undefined>();
		follow(changed, northDeck, {until: 'guard-on', seen: (here) => asked.add(stepOf(here)?.slice(0, 6))});
		expect([...asked]).toEqual(['still-']);
	});

	it('is so too where a reading is taken back or another bias is tried', () => {
		const set = follow(freshDialogue(), {...northDeck, answers: {...northDeck.answers, ...biasAnswers}});
		for (const entries of [
			[{kind: 'steps'} as const, choose('take-back')],
			[...goTo('bias-on', 'bias-weight'), text('3.1')],
		])
			expect(stepOf(say(set, entries))).toBe('still-conditions');
	});

	it('does not let a step be asked out of its turn that wants the stylus covered', () => {
		const more = say(atEnd, goTo('probe', 'probe-inner'));
		const again = respond(more, choose('more'), clockOf(more)());
		if (!again) throw new Error('left for home');
		const listed = say(again, [{kind: 'steps'}, choose('stage:clearance')]);
		expect(refusalOf(listed, choose('step:guard-gap'))).toMatchObject({id: 'comes-first', values: {step: 'guard-gap'}});
		// Nor by going back from one that is only looked at: that leads on to one that is done.
		const back = say(listed, [choose('step:lifter-clear'), {kind: 'back'}]);
		const {step, progress} = positionOf(back);
		expect([step?.id, step && progress.stateOf(step)]).toEqual(['wires', 'done']);
	});

	it('has its bias off before the arm itself is read again', () => {
		const script = {...northDeck, answers: {...northDeck.answers, ...biasAnswers}};
		const tried = say(follow(freshDialogue(), script, {until: 'bias-result'}), [choose('adjust')]);
		const back = say(tried, [{kind: 'steps'}, choose('take-back')]);
		expect(stepOf(back)).toBe('bias-off');
		expect(stepOf(say(back, [yes]))).toBe('probe-closing');
	});

	it('has its arm still locked when a remedy was chosen at the verdict', () => {
		const tried = say(follow(freshDialogue(), northDeck, {until: 'verdict'}), [
			choose('other-way'),
			choose('try:level'),
		]);
		const {step, progress} = positionOf(tried);
		expect(step?.id).toBe('level-lr-1');
		const deck = deckOf(tried.check, progress);
		expect([deck.arm, step && movesBefore(deck, step, progress)]).toEqual(['locked', []]);
	});
});
