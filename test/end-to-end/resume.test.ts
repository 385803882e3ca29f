import {expect, onTestFinished, test} from 'vitest';
import {prepare, probe, resume, roundAnew, springy, start, swing} from '../helpers/check-turns.js';
import {playPlain} from '../helpers/plain-run.js';
import {earlier, freshFolder} from '../helpers/program-environment.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {flat, numbersIn, says, titleOf, words} from '../helpers/said.js';
import {answer, limitAsked, option, type Turn, typed, waitForTurn, walk} from '../helpers/walk.js';

const begin = (dataDir: string): RunningProgram => {
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	return program;
};

const [firstRound = ['', ''], secondRound = ['', '']] = springy.outer;
const innerLimit = (text: string): Turn => typed('probe-outer', text, limitAsked('inner'));
const outerLimit = (text: string): Turn => typed('probe-outer', text, limitAsked('outer'));
/** The round that was left, from its inner limit. */
const anew = typed('probe-outer', '', limitAsked('inner'), roundAnew);
const answerOf = (step: string, typed: string): string =>
	words.pages.consequences.answer({title: titleOf(step), typed});
const unfinished = words.beside.home.unfinished({
	arm: 'north deck',
	minutesAgo: 40,
	step: titleOf('probe-outer'),
	isReady: false,
});
/** A check left so many minutes ago in the second round of the second probe, its inner limit read. */
function leftInSecondProbe(minutes: number): string {
	const dataDir = freshFolder();
	const turns = [
		start,
		...prepare,
		...probe('inner', springy.inner),
		...firstRound.map((one, index) => (index === 0 ? innerLimit(one) : outerLimit(one))),
		innerLimit(secondRound[0]),
	];
	expect(playPlain(dataDir, turns, earlier(minutes)).status).toBe(3);
	return dataDir;
}

const conditions = (keys: string): Turn => answer('still-conditions', keys, words.faces.allStill);

test('Taken up again within half an hour, its round begins anew, and nothing is asked again', async () => {
	const program = begin(leftInSecondProbe(20));
	await walk(program, [resume]);
	await waitForTurn(program, anew);
});

test('After half an hour one screen asks whether all is still so, and after y the round begins anew', async () => {
	const program = begin(leftInSecondProbe(40));
	await program.waitFor(unfinished);
	await walk(program, [resume]);
	const asked = flat(await waitForTurn(program, conditions('y')));
	for (const item of ['guard', 'bias-off', 'wires', 'height'] as const) expect(asked).toContain(words.inDoubt[item]);
	expect(asked).toContain(answerOf('guard-on', words.options['guard-on'].on));
	expect(asked).toContain(answerOf('guard-gap', '4.3 mm'));
	expect(asked).not.toMatch(new RegExp(`${words.inDoubt.level}|${words.inDoubt.force}:`, 'i'));
	program.type('y');
	await waitForTurn(program, anew);
});

test('What is no longer so is asked anew and opens a new series', async () => {
	const program = begin(leftInSecondProbe(40));
	await walk(program, [resume]);
	const asked = flat(await waitForTurn(program, conditions('')));
	const [number] = numbersIn(asked, words.faces.noLonger({number: 7, item: words.inDoubt.height}), 7);
	program.type(`${number}\r`);
	// The rest of what may have changed first, then the height, then the probe from its beginning.
	await walk(program, [conditions('y'), typed('guard-gap', '4.2'), ...swing]);
	await waitForTurn(program, typed('probe-inner', '', limitAsked('inner')));
});

test('After twelve hours level and tracking force are asked too, each with the earlier answer, and a new series begins', async () => {
	const program = begin(leftInSecondProbe(13 * 60));
	await walk(program, [resume]);
	for (const [step, shown] of [
		['still-conditions', answerOf('guard-gap', '4.3 mm')],
		['still-level', '0.15° right'],
		['still-force', answerOf('force-reading', '2.15 g')],
	] as const)
		await walk(program, [answer(step, 'y', shown)]);
	await waitForTurn(program, answer('first-swing', 'y'));
});

test('Killed in the middle of the second probe, it stands at that round again after the questions of the day', async () => {
	const dataDir = leftInSecondProbe(40);
	const killed = begin(dataDir);
	await walk(killed, [resume, conditions('y'), {...anew, keys: `${secondRound[0]}\r`}, outerLimit(secondRound[1])]);
	await waitForTurn(killed, innerLimit(''));
	killed.type('2.5 o');
	await killed.waitFor('2.5 o');
	await killed.stop();
	const again = begin(dataDir);
	await walk(again, [resume]);
	// Just confirmed: not asked a second time. What was only typed is not there.
	const screen = await waitForTurn(again, innerLimit(''));
	expect(screen).toMatch(/^2 .*├─*●─*┤/m);
	expect(screen).toMatch(/^> +%$/m);
	await walk(again, [
		innerLimit('2 out'),
		outerLimit('5.5 out'),
		answer('probe-outer', '3', option(3, says.label({id: 'strike', values: {}}))),
	]);
	const listed = await again.waitFor(words.pages.view.asks.strike);
	for (const round of ['1.5 % out / 5.5 % out', '1.5 % out / 5 % out', '2 % out / 5.5 % out'])
		expect(flat(listed)).toContain(round);
});
