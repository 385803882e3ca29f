import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/commands/filing.js';
import {entryOf, promptLines} from '../../source/plain/ask.js';
import {home} from '../../source/plain/home.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {linesOf} from '../helpers/lines.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue, say, yes} from '../helpers/script.js';

const whole = finishedCheck(follow(freshDialogue(), northDeck).check, '2026-03-02T12:00:00Z');
const cutShort = finishedCheck(
	follow(freshDialogue([], 'sample-2'), northDeck, {until: 'verdict'}).check,
	'2026-03-03T12:00:00Z',
);

const visit = async (given: readonly string[], memory: Parameters<typeof memoryWorkbench>[0] = {}, piped = true) => {
	const workbench = memoryWorkbench(memory);
	const lines = linesOf(given, piped);
	const end = await home(workbench, lines);
	return {end, said: lines.said, text: lines.said.join('\n'), workbench, left: lines.left()};
};

describe('Home in plain lines', () => {
	it('starts a check', async () => {
		const {end} = await visit(['1']);
		expect(end).toMatchObject({kind: 'opened', opened: {ok: true, dialogue: {check: {answers: {}}}}});
	});

	it('offers an unfinished check first, and says that its deck is not ready to play', async () => {
		const draft = say(freshDialogue(), [yes, yes]).check;
		const {end, text} = await visit(['1'], {draft});
		expect(text).toMatch(/Unfinished check: .*Deck not ready to play\./);
		expect(end).toMatchObject({kind: 'opened', opened: {ok: true, dialogue: {check: {id: 'sample-1'}}}});
	});

	it('puts an unfinished check aside only after a question', async () => {
		const draft = say(freshDialogue(), [yes, yes]).check;
		const {end, text, workbench} = await visit(['2', '3', '/leave'], {draft});
		expect(text).toMatch(/files it as interrupted, deck not ready to play/);
		expect(end).toEqual({kind: 'left'});
		expect(workbench.memory.draft).toEqual(draft);
	});

	it.each([['leave'], ['/leave'], ['6']])("is left by '%s'", async (line) => {
		expect((await visit([line])).end).toEqual({kind: 'left'});
	});

	it('offers to repeat the check that is due first', async () => {
		const {end, text} = await visit(['2'], {records: [whole]});
		expect(text).toMatch(/2\. re-check north deck \(in \d+ days\)/);
		expect(end).toMatchObject({kind: 'opened', opened: {dialogue: {check: {recheckOf: whole.check.id}}}});
	});

	it('ends with the input', async () => {
		expect((await visit([])).end).toEqual({kind: 'input-ended'});
	});

	it('ends a pipe at the first line that is not taken, with the question', async () => {
		expect((await visit(['nonsense', '1'])).end).toEqual({
			kind: 'refused',
			sentence: "What next? 'nonsense': Answer with a number from 1 to 6.",
		});
	});

	it('asks someone at the keyboard again', async () => {
		const {end, text} = await visit(['nonsense', '1'], {}, false);
		expect(text).toContain('Answer with a number from 1 to 6.');
		expect(end.kind).toBe('opened');
	});
});

describe('Past checks in plain lines', () => {
	it('are listed with their verdict and read out whole', async () => {
		const {text} = await visit(['past', '1', '1', '/leave'], {records: [whole]});
		expect(text).toMatch(/1\. 2026-03-02 +north deck .*beyond/i);
		expect(text).toContain('Check of 2026-03-02: complete');
		expect(text).toContain('Effective length: 233 mm');
	});

	it('of a deck that was never put back lead to its put-back list', async () => {
		const {end, text} = await visit(['2', '1', '1'], {records: [cutShort]});
		expect(text).toContain('Deck not ready to play.');
		expect(end).toMatchObject({
			kind: 'opened',
			opened: {ok: true, dialogue: {check: {id: 'sample-2', reopened: true}}},
		});
	});

	it('come twenty at a time', async () => {
		const records = Array.from({length: 45}, () => whole);
		const {text, end} = await visit(['past', '21', '21', 'back', '/leave'], {records});
		expect(text.match(/Past checks, 45 in all/g)).toHaveLength(3);
		expect(end).toEqual({kind: 'left'});
	});

	it('are none at the beginning', async () => {
		expect((await visit(['2', '1', '/leave'])).text).toContain('Past checks, 0 in all');
	});
});

it('practice is one of the first questions, and another workbench', async () => {
	expect((await visit(['practise on an invented arm, without a turntable'])).end).toEqual({kind: 'practice'});
});

describe('Settings in plain lines', () => {
	it('take a number and show it', async () => {
		const {workbench, text} = await visit(['4', '1', '1,5 %', '8', '6']);
		expect(workbench.settings()).toEqual({...usualSettings, pullGoodPct: 1.5});
		expect(text).toContain('pull: good to 1.5 %');
	});

	it('turn the bell off and on', async () => {
		expect((await visit(['4', '7', '8', '6'])).workbench.settings().bell).toBe(false);
		expect((await visit(['4', '7', '7', '8', '6'])).workbench.settings().bell).toBe(true);
	});

	it('turn setting the gauge anew off and on', async () => {
		expect((await visit(['4', '6', '8', '6'])).workbench.settings()).toEqual({...usualSettings, setAnew: false});
		expect((await visit(['4', '6', '6', '8', '6'])).workbench.settings()).toEqual(usualSettings);
	});

	it('refuse a good limit above the usable one', async () => {
		const {end, workbench} = await visit(['4', '1', '5']);
		expect(end).toMatchObject({kind: 'refused', sentence: expect.stringMatching(/must not be above its usable limit/)});
		expect(workbench.settings()).toEqual(usualSettings);
	});

	it('can be left in the middle of a number', async () => {
		expect((await visit(['4', '1', '/leave'], {}, false)).end).toEqual({kind: 'left'});
		expect((await visit(['4', '1', '/back', '8', '6'], {}, false)).end).toEqual({kind: 'left'});
	});

	it('that could not be saved say so', async () => {
		const {text} = await visit(['4', '6', '8', '6'], {failures: ['The disk is full.']}, false);
		expect(text).toContain('NOT SAVED: The disk is full.');
		expect((await visit(['4', '1', '1.5'], {failures: ['The disk is full.']})).end).toMatchObject({kind: 'not-saved'});
	});
});

describe('A prompt in words', () => {
	it('names the keys of a side', () => {
		const options = [
			{id: 'out', label: 'toward the rim', keys: ['o', '+']},
			{id: 'in', label: 'toward the spindle', keys: ['i', '-']},
		];
		const prompt = {key: 'side', kind: 'side', options} as const;
		expect(promptLines(prompt)).toEqual(['  o or +: toward the rim', '  i or -: toward the spindle']);
		for (const line of ['o', 'O', '+', 'out']) expect(entryOf(prompt, line)).toEqual({kind: 'choose', id: 'out'});
		expect(entryOf(prompt, 'x')).toBe('Answer o or i.');
	});

	it('numbers what may have changed', () => {
		const prompt = {key: 'still', kind: 'still', items: ['guard on', 'bias off']} as const;
		expect(promptLines(prompt)).toContain('  2. no longer so: bias off');
		expect(entryOf(prompt, '2')).toEqual({kind: 'number', number: 2});
		expect(entryOf(prompt, 'y')).toEqual({kind: 'yes'});
		expect(entryOf(prompt, 'hm')).toMatch(/^Answer y/);
	});
});
