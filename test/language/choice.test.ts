import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {languageFor} from '../../source/choose-language.js';
import {freshFolder} from '../helpers/program-environment.js';

const settings = (folder: string, letter: 'a' | 'b', number: number, language: unknown) =>
	writeFileSync(path.join(folder, `settings-${letter}.json`), JSON.stringify({number, content: {language}}));

const chosen = (args: readonly string[], env: NodeJS.ProcessEnv = {}, platform: NodeJS.Platform = 'linux') =>
	languageFor({args, env, platform, home: '/nowhere'});

describe('The language', () => {
	it('is that of --language before all, wherever it stands', () => {
		const folder = freshFolder();
		settings(folder, 'a', 1, 'en');
		const env = {ARMDRIFT_DATA: folder, LANG: 'en_GB.UTF-8'};
		for (const args of [
			['--language', 'de'],
			['list', '--language=de'],
			['--language', 'en', '--language', 'de'],
		])
			expect(chosen(args, env)).toBe('de');
		expect(chosen(['list', '--', '--language', 'de'], env)).toBe('en');
	});

	it('is then that of the settings, of the newest copy that can be read', () => {
		const folder = freshFolder();
		settings(folder, 'a', 1, 'en');
		settings(folder, 'b', 2, 'de');
		expect(chosen([], {ARMDRIFT_DATA: folder})).toBe('de');
		expect(chosen(['--data', folder])).toBe('de');
		writeFileSync(path.join(folder, 'settings-b.json'), '{"number":');
		expect(chosen(['--data', folder], {LANG: 'de_DE'})).toBe('en');
		settings(folder, 'a', 3, '');
		expect(chosen(['--data', folder], {LANG: 'de_DE'})).toBe('de');
	});

	// POSIX, Base Definitions 8.2: LC_ALL beats LC_MESSAGES beats LANG, and an empty one counts as unset.
	it.each([
		[{LANG: 'de_DE.UTF-8'}, 'de'],
		[{LANG: 'de_AT@euro'}, 'de'],
		[{LANG: 'de'}, 'de'],
		[{LC_ALL: 'C.UTF-8', LANG: 'de_DE.UTF-8'}, 'en'],
		[{LC_MESSAGES: 'de_CH', LANG: 'en_GB'}, 'de'],
		[{LC_ALL: '', LC_MESSAGES: '', LANG: 'de_DE'}, 'de'],
		[{LANG: 'fr_FR.UTF-8'}, 'en'],
		[{LANG: 'POSIX'}, 'en'],
		[{}, 'en'],
	] as const)('is else as the system has it: %o is %s', (env, language) => {
		expect(chosen([], env)).toBe(language);
	});

	it('is English for what programs read', () => {
		const env = {LANG: 'de_DE'};
		for (const line of [
			'compute x.json',
			'--plain compute',
			'--data x --arm y compute',
			'list --as json',
			'due --as=json',
			'export --as csv',
		])
			expect(chosen(line.split(' '), env)).toBe('en');
		for (const line of ['list', 'report --as html', 'export --out x', 'list --arm compute'])
			expect(chosen(line.split(' '), env)).toBe('de');
	});

	it('is English where one is wanted that it does not speak, which is refused then', () => {
		expect(chosen(['--language', 'xx'])).toBe('en');
		expect(chosen(['--language'])).toBe('en');
	});
});
