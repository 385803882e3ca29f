import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/desk/filing.js';
import {besidePages} from '../../source/pages/beside/beside-pages.js';
import type {BesidePlace} from '../../source/pages/beside/places.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const whole = finishedCheck(follow(freshDialogue(), northDeck).check, '2026-03-02T12:00:00Z');
const draft = follow(freshDialogue([], 'sample-2'), northDeck, {until: 'guard-gap'}).check;

const at = (place: BesidePlace, memory: Parameters<typeof memoryWorkbench>[0] = {}, hasKeys = true) =>
	besidePages(memoryWorkbench(memory), {listRows: 3, columns: 80, hasKeys}).at(place);

describe('The pages beside a check', () => {
	it.each(['start', 'recheck'])('put an open check aside only when asked: %s', (entry) => {
		const turn = at({at: 'home'}, {draft}).turn(entry);
		if (turn.kind !== 'go') throw new Error(turn.kind);
		const {page, turn: answer, back} = at(turn.to, {draft});
		expect(page.title).toBe(words.beside.home.checkOpen.title);
		for (const one of [back, answer('back')]) expect(one).toEqual({kind: 'go', to: {at: 'home'}});
		for (const one of ['resume', 'start']) expect(answer(one).kind).toBe('open');
		expect(at({at: 'home'}).turn(entry).kind).toBe('open');
	});

	it('tell first of all why something could not be opened, where a small screen shows it', () => {
		const {failed} = besidePages(memoryWorkbench(), {listRows: 3, columns: 40, hasKeys: true});
		const [first] = at(failed('The disk is full.'), {draft}).page.shown;
		expect(first).toMatchObject({text: 'The disk is full.', tone: 'warn'});
	});

	it('warn before they say what to have at hand, where a small screen has no room for both', () => {
		const workbench = {...memoryWorkbench(), notices: () => ['A file was set aside.']};
		const {shown} = besidePages(workbench, {listRows: 3, columns: 40, hasKeys: true}).at({at: 'home'}).page;
		const said = shown.map((one) => (one.kind === 'line' ? one.text : ''));
		expect(said).toEqual(['A file was set aside.', words.beside.home.nothingOpen]);
	});

	it('ask the same before the put-back list of an old check is done', () => {
		const turn = at({at: 'past-check', id: whole.check.id, offset: 0}, {draft, records: [whole]}).turn('put-back');
		expect(turn).toMatchObject({kind: 'go', to: {at: 'check-open', other: {reopen: whole.check.id}}});
	});

	it('turn the list of past checks within its ends, and come back to where it was left', () => {
		const records = Array.from({length: 5}, () => whole);
		const turned = (offset: number, entry: string) => at({at: 'past', offset}, {records}).turn(entry);
		expect(turned(0, 'older')).toEqual({kind: 'go', to: {at: 'past', offset: 2}});
		expect(turned(4, 'older')).toEqual({kind: 'go', to: {at: 'past', offset: 4}});
		expect(turned(2, 'newer')).toEqual({kind: 'go', to: {at: 'past', offset: 0}});
		expect(turned(0, 'newer')).toEqual({kind: 'go', to: {at: 'past', offset: 0}});
		const opened = turned(2, 'an id');
		if (opened.kind !== 'go') throw new Error(opened.kind);
		expect(at(opened.to, {records}).back).toEqual({kind: 'go', to: {at: 'past', offset: 2}});
	});

	it('offer as options what a face has no keys for', () => {
		const ids = (hasKeys: boolean) => {
			const {prompt} = at({at: 'past', offset: 0}, {records: [whole, whole, whole, whole]}, hasKeys).page;
			return prompt.kind === 'choice' ? prompt.options.map(({id}) => id) : [];
		};
		expect(ids(true).slice(2)).toEqual(['filter']);
		expect(ids(false).slice(3)).toEqual(['filter', 'older', 'back']);
	});
});

describe('The report of a filed check', () => {
	const written: string[] = [];
	const reports = {
		fileOf: (id: string) => `/data/reports/${id}.html`,
		fileOfArm: (id: string) => `/data/reports/${id}-arm.html`,
		writeArm: async (arm: string) => {
			written.push(arm);
			return {ok: true} as const;
		},
		write: async (id: string) => {
			written.push(id);
			return {ok: true} as const;
		},
	};
	const {id} = whole.check;
	const stopAt = (place: BesidePlace) =>
		besidePages({...memoryWorkbench({records: [whole]}), reports}, {listRows: 2, columns: 80, hasKeys: true}).at(place);
	const places: readonly BesidePlace[] = [
		{at: 'past-check', id, offset: 2},
		{at: 'filed', record: whole},
	];

	it.each(places)('is the last choice of its page, and its path is told before everything else: $at', async (place) => {
		const {page, turn} = stopAt(place);
		expect(page.prompt.kind === 'choice' && page.prompt.options.at(-1)?.label).toBe(words.beside.report.write);
		const line = {kind: 'line', text: words.beside.report.written({file: reports.fileOf(id)}), tone: 'good'};
		expect(page.shown).not.toContainEqual(line);
		const next = turn('report');
		if (next.kind !== 'save') throw new Error(next.kind);
		expect(await next.save()).toEqual({ok: true});
		expect(written.splice(0)).toEqual([id]);
		expect(next.to).toEqual({...place, isReported: true});
		expect(stopAt(next.to).page.shown[0]).toEqual(line);
	});

	it.each(places)('is not offered where none is written, as in practice: $at', (place) => {
		const {prompt} = at(place, {records: [whole]}).page;
		expect(prompt.kind === 'choice' && prompt.options.map((one) => one.id)).not.toContain('report');
	});
});
