import {spawnSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {topics} from '../../source/words/help-topics.js';
import {hasEnglish} from '../helpers/english-left.js';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';

const answers = readFileSync(
	path.resolve(import.meta.dirname, '../../fixtures/answers/invented-full-check.txt'),
	'utf8',
);
const data = freshFolder();

const german = (line: string, input = '') => {
	const args = ['--language', 'de', ...(line === '' ? [] : line.split(' '))];
	const {status, stdout, stderr} = spawnSync(process.execPath, [PROGRAM, ...args], {
		env: cleanEnvironment(data),
		encoding: 'utf8',
		input,
		maxBuffer: 1e8,
	});
	return {status, printed: stdout + stderr};
};

/** Lines with English in them, without the names that were typed. */
const left = (printed: string): readonly string[] =>
	printed
		.replaceAll(/<style>.*?<\/style>|<script>.*?<\/script>/gs, '')
		.replaceAll(/<[^>]*>/g, ' ')
		.replaceAll(/north deck|bench set/g, '')
		.split('\n')
		.filter(hasEnglish);

/** As someone types it whose language it is. */
const inGerman = answers
	.replaceAll(/^([\d.]+) out$/gm, '$1 außen')
	.replaceAll(/^([\d.]+) in$/gm, '$1 innen')
	.replaceAll(/^([\d.]+) right$/gm, '$1 rechts')
	.replaceAll(/^([\d.]+) left$/gm, '$1 links')
	.replaceAll(/^y$/gm, 'j')
	.replaceAll(/(?<=^\d+)\.(?=\d)/gm, ',');

describe('In German, nothing English is left of', () => {
	it('a whole check, typed in German', () => {
		const {status, printed} = german('--plain', inGerman);
		expect([status, left(printed)]).toEqual([0, []]);
	});

	it.each(['list', 'due', 'paths', 'report --as markdown', 'report --as maker', 'report --as html', 'practice --arms'])(
		'armdrift %s',
		(line) => {
			const {printed} = german(line);
			expect(left(printed)).toEqual([]);
		},
	);

	it('what stands at the next start', () => {
		expect(left(german('--plain').printed)).toEqual([]);
	});

	it.each(topics.map(({name}) => name))('armdrift help %s', (name) => {
		expect(left(german(`help ${name}`).printed)).toEqual([]);
	});
});
