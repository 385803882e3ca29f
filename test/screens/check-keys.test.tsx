import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {openSeries} from '../../source/check/series.js';
import {viewOf} from '../../source/pages/view.js';
import {footRows} from '../../source/screens/body.js';
import {CheckScreen} from '../../source/screens/check-screen.js';
import {KeysProvider} from '../../source/screens/keys-context.js';
import {layoutOf} from '../../source/screens/layout.js';
import {says} from '../../source/words/says.js';
import {titleOf} from '../../source/words/step-text.js';
import {type InkOptions, renderInk} from '../helpers/ink.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {broken, flat, saidAt, words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {clockOf, follow, freshDialogue, say, text} from '../helpers/script.js';

const at = (until: string, answers: Readonly<Record<string, string>> = {}) =>
	follow(freshDialogue(), northDeckWith(answers), {until});
const atProbe = at('probe-inner');
const outerLimit = broken(words.rounds.limit({which: 'outerLimit', isTurned: false, showsHand: false}));
const counting = words.faces.keepHands;

/** A check on full screens; what was saved last. */
function show(initial: Dialogue, options: InkOptions = {rows: 40}) {
	const workbench = memoryWorkbench({}, clockOf(initial));
	const shown = renderInk(
		(feed) => (
			<KeysProvider value={feed}>
				<CheckScreen workbench={workbench} initial={initial} onHome={() => {}} onFinished={() => {}} />
			</KeysProvider>
		),
		options,
	);
	const saved = () => workbench.memory.draft ?? initial.check;
	return {...shown, saved, readings: () => openSeries(saved()).inner};
}

describe('With the number pad alone', () => {
	it('a round is read, a missing side is one key, and the next reading is asked', async () => {
		const {type, waitFor, readings} = show(atProbe);
		await waitFor(titleOf('probe-inner'));
		await type('3\r');
		await waitFor(words.pages.view.side.title({title: titleOf('probe-inner')}));
		await type('+');
		await waitFor(outerLimit);
		await type('8,5+\r');
		await waitFor(broken(words.rounds.turned));
		expect(readings()).toMatchObject([{innerLimit: {value: 3}, outerLimit: {value: 8.5}}]);
	});

	it('/ goes back and * says why while nothing is typed; behind a number they belong to it', async () => {
		const {type, waitFor, frame} = show(atProbe);
		await waitFor(titleOf('probe-inner'));
		await type('*');
		await waitFor(broken(saidAt('probe-inner', 'why')));
		await type('*');
		await type('3/*');
		expect(frame()).toContain('> 3/*');
		await type('\u0015/');
		await waitFor(titleOf('first-swing'));
	});

	it('/ goes back and * says why on a list too', async () => {
		const {type, waitFor} = show(at('gauge-unit'));
		await waitFor(titleOf('gauge-unit'));
		await type('*');
		await waitFor(broken(saidAt('gauge-unit', 'why')));
		await type('*');
		await type('/');
		await waitFor(titleOf('tools-name'));
	});

	it('Enter in the empty field of a reading starts the countdown, and takes what is typed', async () => {
		const {press, type, waitFor, frame, readings} = show(atProbe);
		await waitFor(words.faces.hints.settleFirst);
		await press('enter');
		await waitFor(counting);
		await type('+3');
		expect(frame()).not.toContain(counting);
		await press('enter');
		await waitFor(outerLimit);
		expect(readings()).toMatchObject([{innerLimit: {value: 3}}]);
	});

	it('Enter keeps a reading that is looked at again; Space starts the countdown there', async () => {
		const {press, type, waitFor} = show(say(atProbe, [text('3 out')]));
		await press('esc');
		await waitFor(words.faces.field.takes({text: '3 % out', mayBeEmpty: false}));
		await type(' ');
		await waitFor(counting);
		await press('enter');
		await waitFor(outerLimit);
	});
});

describe('The keys that work', () => {
	const look = {unicode: true, color: false, screenReader: false};
	const {hints, escapes} = words.faces;
	const lines = (back: string, why: string, width: number): number =>
		footRows([hints.settleFirst, hints.acceptReading, back, why, hints.steps, hints.leave], width, look).length;

	it.each([40, 60, 80, 84, 90, 100])(
		'are named with those of the number pad where that takes no line more: %d',
		(width) => {
			const view = viewOf(atProbe);
			const {foot} = layoutOf({view, width, height: 40, page: 0, isWhy: false, notice: '', look});
			const shown = flat(foot.map((row) => row.text).join(' '));
			const least = lines(escapes.back, hints.why, width);
			const hasRoom = lines(hints.backByPad, hints.whyByPad, width) === least;
			expect(shown.includes(hints.backByPad) && shown.includes(hints.whyByPad)).toBe(hasRoom);
			expect(shown.includes(escapes.back)).toBe(!hasRoom);
			expect(foot.filter((row) => row.text !== '')).toHaveLength(least);
		},
	);
});

describe('The side of a size', () => {
	it('accepts at once on a level too', async () => {
		const {type, waitFor, saved} = show(at('level-lr-1'));
		await waitFor(titleOf('level-lr-1'));
		await type('0.15\r');
		await waitFor(words.pages.view.side.title({title: titleOf('level-lr-1')}));
		await type('r');
		await waitFor(titleOf('level-lr-2'));
		await type('0.05l\r');
		await waitFor(titleOf('level-fb-1'));
		expect(saved().answers).toMatchObject({'level-lr-1': {value: 0.15}, 'level-lr-2': {value: -0.05}});
	});
});

describe('A list', () => {
	it('refuses a reading in a sentence, and takes no line by it', async () => {
		const {type, waitFor, saved} = show(at('gauge-unit'));
		await waitFor(titleOf('gauge-unit'));
		await type('2.5\r');
		await waitFor(broken(says.refusal({id: 'no-reading-here', values: {typed: '2.5'}})));
		expect(saved().answers['gauge-unit']).toBeUndefined();
		await type('1\r');
		await waitFor(titleOf('gauge-step'));
	});

	it('takes nothing by two Enters in haste, also where the first one was saved', async () => {
		const {type, waitFor, saved} = show(at('tools-name'));
		await waitFor(titleOf('tools-name'));
		await type('bench set\r\r');
		await waitFor(titleOf('gauge-unit'));
		expect(saved().answers['gauge-unit']).toBeUndefined();
		await type('1\r\r');
		await waitFor(titleOf('gauge-step'));
	});
});
