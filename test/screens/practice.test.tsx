import {afterEach, beforeEach, expect, it, vi} from 'vitest';
import {PracticeWorkbench} from '../../source/desk/practice-workbench.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {CheckScreen} from '../../source/screens/check-screen.js';
import {KeysProvider} from '../../source/screens/keys-context.js';
import {App} from '../../source/screens/show-app.js';
import {readyPracticeFolder} from '../../source/store/practice-folder.js';
import {type InkOptions, renderInk, turns} from '../helpers/ink.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {begun, goneOn} from '../helpers/practised.js';
import {freshFolder} from '../helpers/program-environment.js';
import {beginning, broken, withAnyNumbers, words} from '../helpers/said.js';

// Only the beats of the bench and of the countdown: Ink and React keep their own time.
beforeEach(() => {
	vi.useFakeTimers({toFake: ['setInterval', 'clearInterval']});
});
afterEach(() => {
	vi.useRealTimers();
});

const {gaugedArm} = words.faces;
const {arms, bench, hands, motion} = words.practice;
/** The gauge and the arm as the sentence under the picture tells them, whatever the figures. */
const told = (state: string, shown = '[+-]?[\\d.]+'): RegExp => {
	const sentence = gaugedArm.shows({readingPct: 7, stepPct: 1});
	const gauge = broken(sentence).source.replace('\\+7', `(?:${shown})`);
	return new RegExp(`${gauge} · ${withAnyNumbers(state).source}`);
};
/** The state of the arm as a voice hears it. */
const heard = (state: string): RegExp => {
	const whole = bench.gauge({readingPct: 7, stepPct: 1, isTurned: false, state});
	return broken(whole.slice(whole.indexOf('%') + 1));
};

/** A practice check that stands at its first hold limit, on the screen. */
async function atFirstLimit(options: InkOptions = {}) {
	const dataDir = readyPracticeFolder(freshFolder(), 'invented');
	const desk = new PracticeWorkbench({dataDir, version: '0.0.0', settings: usualSettings, seed: () => 7});
	const opened = await desk.begin('sticky-bearing', 'probe');
	if (!opened.ok) throw new Error(opened.sentence);
	const look = {unicode: true, color: false, screenReader: options.screenReader ?? false};
	const shown = renderInk(
		(feed) => <App workbench={desk} desk={desk} dialogue={opened.dialogue} keys={feed} look={look} />,
		options,
	);
	await turns(30);
	const passed = vi.spyOn(desk.practice, 'pass');
	return {
		...shown,
		desk,
		/** So many ms go by at the bench, as far as it is looked at. */
		async wait(ms: number) {
			passed.mockClear();
			vi.advanceTimersByTime(ms);
			await turns(30);
			return passed.mock.calls.reduce((sum, [one]) => sum + one, 0);
		},
	};
}

it('an arrow nudges the arm, and the gauge follows while time goes by', async () => {
	const {frame, press, wait} = await atFirstLimit();
	await wait(2000);
	expect(frame()).toMatch(told(motion.rests({ms: 3000}), '\\+?[\\d.]+'));
	await press('right');
	await wait(200);
	expect(frame()).toContain(motion.pushed({way: 'out'}));
	await wait(3000);
	expect(frame()).toMatch(told(motion.holds({ms: 3000}), '\\+(?:0\\.5|1\\.0|1\\.5)'));
});

it('time stands still at the bench while the question is not on the screen', async () => {
	const {type, wait} = await atFirstLimit();
	expect(await wait(1000)).toBe(1000);
	await type('?');
	expect(await wait(1000)).toBe(0);
	await type('?');
	expect(await wait(1000)).toBe(1000);
});

it('a nudge ends the settle countdown, for the arm has to settle anew', async () => {
	const {frame, press, type, wait} = await atFirstLimit();
	await wait(1000);
	await type(' ');
	expect(frame()).toContain(beginning(words.faces.keepStillBar({bar: '', seconds: 5})).trim());
	await press('right');
	await wait(8000);
	expect(frame()).not.toContain(words.faces.settled);
});

it('a comma and a point nudge only while nothing is typed; then they belong to the number', async () => {
	const {frame, type, wait} = await atFirstLimit();
	await wait(1000);
	await type('-3');
	await type('.');
	await type('5');
	expect(frame()).toContain('> -3.5');
	await wait(1000);
	for (const way of ['in', 'out'] as const) expect(frame()).not.toContain(motion.pushed({way}));
});

it('a voice hears when the arm has come to rest and when it has settled, and not each trembling of the gauge', async () => {
	const {frame, press, wait} = await atFirstLimit({screenReader: true});
	await wait(1000);
	await wait(4500);
	expect(frame()).toMatch(heard(motion.rests({ms: 5000})));
	await wait(3000);
	// Nothing new: it is not said again.
	expect(frame()).toMatch(heard(motion.rests({ms: 5000})));
	await press('right');
	await wait(500);
	expect(frame()).toMatch(heard(motion.holds({ms: 0})));
	await wait(5000);
	const [five, six] = [5000, 6000].map((ms) => heard(motion.holds({ms})));
	expect([five, six].some((one) => one?.test(frame()))).toBe(true);
});

it('what is done by hand is shown at once, and nothing is done where nothing is offered', async () => {
	const {desk, frame, type} = await atFirstLimit();
	const before = frame();
	await type('!');
	expect(desk.practice.notes.deck.done).toEqual([]);
	for (const {did} of Object.values(hands))
		for (const wasLevel of [true, false]) expect(frame()).not.toMatch(broken(did({wasLevel})));
	// Its name may be cut, where the place in the check needs the room.
	const [name] = words.pages.view.arm({name: arms['sticky-bearing'].name, isPractice: true}).split(' with ');
	expect(before).toContain(name);
});

it('once the truth is shown at the verdict, Enter leads to another arm, and before that it does not', async () => {
	const start = goneOn(begun({arm: 'well-behaved', seed: 1, isPrepared: true, roundsEach: 1}), {}, 'verdict');
	const workbench = {...memoryWorkbench({}, start.now), practice: start.bench};
	const onHome = vi.fn();
	const {frame, press, type, waitFor} = renderInk((feed) => (
		<KeysProvider value={feed}>
			<CheckScreen workbench={workbench} initial={start.dialogue} onHome={onHome} onFinished={() => {}} />
		</KeysProvider>
	));
	const {again} = words.beside.practice.filed;
	await waitFor(broken(bench.reveal));
	expect(frame()).not.toContain(again);
	await type('!');
	await waitFor(broken(`❯ 1 ${again}`));
	expect(onHome).not.toHaveBeenCalled();
	await press('enter');
	expect(onHome).toHaveBeenCalledOnce();
});

it('what is offered is done by hand also while a number stands in the field', async () => {
	const start = goneOn(begun({arm: 'tilted-deck', seed: 1, isPrepared: false}), {}, 'level-lr-1');
	const workbench = {...memoryWorkbench({}, start.now), practice: start.bench};
	const {frame, type, waitFor} = renderInk((feed) => (
		<KeysProvider value={feed}>
			<CheckScreen workbench={workbench} initial={start.dialogue} onHome={() => {}} onFinished={() => {}} />
		</KeysProvider>
	));
	await waitFor(broken(hands.levelled.offer));
	await type('0.3');
	await type('!');
	await waitFor(broken(hands.levelled.did({wasLevel: false})));
	expect(frame()).toContain('> 0.3');
	expect(start.bench.notes.deck.done).toEqual(['levelled']);
});
