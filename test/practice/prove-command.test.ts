import {spawnSync} from 'node:child_process';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {onceWays, radiiMm, ways} from '../../source/practice/proof.js';

const program = path.resolve(import.meta.dirname, '../../dist/armdrift.cjs');

const practice = (...words: string[]) => {
	const {status, stdout, stderr} = spawnSync(process.execPath, [program, 'practice', ...words], {encoding: 'utf8'});
	return {status, stdout, stderr};
};

const linesWith = (text: string, start: RegExp): string[] => text.split('\n').filter((line) => start.test(line));

describe('armdrift practice --prove', () => {
	const proved = practice('--prove', '3', '--seed', '7');

	it('prints number, seed, a row for every way of probing and for every practice arm', () => {
		const {status, stdout, stderr} = proved;
		expect({status, stderr}).toEqual({status: 0, stderr: ''});
		expect(stdout).toMatch(/^3 invented arms, seed 7, \d+ s\./);
		expect(stdout).toContain(`at ${radiiMm.inner} and ${radiiMm.outer} mm`);
		// Each of three arms is probed in every third way, at two radii; two ways are those of the restless arms.
		const rows = linesWith(stdout, /^(?:anew|once) +[135] +(?:0\.1|0\.25|0\.5|1) +0\.(?:05|15|3|5) +2 +\d+\.\d % /);
		expect(rows).toHaveLength(ways.length + onceWays.length + 2);
		for (const {id, finding} of lessonArms) expect(stdout).toMatch(new RegExp(`^${id} +${finding} +\\d of 4$`, 'm'));
		expect(stdout).toMatch(/^The proof (?:holds\.|falls short:)$/m);
	});

	it('heads every table, and says what it is', () => {
		const {stdout} = proved;
		const heads = linesWith(stdout, /^(?:set|probes|arm) /).map((head) => head.split(/ {2,}/));
		const holding = ['set', 'rounds', 'step', 'scatter', 'n'].concat(
			['pull', 'band'].flatMap((figure) => [figure, 'chance', '±', 'error']),
		);
		expect(heads).toEqual([
			holding,
			holding,
			holding,
			['probes', 'not good', 'called good', 'beyond', 'called good', 'off scale'],
			['arm', 'finding', 'named'],
		]);
		const said = stdout.replaceAll(/\s+/g, ' ');
		expect(said).toContain("'scatter' is the standard deviation of one limit; setting up moves the pull by 0.3 %");
		expect(said).toContain("so the figures say 'assumed' and promise nothing (no bar):");
		expect(said).toContain('the side force wanders by 0.2 % meanwhile');
		expect(said).toContain('wanted: less than 1 % of those beyond the usable limits');
	});

	it('counts one probe for every way that each arm is probed in', () => {
		const lines = proved.stdout.split('\n');
		const counts = lines[lines.findIndex((line) => line.startsWith('probes ')) + 1]?.split(/ +/);
		expect(counts?.[0]).toBe(String(ways.length));
	});

	it('prints the same figures again for the same seed', () => {
		const [one, other] = [practice('--prove', '1', '--seed', '3'), practice('--prove', '1', '--seed', '3')];
		const figures = (text: string) => text.slice(text.indexOf('\n'));
		expect(figures(one.stdout)).toBe(figures(other.stdout));
	});

	it.each([['0'], ['-1'], ['1.5'], ['many'], ['']])('wants a whole number, not "%s"', (count) => {
		const {status, stdout, stderr} = practice(`--prove=${count}`);
		expect({status, stdout}).toEqual({status: 2, stdout: ''});
		expect(stderr).toMatch(/^Wanted: --prove with a whole number .*\n$/);
	});

	it('wants a seed that the generator can tell from others', () => {
		expect(practice('--prove', '1', '--seed', '4294967296').status).toBe(2);
	});
});

describe('armdrift practice --arms', () => {
	it('lists the practice arms and gives nothing away', () => {
		const {status, stdout} = practice('--arms');
		expect(status).toBe(0);
		for (const {id, name, lesson} of lessonArms) {
			expect(stdout).toMatch(new RegExp(`^${id} +${name}$`, 'm'));
			expect(stdout).not.toContain(lesson);
		}
	});
});
