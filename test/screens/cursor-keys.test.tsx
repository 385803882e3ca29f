import fc from 'fast-check';
import {beforeEach, describe, expect, it, vi} from 'vitest';
import {CheckScreen} from '../../source/screens/check-screen.js';
import {FieldScreen} from '../../source/screens/field-screen.js';
import {KeysProvider} from '../../source/screens/keys-context.js';
import {KEYS} from '../../source/terminal/keys.js';
import {titleOf} from '../../source/words/step-text.js';
import {renderInk, TURNS_PER_KEY, turns} from '../helpers/ink.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const {left, right, home, end, backspace, clear, f1, enter} = KEYS;
const pasteOf = (text: string): string => `\u001B[200~${text}\u001B[201~`;

/** A check that stands at the effective length of the arm. */
const check = () => {
	const initial = follow(freshDialogue(), northDeck, {until: 'arm-length'});
	return renderInk(
		(feed) => (
			<KeysProvider value={feed}>
				<CheckScreen workbench={memoryWorkbench()} initial={initial} onHome={() => {}} onFinished={() => {}} />
			</KeysProvider>
		),
		{rows: 40},
	);
};

const field = {kind: 'field', initial: '', mayBeEmpty: false, unit: ''} as const;
const page = () =>
	renderInk((feed) => (
		<KeysProvider value={feed}>
			<FieldScreen
				page={{title: 'Rename', shown: [], prompt: field}}
				prompt={field}
				onEntry={() => {}}
				onBack={() => {}}
			/>
		</KeysProvider>
	));

type Rendered = ReturnType<typeof renderInk>;

/** What stands in the field after some keys that came in one go. */
async function typedInto({feed, frame}: Rendered, keys: readonly string[]): Promise<string> {
	const handedOn = vi.spyOn(feed, 'read');
	const typed = keys.join('');
	feed.receive(typed);
	// Each key has its turns, and so has each of those that it becomes, of which there may be as many as characters.
	for (let key = 0; key <= typed.length + handedOn.mock.calls.length; key++) await turns(TURNS_PER_KEY);
	handedOn.mockRestore();
	return /^> (.*)$/m.exec(frame())?.[1]?.trimEnd() ?? '';
}

/** A plain editor of one line, in whole characters (graphemes), as the truth to hold the fields against. */
function edited(keys: readonly string[]): string {
	let [before, after]: [string[], string[]] = [[], []];
	const segmented = (text: string) => Array.from(new Intl.Segmenter().segment(text), ({segment}) => segment);
	for (const key of keys) {
		if (key === left) after = [...before.splice(-1), ...after];
		else if (key === right) before = [...before, ...after.splice(0, 1)];
		else if (key === home) [before, after] = [[], [...before, ...after]];
		else if (key === end) [before, after] = [[...before, ...after], []];
		else if (key === backspace) before.pop();
		else if (key === clear) [before, after] = [[], []];
		else before = segmented(before.join('') + key.replaceAll(/\u001B\[20[01]~/g, ''));
	}
	return [...before, ...after].join('');
}

// A thumb, a technician (three characters joined to one), and a letter with its accent as a character of its own.
const letters = ['2', '7', '.', 'a', '👍', '👩‍🔧', 'e\u0301'];
const anyKeys = fc.array(
	fc.oneof(
		{weight: 4, arbitrary: fc.constantFrom(...letters)},
		{weight: 4, arbitrary: fc.constantFrom(left, right, backspace)},
		{weight: 1, arbitrary: fc.constantFrom(home, end, clear, pasteOf('3mm'))},
	),
	{maxLength: 16},
);

describe.each([
	['of a check', check],
	['of a page', page],
])('The field %s', (_, show) => {
	let screen: Rendered;
	beforeEach(async () => {
		screen = show();
		await screen.waitFor('>');
	});

	it('holds after any keys what a plain editor would hold, and the cursor stands where it would', async () => {
		await fc.assert(
			fc.asyncProperty(anyKeys, async (keys) => {
				// The last letter shows where the cursor stands.
				const all = [clear, ...keys, 'z'];
				expect(await typedInto(screen, all)).toBe(edited(all));
			}),
			{numRuns: 60},
		);
	}, 60_000);

	it.each([
		['arrows in the empty field', [left, left, right, '2', '3', '3', right, 'z'], '233z'],
		['an arrow beyond the end', ['4', '.', right, right, '5', 'z'], '4.5z'],
		['an arrow beyond the start', ['4', '5', left, left, left, '2', '1', 'z'], '21z45'],
		['Backspace at the start', ['4', '5', home, backspace, backspace, '2', 'z'], '2z45'],
		['Backspace in the middle of an emoji and others', ['👩‍🔧', 'a', 'b', left, left, backspace, 'z'], 'zab'],
		['an arrow over an emoji', ['a', '👩‍🔧', left, 'z'], 'az👩‍🔧'],
		['Ctrl+U in the middle', ['1', '2', '3', left, left, clear, right, '4', '5', left, 'z'], '4z5'],
	])('keeps its order with %s', async (_what, keys, text) => {
		expect(await typedInto(screen, keys)).toBe(text);
	});
});

describe('The field of a check', () => {
	it.each([
		['typed', '233z'],
		['pasted', pasteOf('233z')],
	])('makes room for what is %s after a refusal, wherever the cursor stands', async (_, text) => {
		const screen = check();
		await screen.waitFor(titleOf('arm-length'));
		expect(await typedInto(screen, ['1', 'c', 'u', 'b', enter, left, left])).toBe('1cub');
		expect(await typedInto(screen, [text])).toBe('233z');
		expect(await typedInto(screen, [left, left, '1'])).toBe('2313z');
	});

	it('goes on at the end of the text after a look at the help', async () => {
		const screen = check();
		await screen.waitFor(titleOf('arm-length'));
		expect(await typedInto(screen, ['2', '3', left, left, f1])).toBe('');
		expect(await typedInto(screen, [f1, right, '3', 'z'])).toBe('233z');
	});

	it('begins with the cursor at the end in each question', async () => {
		const screen = check();
		await screen.waitFor(titleOf('arm-length'));
		await typedInto(screen, ['2', '3', '3', left, left, enter]);
		await screen.waitFor(titleOf('arm-pivot-distance'));
		expect(await typedInto(screen, [left, right, '2', '1', '5', 'z'])).toBe('215z');
	});
});
