import {expect, test} from 'vitest';
import {finishedCheck} from '../../source/commands/filing.js';
import {KeysProvider} from '../../source/screens/keys-context.js';
import {PastScreen} from '../../source/screens/past-screen.js';
import {renderInk} from '../helpers/ink.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const whole = finishedCheck(follow(freshDialogue(), northDeck).check, '2026-03-02T12:00:00Z');
const cutShort = finishedCheck(
	follow(freshDialogue([], 'sample-2'), northDeck, {until: 'verdict'}).check,
	'2026-03-03T12:00:00Z',
);

const show = (memory: Parameters<typeof memoryWorkbench>[0]) => {
	const workbench = memoryWorkbench(memory);
	const reopened: string[] = [];
	const screen = renderInk(
		(feed) => (
			<KeysProvider value={feed}>
				<PastScreen workbench={workbench} onBack={() => {}} onReopen={(id) => reopened.push(id)} />
			</KeysProvider>
		),
		{rows: 40},
	);
	return {...screen, memory: workbench.memory, reopened};
};

test('A past check is marked void with a reason and counts again when that is taken back', async () => {
	const {waitFor, type, press, memory} = show({records: [whole]});
	await waitFor('1 2026-03-02');
	await type('1');
	await waitFor('2 mark it void');
	await type('2');
	await waitFor('3 another arm or profile was meant');
	await type('3');
	await waitFor('VOID since 2026-03-02: another arm or profile was meant.');
	expect(memory.remarks[whole.check.id]?.void?.reason).toBe('another arm or profile was meant');
	await press('esc');
	await waitFor(/1 2026-03-02 +north deck +void/);
	await type('1');
	await waitFor('2 let it count again');
	await type('2');
	await waitFor('Was void from 2026-03-02');
	await waitFor('2 mark it void');
	expect(memory.remarks[whole.check.id]?.void).toBeUndefined();
});

test('A reason may be typed and is confirmed by y, not by Enter; Esc leaves the check as it was', async () => {
	const {waitFor, type, press, memory} = show({records: [whole]});
	await waitFor('1 2026-03-02');
	await type('1');
	await waitFor('2 mark it void');
	await type('2');
	await waitFor('5 another reason (type it)');
	await type('5');
	await waitFor('at most 80 letters');
	await type('wro');
	await press('esc');
	await waitFor('5 another reason (type it)');
	expect(memory.remarks).toEqual({});
	await type('5');
	await waitFor('at most 80 letters');
	await type('wrong stylus\r');
	await waitFor('Mark this check void? y / n');
	await type('\r');
	await press('esc');
	await waitFor('at most 80 letters');
	expect(memory.remarks).toEqual({});
	await type('wrong stylus\r');
	await waitFor('Reason: wrong stylus');
	await type('y');
	await waitFor('VOID since 2026-03-02: wrong stylus.');
});

test('A check whose deck was never put back still leads to its put-back list, void or not', async () => {
	const {waitFor, type, reopened} = show({
		records: [cutShort],
		remarks: {'sample-2': {void: {reason: 'only tried out', at: '2026-03-04T10:00:00Z'}}},
	});
	await waitFor('1 2026-03-02');
	await type('1');
	await waitFor('Deck not ready to play.');
	await waitFor('VOID since 2026-03-04: only tried out.');
	await type('1');
	expect(reopened).toEqual(['sample-2']);
});

test('Two checks of one day are told apart by their time', async () => {
	const at = (startedAt: string, id: string) => ({...whole, check: {...whole.check, id, startedAt}});
	const records = [at('2026-03-02T09:05:00+01:00', 'one'), at('2026-03-02T15:40:00+01:00', 'two')];
	const {waitFor} = show({records: [...records, at('2026-03-03T10:00:00+01:00', 'three')]});
	await waitFor(/2026-03-03 {8}north deck/);
	await waitFor(/2026-03-02 15:40 {2}north deck/);
	await waitFor(/2026-03-02 09:05 {2}north deck/);
});
