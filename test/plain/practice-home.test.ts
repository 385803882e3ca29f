import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/desk/filing.js';
import {lobbyPages} from '../../source/pages/beside/practice-lobby.js';
import {walkPages} from '../../source/plain/walk-pages.js';
import {lessonArms} from '../../source/practice/arms.js';
import {deckAsFound} from '../../source/procedure/deck.js';
import type {PracticeDesk} from '../../source/workbench.js';
import {linesOf} from '../helpers/lines.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {begun, practised} from '../helpers/practised.js';
import {words} from '../helpers/said.js';

const {practice} = words.beside;

/** A desk at which nothing is begun, but what was asked for is noted. */
function desk(open?: string, seenOf?: string) {
	const begunWith: unknown[] = [];
	const opened = {ok: false, sentence: 'nothing is begun in this test', locked: false} as const;
	const {bench} = begun({arm: 'well-behaved', seed: 1, isPrepared: true});
	const made: PracticeDesk = {
		...memoryWorkbench(),
		practice: bench,
		arms: lessonArms.map(({id}) => ({id, name: words.practice.arms[id].name})),
		unfinished: () =>
			open === undefined ? undefined : {arm: open, step: 'Probe', minutesAgo: 5, deck: deckAsFound, isReady: false},
		truthSeenOf: () => seenOf,
		resume: async () => {
			begunWith.push('resume');
			return opened;
		},
		begin: async (...wanted) => {
			begunWith.push(wanted);
			return opened;
		},
	};
	return {made, begunWith};
}

describe('the menus of practice', () => {
	const chosen = async (given: readonly string[], open?: string, seenOf?: string) => {
		const {made, begunWith} = desk(open, seenOf);
		const lines = linesOf(given);
		const end = await walkPages(lobbyPages(made, false), lines);
		return {end, begunWith, said: lines.said.join('\n')};
	};

	it('offer every invented arm by number, and how much of its check', async () => {
		for (const [index, {id}] of lessonArms.entries()) {
			const extent = index % 3;
			const {begunWith, said} = await chosen([String(index + 3), String(extent + 1)]);
			expect(said).toContain(`  ${index + 3}. ${words.practice.arms[id].name}`);
			expect(begunWith).toEqual([[id, ['once', 'probe', 'whole'][extent]]]);
		}
	});

	it('begin a first try of the first arm with the first line, which an empty line takes too', async () => {
		const [first] = lessonArms;
		for (const given of ['1', '']) {
			const {begunWith, said} = await chosen([given]);
			expect(begunWith).toEqual([[first?.id, 'once']]);
			const label = practice.arms.firstTry({name: words.practice.arms[lessonArms[0]?.id ?? 'well-behaved'].name});
			expect(said).toContain(words.faces.plain.option({number: 1, label}));
			expect(said).toContain(words.faces.plain.takes({text: label}));
		}
	});

	it.each(lessonArms.map(({id}, index) => [id, lessonArms[(index + 1) % lessonArms.length]?.id]))(
		'lead from the truth of %s to a first try of the next one, %s, before what was left',
		async (seen, next) => {
			expect((await chosen([''], 'Hidden arm 7', seen)).begunWith).toEqual([[next, 'once']]);
			expect((await chosen(['2'], 'Hidden arm 7', seen)).begunWith).toEqual(['resume']);
		},
	);

	it('tell with the truth about a check what went wrong after it was filed, and after it why something was not opened', () => {
		const {check} = practised({arm: 'well-behaved', seed: 1, isPrepared: true, roundsEach: 1});
		const {made} = desk();
		const {at, failed, filed} = lobbyPages({...made, notices: () => ['It was not cleared.']}, false);
		const {page} = at(filed(finishedCheck(check, check.startedAt)));
		expect(page.shown[0]).toMatchObject({text: 'It was not cleared.', tone: 'warn'});
		const [real, why] = at(failed('The disk is full.')).page.shown;
		expect(real).toMatchObject({text: practice.notice});
		expect(why).toMatchObject({text: 'The disk is full.', tone: 'warn'});
	});

	it('say first that nothing here is real', async () => {
		const {said} = await chosen([]);
		expect(said.trim().split('\n').slice(0, 2)).toEqual([practice.arms.title, practice.notice]);
	});

	it('offer one that is not told', async () => {
		expect((await chosen(['2', '1'])).begunWith).toEqual([[undefined, 'once']]);
	});

	it('lead back from the second to the first', async () => {
		for (const back of ['4', '/back'])
			expect((await chosen(['3', back, '4', '3'])).begunWith).toEqual([[lessonArms[1]?.id, 'whole']]);
	});

	it('lead back to real checks where practice was opened from there', async () => {
		const {made} = desk();
		const lines = linesOf([String(lessonArms.length + 3)]);
		expect(await walkPages(lobbyPages(made, true), lines)).toEqual({kind: 'real-checks'});
		expect(lines.said.join('\n')).toContain(practice.arms.home);
	});

	it('offer first to go on with what was left', async () => {
		const {begunWith, said} = await chosen(['1'], 'Hidden arm 7');
		const label = practice.arms.resume({arm: 'Hidden arm 7', minutesAgo: 5, step: 'Probe'});
		expect(said).toContain(words.faces.plain.option({number: 1, label}));
		expect(begunWith).toEqual(['resume']);
	});

	it('are left, refuse what is no number of theirs, and end with the input', async () => {
		expect((await chosen([String(lessonArms.length + 3)])).end).toEqual({kind: 'leave'});
		expect((await chosen(['99'])).end).toMatchObject({kind: 'refused', sentence: expect.stringContaining("'99'")});
		expect((await chosen([])).end).toEqual({kind: 'input-ended'});
	});
});
