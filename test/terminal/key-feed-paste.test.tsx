import {describe, expect, test} from 'vitest';
import {MAX_PIECE_LENGTH, MAX_WAITING_KEYS} from '../../source/terminal/key-queue.js';
import {renderInk, turns} from '../helpers/ink.js';
import {Listener, startQuestions} from './questions.js';

describe('A paste', () => {
	const paste = (text: string) => `\u001B[200~${text}\u001B[201~`;

	test('of a run of readings answers one question a line', async () => {
		const {answers, type} = startQuestions();
		await type(paste('12.5\r\n13.1\r\n9'));
		expect(answers).toEqual(['12.5', '13.1']);
	});

	test.each([
		['marked', paste],
		['unmarked', (text: string) => text],
	])('%s and far too long submits nothing, is cut and says so', async (_, wrap) => {
		const {feed, answers, frame, type} = startQuestions();
		let notices = 0;
		feed.onPasteCut = () => notices++;
		await turns(12);
		await type(wrap(`first line\r${'more and more text\r'.repeat(MAX_WAITING_KEYS / 10)}`));
		expect(answers).toEqual([]);
		expect(frame()).toContain('first line');
		expect(notices).toBe(1);
	});

	test.each([
		['marked', paste],
		['unmarked', (text: string) => text],
	])('%s of one long line is cut and says so', async (_, wrap) => {
		const {feed, answers, type} = startQuestions();
		let notices = 0;
		feed.onPasteCut = () => notices++;
		await turns(12);
		await type(wrap('x'.repeat(MAX_PIECE_LENGTH * 2)));
		await type('\r');
		expect(answers).toEqual(['x'.repeat(MAX_PIECE_LENGTH)]);
		expect(notices).toBe(1);
	});

	test('of a word presses no hot key that it contains', async () => {
		const seen: string[] = [];
		const {type} = renderInk(<Listener onKey={(input) => seen.push(input)} />);
		await type(paste('yes'));
		expect(seen).toEqual(['yes']);
	});

	test('without an end mark counts after a while', async () => {
		const {answers, frame, type, waitFor} = startQuestions();
		await type('\u001B[200~12');
		expect(frame()).not.toContain('12');
		await waitFor('12');
		await type('\r');
		expect(answers).toEqual(['12']);
	});
});
