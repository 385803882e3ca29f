import path from 'node:path';
import Conf from 'conf';
import {describe, expect, it} from 'vitest';
import {dataDirectory} from '../../source/store/data-directory.js';
import {faulty, newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const home = '/home/invented';

describe('the data folder', () => {
	it('is what --data says, before ARMDRIFT_DATA, before the usual place', () => {
		const env = {ARMDRIFT_DATA: '/data/env', XDG_CONFIG_HOME: '/xdg'};
		expect(dataDirectory({flag: '/data/flag', env, platform: 'linux', home})).toBe('/data/flag');
		expect(dataDirectory({env, platform: 'linux', home})).toBe('/data/env');
		expect(dataDirectory({env: {XDG_CONFIG_HOME: '/xdg', ARMDRIFT_DATA: ''}, platform: 'linux', home})).toBe(
			'/xdg/armdrift',
		);
		expect(dataDirectory({env: {}, platform: 'linux', home})).toBe('/home/invented/.config/armdrift');
	});

	it('given by name is made a full path', () => {
		expect(dataDirectory({flag: 'my checks', env: {}})).toBe(path.resolve('my checks'));
	});

	// XDG Base Directory Specification, "Basics": a relative path is invalid and to be ignored.
	it('is never under a relative XDG_CONFIG_HOME', () => {
		expect(dataDirectory({env: {XDG_CONFIG_HOME: 'here'}, platform: 'linux', home})).toBe(
			'/home/invented/.config/armdrift',
		);
	});

	it.each(['', '.', 'relative'])(
		'is refused, not put into the current folder, where the home folder is %j',
		(noHome) => {
			expect(() => dataDirectory({env: {}, platform: 'linux', home: noHome})).toThrow(faulty('home-unknown'));
		},
	);

	it.each(['', '  ', 'a\0b'])('is refused where --data says %j', (flag) => {
		expect(() => dataDirectory({flag, env: {}, home})).toThrow(faulty('folder-unnamed', {file: flag}));
	});

	it('is the one that conf takes by itself', () => {
		// Conf makes the folder that it names, so it must be a fresh one; it reads the variable when it is asked.
		const before = process.env.XDG_CONFIG_HOME;
		process.env.XDG_CONFIG_HOME = newFolder();
		try {
			const conf = new Conf({projectName: 'armdrift', projectSuffix: ''});
			expect(dataDirectory({env: process.env})).toBe(path.dirname(conf.path));
		} finally {
			if (before === undefined) delete process.env.XDG_CONFIG_HOME;
			else process.env.XDG_CONFIG_HOME = before;
		}
	});
});
