import {isText, KEYS} from './keys.js';
import type {TypedKey} from './split-keys.js';

/** More than this waiting at once is no typing and no run of readings; a whole check is well under 1000 keys. */
export const MAX_WAITING_KEYS = 2000;
/** Longest stretch of text that goes into a field in one piece. */
export const MAX_PIECE_LENGTH = 200;
// A stretch of text this long without Enter was pasted, marks or no marks; key by key it would take seconds to draw.
const PASTED_RUN_LENGTH = 64;

/** Keys waiting to be handed on. Every method that may cut something says so by its boolean result. */
export class KeyQueue {
	#keys: TypedKey[] = [];

	get length(): number {
		return this.#keys.length;
	}

	clear(): void {
		this.#keys = [];
	}

	/** Adds keys; of more than there is room for, only the first line stays, without its Enter. True if cut. */
	add(keys: readonly TypedKey[]): boolean {
		if (this.#keys.length + keys.length <= MAX_WAITING_KEYS) {
			this.#keys.push(...keys);
			return false;
		}
		const firstOther = keys.findIndex((entry) => !isText(entry.key));
		const line = firstOther === -1 ? keys : keys.slice(0, firstOther);
		const room = Math.max(0, Math.min(MAX_PIECE_LENGTH, MAX_WAITING_KEYS - this.#keys.length));
		this.#keys.push(...line.slice(0, room).map((entry) => ({...entry, pasted: true})));
		return true;
	}

	/** Takes the next key, or the next stretch of pasted text as one piece. */
	take(): {readonly characters: readonly string[]; readonly cut: boolean} | undefined {
		const [first] = this.#keys;
		if (first === undefined) return undefined;
		if (!isText(first.key)) return {characters: [this.#keys.shift()?.key ?? KEYS.enter], cut: false};
		const end = this.#keys.findIndex((entry) => !isText(entry.key) || entry.pasted !== first.pasted);
		const runLength = end === -1 ? this.#keys.length : end;
		const length = first.pasted || runLength > PASTED_RUN_LENGTH ? runLength : 1;
		const run = this.#keys.splice(0, length).map((entry) => entry.key);
		return {characters: run.slice(0, MAX_PIECE_LENGTH), cut: run.length > MAX_PIECE_LENGTH};
	}
}
