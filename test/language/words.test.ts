import {existsSync, readdirSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {languageCodes} from '../../source/language.js';
import {hasEnglish, withoutTyped} from '../helpers/english-left.js';
import {saidInFile} from '../helpers/said-in-file.js';

const root = path.resolve(import.meta.dirname, '../../source/words');
const filesOf = (language: string): readonly string[] =>
	readdirSync(path.join(root, language), {recursive: true, encoding: 'utf8'})
		.map((name) => name.replaceAll(path.sep, '/'))
		.filter((name) => name.endsWith('.ts'));

/** More than a name or a sign: several words. */
const isSaid = (text: string): boolean => /\p{L}{3,}.*\s.*\p{L}{3,}/su.test(withoutTyped(text));

describe.each(languageCodes.filter((code) => code !== 'en'))('The words of %s', (language) => {
	const files = filesOf(language);

	it('stand in the same files as the English ones', () => {
		expect(files.toSorted()).toEqual(filesOf('en').toSorted());
	});

	it.each(files)('have nothing English left: %s', (name) => {
		const said = saidInFile(path.join(root, language, name));
		expect(said.filter((text) => hasEnglish(text))).toEqual([]);
		const theirs = new Set(existsSync(path.join(root, 'en', name)) ? saidInFile(path.join(root, 'en', name)) : []);
		expect(said.filter((text) => isSaid(text) && theirs.has(text))).toEqual([]);
	});
});
