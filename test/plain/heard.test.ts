import {readdirSync, readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {describe, expect, it} from 'vitest';
import {besidePages} from '../../source/pages/beside/beside-pages.js';
import {justFiled} from '../../source/pages/record-lines.js';
import {viewOf} from '../../source/pages/view.js';
import {plainTexts} from '../../source/plain/ask.js';
import {converse} from '../../source/plain/converse.js';
import {plainRoom, walkPages} from '../../source/plain/walk-pages.js';
import {at, linesFor, questionsIn, run} from '../helpers/conversation.js';
import {linesOf} from '../helpers/lines.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {says, tickText, titleOf, words} from '../helpers/said.js';
import {biasAnswers, northDeck, northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue, lineOf} from '../helpers/script.js';

const {plain} = words.faces;
const folder = fileURLToPath(new URL('../../fixtures/answers/', import.meta.url));

/** All that is said from the first page to the filed check. */
async function wholeRun(answers: readonly string[]): Promise<readonly string[]> {
	const workbench = memoryWorkbench();
	const lines = linesOf(answers);
	const opened = await walkPages(besidePages(workbench, plainRoom), lines);
	if (opened.kind !== 'opened' || !opened.opened.ok) throw new Error('no check was begun');
	const end = await converse(workbench, opened.opened.dialogue, lines);
	if (end.kind !== 'finished') throw new Error(`ended as ${JSON.stringify(end)}`);
	return [...lines.said, ...plainTexts(justFiled(end.record))];
}

/** What is said with each question. */
const byQuestion = (said: readonly string[]): readonly (readonly string[])[] =>
	said.reduce<string[][]>(
		(all, line) => {
			if (questionsIn([line]).length > 0) all.push([line]);
			else all.at(-1)?.push(line);
			return all;
		},
		[[]],
	);

/** Figures with their uncertainty, in the order in which they are heard. */
const figuresIn = (said: readonly string[]): readonly string[] =>
	said.join('\n').match(/\d[\d.]* %(?: out| in)? ± [\d.]+ %/g) ?? [];

describe.each(readdirSync(folder))('The answers of %s', (name) => {
	const answers = readFileSync(folder + name, 'utf8')
		.trimEnd()
		.split('\n');

	it('make a whole check of fewer than 3000 words', async () => {
		const said = (await wholeRun(answers)).join('\n').split(/\s+/);
		expect(said.length).toBeGreaterThan(1000);
		expect(said.length).toBeLessThan(3000);
	});

	it('are asked for without a figure that is said twice on a question', async () => {
		for (const asked of byQuestion(await wholeRun(answers))) {
			const figures = figuresIn(asked);
			expect(figures.filter((one, index) => figures.indexOf(one) !== index)).toEqual([]);
		}
	});
});

describe('What a listener has heard', () => {
	it('the pull and the band of a round are told when it is taken, and not while the next one is', async () => {
		const asked = byQuestion((await run(linesFor(northDeck))).said);
		const rounds = asked.filter(([head = '']) => head.includes(titleOf('probe-inner')));
		// Three rounds of two limits, and what they come to.
		expect(rounds.map((one) => figuresIn(one).length)).toEqual([0, 0, 2, 0, 2, 0, 2]);
		const {innerHeard} = words.pages.rounds;
		for (const [index, typed] of [
			[1, '3 % out'],
			[5, '+3 %'],
		] as const)
			expect(rounds[index]).toContain(innerHeard({innerLimit: typed}));
	});

	it('neither side of a reading nor an answer that is not taken has it all told again', async () => {
		const given = ['3 out', '8.5 out', '2', 'seven', 'm'];
		const {said, end} = await run(given, {from: at('probe-inner'), piped: false});
		expect(end.kind).toBe('input-ended');
		const after = byQuestion(said).slice(-3);
		expect(after.map(figuresIn)).toEqual([[], [], []]);
	});

	it('no figure is said twice where the bias is set too', async () => {
		const script = northDeckWith(biasAnswers);
		const from = follow(freshDialogue(), script, {until: 'bias-weight'});
		const given: string[] = [];
		follow(from, script, {seen: (here, entry) => given.push(lineOf(viewOf(here).prompt, entry))});
		const {said, end} = await run(given, {from});
		expect(end.kind).toBe('finished');
		const twice = byQuestion(said).flatMap((asked) => {
			const figures = figuresIn(asked);
			return figures.filter((one, index) => figures.indexOf(one) !== index);
		});
		expect(twice).toEqual([]);
	});

	it('a caution is told once in its stage, and by /again with everything beside the question', async () => {
		const heard = async (given: readonly string[]) => (await run(given, {from: at('guard-gap'), piped: false})).said;
		const caution = words.steps['guard-gap'].caution;
		const told = (said: readonly string[]) => said.filter((line) => line === caution).length;
		expect(told(await heard(['about five', '/why']))).toBe(1);
		expect(told(await heard(['about five', '/again']))).toBe(2);
	});

	it('a number that passes is followed by what it came to', async () => {
		const {said} = await run(linesFor(northDeck));
		const fine = said.indexOf(words.pages.level.fine);
		const asked = said.findIndex((line) => line.includes(titleOf('level-fb-2')));
		expect(fine).toBeGreaterThan(asked);
		expect(questionsIn(said.slice(asked + 1, fine))).toEqual([]);
	});
});

describe('A list that is ticked', () => {
	const lines = ['amplifier', 'mains', 'record', 'platter', 'lock'] as const;
	const told = (line: (typeof lines)[number], number: number) => plain.option({number, label: tickText('safe', line)});
	const marks = async (given: readonly string[], from = at('safe')) =>
		(await run(given, {from})).memory.draft?.answers.safe?.value;

	it('is one question that names its lines by number; y ticks them all, and the record is that of the keys', async () => {
		const {said} = await run([], {from: at('safe')});
		expect(questionsIn(said)).toHaveLength(1);
		for (const [index, line] of lines.entries()) expect(said).toContain(told(line, index + 1));
		expect(said).toContain(plain.marks);
		expect(await marks(['y'])).toEqual(at('guard-mass').check.answers.safe?.value);
		expect(await marks(['y'], {...at('safe'), isBrisk: true})).toEqual(at('guard-mass').check.answers.safe?.value);
	});

	it.each(['2 4', '2, 4', '4 2'])('asks again what is not so, by %j, and only that', async (typed) => {
		const {said} = await run([typed], {from: at('safe')});
		const again = said.slice(said.lastIndexOf(told('amplifier', 1)) + lines.length);
		expect(again).toContain(told('mains', 1));
		expect(again).toContain(told('platter', 2));
		expect(again.join('\n')).not.toContain(tickText('safe', 'record'));
		expect([...((await marks([typed, 'y'])) as string[])].toSorted()).toEqual(
			lines.map((line) => `${line}=yes`).toSorted(),
		);
	});

	it('asks its last open line by y or n; n leads to the ways out, with what is not so', async () => {
		const {said} = await run(['2', 'n'], {from: at('safe')});
		expect(said).toContain(plain.yesNo({question: tickText('safe', 'mains')}));
		const problem = says.problem({id: 'lines-left', values: {list: 'safe', lines: ['mains']}});
		expect(said).toContain(problem);
	});

	it('leads to the ways out where no line is so', async () => {
		const {said} = await run(['1 2 3 4 5'], {from: at('safe')});
		const problem = says.problem({id: 'lines-left', values: {list: 'safe', lines}});
		expect(said).toContain(problem);
	});

	it('is told whole where it is looked at again', async () => {
		const {said} = await run(['/back'], {from: at('guard-mass'), piped: false});
		const again = said.slice(said.indexOf(questionsIn(said)[1] ?? ''));
		for (const line of lines) expect(again.join('\n')).toContain(tickText('safe', line));
		expect(again).toContain(plain.yesNo({question: says.question({id: 'all-still-so', values: {}})}));
	});
});
