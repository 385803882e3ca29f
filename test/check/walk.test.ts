import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {progressOf} from '../../source/check/progress.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {viewOf} from '../../source/pages/view.js';
import {parseDocument} from '../../source/results/document.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {says} from '../../source/words/says.js';
import {words} from '../helpers/said.js';
import {clockFrom} from '../helpers/script.js';
import {deepFreeze, entryOfMove, finish, type Move, move, moves, stations, stored} from '../helpers/wandering.js';

// One seed, so that the run takes the same time everywhere; change it to look elsewhere.
const runs = (numRuns: number) => ({numRuns, seed: 20_260_302});
const walks = fc.record({
	from: fc.nat(stations.length - 1),
	path: fc.array(moves, {minLength: 1, maxLength: 40}),
});

/** All states of a walk, the first one included. Every state is frozen, so that nothing is changed in place. */
function wander(from: number, path: readonly Move[]): Dialogue[] {
	const first = deepFreeze(stations[from] ?? stations[0]);
	const states = first ? [first] : [];
	let now = Date.parse(first?.check.touchedAt ?? '');
	for (const one of path) {
		now += 60_000 * (one.kind === 'leave' ? one.minutes : 0.3);
		const here = states.at(-1);
		if (here) states.push(deepFreeze(move(here, one, new Date(now).toISOString())));
	}
	return states;
}
const last = (states: readonly Dialogue[]): Dialogue => {
	const found = states.at(-1);
	if (!found) throw new Error('an empty walk');
	return found;
};
const later = '2026-03-04T12:00:00Z';
const ended = (dialogue: Dialogue) => finishedCheck(dialogue.check, later);

describe('Wherever someone wanders', () => {
	it('a technician still gets to the end, with the deck put back', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				const end = finish(last(wander(from, path)), later);
				expect(progressOf(end.check, end.profiles).current).toBeUndefined();
			}),
			runs(30),
		);
	});

	it('the disk gives the check back as it was, and the same question', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				for (const here of wander(from, path)) {
					const back = startDialogue(stored(here.check), here.profiles, [], here.names);
					expect(back.check).toEqual(here.check);
					// What is on the way only: a detour, a look back, word of what the last entry did.
					if (here.mode.kind !== 'ask' || here.visiting || here.notice !== undefined) continue;
					expect(viewOf(back)).toEqual({...viewOf(here), refusal: undefined});
				}
			}),
			runs(40),
		);
	});

	it('stopping, coming back and going on ends like going on at once', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				const {check, profiles} = last(wander(from, path));
				const onwards = finish(startDialogue(check, profiles), later);
				expect(finish(startDialogue(stored(check), profiles), later).check).toEqual(onwards.check);
			}),
			runs(12),
		);
	});

	it('the same entries at the same times make the same check', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				expect(last(wander(from, path)).check).toEqual(last(wander(from, path)).check);
			}),
			runs(40),
		);
	});

	it('going back and looking through the list of steps change nothing', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				const states = wander(from, path);
				for (const [index, here] of states.entries()) {
					const one = path[index];
					const next = states[index + 1];
					const entry = one && entryOfMove(here, one);
					const looks =
						entry?.kind === 'back' ||
						entry?.kind === 'steps' ||
						entry?.kind === 'stop' ||
						(entry?.kind === 'choose' && /^(?:stage|step):/.test(entry.id));
					// Going back from the first question leaves for home; coming back is written down.
					if (!looks || !next || next.check.resumedAt.length !== here.check.resumedAt.length) continue;
					// Nor is a round gone on with that was left: what was read of it is withdrawn, and that is said.
					if (next.notice?.id === 'round-anew') expect(next.check.answers).toBe(here.check.answers);
					else expect(next.check).toBe(here.check);
				}
			}),
			runs(60),
		);
	});

	it('a refused entry changes no answer and no reading, and says so in a sentence', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				const states = wander(from, path);
				for (const [index, next] of states.slice(1).entries())
					if (next.refusal !== undefined) {
						const before = states[index]?.check;
						// Probing again after the putting back has begun closes the series first, and says so in the same way.
						if (next.refusal.id !== 'was-being-put-back') expect(next.check).toBe(before);
						expect(says.refusal(next.refusal)).toMatch(/^[A-Z'].{8,260}[.?]$/su);
					}
			}),
			runs(60),
		);
	});

	it('whatever has figures makes a document that the strict reader takes', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				const here = last(wander(from, path));
				for (const {check} of [here, finish(here, later)])
					for (const series of check.series) {
						const found = documentOfCheck(check, series);
						if (found.ok) expect(parseDocument(JSON.parse(JSON.stringify(found.document)))).toMatchObject({ok: true});
					}
			}),
			runs(10),
		);
	});

	it('the deck is called ready only with every line of its list done, in every view and in the record', () => {
		fc.assert(
			fc.property(walks, ({from, path}) => {
				for (const here of wander(from, path)) {
					const {progress, ask} = viewOf(here);
					const open = (['back-lock', 'back-height', 'back-level', 'back-covers'] as const).some(
						(id) => here.check.answers[id]?.value !== true,
					);
					if (open) expect(progress).toBe(words.pages.view.notReadyToPlay);
					if (open) expect(ask).not.toContain(words.pages.view.readyToPlay);
					if (open) expect(ended(here).outcome).toBe('interrupted');
				}
			}),
			runs(40),
		);
	});

	it('typing shows consequences and changes nothing', () => {
		fc.assert(
			fc.property(walks, fc.constantFrom('4 out', '0', '100', 'x'), ({from, path}, typed) => {
				for (const here of wander(from, path.slice(0, 10))) {
					const before = positionOf(here);
					viewOf(here, typed);
					expect(positionOf(here).step).toBe(before.step);
				}
			}),
			runs(30),
		);
	});
});

describe('A state on the way', () => {
	it.each([
		['right after the start', 0],
		['at the end', stations.length - 1],
	])('%s is walked from too', (_name, index) => {
		const now = clockFrom(later);
		const here = stations[index];
		if (here) expect(() => move(here, {kind: 'entry', entry: {kind: 'back'}}, now())).not.toThrow();
	});
});
