import {execFileSync, spawnSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {describe, expect, test} from 'vitest';
import * as z from 'zod/mini';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const manifestSchema = z.looseObject({
	author: z.string(),
	keywords: z.array(z.string()),
	version: z.string(),
	man: z.array(z.string()),
	scripts: z.record(z.string(), z.string()),
});
const manifest = manifestSchema.parse(JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')));

/** Without the script that builds before packing: other tests run the program meanwhile. */
const packed = (): readonly string[] => {
	const args = ['pack', '--dry-run', '--json', '--ignore-scripts', '--offline'];
	const listed = z.array(z.object({files: z.array(z.object({path: z.string()}))}));
	const [one] = listed.parse(JSON.parse(execFileSync('npm', args, {cwd: ROOT, encoding: 'utf8'})));
	return one?.files.map((file) => file.path) ?? [];
};

const printed = (...args: readonly string[]): string =>
	spawnSync(process.execPath, [PROGRAM, ...args], {env: cleanEnvironment(freshFolder()), encoding: 'utf8'}).stdout;

/** Without the day of printing. */
const undated = (page: string): string => page.replace(/^(\.TH .*) \d{4}-\d\d-\d\d /, '$1 ');
const beside = (name: string): string => readFileSync(path.join(path.dirname(PROGRAM), name), 'utf8');

describe('The package', () => {
	test('runs nothing on the machine that it is installed on', () => {
		// npm counts these, prepare among them where a package comes from a file.
		for (const name of ['preinstall', 'install', 'postinstall', 'prepare'])
			expect(manifest.scripts).not.toHaveProperty(name);
		expect(manifest).not.toHaveProperty('dependencies');
	});

	test('holds program, manual page, completions, licences and changes, and nothing of the workshop', () => {
		const files = packed();
		for (const name of [
			'armdrift.cjs',
			'start.cjs',
			'program-en.cjs',
			'program-de.cjs',
			'language.cjs',
			'LICENCES.txt',
		])
			expect(files).toContain(`dist/${name}`);
		for (const name of ['armdrift.bash', '_armdrift', 'armdrift.fish'])
			expect(files).toContain(`dist/completions/${name}`);
		for (const name of ['LICENSE', 'README.md', 'CHANGELOG.md', ...manifest.man]) expect(files).toContain(name);
		const others = files.filter((name) => !name.startsWith('dist/'));
		expect([...others].sort()).toEqual(['CHANGELOG.md', 'LICENSE', 'README.md', 'package.json']);
		expect(files.filter((name) => /\.tsx?$/.test(name))).toEqual([]);
	});

	test('says who made it and what it is for, and leads to no address', () => {
		expect(manifest.author).not.toBe('');
		expect(manifest.keywords.length).toBeGreaterThan(3);
		for (const name of ['repository', 'homepage', 'bugs']) expect(manifest).not.toHaveProperty(name);
	});

	test('has the manual page and the completions that the program prints', () => {
		expect(undated(beside('man/armdrift.1'))).toBe(undated(printed('--man')));
		expect(beside('completions/armdrift.bash')).toBe(printed('completion', 'bash'));
		expect(beside('completions/_armdrift')).toBe(printed('completion', 'zsh'));
		expect(beside('completions/armdrift.fish')).toBe(printed('completion', 'fish'));
		expect(beside('completions/_armdrift')).toMatch(/^#compdef armdrift\n/);
	});

	test('tells its version on top of the changes or under what is not out yet', () => {
		const headings = readFileSync(path.join(ROOT, 'CHANGELOG.md'), 'utf8').match(/^## .*$/gm) ?? [];
		const versions = headings.filter((one) => /^## \d/.test(one));
		expect(versions[0]).toMatch(new RegExp(`^## ${manifest.version.replaceAll('.', '\\.')}\\b`));
		expect(headings.length - versions.length).toBeLessThanOrEqual(1);
	});
});
