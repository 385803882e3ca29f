import fs from 'node:fs';
import path from 'node:path';
import {codeOf, saveFault} from './describe-fault.js';
import {syncFolder} from './folder.js';
import {closeQuietly} from './read-plain-file.js';
import {StoreError} from './store-error.js';
import type {PlaceOption, StoreFault, Thing} from './store-fault.js';

type Options = {
	readonly thing: Thing;
	/** A plain file that is there already is replaced; undefined where no option of the command line can ask for that. */
	readonly force?: boolean | undefined;
	/** The option that names the file; --out where none is given. */
	readonly option?: PlaceOption;
};

/** Exports hold what the data folder holds, which nobody else may read. */
const isPrivate = ({id}: Thing): boolean => id === 'export' || id === 'back-up';

/**
 * A file that is written piece by piece under another name in the same folder and gets its own name only when it is
 * whole and on the disk; a file that was there stays until then.
 */
export class TargetFile {
	readonly #file: string;
	readonly #part: string;
	readonly #options: Options;
	#descriptor: number | undefined;
	#sizeBytes = 0;

	/** @throws StoreError where it cannot be written, or must not be overwritten */
	constructor(file: string, options: Options) {
		this.#file = path.resolve(file);
		this.#part = `${this.#file}.part-${process.pid}-${Math.random().toString(36).slice(2, 10)}`;
		this.#options = options;
		this.#guarded(() => {
			this.#assertFree();
			const mode = isPrivate(options.thing) ? 0o600 : 0o666;
			this.#descriptor = fs.openSync(this.#part, 'wx', mode);
		});
	}

	/** @throws StoreError; then nothing is left of it */
	write(text: string): void {
		this.#guarded(() => {
			if (this.#descriptor !== undefined) fs.writeFileSync(this.#descriptor, text);
			this.#sizeBytes += Buffer.byteLength(text);
		});
	}

	/** Makes it last, and gives it its name. @throws StoreError; then nothing is left of it */
	finish(): void {
		this.#guarded(() => {
			if (this.#descriptor === undefined) return;
			fs.fsyncSync(this.#descriptor);
			if (fs.fstatSync(this.#descriptor).size !== this.#sizeBytes)
				throw new StoreError('unwritable', {id: 'cut-short', values: {thing: this.#options.thing, file: this.#file}});
			fs.closeSync(this.#descriptor);
			this.#descriptor = undefined;
			this.#place();
			syncFolder(path.dirname(this.#file));
		});
	}

	/** For every way out before the end: nothing is left of it. */
	readonly discard = (): void => {
		if (this.#descriptor !== undefined) closeQuietly(this.#descriptor);
		this.#descriptor = undefined;
		try {
			fs.rmSync(this.#part, {force: true});
		} catch {
			// Whoever stopped it says so.
		}
	};

	#place(): void {
		if (this.#options.force) {
			this.#assertFree();
			fs.renameSync(this.#part, this.#file);
			return;
		}
		try {
			// Unlike a rename it never replaces a file that came up meanwhile.
			fs.linkSync(this.#part, this.#file);
		} catch (error) {
			if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK'].includes(codeOf(error) ?? '')) throw error;
			this.#assertFree();
			fs.renameSync(this.#part, this.#file);
			return;
		}
		try {
			fs.unlinkSync(this.#part);
		} catch (error) {
			const values = {thing: this.#options.thing, file: this.#file, left: this.#part};
			throw new StoreError('unwritable', {id: 'part-left', values}, error);
		}
	}

	#assertFree(): void {
		const stats = fs.lstatSync(this.#file, {throwIfNoEntry: false});
		if (stats === undefined || (stats.isFile() && this.#options.force)) return;
		const {thing, force, option = '--out'} = this.#options;
		const place = {file: this.#file, option};
		const fault: StoreFault = stats.isFile()
			? {id: 'target-there', values: {...place, mayForce: force !== undefined}}
			: {id: 'target-not-plain', values: {...place, thing}};
		throw new StoreError('blocked', fault);
	}

	#guarded(work: () => void): void {
		try {
			work();
		} catch (error) {
			this.discard();
			const {thing, option = '--out'} = this.#options;
			const fault = saveFault(thing, this.#file, error, option);
			if (!fs.existsSync(this.#part) || fault.fault.id !== 'not-saved') throw fault;
			throw new StoreError(fault.code, {id: 'not-saved', values: {...fault.fault.values, left: this.#part}}, error);
		}
	}
}
