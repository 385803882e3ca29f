import {readFileSync} from 'node:fs';
import path from 'node:path';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import {topics} from '../../source/words/help-topics.js';
import {words} from '../helpers/said.js';

const root = path.resolve(import.meta.dirname, '../..');
const manual = readFileSync(path.join(root, 'README.md'), 'utf8');
const fence = /^```\n([\s\S]*?)^```\n/gm;
const blocks = [...manual.matchAll(fence)].map(([, inside = '']) => inside);
/** Pictures of a screen: the bar begins with a blank. */
const captures = blocks.filter((block) => block.startsWith(' ') && block.includes(' · '));
const headings = manual.split('\n').filter((line) => line.startsWith('## '));
const {cautions, limitsOfMethod, sections} = words.reports;

/** Lines of the list under a heading. */
const itemsUnder = (heading: string): readonly string[] =>
	(manual.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '')
		.split('\n')
		.filter((line) => line.startsWith('- '))
		.map((line) => line.slice(2).replaceAll('**', ''));

describe('The manual', () => {
	it('is read in some minutes: at most 6,000 bytes beside commands and pictures of screens', () => {
		expect(Buffer.byteLength(manual.replaceAll(fence, ''))).toBeLessThanOrEqual(6000);
	});

	it('has the job first, then the two commands, practice, a check, and what may hurt before more help', () => {
		const [title = '', job = ''] = manual.split('\n\n');
		expect(title).toBe('# armdrift');
		expect(job).not.toMatch(/^[#`]/);
		expect(blocks[0]).toMatch(/^npm ci && npm start .*\nnpm ci && npm test .*\n$/);
		expect(blocks[1]).toBe('npm start -- practice\n');
		expect(blocks[2]).toBe(captures[0]);
		expect(headings.indexOf(`## ${sections.cautions}`)).toBe(4);
		expect(headings.indexOf(`## ${sections.limitsOfMethod}`)).toBe(5);
		expect(headings).toHaveLength(7);
	});

	it('shows a screen of practice and at most three of a check, as they stand in a terminal of 80 by 24', () => {
		expect(captures.length).toBeGreaterThanOrEqual(2);
		expect(captures.length).toBeLessThanOrEqual(4);
		for (const capture of captures) {
			const lines = capture.trimEnd().split('\n');
			expect(lines.length).toBeLessThanOrEqual(24);
			expect(lines.filter((line) => stringWidth(line) > 80)).toEqual([]);
		}
	});

	it('names every help topic, and leads to the figures and the glossary', () => {
		for (const {name} of topics) expect(manual).toMatch(new RegExp(`^ {2}${name} `, 'm'));
		for (const name of ['figures', 'words']) expect(manual).toContain(`\`armdrift help ${name}\``);
	});

	it('names the file that is packed', () => {
		const {name, version} = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
		const files = manual.match(/\S+\.tgz/g) ?? [];
		expect(new Set(files.map((file) => file.replace('./', '')))).toEqual(new Set([`${name}-${version}.tgz`]));
	});

	it('and the help have every caution and every limit of the method that reports have', () => {
		expect(itemsUnder(sections.cautions)).toEqual(cautions);
		expect(itemsUnder(sections.limitsOfMethod)).toEqual(limitsOfMethod);
		const said = topics.flatMap(({blocks: all}) => all);
		for (const one of [...cautions, ...limitsOfMethod]) expect(said).toContain(one);
	});
});
