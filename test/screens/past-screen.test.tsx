import {expect, test, vi} from 'vitest';
import {finishedCheck} from '../../source/desk/filing.js';
import {says} from '../../source/words/says.js';
import {showBeside} from '../helpers/beside.js';
import {broken, words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const {past} = words.beside;
const {results} = words;
const otherMeant = results.voidReasons['other-meant'];
const isVoid = past.state({outcome: 'complete', verdict: 'beyond', voidBecause: otherMeant});
const whole = finishedCheck(follow(freshDialogue(), northDeck).check, '2026-03-02T12:00:00Z');
const cutShort = finishedCheck(
	follow(freshDialogue([], 'sample-2'), northDeck, {until: 'verdict'}).check,
	'2026-03-03T12:00:00Z',
);

const show = (memory: Parameters<typeof showBeside>[1]) => showBeside({at: 'past', offset: 0}, memory, {rows: 40});

test('A past check is marked void with a reason and counts again when that is taken back', async () => {
	const {waitFor, type, press, memory} = show({records: [whole]});
	await waitFor('1 2026-03-02');
	await type('1\r');
	await waitFor(`2 ${past.check.markVoid}`);
	await type('2\r');
	await waitFor(`3 ${otherMeant}`);
	await type('3\r');
	await waitFor(broken(results.void({at: '2026-03-02', reason: otherMeant})));
	expect(memory.remarks[whole.check.id]?.void?.reason).toBe(otherMeant);
	await press('esc');
	await waitFor(new RegExp(`1 2026-03-02 +north deck +${isVoid}`));
	await type('1\r');
	await waitFor(`2 ${past.check.countAgain}`);
	await type('2\r');
	await waitFor(broken(results.wasVoid({at: '2026-03-02', takenBackAt: '2026-03-02', reason: otherMeant})));
	await waitFor(`2 ${past.check.markVoid}`);
	expect(memory.remarks[whole.check.id]?.void).toBeUndefined();
});

test('A reason may be typed and is confirmed by y, not by Enter; Esc leaves the check as it was', async () => {
	const {waitFor, type, press, memory} = show({records: [whole]});
	await waitFor('1 2026-03-02');
	await type('1\r');
	await waitFor(`2 ${past.check.markVoid}`);
	await type('2\r');
	await waitFor(`5 ${says.label({id: 'other-reason', values: {}})}`);
	await type('5\r');
	await waitFor(past.reason.inFewWords);
	await type('wro');
	await press('esc');
	await waitFor(`5 ${says.label({id: 'other-reason', values: {}})}`);
	expect(memory.remarks).toEqual({});
	await type('5\r');
	await waitFor(past.reason.inFewWords);
	await type('wrong stylus\r');
	await waitFor(words.faces.yesNo(past.reason));
	await type('\r');
	await press('esc');
	await waitFor(past.reason.inFewWords);
	expect(memory.remarks).toEqual({});
	await type('wrong stylus\r');
	await waitFor(past.reason.given({reason: 'wrong stylus'}));
	await type('y');
	await waitFor(broken(results.void({at: '2026-03-02', reason: 'wrong stylus'})));
});

test('A check whose deck was never put back still leads to its put-back list, void or not', async () => {
	const {waitFor, type, workbench} = show({
		records: [cutShort],
		remarks: {'sample-2': {void: {reason: 'only tried out', at: '2026-03-04T10:00:00Z'}}},
	});
	await waitFor('1 2026-03-02');
	await type('1\r');
	await waitFor(words.pages.record.deckNotReady);
	await waitFor(broken(results.void({at: '2026-03-04', reason: 'only tried out'})));
	const reopened = vi.spyOn(workbench, 'reopen');
	await type('1\r');
	expect(reopened.mock.calls).toEqual([['sample-2']]);
});

test('Two checks of one day are told apart by their time', async () => {
	const at = (startedAt: string, id: string) => ({...whole, check: {...whole.check, id, startedAt}});
	const records = [at('2026-03-02T09:05:00+01:00', 'one'), at('2026-03-02T15:40:00+01:00', 'two')];
	const {waitFor} = show({records: [...records, at('2026-03-03T10:00:00+01:00', 'three')]});
	await waitFor(/2026-03-03 {8}north deck/);
	await waitFor(/2026-03-02 15:40 {2}north deck/);
	await waitFor(/2026-03-02 09:05 {2}north deck/);
});
