import {Text} from 'ink';
import SelectInput from 'ink-select-input';
import {describe, expect, test} from 'vitest';
import {renderInk, turns} from '../helpers/ink.js';
import {Listener, startQuestions} from './questions.js';

const items = ['A', 'B', 'C', 'D'].map((label) => ({label, value: label}));

describe('Typing at any pace', () => {
	test('a reading and its Enter in one read are one answer', async () => {
		const {answers, type} = startQuestions();
		await type('12.5\r');
		expect(answers).toEqual(['12.5']);
	});

	test('three readings in one read are three answers, whatever the line ends', async () => {
		const {answers, type} = startQuestions();
		await type('1\r2\r\n3\n');
		expect(answers).toEqual(['1', '2', '3']);
	});

	test('keys back to back without a turn between them all count', async () => {
		const {feed, answers, type} = startQuestions();
		for (const key of '12.345') feed.receive(key);
		await type('\u007F\u007F\r');
		await turns(120);
		expect(answers).toEqual(['12.3']);
	});

	test('arrows and Enter in one read choose what is shown', async () => {
		const chosen: string[] = [];
		const {type} = renderInk(<SelectInput items={items} onSelect={(item) => chosen.push(item.value)} />);
		await type('\u001B[B\u001B[B\r');
		expect(chosen).toEqual(['C']);
	});

	test('an arrow cut in two by a slow line is still an arrow', async () => {
		const chosen: string[] = [];
		const {type} = renderInk(<SelectInput items={items} onSelect={(item) => chosen.push(item.value)} />);
		await type('\u001B');
		await type('[B\r');
		expect(chosen).toEqual(['B']);
	});

	test('a character of two bytes cut in two is one character', async () => {
		const {feed, answers, type} = startQuestions();
		await turns(12);
		feed.receive(Buffer.from([0xc3]));
		feed.receive(Buffer.from([0xa9]));
		await type('\r');
		expect(answers).toEqual(['é']);
	});

	test('bytes that are no text and keys without a use leave nothing in the field', async () => {
		const {feed, answers, type} = startQuestions();
		await turns(12);
		feed.receive(Buffer.from([0xff, 0xc3, 0x28]));
		await type('\u001B[1;5P\u001B[0n\u0001\u001Ba\u001B[200~\u001B[201~\r');
		expect(answers).toEqual(['(']);
	});

	test('an escape alone is Esc', async () => {
		const seen: string[] = [];
		const {press} = renderInk(<Listener onKey={(_, key) => seen.push(key.escape ? 'esc' : 'other')} />);
		await press('esc');
		expect(seen).toEqual(['esc']);
	});
});

describe('Ctrl+C', () => {
	test.each([
		['alone', '\u0003'],
		['twice in one read', '\u0003\u0003'],
		['in the middle of typing', '12\u00033\r'],
		['inside a paste without an end', '\u001B[200~abc\u0003'],
	])('%s is reported at once and never typed', async (_, text) => {
		const {feed, answers, frame, type} = startQuestions();
		await turns(12);
		let interrupts = 0;
		feed.onInterrupt = () => interrupts++;
		await type(text);
		expect(interrupts).toBe(1);
		expect(answers).toEqual([]);
		expect(frame().trimEnd()).toBe('value 0:');
	});

	test('is seen while the feed is held', async () => {
		const {feed, type} = startQuestions();
		let interrupts = 0;
		feed.onInterrupt = () => interrupts++;
		feed.hold();
		await type('1\r\u0003');
		expect(interrupts).toBe(1);
	});
});

describe('A screen', () => {
	test('may drop keys and put others in their place', async () => {
		const {feed, answers, type} = startQuestions();
		feed.gate = (key) => (key === 'x' ? null : key === 'd' ? ['1', '2'] : key);
		await type('xd3x\r');
		expect(answers).toEqual(['123']);
	});

	test('is told of Ctrl+U in its turn', async () => {
		const {feed, answers, frame, type} = startQuestions();
		const framesAtClear: string[] = [];
		feed.onClear = () => framesAtClear.push(frame().trimEnd());
		await type('12\u00153\r');
		expect(framesAtClear).toEqual(['value 0: 12']);
		expect(answers).toEqual(['123']);
	});

	test('loses nothing that is typed while it saves', async () => {
		const {feed, answers, type} = startQuestions();
		await type('1\r');
		feed.hold();
		await type('2\r3\r');
		expect(answers).toEqual(['1']);
		feed.release();
		await turns(120);
		expect(answers).toEqual(['1', '2', '3']);
	});

	test('can forget what was typed ahead', async () => {
		const {feed, answers, type} = startQuestions();
		feed.hold();
		await type('2\r3\r');
		feed.discard();
		feed.release();
		await type('4\r');
		expect(answers).toEqual(['4']);
	});
});

describe('An Enter in haste', () => {
	const start = () => {
		const hasty: boolean[] = [];
		const {feed, type} = startQuestions();
		feed.gate = (key) => {
			if (key === '\r') hasty.push(feed.isHasty);
			return key;
		};
		return {hasty, feed, type};
	};

	test('is one right after another', async () => {
		const {hasty, type} = start();
		await type('\r\r');
		await type('1\r');
		expect(hasty).toEqual([false, true, false]);
	});

	test.each(['2', '\u001B[B', '\u007F', '\u0015'])('is none after a key between them: %j', async (key) => {
		const {hasty, type} = start();
		await type(`\r${key}\r`);
		expect(hasty).toEqual([false, false]);
	});

	test('is one that was pressed while an answer was saved, however long that took', async () => {
		const {hasty, feed, type} = start();
		await type('\r');
		feed.hold();
		await type('\r');
		await new Promise((resolve) => setTimeout(resolve, 600));
		feed.release();
		await turns(60);
		expect(hasty).toEqual([false, true]);
	});

	test('is none after half a second', async () => {
		const {hasty, type} = start();
		await type('\r');
		await new Promise((resolve) => setTimeout(resolve, 600));
		await type('\r');
		expect(hasty).toEqual([false, false]);
	});
});

test('Raw mode is taken before anybody listens, kept while screens change, and given back', async () => {
	const modes: boolean[] = [];
	const {feed, unmount} = renderInk(<Text>no input here</Text>, {onRawMode: (raw) => modes.push(raw)});
	await turns(12);
	feed.setRawMode(false);
	feed.start();
	expect(modes).toEqual([true]);
	unmount();
	expect(modes).toEqual([true, false]);
});
