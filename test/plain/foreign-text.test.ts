import {spawnSync} from 'node:child_process';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {deckAsFound} from '../../source/procedure/deck.js';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {broken, says, titleOf, words} from '../helpers/said.js';

const program = path.resolve(import.meta.dirname, '../../dist/armdrift.cjs');

/** The built program in plain lines, with answers from a pipe. */
function runPlain(args: readonly string[], input: string, dataDir = freshFolder()) {
	const {stdout, stderr, status} = spawnSync(process.execPath, [program, '--plain', '--data', dataDir, ...args], {
		input,
		encoding: 'utf8',
		env: cleanEnvironment(dataDir),
		timeout: 20_000,
	});
	return {stdout, stderr, status};
}

// Everything that steers a terminal but the new line: C0, DEL and C1 controls, and direction changes.
const steering = /[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/;

describe('A name that steers a terminal', () => {
	it('is no name of an arm, and is not repeated', () => {
		const {stdout, stderr, status} = runPlain(['--arm', 'north\u001B[2J\u001B]0;x\u0007deck'], '');
		expect(stdout + stderr).not.toMatch(steering);
		expect(stderr).toMatch(/^--arm: .*\n$/);
		expect(status).toBe(2);
	});

	it('or turns the direction of writing never reaches the output as it is, nor does an answer that was not taken', () => {
		const {stdout, stderr, status} = runPlain(['--arm', 'north\u202Edeck'], 'y\u001B[31m\n');
		expect(stdout + stderr).not.toMatch(steering);
		expect(stdout).toContain('north');
		expect(status).toBe(2);
	});
});

describe('Answers from a pipe', () => {
	const {parting} = words.commands;
	const {plain} = words.faces;
	const saved = (step: string) => parting.saved({arm: 'north deck', step: titleOf(step)});

	it('that end early leave the check open and saved: status 3', () => {
		const {status, stdout} = runPlain(['--arm', 'north deck'], '233\n215.4\n');
		expect(status).toBe(3);
		const {notReady, goOn} = {
			notReady: parting.goOnWithDeck({isReady: false, goOn: ''}),
			goOn: parting.goOn({goOn: ''}),
		};
		expect(stdout).toMatch(
			broken(`${saved('playing-force')} ${words.pages.deck.told(deckAsFound)} ${notReady.replace(goOn, '')}`),
		);
	});

	it('go on where they ended', () => {
		const dataDir = freshFolder();
		runPlain(['--arm', 'north deck'], '233\n215.4\n', dataDir);
		const {stdout} = runPlain(['--arm', 'north deck'], '2.1 g\n1\n', dataDir);
		expect(stdout).toMatch(broken(titleOf('arm-loading')));
		expect(stdout).toMatch(broken(saved('arm-bias-device')));
	});

	it('that are not taken stop the run with status 2 and one line', () => {
		const {status, stderr} = runPlain(['--arm', 'north deck'], '233\nperhaps\n2.1 g\n');
		expect(status).toBe(2);
		const because = says.refusal({id: 'not-a-number', values: {typed: 'perhaps', unit: 'mm'}});
		expect(stderr).toBe(
			`${plain.refused({number: 2, title: titleOf('arm-pivot-distance'), answer: 'perhaps', because})}\n`,
		);
	});
});
