import {spawnSync} from 'node:child_process';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {manyWays, onceWays, radiiMm, restlessPct, settingUpPct} from '../../source/practice/proof.js';
import {bars} from '../../source/practice/shortfalls.js';
import {numbersIn, words} from '../helpers/said.js';

const said = words.practice.proof;

const program = path.resolve(import.meta.dirname, '../../dist/armdrift.cjs');

const practice = (...typed: string[]) => {
	const {status, stdout, stderr} = spawnSync(process.execPath, [program, 'practice', ...typed], {encoding: 'utf8'});
	return {status, stdout, stderr};
};

const linesWith = (text: string, start: RegExp): string[] => text.split('\n').filter((line) => start.test(line));

describe('armdrift practice --prove', () => {
	const proved = practice('--prove', '3', '--seed', '7');

	it('prints number, seed, a row for every way of probing and for every practice arm', () => {
		const {status, stdout, stderr} = proved;
		expect({status, stderr}).toEqual({status: 0, stderr: ''});
		expect(numbersIn(stdout, said.head({arms: 3, seed: 7, tookMs: 7_777_000, radiiMm}), 7777)).toHaveLength(1);
		// Each of three arms is probed in every third way, at two radii; two ways are those of the restless arms.
		const setting = Object.values(said.setting).join('|');
		const rows = linesWith(
			stdout,
			new RegExp(`^(?:${setting}) +[135] +(?:0\\.1|0\\.25|0\\.5|1) +0\\.(?:05|15|3|5) +2 +\\d+\\.\\d % `),
		);
		expect(rows).toHaveLength(manyWays.length + onceWays.length + 2);
		for (const {id, finding} of lessonArms) {
			const sentence = `${id} ${finding} ${said.lessonNamed({named: 7777, of: 4})}`;
			expect(numbersIn(stdout, sentence, 7777)).toHaveLength(1);
		}
		expect(
			[said.holds, said.fallsShort({shortfalls: [], enough: null})].some((end) => stdout.includes(end.trim())),
		).toBe(true);
	});

	it('heads every table, and says what it is', () => {
		const {stdout} = proved;
		const heads = [said.holdingHead, said.goodHead, said.lessonHead].map((cells) => cells.join('  '));
		const lines = stdout.split('\n').map((line) => line.split(/ {2,}/).join('  '));
		expect(lines.filter((line) => heads.includes(line))).toEqual([0, 0, 0, 1, 2].map((head) => heads[head]));
		expect(stdout).toContain(said.holding({holding: bars.holding, settingUpPct}));
		expect(stdout).toContain(said.oneRound);
		expect(stdout).toContain(said.restless({restlessPct}));
		expect(stdout).toContain(said.calledGood({wronglyGood: bars.wronglyGood}));
	});

	it('counts one probe for every way that each arm is probed in', () => {
		const lines = proved.stdout.split('\n');
		const counts = lines[lines.findIndex((line) => line.startsWith(`${said.goodHead[0]} `)) + 1]?.split(/ +/);
		expect(counts?.[0]).toBe(String(manyWays.length));
	});

	it('prints the same figures again for the same seed', () => {
		const [one, other] = [practice('--prove', '1', '--seed', '3'), practice('--prove', '1', '--seed', '3')];
		const figures = (text: string) => text.slice(text.indexOf('\n'));
		expect(figures(one.stdout)).toBe(figures(other.stdout));
	});

	it.each([['0'], ['-1'], ['1.5'], ['many'], ['']])('wants a whole number, not "%s"', (count) => {
		const {status, stdout, stderr} = practice(`--prove=${count}`);
		expect({status, stdout}).toEqual({status: 2, stdout: ''});
		expect(stderr).toBe(`${said.countWanted({mostArms: 100_000})}\n`);
	});

	it('wants a seed that the generator can tell from others', () => {
		expect(practice('--prove', '1', '--seed', '4294967296').status).toBe(2);
	});
});

describe('armdrift practice --arms', () => {
	it('lists the practice arms and gives nothing away', () => {
		const {status, stdout} = practice('--arms');
		expect(status).toBe(0);
		for (const {id} of lessonArms) {
			const {name, lesson} = words.practice.arms[id];
			expect(stdout).toMatch(new RegExp(`^${id} +${name}$`, 'm'));
			expect(stdout).not.toContain(lesson);
		}
	});
});
