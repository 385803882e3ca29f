import {describe, expect, it} from 'vitest';
import type {Lines} from '../../source/plain/ask.js';
import {converse} from '../../source/plain/converse.js';
import {titleOf} from '../../source/words/step-text.js';
import type {Workbench} from '../../source/workbench.js';
import {at, questionsIn} from '../helpers/conversation.js';
import {linesOf} from '../helpers/lines.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {type AtPractice, begun, goneOn} from '../helpers/practised.js';
import {gaugeSays, words} from '../helpers/said.js';
import {clockOf} from '../helpers/script.js';

const {faces} = words;

const toProbe = (arm = 'well-behaved') => begun({arm, seed: 1, isPrepared: true});
const whole = (arm: string, until: string) => goneOn(begun({arm, seed: 1, isPrepared: false}), {}, until);

/** A workbench in memory with an invented bench, which keeps its notes with every answer that is saved. */
function practising({bench, dialogue}: AtPractice): Workbench {
	const workbench = memoryWorkbench({}, clockOf(dialogue));
	return {
		...workbench,
		practice: bench,
		save: async (next) => {
			const state = bench.noted(next);
			const saved = await workbench.save({...next, check: {...next.check, practice: state.notes}});
			if (saved.ok) bench.saved(state);
			return saved;
		},
	};
}

const run = async (here: AtPractice, given: readonly string[], piped = true) => {
	const lines = linesOf(given, piped);
	const end = await converse(practising(here), here.dialogue, lines);
	return {
		end,
		said: lines.said,
		questions: questionsIn(lines.said),
		left: lines.left(),
	};
};

const {arms, bench, hands, looks, truth} = words.practice;
const gaugeLine = new RegExp(`^(?:[<>,.] )?${gaugeSays.source}$`);

describe('at the probe, a line of < > , .', () => {
	it('nudges the arm key by key, and tells each time what the gauge shows', async () => {
		const {said, questions} = await run(toProbe('sticky-bearing'), ['>>,.<']);
		const told = said.filter((one) => /^[<>,.] /.test(one));
		expect(told.map((one) => one.charAt(0))).toEqual(['>', '>', ',', '.', '<']);
		for (const one of told) expect(one).toMatch(gaugeLine);
		expect(questions).toHaveLength(1);
	});

	it('is counted as so many nudges, none of them in haste: each is looked at', async () => {
		const here = toProbe('sticky-bearing');
		await run(here, ['<<', ' ,, ', '<', '-0.5']);
		expect(here.bench.notes.readings).toMatchObject([{readingPct: -0.5, hurried: 0}]);
		expect(here.bench.notes.readings[0]?.nudges).toBe(5);
	});

	it('moves the arm the way it says: large ones farther than fine ones', async () => {
		const shown = async (keys: string) => {
			const {said} = await run(toProbe('sticky-bearing'), [keys]);
			return said.flatMap((one) => gaugeLine.exec(one)?.[1] ?? []).map(Number);
		};
		const moved = async (keys: string) => {
			const all = await shown(keys);
			return (all.at(-1) ?? 0) - (all[0] ?? 0);
		};
		const [out, fine, inward] = [await moved('>>'), await moved('..'), await moved('<<')];
		expect(out).toBeGreaterThan(fine);
		expect(fine).toBeGreaterThan(0);
		expect(inward).toBeLessThan(0);
	});

	it('is an ordinary answer, and refused as one, where no reading is asked for', async () => {
		const {end} = await run(whole('well-behaved', 'guard-gap'), ['>>']);
		const because = words.refusals['not-a-number']({typed: '>>', unit: 'mm'});
		const sentence = faces.plain.refused({number: 1, title: titleOf('guard-gap'), answer: '>>', because});
		expect(end).toMatchObject({kind: 'refused', sentence});
	});

	it('is no nudge where other letters stand in it', async () => {
		const here = toProbe();
		expect((await run(here, ['> out'])).end.kind).toBe('refused');
		expect(here.bench.state.probing.nudges).toBe(0);
	});

	it('is refused in a real check', async () => {
		const dialogue = at('probe-inner');
		const end = await converse(memoryWorkbench({}, clockOf(dialogue)), dialogue, linesOf(['<']));
		expect(end.kind).toBe('refused');
	});
});

describe('what the gauge shows', () => {
	it('is said with the question, and with how to nudge', async () => {
		const {said} = await run(toProbe(), []);
		expect(said.filter((one) => gaugeLine.test(one))).toHaveLength(1);
		expect(said).toContain(faces.nudge.lines);
	});

	it('is taken as a reading as it stands there', async () => {
		const here = toProbe('sticky-bearing');
		const said: string[] = [];
		const given = ['<<', 'as shown', '>>>>', 'as shown'];
		const shown = () => gaugeSays.exec(said.findLast((one) => gaugeSays.test(one)) ?? '')?.[1];
		const lines: Lines = {
			piped: true,
			say: (text) => said.push(text),
			read: async () => {
				const next = given.shift();
				return next === 'as shown' ? shown() : next;
			},
		};
		expect(await converse(practising(here), here.dialogue, lines)).toEqual({kind: 'input-ended'});
		expect(here.bench.notes.readings.map(({which}) => which)).toEqual(['innerLimit', 'outerLimit']);
		for (const {restMs} of here.bench.notes.readings) expect(restMs).toBeGreaterThanOrEqual(5000);
		expect(questionsIn(said)).toHaveLength(3);
	});
});

describe('the line !', () => {
	it('does what is offered, says so, and leaves the question as it stands', async () => {
		const here = whole('bias-left-on', 'bias-off');
		const {said, questions, end} = await run(here, ['!', 'y']);
		expect(said).toContain(hands['bias-off'].offer);
		const done = said.indexOf(hands['bias-off'].did());
		expect(done).toBeGreaterThan(0);
		expect(said[done + 1]).toContain(looks.bias.off);
		expect(here.bench.notes.deck.done).toEqual(['bias-off']);
		// The one at which it was done, and the next one.
		expect(questions).toHaveLength(2);
		expect(end.kind).toBe('input-ended');
	});

	it.each([
		['at the probe', () => toProbe()],
		['where the bias is off', () => whole('lever-badly-set', 'bias-off')],
		['at a text', () => whole('lever-badly-set', 'bias-setting')],
	])('is no answer where nothing is offered, and says so: %s', async (_where, start) => {
		const here = start();
		const {said, end, questions} = await run(here, ['!']);
		expect(said).toContain(faces.plain.nothingByHand);
		expect(end.kind).toBe('input-ended');
		expect(questions).toHaveLength(1);
		expect(here.bench.notes.deck.done).toEqual([]);
	});

	it('shows at the verdict what was hidden, and not before', async () => {
		const here = goneOn(toProbe('tilted-deck'), {}, 'verdict');
		const {said, questions} = await run(here, ['!']);
		const shown = said.findIndex((one) => one.startsWith(truth.hidden({arm: 'tilted-deck'})));
		expect(shown).toBeGreaterThan(said.indexOf(bench.reveal));
		expect(questions).toHaveLength(1);
		expect(here.bench.notes.isRevealed).toBe(true);
	});

	it.each(['1', ''])('leads from there to another arm by the first line, which is told: %j', async (given) => {
		const here = goneOn(toProbe('tilted-deck'), {}, 'verdict');
		const {said, end} = await run(here, ['!', given]);
		const {again} = words.beside.practice.filed;
		expect(said.slice(said.indexOf(bench.reveal))).toContain(faces.plain.option({number: 1, label: again}));
		expect(said).toContain(faces.plain.takes({text: again}));
		expect(end).toEqual({kind: 'home'});
	});

	it('keeps what the verdict offers, after that line', async () => {
		const {said, end} = await run(goneOn(toProbe('tilted-deck'), {}, 'verdict'), ['!', '2']);
		const before = said.filter((one) => one.startsWith(faces.plain.option({number: 1, label: ''})));
		expect(before[0]?.slice(faces.plain.option({number: 1, label: ''}).length)).toBeTruthy();
		const offered = before[0]?.slice(faces.plain.option({number: 1, label: ''}).length) ?? '';
		expect(said).toContain(faces.plain.option({number: 2, label: offered}));
		expect(end.kind).toBe('input-ended');
	});

	it('is needed before: an empty line at the verdict takes nothing', async () => {
		const {end} = await run(goneOn(toProbe('tilted-deck'), {}, 'verdict'), ['']);
		expect(end.kind).toBe('refused');
	});
});

it('every question of a practice check says that it is practice', async () => {
	const {questions} = await run(begun({arm: 'well-behaved', seed: 1, isPrepared: false}), [
		'y',
		'1',
		'3',
		'3',
		'0',
		'0',
	]);
	expect(questions.length).toBeGreaterThan(5);
	const arm = words.pages.view.arm({name: arms['well-behaved'].name, isPractice: true});
	expect(questions.filter((one) => !one.includes(arm))).toEqual([]);
});
