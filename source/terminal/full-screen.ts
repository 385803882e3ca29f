import {writeSync} from 'node:fs';

// Private modes of xterm: 1049 alternate screen with saved cursor, 2004 bracketed paste, 25 cursor, 2026
// synchronised output (ended here in case the program is left in the middle of a frame).
const ENTER = '\u001B[?1049h\u001B[2J\u001B[H\u001B[?2004h';
const LEAVE = '\u001B[?2026l\u001B[?2004l\u001B[0m\u001B[?25h\u001B[?1049l';
export const CLEAR_SCREEN = '\u001B[2J\u001B[H';
const FRAME_START = '\u001B[?2026h';
const FRAME_END = '\u001B[?2026l';
const CLEAR_SCROLLBACK = '\u001B[3J';

/** The part of standard output that the full screen needs. */
export interface ScreenOutput {
	readonly fd: number;
	write: NodeJS.WriteStream['write'];
}

/**
 * The alternate screen, taken and given back by hand. While it is taken, nothing written through the stream can
 * erase the scrollback; after it is left, Ink's farewell frame no longer reaches the terminal.
 */
export class FullScreen {
	readonly #output: ScreenOutput;
	readonly #write: ScreenOutput['write'];
	#state: 'before' | 'taken' | 'left' = 'before';
	/** What was written of a frame whose end is to come. */
	#frame: string | undefined;

	constructor(output: ScreenOutput) {
		this.#output = output;
		this.#write = output.write;
	}

	get isTaken(): boolean {
		return this.#state === 'taken';
	}

	enter(): void {
		if (this.#state === 'taken') return;
		this.#state = 'taken';
		this.#output.write = (chunk: Uint8Array | string, ...others: unknown[]) => this.#guardedWrite(chunk, others);
		this.#say(ENTER);
	}

	/** Lends the normal screen to the shell while the program is stopped; {@link enter} takes it again. */
	suspend(): void {
		if (this.#state !== 'taken') return;
		this.#state = 'before';
		this.#say(LEAVE);
	}

	/**
	 * Puts the terminal back as it was and prints a text on the normal screen. May be called from an exit handler, and
	 * more than once: only the first call does anything.
	 * @returns false if the terminal is gone
	 */
	leave(partingText = ''): boolean {
		if (this.#state !== 'taken') return true;
		this.#state = 'left';
		return this.#say(LEAVE + partingText);
	}

	// Synchronous, since there may be no next turn of the event loop, and past the stream, which may be broken.
	#say(text: string): boolean {
		let rest = Buffer.from(text);
		try {
			while (rest.length > 0) rest = rest.subarray(writeSync(this.#output.fd, rest));
			return true;
		} catch {
			return false;
		}
	}

	#guardedWrite(chunk: Uint8Array | string, others: readonly unknown[]): boolean {
		if (this.#state === 'left') {
			const callback = others.find((other) => typeof other === 'function');
			if (callback) setImmediate(() => callback());
			return true;
		}
		const safe = typeof chunk === 'string' ? chunk.replaceAll(CLEAR_SCROLLBACK, '') : chunk;
		// Ink writes a frame in three pieces; in one it is there sooner.
		if (safe === FRAME_START) this.#frame = '';
		if (this.#frame === undefined || typeof safe !== 'string')
			return Reflect.apply(this.#write, this.#output, [safe, ...others]);
		this.#frame += safe;
		if (safe !== FRAME_END) return true;
		const frame = this.#frame;
		this.#frame = undefined;
		return Reflect.apply(this.#write, this.#output, [frame, ...others]);
	}
}
