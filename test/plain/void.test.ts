import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/desk/filing.js';
import {walkBeside} from '../helpers/conversation.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const whole = finishedCheck(follow(freshDialogue(), northDeck).check, '2026-03-02T12:00:00Z');
const id = whole.check.id;

/** Opens the only past check from home and answers line by line. */
const visit = (given: readonly string[], memory: Parameters<typeof walkBeside>[1] = {}, piped = true) =>
	walkBeside([words.beside.home.past, '1', ...given], {records: [whole], ...memory}, piped);
const {past} = words.beside;
const {reason} = past;
const {voidReasons, voidReasonWanted} = words.results;
const say = words.faces.plain;
const markVoid = '2';

describe('A past check in plain lines', () => {
	it('is marked void with a reason by number, and says so from then on', async () => {
		const before = JSON.stringify(whole);
		const {text, workbench, memory} = await visit([markVoid, '2', '/back', '/leave']);
		const because = voidReasons.disturbed;
		expect(text).toContain(words.results.void({at: '2026-03-02', reason: because}));
		const state = past.state({outcome: 'complete', verdict: 'beyond', voidBecause: because});
		expect(text).toMatch(new RegExp(`1\\. 2026-03-02 +north deck +${state}`));
		expect(memory.remarks[id]?.void?.reason).toBe(because);
		expect(JSON.stringify(memory.records)).toBe(`[${before}]`);
		expect(workbench.archive.ofArm('north deck')).toEqual([]);
		expect(workbench.archive.due()).toEqual([]);
	});

	it('is marked void with a reason of its own, at most 80 letters long, once that is confirmed', async () => {
		const {text, said, memory} = await visit(
			[markVoid, '5', 'x'.repeat(81), '', 'wrong stylus', 'y', '/leave'],
			{},
			false,
		);
		expect(said.filter((line) => line === reason.inFewWords)).toHaveLength(3);
		expect(text.split(voidReasonWanted)).toHaveLength(3);
		expect(memory.remarks[id]?.void?.reason).toBe('wrong stylus');
	});

	it('is not marked by an empty line after a reason was typed: y or n is wanted', async () => {
		const typed = [markVoid, '5', 'wrong stylus'];
		const {text, memory} = await visit([...typed, '', 'perhaps', 'n', 'only tried', 'yes'], {}, false);
		expect(text).toContain(`${reason.given({reason: 'wrong stylus'})}\n${say.yesNo({question: reason.question})}`);
		expect(memory.remarks[id]?.void?.reason).toBe('only tried');
		for (const given of [
			[...typed, 'n', '/leave'],
			[...typed, '/back', '/back', '/leave'],
			[...typed, '/leave'],
			typed,
		])
			expect((await visit(given)).memory.remarks).toEqual({});
		// A pipe that was made for other questions ends here.
		expect((await visit([...typed, '/back', 'x', '/past'])).end).toEqual({
			kind: 'refused',
			sentence: say.refusedChoice({title: reason.title, answer: '/past', because: say.wanted.yesNo}),
		});
	});

	it('is left as it is where no reason is given after all', async () => {
		for (const given of [
			[markVoid, '/back'],
			[markVoid, '6'],
			[markVoid, '5', '/back', '/back'],
			[markVoid, '/leave'],
		])
			expect((await visit(given)).memory.remarks).toEqual({});
	});

	it('counts again when that is taken back, and both stay beside it', async () => {
		const {text, workbench, memory} = await visit([markVoid, '1', markVoid, '/leave']);
		expect(text).toContain(
			words.results.wasVoid({at: '2026-03-02', takenBackAt: '2026-03-02', reason: voidReasons.forgotten}),
		);
		expect(memory.remarks[id]).toMatchObject({
			formerVoids: [{reason: voidReasons.forgotten, takenBackAt: expect.any(String)}],
		});
		expect(memory.remarks[id]?.void).toBeUndefined();
		expect(workbench.archive.ofArm('north deck')).toHaveLength(1);
	});

	it('whose mark could not be saved says so and counts on', async () => {
		const {end, text, memory} = await visit([markVoid, '1'], {failures: ['The disk is full.']}, false);
		expect(text).toContain(words.faces.notSaved({because: 'The disk is full.'}));
		expect(memory.remarks).toEqual({});
		expect(end.kind).toBe('input-ended');
		expect((await visit([markVoid, '1'], {failures: ['The disk is full.']})).end.kind).toBe('not-saved');
	});
});
