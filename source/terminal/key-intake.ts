import {StringDecoder} from 'node:string_decoder';
import {KEYS} from './keys.js';
import {keysOfRest, SPLIT_START, type SplitState, splitKeys, type TypedKey} from './split-keys.js';

/** An arrow key cut in two by a slow line would otherwise read as Esc and two letters. */
const LONE_ESCAPE_MS = 25;
const UNFINISHED_SEQUENCE_MS = 100;
const UNFINISHED_PASTE_MS = 500;
/** Silence after which input that was too much at once counts as over. */
const FLOOD_OVER_MS = 100;

export interface IntakeTarget {
	/** Takes keys; true means that there were too many and some were dropped. */
	readonly add: (keys: readonly TypedKey[]) => boolean;
	readonly onInterrupt: () => void;
	readonly onCut: () => void;
	/** A paste longer than this many keys need not be remembered in full. */
	readonly mostKeys: number;
}

/** Turns reads from the terminal into keys: joins what was cut between two reads, and collects a paste to its end. */
export class KeyIntake {
	readonly #target: IntakeTarget;
	readonly #decoder = new StringDecoder('utf8');
	#state: SplitState = SPLIT_START;
	#paste: TypedKey[] = [];
	#restTimer: NodeJS.Timeout | undefined;
	#floodTimer: NodeJS.Timeout | undefined;

	constructor(target: IntakeTarget) {
		this.#target = target;
	}

	stop(): void {
		clearTimeout(this.#restTimer);
		clearTimeout(this.#floodTimer);
		this.#state = SPLIT_START;
		this.#paste = [];
	}

	receive(chunk: Buffer | string): void {
		clearTimeout(this.#restTimer);
		const text = typeof chunk === 'string' ? chunk : this.#decoder.write(chunk);
		const {keys, state} = splitKeys(text, this.#state);
		this.#state = state;
		if (keys.some((entry) => entry.key === KEYS.interrupt)) {
			this.#paste = [];
			this.#target.onInterrupt();
			return;
		}
		this.#accept(keys);
		this.#armTimer();
	}

	#armTimer(): void {
		const {rest, inPaste} = this.#state;
		if (rest === '' && !inPaste) return;
		const lone = /^\u001B+$/.test(rest);
		const waitMs = inPaste ? UNFINISHED_PASTE_MS : lone ? LONE_ESCAPE_MS : UNFINISHED_SEQUENCE_MS;
		this.#restTimer = setTimeout(() => {
			const keys = inPaste ? [] : keysOfRest(rest);
			this.#state = SPLIT_START;
			this.#accept(keys);
		}, waitMs);
	}

	// A paste is collected to its end before any of it counts, so that one that is too long submits nothing.
	#accept(keys: readonly TypedKey[]): void {
		let typed: TypedKey[] = [];
		const addTyped = () => {
			this.#addTyped(typed);
			typed = [];
		};
		for (const entry of keys) {
			if (!entry.pasted) {
				this.#endPaste();
				typed.push(entry);
				continue;
			}
			if (typed.length > 0) addTyped();
			if (this.#paste.length <= this.#target.mostKeys) this.#paste.push(entry);
		}
		if (!this.#state.inPaste) this.#endPaste();
		addTyped();
	}

	#addTyped(keys: readonly TypedKey[]): void {
		if (keys.length === 0) return;
		if (this.#floodTimer !== undefined) {
			this.#floodTimer.refresh();
			return;
		}
		if (!this.#target.add(keys)) return;
		// Too much without paste marks: what follows belongs to it until there is silence.
		this.#floodTimer = setTimeout(() => {
			this.#floodTimer = undefined;
		}, FLOOD_OVER_MS);
		this.#target.onCut();
	}

	#endPaste(): void {
		if (this.#paste.length === 0) return;
		// A paste of several lines is a run of answers: it is played key by key, as if it had been typed.
		const isRun = this.#paste.some(({key}) => key === KEYS.enter);
		const cut = this.#target.add(isRun ? this.#paste.map(({key}) => ({key, pasted: false})) : this.#paste);
		this.#paste = [];
		if (cut) this.#target.onCut();
	}
}
