import fs from 'node:fs';
import path from 'node:path';
import {afterEach, beforeEach, describe, expect, it, vi} from 'vitest';
import {TargetFile} from '../../source/store/target-file.js';
import {faulty, newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let folder: string;
let file: string;
beforeEach(() => {
	folder = newFolder();
	file = path.join(folder, 'out.json');
});
afterEach(() => {
	vi.restoreAllMocks();
});

const thing = {id: 'export', values: {}} as const;
const target = (force = false) => new TargetFile(file, {thing, force});
const failing = (code: string) => () => {
	throw Object.assign(new Error(`${code}: invented`), {code});
};

describe('A file that is written piece by piece', () => {
	it('gets its name only at its end, whole', () => {
		const writing = target();
		writing.write('one ');
		writing.write('twö');
		expect(fs.existsSync(file)).toBe(false);
		writing.finish();
		expect(fs.readdirSync(folder)).toEqual(['out.json']);
		expect(fs.readFileSync(file, 'utf8')).toBe('one twö');
	});

	it('leaves nothing behind when it is given up', () => {
		const writing = target();
		writing.write('one');
		writing.discard();
		expect(fs.readdirSync(folder)).toEqual([]);
	});

	it('does not overwrite a file without being told to, and says how', () => {
		fs.writeFileSync(file, 'mine');
		expect(() => target()).toThrow(faulty('target-there', {file, option: '--out', mayForce: true}));
		expect(fs.readdirSync(folder)).toEqual(['out.json']);
		const writing = target(true);
		writing.write('new');
		expect(fs.readFileSync(file, 'utf8')).toBe('mine');
		writing.finish();
		expect(fs.readFileSync(file, 'utf8')).toBe('new');
	});

	it('does not overwrite a file that came up meanwhile', () => {
		const writing = target();
		fs.writeFileSync(file, 'mine');
		expect(() => writing.finish()).toThrow(faulty('not-saved', {thing, file, system: 'EEXIST', option: '--out'}));
		expect(fs.readFileSync(file, 'utf8')).toBe('mine');
		expect(fs.readdirSync(folder)).toEqual(['out.json']);
	});

	it.each([
		['a folder', () => fs.mkdirSync(file)],
		['a link', () => fs.symlinkSync('/etc/hostname', file)],
		['a link that leads nowhere', () => fs.symlinkSync('nowhere', file)],
	])('never takes the place of %s, whatever it is told', (_, place) => {
		place();
		expect(() => target(true)).toThrow(faulty('target-not-plain', {thing, file, option: '--out'}));
		expect(fs.readdirSync(folder)).toEqual(['out.json']);
	});

	it('says which folder is missing', () => {
		file = path.join(folder, 'none', 'out.json');
		expect(() => target()).toThrow(faulty('not-saved', {thing, file, system: 'ENOENT', option: '--out'}));
	});

	it.each([
		['writeFileSync', 'ENOSPC'],
		['fsyncSync', 'EIO'],
		['linkSync', 'EACCES'],
	] as const)('leaves nothing behind when %s fails with %s, and says so', (call, code) => {
		const writing = target();
		vi.spyOn(fs, call).mockImplementation(failing(code));
		expect(() => {
			writing.write('one');
			writing.finish();
		}).toThrow(faulty('not-saved', {thing, file, system: code, option: '--out'}));
		vi.restoreAllMocks();
		expect(fs.readdirSync(folder)).toEqual([]);
	});

	it('is not taken for whole where the disk took only a part and said nothing', () => {
		const writing = target();
		const write = fs.writeFileSync;
		vi.spyOn(fs, 'writeFileSync').mockImplementation((descriptor, text) => write(descriptor, String(text).slice(1)));
		writing.write('one');
		expect(() => writing.finish()).toThrow(faulty('cut-short', {thing, file}));
		expect(fs.readdirSync(folder)).toEqual([]);
	});

	it('gets its name by a rename where the disk knows no hard links', () => {
		vi.spyOn(fs, 'linkSync').mockImplementation(failing('EPERM'));
		const writing = target();
		writing.write('one');
		writing.finish();
		expect(fs.readFileSync(file, 'utf8')).toBe('one');
		expect(fs.readdirSync(folder)).toEqual(['out.json']);
	});
});

it('In a folder where files can be made but not renamed nothing is left', () => {
	fs.writeFileSync(file, 'mine');
	vi.spyOn(fs, 'renameSync').mockImplementation(failing('EPERM'));
	const writing = target(true);
	writing.write('new');
	expect(() => writing.finish()).toThrow(faulty('not-saved', {thing, file, system: 'EPERM'}));
	expect(fs.readdirSync(folder)).toEqual(['out.json']);
});

describe('In a folder where files can be made but neither renamed nor removed', () => {
	beforeEach(() => {
		vi.spyOn(fs, 'renameSync').mockImplementation(failing('EPERM'));
		vi.spyOn(fs, 'unlinkSync').mockImplementation(failing('EPERM'));
		vi.spyOn(fs, 'rmSync').mockImplementation(failing('EPERM'));
	});

	it('a new file is written whole, and the sentence names what is left beside it', () => {
		const writing = target();
		writing.write('one');
		const left = expect.stringContaining('out.json.part-');
		expect(() => writing.finish()).toThrow(faulty('part-left', {thing, file, left}));
		writing.discard();
		expect(fs.readFileSync(file, 'utf8')).toBe('one');
	});

	it('one that is there stays, and the sentence names what is left beside it', () => {
		fs.writeFileSync(file, 'mine');
		const writing = target(true);
		writing.write('new');
		const left = expect.stringContaining('out.json.part-');
		expect(() => writing.finish()).toThrow(faulty('not-saved', {thing, file, system: 'EPERM', left}));
		expect(fs.readFileSync(file, 'utf8')).toBe('mine');
	});
});

it.each([
	['export', 0o600],
	['back-up', 0o600],
	['report', 0o644],
] as const)('A file of %s can be read by whom it is meant for', (id, mode) => {
	const before = process.umask(0o022);
	try {
		const writing = new TargetFile(file, {thing: {id, values: {}}, force: false});
		writing.finish();
		expect(fs.statSync(file).mode & 0o777).toBe(mode);
	} finally {
		process.umask(before);
	}
});
