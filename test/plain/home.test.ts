import {describe, expect, it} from 'vitest';
import {progressOf} from '../../source/check/progress.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {entryOf, promptLines} from '../../source/plain/ask.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {spellings} from '../../source/spellings.js';
import {titleOf} from '../../source/words/step-text.js';
import {walkBeside as visit} from '../helpers/conversation.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue, say, text} from '../helpers/script.js';

const whole = finishedCheck(follow(freshDialogue(), northDeck).check, '2026-03-02T12:00:00Z');
const cutShort = finishedCheck(
	follow(freshDialogue([], 'sample-2'), northDeck, {until: 'verdict'}).check,
	'2026-03-03T12:00:00Z',
);

const {home, past, settings} = words.beside;
const {plain} = words.faces;
const {consequences, record} = words.pages;

describe('Home in plain lines', () => {
	it('starts a check', async () => {
		const {end} = await visit(['1']);
		expect(end).toMatchObject({kind: 'opened', opened: {ok: true, dialogue: {check: {answers: {}}}}});
	});

	it('offers an unfinished check first, and says that its deck is not ready to play', async () => {
		const draft = say(freshDialogue(), [text('north deck'), text('233')]).check;
		const {end, said} = await visit(['1'], {draft});
		const step = titleOf(progressOf(draft, []).current?.id ?? '');
		expect(said).toContain(home.unfinished({arm: 'north deck', minutesAgo: 5, step, isReady: false}));
		expect(end).toMatchObject({kind: 'opened', opened: {ok: true, dialogue: {check: {id: 'sample-1'}}}});
	});

	it('says of an unfinished check whose put-back list is done that its deck is ready to play', async () => {
		const draft = follow(freshDialogue(), northDeck, {until: 'next-check'}).check;
		const {said} = await visit([], {draft});
		const left = {arm: 'north deck', minutesAgo: 5, step: titleOf('next-check')};
		expect(said).toContain(home.unfinished({...left, isReady: true}));
		expect(said).not.toContain(home.unfinished({...left, isReady: false}));
	});

	it('puts an unfinished check aside only after a question', async () => {
		const draft = say(freshDialogue(), [text('north deck'), text('233')]).check;
		const {end, said, workbench} = await visit(['2', '3', '/leave'], {draft});
		expect(said).toContain(home.checkOpen.goingOn({arm: 'north deck'}));
		expect(end).toEqual({kind: 'leave'});
		expect(workbench.memory.draft).toEqual(draft);
	});

	it.each([[home.leave], ['/leave'], ['6']])("is left by '%s'", async (line) => {
		expect((await visit([line])).end).toEqual({kind: 'leave'});
	});

	it('offers to repeat the check that is due first', async () => {
		const {end, text, workbench} = await visit(['2'], {records: [whole]});
		const [due] = workbench.archive.due();
		const label = due && home.recheck({arm: 'north deck', inDays: due.inDays});
		expect(text).toContain(plain.option({number: 2, label: label ?? 'nothing is due'}));
		expect(end).toMatchObject({kind: 'opened', opened: {dialogue: {check: {recheckOf: whole.check.id}}}});
	});

	it('ends with the input', async () => {
		expect((await visit([])).end).toEqual({kind: 'input-ended'});
	});

	it('ends a pipe at the first line that is not taken, with the question', async () => {
		expect((await visit(['nonsense', '1'])).end).toEqual({
			kind: 'refused',
			sentence: plain.refusedChoice({
				title: home.title({version: '0.0.0'}),
				answer: 'nonsense',
				because: plain.wanted.number({last: 6}),
			}),
		});
	});

	it('asks someone at the keyboard again', async () => {
		const {end, said} = await visit(['nonsense', '1'], {}, false);
		expect(said).toContain(plain.wanted.number({last: 6}));
		expect(end.kind).toBe('opened');
	});
});

describe('Past checks in plain lines', () => {
	it('are listed with their verdict and read out whole', async () => {
		const {text} = await visit([home.past, '1', '1', '/leave'], {records: [whole]});
		const state = past.state({outcome: 'complete', verdict: 'beyond'});
		expect(text).toMatch(new RegExp(`1\\. 2026-03-02 +north deck .*${state}`, 'i'));
		expect(text).toContain(record.heading({date: '2026-03-02', outcome: 'complete', putBackOn: undefined}));
		expect(text).toContain(consequences.answer({title: titleOf('arm-length'), typed: '233 mm'}));
	});

	it('of a deck that was never put back lead to its put-back list', async () => {
		const {end, text} = await visit([home.past, '1', '1'], {records: [cutShort]});
		expect(text).toContain(record.deckNotReady);
		expect(end).toMatchObject({
			kind: 'opened',
			opened: {ok: true, dialogue: {check: {id: 'sample-2', reopened: true}}},
		});
	});

	it('come twenty at a time', async () => {
		const records = Array.from({length: 45}, () => whole);
		const {said, end} = await visit([home.past, past.older, past.older, words.beside.back, '/leave'], {records});
		const spans = [1, 21, 41].map((first) =>
			past.span({first, last: Math.min(45, first + 19), total: 45, hasKeys: false}),
		);
		expect(said.filter((line) => spans.includes(line))).toEqual(spans);
		expect(end).toEqual({kind: 'leave'});
	});

	it('are none at the beginning', async () => {
		expect((await visit(['2', '1', '/leave'])).said).toContain(past.none);
	});
});

it('practice is one of the first questions, and another workbench', async () => {
	expect((await visit([home.practice])).end).toEqual({kind: 'practice'});
});

describe('Settings in plain lines', () => {
	it('begin with the language, from one to the next and round again', async () => {
		const languageAfter = async (presses: number) => {
			const {workbench} = await visit(['4', ...Array.from({length: presses}, () => '1'), words.beside.back, '6']);
			return workbench.settings().language;
		};
		expect(await Promise.all([1, 2, 3].map(languageAfter))).toEqual(['en', 'de', '']);
	});

	it('take a number and show it', async () => {
		const {workbench, said} = await visit(['4', '2', '1,5 %', words.beside.back, '6']);
		expect(workbench.settings()).toEqual({...usualSettings, pullGoodPct: 1.5});
		expect(said).toContain(plain.option({number: 2, label: settings.numbers.pullGoodPct({value: 1.5})}));
	});

	it('turn the bell off and on', async () => {
		expect((await visit(['4', '8', words.beside.back, '6'])).workbench.settings().bell).toBe(false);
		expect((await visit(['4', '8', '8', words.beside.back, '6'])).workbench.settings().bell).toBe(true);
	});

	it('turn setting the gauge anew off and on', async () => {
		expect((await visit(['4', '7', words.beside.back, '6'])).workbench.settings()).toEqual({
			...usualSettings,
			setAnew: false,
		});
		expect((await visit(['4', '7', '7', words.beside.back, '6'])).workbench.settings()).toEqual(usualSettings);
	});

	it('take the name of a shop, and take it away again', async () => {
		const {workbench, said} = await visit(['4', '10', ' Invented Arms ', words.beside.back, '6']);
		expect(workbench.settings()).toEqual({...usualSettings, shop: 'Invented Arms'});
		expect(said).toContain(plain.option({number: 10, label: settings.texts.shop.now({text: 'Invented Arms'})}));
		const without = await visit(['4', '10', 'Invented Arms', '10', '-', words.beside.back, '6']);
		expect(without.workbench.settings()).toEqual(usualSettings);
		expect((await visit(['4', '10', 'x'.repeat(81)])).end.kind).toBe('refused');
	});

	it('refuse a good limit above the usable one', async () => {
		const {end, workbench} = await visit(['4', '2', '5']);
		const fault = settings.faults['pull-good-above-usable'];
		expect(end).toMatchObject({kind: 'refused', sentence: expect.stringContaining(fault)});
		expect(workbench.settings()).toEqual(usualSettings);
	});

	it('can be left in the middle of a number', async () => {
		expect((await visit(['4', '2', '/leave'], {}, false)).end).toEqual({kind: 'leave'});
		expect((await visit(['4', '2', '/back', words.beside.back, '6'], {}, false)).end).toEqual({kind: 'leave'});
	});

	it('that could not be saved say so', async () => {
		const {said} = await visit(['4', '7', words.beside.back, '6'], {failures: ['The disk is full.']}, false);
		expect(said).toContain(words.faces.notSaved({because: 'The disk is full.'}));
		expect((await visit(['4', '2', '1.5'], {failures: ['The disk is full.']})).end).toMatchObject({kind: 'not-saved'});
	});
});

describe('A prompt in words', () => {
	it('names the keys of a side', () => {
		const options = [
			{id: 'out', label: 'toward the rim', keys: ['o', '+'], spelled: spellings.out},
			{id: 'in', label: 'toward the spindle', keys: ['i', '-'], spelled: spellings.in},
		] as const;
		const prompt = {key: 'side', kind: 'side', options} as const;
		expect(promptLines(prompt)).toEqual(options.map(plain.side));
		for (const key of ['o', '+', 'i', '-']) expect(promptLines(prompt).join()).toContain(key);
		for (const line of ['o', 'O', '+', 'out', 'außen', 'A'])
			expect(entryOf(prompt, line)).toEqual({kind: 'choose', id: 'out'});
		expect(entryOf(prompt, 'x')).toBe(plain.wanted.side({keys: ['o', 'i']}));
	});

	it('takes a choice by its number, its id or what it is called', () => {
		const options = [
			{id: 'percent', label: 'percent of tracking force'},
			{id: 'mN', label: 'millinewtons (mN)'},
		];
		const prompt = {key: 'gauge-unit', kind: 'choice', options} as const;
		for (const line of ['2', 'mN', 'millinewtons (mN)'])
			expect(entryOf(prompt, line)).toEqual({kind: 'choose', id: 'mN'});
		for (const line of ['0', '3', 'newton']) expect(entryOf(prompt, line)).toBe(plain.wanted.number({last: 2}));
	});

	it('numbers what may have changed', () => {
		const prompt = {key: 'still', kind: 'still', items: ['guard on', 'bias off']} as const;
		expect(promptLines(prompt)).toContain(plain.noLonger({number: 2, item: 'bias off'}));
		expect(entryOf(prompt, '2')).toEqual({kind: 'number', number: 2});
		expect(entryOf(prompt, 'y')).toEqual({kind: 'yes'});
		expect(entryOf(prompt, 'hm')).toBe(plain.wanted.still);
	});
});
