import {spawnSync} from 'node:child_process';
import {cpSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {languageCodes} from '../../source/language.js';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';

const saved = path.resolve(import.meta.dirname, '../../fixtures/saved/version-3');

/** What the built program prints under a language, of one folder of filed checks. */
const run = (language: string, data: string, line: string, input = '') => {
	const args = ['--language', language, ...line.split(' ')];
	const {status, stdout, stderr} = spawnSync(process.execPath, [PROGRAM, ...args], {
		env: cleanEnvironment(data),
		encoding: 'utf8',
		input,
	});
	return {status, stdout: stdout.replace(/"exportedAt":"[^"]*"/, ''), stderr};
};

const copied = (): string => {
	const data = freshFolder();
	cpSync(saved, data, {recursive: true});
	return data;
};
const [english = 'en', ...others] = languageCodes;
const data = copied();
const [newest] = JSON.parse(run(english, data, 'list --as json').stdout) as readonly {readonly id: string}[];

describe.each(others)('In %s', (language) => {
	it.each([
		'list --as json',
		'due --as json',
		`report ${newest?.id} --as json`,
		'export --as json',
		'export --as csv',
		'export --as csv --table bias',
		`compute --id ${newest?.id}`,
		'compute --schema',
		'compute nowhere.json',
	])('armdrift %s says what it says in English, with the same status', (line) => {
		expect(run(language, data, line)).toEqual(run(english, data, line));
	});

	it.each(['{', '{"version": 1}', '[]', ''])('compute refuses %j as it does in English', (document) => {
		const refused = run(language, data, 'compute', document);
		expect(refused).toEqual(run(english, data, 'compute', document));
		expect(refused.status).toBe(2);
	});

	it.each([
		['list', 0],
		['due', undefined],
		['list --arm nobody', undefined],
		['report --as html', 0],
		['report nobody --as html', undefined],
		['list --as xml', 2],
		['xyzzy', 2],
		['import nowhere.json', undefined],
	] as const)('armdrift %s ends with the status of English, in its own words', (line, wanted) => {
		const [own, theirs] = [run(language, data, line), run(english, data, line)];
		expect(own.status).toBe(theirs.status);
		if (wanted !== undefined) expect(own.status).toBe(wanted);
		expect(own.stdout + own.stderr).not.toBe(theirs.stdout + theirs.stderr);
	});
});
