import {describe, expect, it} from 'vitest';
import type {Check} from '../../source/check/check.js';
import {positionOf} from '../../source/check/dialogue.js';
import {progressOf} from '../../source/check/progress.js';
import {openSeries} from '../../source/check/series.js';
import {plainCommands} from '../../source/plain/ask.js';
import {isMeasured} from '../../source/results/figures.js';
import {says} from '../../source/words/says.js';
import {mistakeOf, titleOf, whyOf} from '../../source/words/step-text.js';
import {at, linesFor, questionsIn, run} from '../helpers/conversation.js';
import {broken, wholly, words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const {plain} = words.faces;
const {wanted} = plain;
const {verdict, view} = words.pages;
const {refusals} = words;
const notANumber = refusals['not-a-number']({typed: 'about five', unit: 'mm'});

/** A check without its id and times. */
const timeless = (check: Check): unknown =>
	JSON.parse(
		JSON.stringify({...check, id: ''}, (key, value) =>
			['at', 'startedAt', 'openedAt', 'confirmedAt', 'touchedAt'].includes(key) ? undefined : value,
		),
	);

describe('A whole check from a pipe', () => {
	it('comes to its end, filed', async () => {
		const {end, left, memory} = await run(linesFor(northDeck));
		expect(end).toMatchObject({kind: 'finished', record: {outcome: 'complete'}});
		expect(left).toBe(0);
		expect(memory.draft).toBeUndefined();
	});

	it('is the check that the keys of the full screen make', async () => {
		const {memory} = await run(linesFor(northDeck));
		const keyed = follow(freshDialogue(), northDeck).check;
		const [record] = memory.records;
		expect(record && timeless(record.check)).toEqual(timeless(keyed));
	});

	it('numbers its questions one after the other and names arm, stage, state of the deck and unit', async () => {
		const {said} = await run(linesFor(northDeck));
		const questions = questionsIn(said);
		expect(questions.map((line) => Number(/\d+/.exec(line)?.[0]))).toEqual(questions.map((_, index) => index + 1));
		const title = titleOf('guard-gap');
		const stage = view.stage({title: words.stages.clearance, number: 1, of: 1});
		const asked = plain.question({number: 1, arm: '', stage, progress: view.notReadyToPlay, title});
		expect(questions.find((line) => line.includes(`${title}.`))).toMatch(wholly(asked));
		expect(said).toContain(plain.unit({unit: 'mm'}));
	});

	it('names the arm once it has its name, a stage where it begins, and neither again', async () => {
		const {said} = await run(linesFor(northDeck));
		const questions = questionsIn(said);
		expect(questions.filter((line) => line.includes('north deck'))).toHaveLength(1);
		for (const title of [words.stages.probe, words.stages.back])
			expect(
				questions.filter((line) => line.includes(view.stage({title, number: 1, of: 1}).split('(')[0] ?? '')),
			).toHaveLength(1);
	});

	it('says the verdict and pictures in words', async () => {
		const {said, memory} = await run(linesFor(northDeck));
		const headline = verdict.headline({verdict: 'beyond', atWorst: 'beyond'});
		expect(said).toContainEqual(expect.stringContaining(headline));
		const inner = memory.records[0]?.issued?.figures.probe.find(({place}) => place === 'inner');
		const {radius, judgedPull, judgedBand, row} = verdict.radii;
		const pictured =
			inner && isMeasured(inner)
				? row({name: radius(inner), pull: judgedPull(inner), band: judgedBand(inner)})
				: 'nothing was measured';
		expect(said).toContainEqual(expect.stringContaining(pictured));
		expect(said.join('\n')).not.toMatch(/[├┤─●│]/);
	});

	it('says the commands before the first question', async () => {
		const {said} = await run([]);
		expect(said[0]).toBe(plain.commands({commands: '/back, /again, /why, /steps, /stop, /leave'}));
	});

	it('asks the side of a reading, then takes an empty line for it', async () => {
		const {end, memory} = await run(['0.1', 'l', ''], {from: at('level-lr-1')});
		expect(end.kind).toBe('input-ended');
		expect(memory.draft?.answers['level-lr-1']?.value).toBe(-0.1);
	});
});

describe('An answer of a pipe that is not taken', () => {
	it('ends the run with the question, the answer, and what is wanted; earlier ones are saved', async () => {
		const lines = linesFor(northDeck, 'guard-gap');
		const {end, said, left, memory} = await run([...lines, 'about five', '5.5']);
		const number = questionsIn(said).length;
		expect(end).toEqual({
			kind: 'refused',
			sentence: plain.refused({number, title: titleOf('guard-gap'), answer: 'about five', because: notANumber}),
		});
		expect(left).toBe(1);
		expect(memory.draft?.answers['force-reading']?.value).toBe(21);
		expect(memory.draft?.answers['guard-gap']).toBeUndefined();
	});

	it.each([
		['gauge-unit', '7', wanted.number({last: 3})],
		['safe', 'perhaps', wanted.marks],
		['safe', '6', wanted.marks],
		['bias-off', 'perhaps', wanted.yesNo],
		['arm-length', '/bak', plain.noCommand({typed: '/bak', commands: plainCommands})],
		['arm-length', '', refusals['no-number-typed']({unit: 'mm'})],
	])('at %s, %s, says what is wanted', async (until, line, sentence) => {
		const {end} = await run([line], {from: at(until)});
		expect(end).toEqual({
			kind: 'refused',
			sentence: expect.stringMatching(new RegExp(`: ${broken(sentence).source}$`)),
		});
	});
});

describe('Someone at the keyboard', () => {
	const typing = {piped: false};

	it('hears what is wanted and is asked again', async () => {
		const {said, memory} = await run(['about five', '5.5'], {...typing, from: at('guard-gap')});
		expect(said).toContain(notANumber);
		expect(questionsIn(said)).toHaveLength(3);
		expect(memory.draft?.answers['guard-gap']?.value).toBe(5.5);
	});

	it('types the reading anew after a side that cannot be', async () => {
		const {memory} = await run(['3 out', '2', 'o', '8.5 out'], {...typing, from: at('probe-inner')});
		expect(memory.draft?.series[0]?.inner[0]?.outerLimit?.value).toBe(8.5);
	});

	it('may ask why', async () => {
		const {said} = await run(['/why', '?'], {...typing, from: at('guard-gap')});
		const {current, facts} = progressOf(at('guard-gap').check, []);
		if (!current) throw new Error('nothing is asked');
		const why = words.faces.why({why: whyOf(current, facts), mistake: mistakeOf(current, facts)});
		expect(said.filter((line) => line === why)).toHaveLength(2);
	});

	it('may go back and keep the earlier answer with an empty line', async () => {
		const {said, memory} = await run(['4.2', '/back', ''], {...typing, from: at('guard-gap')});
		expect(said).toContain(plain.keeps({text: '4.2 mm'}));
		expect(memory.draft?.answers['guard-gap']?.typed).toBe('4.2 mm');
	});

	it('may go back to home from the first question', async () => {
		expect((await run(['/back'], typing)).end).toEqual({kind: 'home'});
	});

	it('may look through the steps', async () => {
		const {said} = await run(['/steps', '/back'], {...typing, from: at('guard-gap')});
		const label = says.label({id: 'stage', values: {stage: 'level', state: 'done'}});
		const level = plain.option({number: 1, label});
		expect(said).toContainEqual(expect.stringMatching(wholly(level)));
	});

	it('may stop, with a y', async () => {
		const {memory, said} = await run(['/stop', 'n', '/stop', 'y', 'y'], {...typing, from: at('guard-gap')});
		expect(memory.draft?.stopped).toBeDefined();
		expect(said).toContainEqual(expect.stringMatching(new RegExp(`${titleOf('back-lock')}\\.$`)));
	});

	it('may leave at any question', async () => {
		expect((await run(['/leave'], {...typing, from: at('verdict')})).end).toEqual({kind: 'left'});
	});
});

describe('The end of the input', () => {
	it('ends the run with all answers saved', async () => {
		const {end, memory} = await run(linesFor(northDeck, 'verdict'));
		expect(end).toEqual({kind: 'input-ended'});
		expect(memory.draft?.answers['probe-closing']).toBeDefined();
	});
});

describe('A guard that was left out', () => {
	it('is settled line by line as well', async () => {
		const script = northDeckWith({weighed: 'without', 'guard-account': 'again'});
		const {end} = await run(linesFor(script), {from: follow(freshDialogue(), script, {until: 'arm-name'})});
		expect(end).toMatchObject({kind: 'finished', record: {check: {answers: {weighed: {value: 'with'}}}}});
	});
});

describe('The number pad in plain lines', () => {
	it('goes back by / and says why by *', async () => {
		const {said, end} = await run(['*', '/'], {from: at('probe-inner')});
		const {progress, step} = positionOf(at('probe-inner'));
		const why = step && whyOf(step, progress.facts);
		expect(said.some((line) => why !== undefined && line.includes(why))).toBe(true);
		const back = questionsIn(said).at(-1);
		expect(back).toContain(titleOf('first-swing'));
		expect(end.kind).toBe('input-ended');
	});

	it('takes a size, and its side by one key', async () => {
		const {memory} = await run(['3', '+', '8.5+', '2.5-', '-8'], {from: at('probe-inner')});
		expect(memory.draft && openSeries(memory.draft).inner).toMatchObject([
			{innerLimit: {value: 3}, outerLimit: {value: 8.5}},
			{innerLimit: {value: -2.5}, outerLimit: {value: -8}},
		]);
	});

	it('ends a pipe that has a reading where a list is asked', async () => {
		const {end, memory} = await run(['2.5'], {from: at('gauge-unit')});
		expect(end).toMatchObject({kind: 'refused'});
		expect(memory.draft).toBeUndefined();
	});
});
