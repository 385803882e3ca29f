import fs from 'node:fs';

const CHUNK_BYTES = 256 * 1024;
const QUOTE = 0x22;
const BACKSLASH = 0x5c;

/** The bytes of an open file from a place in it on, one after the other, with no more than a part of it in memory. */
export class ByteReader {
	readonly #descriptor: number;
	readonly #buffer = Buffer.allocUnsafe(CHUNK_BYTES);
	#length = 0;
	#at = 0;
	#before: number;

	constructor(descriptor: number, start = 0) {
		this.#descriptor = descriptor;
		this.#before = start;
	}

	/** Where the next byte stands in the file. */
	get position(): number {
		return this.#before + this.#at;
	}

	/** The next byte, −1 at the end. */
	peek(): number {
		if (this.#at >= this.#length && !this.#refill()) return -1;
		return this.#buffer[this.#at] ?? -1;
	}

	/** Takes the byte that was looked at. */
	skip(): void {
		this.#at++;
	}

	/** Takes everything up to the quote that ends a JSON string; false where the file ends in it. */
	skipString(): boolean {
		let escaped = false;
		for (;;) {
			for (; this.#at < this.#length; this.#at++) {
				const byte = this.#buffer[this.#at];
				if (escaped) escaped = false;
				else if (byte === BACKSLASH) escaped = true;
				else if (byte === QUOTE) {
					this.#at++;
					return true;
				}
			}
			if (!this.#refill()) return false;
		}
	}

	#refill(): boolean {
		this.#before += this.#length;
		this.#at = 0;
		this.#length = fs.readSync(this.#descriptor, this.#buffer, 0, CHUNK_BYTES, this.#before);
		return this.#length > 0;
	}
}
