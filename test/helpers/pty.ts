import {fileURLToPath} from 'node:url';
import {spawn} from '@lydell/node-pty';
import {type IBufferLine, Terminal} from '@xterm/headless';
import {vi} from 'vitest';
import {KEY_NAMES, type KeyName} from './key-names.js';
import {cleanEnvironment, freshFolder} from './program-environment.js';
import {flat} from './said.js';

export const PROGRAM = fileURLToPath(new URL('../../dist/armdrift.cjs', import.meta.url));

// Longer than any step takes on a busy machine; a passing test never waits for it.
const LIMIT_MS = 30_000;
vi.setConfig({testTimeout: 4 * LIMIT_MS, hookTimeout: 2 * LIMIT_MS});

const [FRAME_START, FRAME_END] = ['\u001B[?2026h', '\u001B[?2026l'];

export interface ProgramOptions {
	readonly args?: readonly string[];
	readonly cols?: number;
	readonly rows?: number;
	/** Added to a clean environment; undefined takes a variable out. */
	readonly env?: Readonly<Record<string, string | undefined>>;
	/** Where the program keeps its data; a fresh folder unless given. */
	readonly dataDir?: string;
	/** What to run instead of the program, for example a shell around it. */
	readonly command?: readonly [string, ...string[]];
}

export interface ProgramExit {
	readonly exitCode: number;
	readonly signal: number;
}

/** The program running on a pseudo-terminal, with a model of the screen that a user would see. */
export class RunningProgram {
	readonly dataDir: string;
	readonly exited: Promise<ProgramExit>;
	readonly #pty;
	readonly #terminal: Terminal;
	readonly #watchers = new Set<() => void>();
	#raw = '';
	#exit: ProgramExit | undefined;

	constructor(options: ProgramOptions) {
		const {args = [], cols = 80, rows = 24, env, command = [process.execPath, PROGRAM]} = options;
		this.dataDir = options.dataDir ?? freshFolder();
		this.#terminal = new Terminal({cols, rows, scrollback: 1000, allowProposedApi: true});
		const [file, ...fixed] = command;
		// The name sets TERM, whatever the environment says.
		const name = env?.TERM ?? 'xterm-256color';
		const variables = cleanEnvironment(this.dataDir, env);
		this.#pty = spawn(file, [...fixed, ...args], {name, cols, rows, env: variables, cwd: this.dataDir});
		this.#pty.onData((data) => {
			this.#raw += data;
			// Half a frame is no state of the screen: the program marks where a frame begins and ends.
			const isWhole = this.#raw.lastIndexOf(FRAME_START) <= this.#raw.lastIndexOf(FRAME_END);
			this.#terminal.write(data, () => isWhole && this.#notify());
		});
		this.exited = new Promise((resolve) => {
			this.#pty.onExit(({exitCode, signal = 0}) => {
				// The last bytes may still be on their way through the terminal model.
				this.#terminal.write('', () => {
					this.#exit = {exitCode, signal};
					this.#notify();
					resolve(this.#exit);
				});
			});
		});
	}

	get pid(): number {
		return this.#pty.pid;
	}

	/** Everything that was written to the terminal so far. */
	raw(): string {
		return this.#raw;
	}

	/** The visible lines, without spaces at their ends. */
	lines(): string[] {
		const {active} = this.#terminal.buffer;
		return Array.from({length: this.#terminal.rows}, (_, row) => textOf(active.getLine(active.viewportY + row)));
	}

	/** The visible text, without the empty lines below. */
	screen(): string {
		return this.lines().join('\n').trimEnd();
	}

	/** What the normal screen holds, with its scrollback; read it after the exit. */
	normalScreen(): string {
		const {normal} = this.#terminal.buffer;
		return Array.from({length: normal.length}, (_, row) => textOf(normal.getLine(row)))
			.join('\n')
			.trimEnd();
	}

	isOnAlternateScreen(): boolean {
		return this.#terminal.buffer.active.type === 'alternate';
	}

	/** Columns that the widest visible line takes. */
	widestLine(): number {
		const {active} = this.#terminal.buffer;
		const isBlank = (cell: string) => cell === '' || cell === ' ';
		const widths = Array.from({length: this.#terminal.rows}, (_, row) => {
			const line = active.getLine(active.viewportY + row);
			let column = this.#terminal.cols;
			while (column > 0 && isBlank(line?.getCell(column - 1)?.getChars() ?? '')) column--;
			return column;
		});
		return Math.max(...widths);
	}

	/** Lines from the top down to the last one that is not empty. */
	usedRows(): number {
		return this.lines().findLastIndex((line) => line !== '') + 1;
	}

	/**
	 * Waits until the screen shows a text, wherever it is broken, or until a condition on the screen holds, and returns that screen; a later
	 * look may find the next one.
	 */
	waitFor(wanted: string | RegExp | ((screen: string) => boolean), limitMs = LIMIT_MS): Promise<string> {
		const holds = (screen: string): boolean => {
			if (typeof wanted === 'string') return flat(screen).includes(flat(wanted));
			return wanted instanceof RegExp ? wanted.test(screen) : wanted(screen);
		};
		return new Promise((resolve, reject) => {
			const finish = (act: () => void) => {
				clearTimeout(timer);
				this.#watchers.delete(look);
				act();
			};
			const fail = (what: string) =>
				finish(() =>
					reject(new Error(`${what} before ${String(wanted)} was shown. The screen:\n${this.#described()}`)),
				);
			const look = () => {
				const screen = this.screen();
				if (holds(screen) || (this.#exit && holds(this.normalScreen()))) finish(() => resolve(screen));
				else if (this.#exit) fail(`The program ended with status ${this.#exit.exitCode}`);
			};
			const timer = setTimeout(() => fail(`${limitMs} ms passed`), limitMs);
			this.#watchers.add(look);
			look();
		});
	}

	/** Writes text as if it had been typed or pasted in one go. */
	type(text: string): void {
		this.#pty.write(text);
	}

	press(...names: readonly KeyName[]): void {
		for (const name of names) this.#pty.write(KEY_NAMES[name]);
	}

	/** Types an answer and Enter, then waits for what comes. */
	async answer(text: string, wanted: string | RegExp): Promise<string> {
		this.type(`${text}\r`);
		return this.waitFor(wanted);
	}

	resize(cols: number, rows: number): void {
		this.#terminal.resize(cols, rows);
		this.#pty.resize(cols, rows);
	}

	kill(signal: NodeJS.Signals = 'SIGKILL'): void {
		if (this.#exit) return;
		try {
			process.kill(this.pid, signal);
		} catch (error) {
			// It has ended, and that was not told here yet.
			if (!(error instanceof Error && 'code' in error && error.code === 'ESRCH')) throw error;
		}
	}

	/** Closes the window, so to say: the terminal is gone for the program from now on. */
	closeTerminal(): void {
		// Not in the declarations: its own kill() would send a signal and leave the terminal open.
		if ('destroy' in this.#pty && typeof this.#pty.destroy === 'function') this.#pty.destroy();
	}

	/** Ends it if it still runs. */
	async stop(): Promise<void> {
		this.kill('SIGKILL');
		await this.exited;
	}

	#described(): string {
		const frame = '-'.repeat(this.#terminal.cols);
		return `${frame}\n${this.#exit ? this.normalScreen() : this.screen()}\n${frame}`;
	}

	#notify(): void {
		for (const look of this.#watchers) look();
	}
}

const textOf = (line: IBufferLine | undefined): string => line?.translateToString(true).trimEnd() ?? '';

/** Starts the built program under plain Node, in fresh folders, with nothing of the tester's environment in its way. */
export const startProgram = (options: ProgramOptions = {}): RunningProgram => new RunningProgram(options);
