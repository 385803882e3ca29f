import {afterEach, beforeEach, expect, it, vi} from 'vitest';
import {PracticeWorkbench} from '../../source/desk/practice-workbench.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {App} from '../../source/screens/show-app.js';
import {readyPracticeFolder} from '../../source/store/practice-folder.js';
import {type InkOptions, renderInk, turns} from '../helpers/ink.js';
import {freshFolder} from '../helpers/program-environment.js';

// Only the beats of the bench and of the countdown: Ink and React keep their own time.
beforeEach(() => {
	vi.useFakeTimers({toFake: ['setInterval', 'clearInterval']});
});
afterEach(() => {
	vi.useRealTimers();
});

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
	expect(frame()).toMatch(/the gauge shows \+?[\d.]+ % · still for \d s/);
	await press('right');
	await wait(200);
	expect(frame()).toContain('your finger pushes it outward');
	await wait(3000);
	expect(frame()).toMatch(/the gauge shows \+(0\.5|1\.0|1\.5) % · it holds, still for \d s/);
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
	expect(frame()).toMatch(/settl/i);
	await press('right');
	await wait(8000);
	expect(frame()).not.toContain('read the gauge now');
});

it('a comma and a point nudge only while nothing is typed; then they belong to the number', async () => {
	const {frame, type, wait} = await atFirstLimit();
	await wait(1000);
	await type('-3');
	await type('.');
	await type('5');
	expect(frame()).toContain('> -3.5');
	await wait(1000);
	expect(frame()).not.toContain('pushes');
});

it('a voice hears when the arm has come to rest and when it has settled, and not each trembling of the gauge', async () => {
	const {frame, press, wait} = await atFirstLimit({screenReader: true});
	await wait(1000);
	await wait(4500);
	expect(frame()).toMatch(/the arm: still for 5 s/);
	await wait(3000);
	// Nothing new: it is not said again.
	expect(frame()).toMatch(/the arm: still for 5 s/);
	await press('right');
	await wait(500);
	expect(frame()).toContain('the arm: it holds, still for 0 s');
	await wait(5000);
	expect(frame()).toMatch(/the arm: it holds, still for [56] s/);
});

it('what is done by hand is shown at once, and nothing is done where nothing is offered', async () => {
	const {desk, frame, type} = await atFirstLimit();
	const before = frame();
	await type('!');
	expect(desk.practice.notes.deck.done).toEqual([]);
	expect(frame()).not.toContain('You ');
	expect(before).toContain('PRACTICE: An arm with a sticky bearing');
});
