import {ByteReader} from './byte-reader.js';

/** Where a value stands in a file, in bytes. */
export type Span = {readonly start: number; readonly end: number};

/** Outermost keys of a JSON object with the places of their values; the values themselves are still to be parsed. */
export type Outline = {
	/** Keys as they are written, quotes and escapes included. */
	readonly entries: readonly (readonly [key: Span, value: Span])[];
	/** The elements of those values that are lists, by the start of the list. */
	readonly lists: ReadonlyMap<number, readonly Span[]>;
};

/** Not even the outermost of it is JSON, from this byte on. */
export class OutlineFault extends Error {
	readonly position: number;

	constructor(position: number) {
		super(`no JSON from byte ${position} on`);
		this.position = position;
	}
}

const [OPEN_OBJECT, CLOSE_OBJECT, OPEN_LIST, CLOSE_LIST] = [0x7b, 0x7d, 0x5b, 0x5d];
const [QUOTE, COLON, COMMA] = [0x22, 0x3a, 0x2c];
// RFC 8259, 2: space, tab, line feed, carriage return.
const isSpace = (byte: number): boolean => byte === 0x20 || byte === 0x09 || byte === 0x0a || byte === 0x0d;
const opens = (byte: number): boolean => byte === OPEN_OBJECT || byte === OPEN_LIST;
const closes = (byte: number): boolean => byte === CLOSE_OBJECT || byte === CLOSE_LIST;

class OutlineReader {
	readonly #bytes: ByteReader;
	readonly #lists = new Map<number, readonly Span[]>();

	constructor(descriptor: number, start: number) {
		this.#bytes = new ByteReader(descriptor, start);
	}

	read(): Outline {
		const entries: (readonly [Span, Span])[] = [];
		this.#take(OPEN_OBJECT);
		this.#items(CLOSE_OBJECT, () => {
			if (this.#next() !== QUOTE) this.#fail();
			const key = this.#value();
			this.#take(COLON);
			entries.push([key, this.#next() === OPEN_LIST ? this.#list() : this.#value()]);
		});
		if (this.#next() !== -1) this.#fail();
		return {entries, lists: this.#lists};
	}

	#list(): Span {
		const start = this.#bytes.position;
		const elements: Span[] = [];
		this.#bytes.skip();
		this.#items(CLOSE_LIST, () => elements.push(this.#value()));
		this.#lists.set(start, elements);
		return {start, end: this.#bytes.position};
	}

	/** What stands between commas, up to the bracket that closes it. */
	#items(close: number, readItem: () => void): void {
		if (this.#next() === close) {
			this.#bytes.skip();
			return;
		}
		for (;;) {
			readItem();
			const after = this.#next();
			if (after !== COMMA && after !== close) this.#fail();
			this.#bytes.skip();
			if (after === close) return;
		}
	}

	/** Passes over one value. What is wrong inside it is found when it is parsed. */
	#value(): Span {
		this.#next();
		const bytes = this.#bytes;
		const start = bytes.position;
		let depth = 0;
		for (let byte = bytes.peek(); ; byte = bytes.peek()) {
			if (byte === -1) this.#fail();
			if (depth === 0 && (byte === COMMA || closes(byte) || isSpace(byte))) break;
			bytes.skip();
			if (byte === QUOTE && !bytes.skipString()) this.#fail();
			if (opens(byte)) depth++;
			if (closes(byte)) depth--;
			if (depth === 0 && (byte === QUOTE || closes(byte))) break;
		}
		if (bytes.position === start) this.#fail();
		return {start, end: bytes.position};
	}

	/** The next byte that is no space. */
	#next(): number {
		let byte = this.#bytes.peek();
		for (; isSpace(byte); byte = this.#bytes.peek()) this.#bytes.skip();
		return byte;
	}

	#take(wanted: number): void {
		if (this.#next() !== wanted) this.#fail();
		this.#bytes.skip();
	}

	#fail(): never {
		throw new OutlineFault(this.#bytes.position);
	}
}

/**
 * Reads a JSON object only so far that its outermost values, and the elements of outermost lists, can be parsed one by
 * one: a document with ten thousand checks is larger than the memory it should take.
 * @param start where the text begins, after a byte order mark
 * @throws OutlineFault, and what the system says where the file cannot be read
 */
export const outlineOf = (descriptor: number, start: number): Outline => new OutlineReader(descriptor, start).read();
