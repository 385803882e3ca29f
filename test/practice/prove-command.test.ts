import {spawnSync} from 'node:child_process';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {ways} from '../../source/practice/proof.js';

const program = path.resolve(import.meta.dirname, '../../dist/armdrift.cjs');

const practice = (...words: string[]) => {
	const {status, stdout, stderr} = spawnSync(process.execPath, [program, 'practice', ...words], {encoding: 'utf8'});
	return {status, stdout, stderr};
};

const linesWith = (text: string, start: RegExp): string[] => text.split('\n').filter((line) => start.test(line));

describe('armdrift practice --prove', () => {
	it('prints number, seed, a row for every way of probing and for every practice arm', () => {
		const {status, stdout, stderr} = practice('--prove', '2', '--seed', '7');
		expect({status, stderr}).toEqual({status: 0, stderr: ''});
		expect(stdout).toMatch(/^2 invented arms, seed 7, \d+ s\./);
		// Two radii of two arms; the second table names no n but the arms.
		expect(linesWith(stdout, /^[35] +0\.[15] +[01]\.\d +4 /)).toHaveLength(ways.length + 2);
		for (const {id, finding} of lessonArms) expect(stdout).toMatch(new RegExp(`^${id} +${finding} +\\d of 8$`, 'm'));
		expect(stdout).toMatch(/^The proof (?:holds\.|falls short:)$/m);
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
