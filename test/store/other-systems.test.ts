import fs from 'node:fs';
import path from 'node:path';
import {afterEach, beforeEach, describe, expect, it, vi} from 'vitest';
import {probes} from '../../source/store/process-probes.js';
import {store as sentences} from '../../source/words/en/store.js';
import {entry, held} from './lock-support.js';
import {check, faulty, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let folder: string;
const lockFile = (): string => path.join(folder, 'lock');
const held77 = (fields: object = {}) =>
	fs.writeFileSync(lockFile(), entry({pid: 77, start: '', space: 'one', ...fields}));
beforeEach(() => {
	folder = newFolder();
	vi.spyOn(probes, 'processSpace').mockReturnValue('one');
});
afterEach(() => {
	vi.restoreAllMocks();
});

describe('Where the system does not say when a process started', () => {
	beforeEach(() => {
		vi.spyOn(probes, 'startOf').mockReturnValue('');
		vi.spyOn(probes, 'isThere').mockReturnValue(true);
	});

	it.each(['/usr/sbin/cupsd -l', '"explorer.exe","77","Console"'])(
		'a number that went on to %s shuts nobody out',
		(command) => {
			vi.spyOn(probes, 'commandOf').mockReturnValue(command);
			held77();
			expect(held(openTestStore(folder).lock())).toBe(true);
		},
	);

	it.each(['/usr/local/bin/node /x/armdrift.cjs', '"node.exe","77","Console"', ''])(
		'one that may be a copy (%j) keeps the lock, and the way out is named',
		(command) => {
			vi.spyOn(probes, 'commandOf').mockReturnValue(command);
			held77();
			const told = faulty('locked', {pid: 77, file: lockFile(), isSure: false});
			expect(openTestStore(folder).lock()).toMatchObject({held: false, error: told});
			const said = sentences.locked({file: lockFile(), dataDir: folder, pid: 77, since: '', isSure: false});
			expect(said).toContain(lockFile());
		},
	);

	it('the number of this very process is known to be that of an earlier one', () => {
		held77({pid: process.pid});
		expect(held(openTestStore(folder).lock())).toBe(true);
	});

	it('a lock that this process has taken is its own', async () => {
		const store = openTestStore(folder);
		const lock = store.lock();
		expect(openTestStore(folder).lock()).toMatchObject({held: false, error: faulty('locked', {isSure: true})});
		await store.saveDraft(check(1));
		if (lock.held) lock.release();
		expect(held(openTestStore(folder).lock())).toBe(true);
	});

	it('a process that ended gives the lock up, whatever its computer is called by now', () => {
		vi.spyOn(probes, 'isThere').mockReturnValue(false);
		vi.spyOn(probes, 'bootSeconds').mockReturnValue(1_800_000_000);
		held77({host: 'bench.local', boot: 1_800_000_001});
		expect(held(openTestStore(folder).lock())).toBe(true);
	});

	it('another computer is told from a new name by its last start', () => {
		vi.spyOn(probes, 'isThere').mockReturnValue(false);
		vi.spyOn(probes, 'bootSeconds').mockReturnValue(1_800_000_000);
		for (const boot of [undefined, 1_799_990_000]) {
			held77({host: 'bench.local', boot});
			expect(openTestStore(folder).lock()).toMatchObject({held: false, error: faulty('locked', {host: 'bench.local'})});
		}
	});
});

describe('Where the system says when a process started', () => {
	it('a computer that is called otherwise by now is the same one', () => {
		vi.spyOn(probes, 'startOf').mockReturnValue('boot-one:200');
		vi.spyOn(probes, 'isThere').mockReturnValue(true);
		held77({host: 'bench.local', start: 'boot-one:100'});
		expect(held(openTestStore(folder).lock())).toBe(true);
		held77({host: 'bench.local', start: 'boot-one:200'});
		expect(openTestStore(folder).lock()).toMatchObject({held: false, error: faulty('locked', {isSure: true})});
		held77({host: 'a-container', start: 'boot-one:100', space: 'two'});
		expect(openTestStore(folder).lock()).toMatchObject({held: false, error: faulty('locked', {host: 'a-container'})});
		held77({host: 'bench.local', start: 'boot-two:100'});
		expect(openTestStore(folder).lock()).toMatchObject({held: false, error: faulty('locked', {host: 'bench.local'})});
	});
});
