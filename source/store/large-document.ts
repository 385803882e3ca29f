import {isUtf8} from 'node:buffer';
import fs from 'node:fs';
import {codeOf, readFault} from './describe-fault.js';
import {type Outline, OutlineFault, outlineOf, type Span} from './json-outline.js';
import {closeQuietly, markOf, SIZE_CAP_BYTES} from './read-plain-file.js';
import {StoreError} from './store-error.js';

const NEWLINE = 0x0a;
const MARK_BYTES = 3;
const UTF8_MARK = Buffer.from([0xef, 0xbb, 0xbf]);
const UTF16_MARKS = [Buffer.from([0xff, 0xfe]), Buffer.from([0xfe, 0xff])];

/** A JSON object in a file that may be larger than memory: its outermost values are parsed one at a time, when asked for. */
export class LargeDocument {
	readonly file: string;
	readonly #what: string;
	readonly #descriptor: number;
	readonly #mark: string;
	readonly #outline: Outline;
	readonly #values = new Map<string, Span>();

	/**
	 * @param what the content, as it begins a sentence: 'The export'
	 * @throws StoreError 'missing', 'unreadable', 'blocked', or 'damaged' where it is no whole JSON object
	 */
	constructor(what: string, file: string) {
		this.file = file;
		this.#what = what;
		this.#descriptor = this.#guarded(() => openPlain(what, file));
		try {
			this.#mark = this.#guarded(() => this.#markNow());
			this.#outline = this.#guarded(() => outlineOf(this.#descriptor, this.#start()));
			for (const [key, value] of this.#outline.entries) this.#add(key, value);
		} catch (error) {
			this.close();
			throw error;
		}
	}

	get keys(): readonly string[] {
		return [...this.#values.keys()];
	}

	/** The value of a key; undefined where there is no such key. @throws StoreError 'damaged' */
	value(key: string): unknown {
		const span = this.#values.get(key);
		return span && this.#parse(span);
	}

	/** The elements of the list that stands at a key, each still to be parsed; undefined where none stands there. */
	list(key: string): readonly Span[] | undefined {
		return this.#outline.lists.get(this.#values.get(key)?.start ?? -1);
	}

	/** @throws StoreError 'damaged' */
	element(span: Span): unknown {
		return this.#parse(span);
	}

	/** The error for content that is not what it should be: 'checks[3].id: …'. */
	fault(why: string): StoreError {
		return new StoreError('damaged', this.file, `${this.#what} could not be used from "${this.file}": ${why}`);
	}

	/** Whether it is still the file that was opened. */
	isUnchanged(): boolean {
		return this.#guarded(() => this.#markNow()) === this.#mark;
	}

	close(): void {
		closeQuietly(this.#descriptor);
	}

	#add(key: Span, value: Span): void {
		const name = this.#parse(key);
		if (typeof name !== 'string') throw this.#broken(key.start);
		if (this.#values.has(name)) throw this.fault(`the key "${name}" stands in it twice.`);
		this.#values.set(name, value);
	}

	#parse({start, end}: Span): unknown {
		if (end - start > SIZE_CAP_BYTES) throw this.fault('a part of it is far larger than any file of this program.');
		const bytes = this.#guarded(() => readBytes(this.#descriptor, start, end - start));
		if (!isUtf8(bytes)) throw this.fault(`it holds bytes that are not UTF-8 (line ${this.#lineOf(start)}).`);
		const text = bytes.toString('utf8');
		try {
			return JSON.parse(text);
		} catch (error) {
			const at = Number(/position (\d+)/.exec(String(error))?.[1] ?? text.length);
			throw this.#broken(start + Buffer.byteLength(text.slice(0, at)));
		}
	}

	#broken(position: number): StoreError {
		return this.fault(`it is not a whole JSON object (line ${this.#lineOf(position)}).`);
	}

	#lineOf(position: number): number {
		let line = 1;
		for (let at = 0; at < position; at += SIZE_CAP_BYTES) {
			const bytes = this.#guarded(() => readBytes(this.#descriptor, at, Math.min(position - at, SIZE_CAP_BYTES)));
			for (const byte of bytes) if (byte === NEWLINE) line++;
		}
		return line;
	}

	/** Where the text begins. */
	#start(): number {
		const mark = readBytes(this.#descriptor, 0, MARK_BYTES);
		if (mark.length === 0) throw this.fault('it is empty.');
		if (UTF16_MARKS.some((one) => mark.subarray(0, 2).equals(one))) throw this.fault('it is in UTF-16, not in UTF-8.');
		return mark.equals(UTF8_MARK) ? MARK_BYTES : 0;
	}

	#markNow(): string {
		return markOf(fs.fstatSync(this.#descriptor));
	}

	#guarded<T>(work: () => T): T {
		try {
			return work();
		} catch (error) {
			if (error instanceof OutlineFault) throw this.#broken(error.position);
			throw readFault(this.#what, this.file, error);
		}
	}
}

/** The named file, where it is a plain one: a pipe could be read only once, a device has no end. */
function openPlain(what: string, file: string): number {
	const descriptor = open(file);
	if (fs.fstatSync(descriptor).isFile()) return descriptor;
	closeQuietly(descriptor);
	throw new StoreError('blocked', file, `${what} is wanted as a plain file, and "${file}" is none.`);
}

function open(file: string): number {
	try {
		const {O_RDONLY, O_NONBLOCK = 0} = fs.constants;
		return fs.openSync(file, O_RDONLY | O_NONBLOCK);
	} catch (error) {
		if (codeOf(error) !== 'ENOENT') throw error;
		throw new StoreError('missing', file, `There is no file "${file}".`);
	}
}

/** So many bytes from a place on, fewer where the file ends before. */
function readBytes(descriptor: number, start: number, length: number): Buffer {
	const bytes = Buffer.allocUnsafe(length);
	let count = 0;
	for (let got = -1; count < length && got !== 0; count += got)
		got = fs.readSync(descriptor, bytes, count, length - count, start + count);
	return bytes.subarray(0, count);
}
