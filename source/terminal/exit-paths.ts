import type {EventEmitter} from 'node:events';
import type {FullScreen} from './full-screen.js';
import type {KeyFeed} from './key-feed.js';
import {unforeseen} from './unforeseen.js';

/** Exit statuses of the program; a verdict never changes them. */
export const EXIT = {
	done: 0,
	cannotReadOrWrite: 1,
	usage: 2,
	leftOpen: 3,
	locked: 4,
	leftOut: 5,
	due: 10,
	internal: 70,
	hangUp: 129,
	interrupted: 130,
	quit: 131,
	terminated: 143,
} as const;

export interface ExitPathsOptions {
	readonly feed?: KeyFeed;
	readonly screen?: FullScreen;
	/** Text for the normal screen when the program is left early: what is saved and how to go on. */
	readonly partingText?: () => string;
	/** Draws the frame afresh after the program was stopped and continued. */
	readonly repaint?: () => void;
	/** The process, or a stand-in. */
	readonly host?: ExitHost;
}

/** What this module touches of the process. */
export interface ExitHost extends EventEmitter {
	readonly pid: number;
	readonly env: Record<string, string | undefined>;
	readonly stdin: EventEmitter;
	readonly stdout: EventEmitter;
	readonly stderr: EventEmitter & {write(text: string): unknown};
	exit(status: number): unknown;
	kill(pid: number, signal: NodeJS.Signals): unknown;
}

const codeOf = (error: unknown): unknown =>
	typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;

// A file that can't be written has a path beside the same code.
const isBrokenTerminal = (error: unknown): boolean =>
	/^(?:EIO|EPIPE)$/.test(String(codeOf(error))) && !(error instanceof Error && 'path' in error);

/**
 * Every way out of the program in one place. Each runs the hooks (release the lock) once, gives the terminal back,
 * prints at most one sentence and ends the process; a second signal meanwhile changes nothing.
 */
export class ExitPaths {
	readonly #options: ExitPathsOptions;
	readonly #host: ExitHost;
	readonly #hooks = new Set<() => void>();
	#isLeaving = false;

	constructor(options: ExitPathsOptions = {}) {
		this.#options = options;
		this.#host = options.host ?? process;
	}

	/** Adds something to do on every way out, synchronously. Returns a function that takes it back. */
	onLeave(hook: () => void): () => void {
		this.#hooks.add(hook);
		return () => {
			this.#hooks.delete(hook);
		};
	}

	/** Listens for signals, broken streams and errors that nobody caught. Call it before the first frame. */
	install(): void {
		const host = this.#host;
		host.on('SIGINT', () => this.interrupt());
		host.on('SIGTERM', () => this.leave(EXIT.terminated, this.#parting()));
		host.on('SIGQUIT', () => this.leave(EXIT.quit, this.#parting()));
		host.on('SIGHUP', () => this.#hangUp(false));
		// At a limit of file size a write fails, and the save says so; a library would die of the signal instead.
		host.on('SIGXFSZ', () => {});
		host.on('uncaughtException', (error) => this.fail(error));
		host.on('unhandledRejection', (error) => this.fail(error));
		for (const stream of [host.stdout, host.stderr]) stream.on('error', (error) => this.#outputBroke(error));
		const {feed} = this.#options;
		if (!feed) return;
		feed.onInterrupt = () => this.interrupt();
		host.stdin.on('end', () => this.#hangUp(true));
		host.stdin.on('error', () => this.#hangUp(true));
		host.on('SIGTSTP', () => this.#stopForNow());
		host.on('SIGCONT', () => this.#goOn());
	}

	/** Ctrl+C: status 130. */
	interrupt(): void {
		this.leave(EXIT.interrupted, this.#parting());
	}

	/** Ends the process with a status and a text on the normal screen. */
	leave(status: number, text = ''): void {
		if (this.#isLeaving) return;
		if (!this.#giveBack(text)) this.#dieByHangUp();
		else this.#host.exit(status);
	}

	/** Ends the process after an error that nobody expected: one sentence, status 70, or 1 where the system refused something. */
	fail(error: unknown): void {
		if (this.#isLeaving) return;
		if (isBrokenTerminal(error)) {
			this.#outputBroke(error);
			return;
		}
		const parting = this.#parting();
		if (!this.#giveBack('')) {
			this.#dieByHangUp();
			return;
		}
		const {sentence, isOurs} = unforeseen(error);
		const debug = this.#host.env.ARMDRIFT_DEBUG === '1' && error instanceof Error ? `${error.stack}\n` : '';
		this.#host.stderr.write(`${debug}${sentence}\n${parting}`);
		this.#host.exit(isOurs ? EXIT.internal : EXIT.cannotReadOrWrite);
	}

	// It reads the program's state, which may be what broke.
	#parting(): string {
		try {
			return this.#options.partingText?.() ?? '';
		} catch {
			return '';
		}
	}

	/** Runs the hooks and restores the terminal, once; false if the terminal is gone. */
	#giveBack(text: string): boolean {
		this.#isLeaving = true;
		for (const hook of this.#hooks) {
			try {
				hook();
			} catch {
				// A lock that can't be released now is found stale by the next start.
			}
		}
		const {feed, screen} = this.#options;
		try {
			feed?.stop();
		} catch {
			return false;
		}
		if (screen) return screen.leave(text);
		if (text !== '') this.#host.stderr.write(text);
		return true;
	}

	// A reader that went away (`| head`) is no fault worth a sentence; a terminal that went away is a hang-up.
	#outputBroke(error: unknown): void {
		if (this.#isLeaving) return;
		if (codeOf(error) === 'EPIPE' && !this.#options.feed) {
			this.#giveBack('');
			this.#host.exit(EXIT.cannotReadOrWrite);
		} else this.#hangUp(true);
	}

	#hangUp(terminalIsGone: boolean): void {
		if (this.#isLeaving) return;
		const restored = this.#giveBack(this.#parting());
		if (terminalIsGone || !restored) this.#dieByHangUp();
		else this.#host.exit(EXIT.hangUp);
	}

	// Node 20 ends in a failed assertion and a core dump when it exits normally after its terminal is gone, because it
	// tries to reset it. Dying by the signal itself skips that; Ink's and other libraries' handlers would write again.
	#dieByHangUp(): void {
		for (const event of ['SIGHUP', 'exit', 'beforeExit']) this.#host.removeAllListeners(event);
		this.#host.kill(this.#host.pid, 'SIGHUP');
	}

	#stopForNow(): void {
		this.#options.feed?.suspend();
		this.#options.screen?.suspend();
		this.#host.kill(this.#host.pid, 'SIGSTOP');
	}

	#goOn(): void {
		if (this.#isLeaving) return;
		this.#options.feed?.resume();
		this.#options.screen?.enter();
		this.#options.repaint?.();
	}
}
