import {constants, isUtf8} from 'node:buffer';
import fs from 'node:fs';
import {isTooDeep} from './depth.js';
import {codeOf, readFault} from './describe-fault.js';
import {UTF8_MARK, UTF16_MARKS} from './document.js';
import {forbiddenKeyIn} from './forbidden-key.js';
import {isJson, type Json} from './json.js';
import {lineOfFault} from './json-fault.js';
import {closeQuietly, fileMarkOf, SIZE_CAP_BYTES} from './read-plain-file.js';
import {StoreError} from './store-error.js';
import type {Damage, Thing} from './store-fault.js';
import {twofoldKeyIn} from './twofold-keys.js';

const CHUNK_BYTES = 256 * 1024;
const NEWLINE = 0x0a;
/** A text that is longer cannot be held in one piece. */
const MOST_LETTERS = constants.MAX_STRING_LENGTH;
const thing: Thing = {id: 'export', values: {}};

/** Where a line stands in a file, in bytes, and its number from 1. */
export type LineSpan = {readonly line: number; readonly start: number; readonly end: number};

/**
 * A file with a JSON object in each line, however large it is: the lines are parsed one at a time, when asked for. They are
 * taken apart here because `node:readline` puts other letters in the place of bytes that are not UTF-8, and takes a line
 * of any length into memory.
 */
export class LineFile {
	readonly file: string;
	readonly #descriptor: number;
	readonly #mark: string;
	/** Behind a byte order mark. */
	readonly #start: number;

	/** @throws StoreError 'missing', 'unreadable', 'blocked', or 'damaged' where it is empty or in UTF-16 */
	constructor(file: string) {
		this.file = file;
		this.#descriptor = this.#guarded(() => openPlain(file));
		try {
			this.#mark = this.#markNow();
			this.#start = this.#textStart();
		} catch (error) {
			this.close();
			throw error;
		}
	}

	/** The lines, one after the other. */
	*lines(): Generator<LineSpan> {
		const chunk = Buffer.allocUnsafe(CHUNK_BYTES);
		let [line, start, at] = [1, this.#start, this.#start];
		for (let count = -1; count !== 0; at += count) {
			count = this.#guarded(() => fs.readSync(this.#descriptor, chunk, 0, CHUNK_BYTES, at));
			const read = chunk.subarray(0, count);
			for (let end = read.indexOf(NEWLINE); end !== -1; end = read.indexOf(NEWLINE, end + 1)) {
				yield {line, start, end: at + end};
				line++;
				start = at + end + 1;
			}
		}
		if (start < at) yield {line, start, end: at};
	}

	/** The object in a line; undefined where it is blank. @throws StoreError 'damaged' */
	object({line, start, end}: LineSpan): Json | undefined {
		if (end - start > SIZE_CAP_BYTES) throw this.damaged({id: 'part-too-large', values: {}});
		const bytes = this.#read(start, end - start);
		if (!isUtf8(bytes)) throw this.damaged({id: 'not-utf-8', values: {line}});
		const text = bytes.toString('utf8');
		if (/^\s*$/.test(text)) return undefined;
		return this.#parsed(text, line);
	}

	/** The object that the whole file is, where it is a single one. @throws StoreError 'damaged' */
	whole(): Json {
		const size = this.#guarded(() => fs.fstatSync(this.#descriptor).size) - this.#start;
		if (size > MOST_LETTERS)
			throw this.damaged({id: 'whole-too-large', values: {mostMb: Math.floor(MOST_LETTERS / 1024 ** 2)}});
		const bytes = this.#read(this.#start, size);
		if (isUtf8(bytes)) return this.#parsed(bytes.toString('utf8'), 1);
		for (const span of this.lines())
			if (!isUtf8(this.#read(span.start, span.end - span.start)))
				throw this.damaged({id: 'not-utf-8', values: {line: span.line}});
		throw this.damaged({id: 'not-utf-8', values: {}});
	}

	damaged(damage: Damage): StoreError {
		return new StoreError('damaged', {id: 'unusable', values: {file: this.file, damage}});
	}

	/** Whether it is still the file that was opened. */
	isUnchanged(): boolean {
		return this.#markNow() === this.#mark;
	}

	close(): void {
		closeQuietly(this.#descriptor);
	}

	#parsed(text: string, first: number): Json {
		let line = first;
		try {
			const value: unknown = JSON.parse(text);
			if (isTooDeep(text, value)) throw this.damaged({id: 'too-deep', values: {line: first}});
			const key = twofoldKeyIn(text);
			if (key !== undefined) throw this.damaged({id: 'twofold-key', values: {key}});
			const at = forbiddenKeyIn(text, value);
			if (at !== undefined) throw this.damaged({id: 'forbidden-key', values: {at}});
			if (isJson(value)) return value;
		} catch (error) {
			if (error instanceof StoreError) throw error;
			line += lineOfFault(text, error) - 1;
		}
		throw this.damaged({id: 'not-object', values: {line}});
	}

	#textStart(): number {
		const mark = this.#read(0, UTF8_MARK.length);
		if (mark.length === 0) throw this.damaged({id: 'empty', values: {}});
		if (UTF16_MARKS.some((one) => mark.subarray(0, 2).equals(one))) throw this.damaged({id: 'utf-16', values: {}});
		return mark.equals(UTF8_MARK) ? UTF8_MARK.length : 0;
	}

	/** So many bytes from a place on, fewer where the file ends before. */
	#read(start: number, length: number): Buffer {
		const bytes = Buffer.allocUnsafe(length);
		let count = 0;
		for (let got = -1; count < length && got !== 0; count += got)
			got = this.#guarded(() => fs.readSync(this.#descriptor, bytes, count, length - count, start + count));
		return bytes.subarray(0, count);
	}

	#markNow(): string {
		return this.#guarded(() => fileMarkOf(fs.fstatSync(this.#descriptor)));
	}

	#guarded<T>(work: () => T): T {
		try {
			return work();
		} catch (error) {
			throw readFault(thing, this.file, error);
		}
	}
}

/** The named file, where it is a plain one: a pipe could be read only once, a device has no end. */
function openPlain(file: string): number {
	const descriptor = open(file);
	if (fs.fstatSync(descriptor).isFile()) return descriptor;
	closeQuietly(descriptor);
	throw new StoreError('blocked', {id: 'source-not-plain', values: {file}});
}

function open(file: string): number {
	try {
		const {O_RDONLY, O_NONBLOCK = 0} = fs.constants;
		return fs.openSync(file, O_RDONLY | O_NONBLOCK);
	} catch (error) {
		if (codeOf(error) !== 'ENOENT') throw error;
		throw new StoreError('missing', {id: 'no-file', values: {file}});
	}
}
