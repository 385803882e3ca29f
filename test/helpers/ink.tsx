import {EventEmitter} from 'node:events';
import {stripVTControlCharacters} from 'node:util';
import {render} from 'ink';
import type {ReactNode} from 'react';
import {onTestFinished} from 'vitest';
import {KeyFeed} from '../../source/terminal/key-feed.js';
import {KEY_NAMES, type KeyName} from './key-names.js';

/** More than the feed lets pass between two keys. */
export const TURNS_PER_KEY = 12;
const LIMIT_MS = 10_000;

/** Stands for standard output: has a size, and keeps the last frame. */
class FrameStream extends EventEmitter {
	readonly isTTY = true;
	frame = '';
	constructor(
		public columns: number,
		public rows: number,
	) {
		super();
	}
	write(frame: string): boolean {
		this.frame = frame;
		this.emit('frame');
		return true;
	}
}

/** Stands for standard input: what is emitted as data has been typed. */
class TypedStream extends EventEmitter {
	constructor(readonly setRawMode: (raw: boolean) => void) {
		super();
	}
	resume(): void {}
	pause(): void {}
}

export const turns = async (count: number): Promise<void> => {
	for (let turn = 0; turn < count; turn++) await new Promise(setImmediate);
};

export interface InkOptions {
	readonly columns?: number;
	readonly rows?: number;
	readonly screenReader?: boolean;
	/** For a screen that sets the feed's gate; a new one is made unless given. */
	readonly feed?: KeyFeed;
	/** Told of each change between raw and cooked. */
	readonly onRawMode?: (raw: boolean) => void;
	/** With the colours and other marks in the frames, instead of the bare text. */
	readonly styled?: boolean;
}

/**
 * Shows an element through Ink without a terminal, with the program's own key feed in front of it.
 * An element that needs the feed is given as a function of it.
 */
export const renderInk = (element: ReactNode | ((feed: KeyFeed) => ReactNode), options: InkOptions = {}) => {
	const {columns = 80, rows = 24, screenReader = false, styled = false} = options;
	const stdout = new FrameStream(columns, rows);
	const stdin = new TypedStream(options.onRawMode ?? (() => {}));
	const feed = options.feed ?? new KeyFeed(stdin);
	feed.start();
	const shown = () => (typeof element === 'function' ? element(feed) : element);
	const app = render(shown(), {
		stdout: stdout as unknown as NodeJS.WriteStream,
		stdin: feed as unknown as NodeJS.ReadStream,
		debug: true,
		exitOnCtrlC: false,
		patchConsole: false,
		isScreenReaderEnabled: screenReader,
	});
	const frame = () => (styled ? stdout.frame : stripVTControlCharacters(stdout.frame));
	const type = async (text: string): Promise<void> => {
		stdin.emit('data', Buffer.from(text));
		await turns(TURNS_PER_KEY * ([...text].length + 1));
	};
	const unmount = () => {
		app.unmount();
		feed.stop();
	};
	onTestFinished(unmount);
	return {
		feed,
		frame,
		lines: () => frame().split('\n'),
		waitUntilExit: app.waitUntilExit,
		/** Types text in one chunk and gives every key its turns. */
		type,
		async press(...names: readonly KeyName[]) {
			for (const name of names) await pressKey(stdin, KEY_NAMES[name]);
		},
		/** Waits until the frame holds a text. */
		waitFor: (wanted: string | RegExp) => waitForFrame(stdout, frame, wanted),
		async resize(newColumns: number, newRows: number) {
			stdout.columns = newColumns;
			stdout.rows = newRows;
			stdout.emit('resize');
			await turns(TURNS_PER_KEY);
		},
		unmount,
	};
};

// A lone escape is held back for a moment, in case it is the start of an arrow key; two in one read are none.
const pressKey = async (stdin: TypedStream, key: string): Promise<void> => {
	stdin.emit('data', Buffer.from(key));
	await turns(TURNS_PER_KEY);
	if (key !== KEY_NAMES.esc) return;
	await new Promise((resolve) => setTimeout(resolve, 40));
	await turns(TURNS_PER_KEY);
};

const waitForFrame = (stdout: FrameStream, frame: () => string, wanted: string | RegExp): Promise<string> =>
	new Promise((resolve, reject) => {
		const holds = () => (wanted instanceof RegExp ? wanted.test(frame()) : frame().includes(wanted));
		const finish = (act: () => void) => {
			clearTimeout(timer);
			stdout.off('frame', look);
			act();
		};
		const look = () => {
			if (holds()) finish(() => resolve(frame()));
		};
		const fail = () => reject(new Error(`${String(wanted)} was not shown. The frame:\n${frame()}`));
		const timer = setTimeout(() => finish(fail), LIMIT_MS);
		stdout.on('frame', look);
		look();
	});
