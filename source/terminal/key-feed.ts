import {EventEmitter} from 'node:events';
import {inPieces, type KeyGate, through} from './key-gate.js';
import {KeyIntake} from './key-intake.js';
import {KeyQueue, MAX_WAITING_KEYS} from './key-queue.js';
import {KEYS} from './keys.js';

/** The part of a terminal's input stream that the feed needs; process.stdin has it. */
export interface KeySource extends EventEmitter {
	setRawMode?(raw: boolean): unknown;
	resume(): unknown;
	pause(): unknown;
}

// The inputs renew their key handlers in passive effects, which React runs through setImmediate; a key that comes
// sooner works on the previous value. Measured on a pseudo-terminal, 15 bursts each: 1 or 2 turns keep 0 or 1 of
// them, 4 and more keep all, also under load. Turns were preferred to an acknowledgement from the screens because
// they need nothing of a screen and can't be forgotten by one.
const TURNS_BETWEEN_KEYS = 8;
/** An Enter this soon after another one, with no key between them, is a bounce or impatience. */
const IMPATIENT_MS = 500;

/**
 * Stands between the terminal and Ink as Ink's standard input: takes raw mode at once, so that nothing typed before
 * the first frame is lost or echoed, and hands over one key at a time, each only after React is done with the one
 * before. What is typed while nobody listens, or between {@link hold} and {@link release}, waits.
 */
export class KeyFeed extends EventEmitter {
	readonly isTTY = true;
	/** The key that is handed on is an Enter in haste: it should take nothing that stands there by itself. */
	isHasty = false;
	/** Filter of the screen that is shown. A pasted piece passes it character by character. */
	gate: KeyGate | null = null;
	/** Filter of the text field that is shown, for what the gate lets through. */
	fieldGate: KeyGate | null = null;
	/** Ctrl+U, in its turn among the keys. */
	onClear: (() => void) | null = null;
	/** Ctrl+C, at once and ahead of everything that waits. */
	onInterrupt: (() => void) | null = null;
	/** Too much came at once (a paste, as a rule), and a part was dropped. */
	onPasteCut: (() => void) | null = null;
	readonly #source: KeySource;
	readonly #queue = new KeyQueue();
	readonly #intake: KeyIntake;
	#followers: string[] = [];
	#now: string | null = null;
	#isStarted = false;
	#turnsLeft = 0;
	#holds = 0;
	#lastEnter = Number.NEGATIVE_INFINITY;

	constructor(source: KeySource) {
		super();
		this.#source = source;
		this.#intake = new KeyIntake({
			add: (keys) => this.#add(keys),
			onInterrupt: () => {
				this.discard();
				this.onInterrupt?.();
			},
			onCut: () => this.onPasteCut?.(),
			mostKeys: MAX_WAITING_KEYS,
		});
		this.on('newListener', (event) => {
			if (event === 'readable') this.#waitTurns();
		});
	}

	/** Takes raw mode and begins to read; may be called again, for example long before Ink is there and by its start. */
	start(): void {
		if (this.#isStarted) return;
		this.#isStarted = true;
		this.#source.setRawMode?.(true);
		// Started early, before Ink is loaded, and once more by whoever renders: still one listener.
		this.#source.off('data', this.receive);
		this.#source.on('data', this.receive);
		this.#source.resume();
	}

	/** Takes a read as if it had come from the terminal. */
	readonly receive = (chunk: Buffer | string): void => this.#intake.receive(chunk);

	/** Gives the terminal back; keys that still wait are forgotten. */
	stop(): void {
		if (!this.#isStarted) return;
		this.#isStarted = false;
		this.#source.off('data', this.receive);
		this.#intake.stop();
		this.discard();
		this.#source.setRawMode?.(false);
		this.#source.pause();
	}

	/** Lends the terminal to the shell while the program is stopped. */
	suspend(): void {
		this.#source.setRawMode?.(false);
	}

	/** Takes raw mode again; off first, since the stream believes that it still has what the shell has changed. */
	resume(): void {
		this.#source.setRawMode?.(false);
		this.#source.setRawMode?.(true);
	}

	/** Keys wait from here on, for example while an answer is being saved. Calls nest. */
	hold(): void {
		this.#holds++;
	}

	/** Ends one {@link hold}; the next key comes after the screen has had its turns. */
	release(): void {
		this.#holds = Math.max(0, this.#holds - 1);
		// What was pressed meanwhile was not meant for what shows now.
		if (this.#lastEnter > 0) this.#lastEnter = performance.now();
		this.#waitTurns();
	}

	/** Forgets what was typed ahead, for a screen on which an older key must not count. */
	discard(): void {
		this.#queue.clear();
		this.#followers = [];
	}

	/** For Ink: the key that was announced by 'readable', then null. */
	read(): string | null {
		const key = this.#now;
		this.#now = null;
		return key;
	}

	// Ink switches these with its inputs; raw mode is kept from start to stop instead, or keys between two screens
	// would be echoed by the terminal.
	setRawMode(_raw: boolean): this {
		return this;
	}
	setEncoding(_encoding: BufferEncoding): this {
		return this;
	}
	ref(): this {
		return this;
	}
	unref(): this {
		return this;
	}

	#add(keys: Parameters<KeyQueue['add']>[0]): boolean {
		const cut = this.#queue.add(keys);
		this.#pump();
		return cut;
	}

	#pump(): void {
		while (this.#turnsLeft === 0 && this.#holds === 0 && this.listenerCount('readable') > 0) {
			const key = this.#followers.shift() ?? this.#next();
			if (key === undefined) return;
			// A key that the gate took may have brought up another screen, which has to be listening before the next one.
			this.#waitTurns();
			if (key === '') return;
			if (key === KEYS.clear) {
				this.onClear?.();
				return;
			}
			this.#now = key;
			this.emit('readable');
		}
	}

	/** The next key or piece as the gate leaves it: empty if dropped, undefined if none waits. */
	#next(): string | undefined {
		const taken = this.#queue.take();
		if (taken === undefined) return undefined;
		if (taken.cut) this.onPasteCut?.();
		this.#time(taken.characters[0] === KEYS.enter);
		const passed = through(this.fieldGate, through(this.gate, taken.characters));
		const [first = '', ...others] = taken.characters.length > 1 ? inPieces(passed) : passed;
		this.#followers = others;
		return first;
	}

	#time(isEnter: boolean): void {
		const now = performance.now();
		this.isHasty = isEnter && now - this.#lastEnter < IMPATIENT_MS;
		this.#lastEnter = isEnter ? now : Number.NEGATIVE_INFINITY;
	}

	#waitTurns(): void {
		const waiting = this.#turnsLeft > 0;
		this.#turnsLeft = TURNS_BETWEEN_KEYS;
		if (!waiting) setImmediate(this.#turn);
	}

	readonly #turn = (): void => {
		if (--this.#turnsLeft > 0) setImmediate(this.#turn);
		else this.#pump();
	};
}
