import {EventEmitter} from 'node:events';
import {mock} from 'node:test';
import {render} from 'ink';
import type {ReactNode} from 'react';
import type {StepId} from '../../../source/procedure/step-ids.js';
import type {Look} from '../../../source/screens/look.js';
import {KeyFeed} from '../../../source/terminal/key-feed.js';
import {KEYS} from '../../../source/terminal/keys.js';

export type Size = {readonly columns: number; readonly rows: number};

/** One screen, and what is done until it looks so. */
export type Scene = {
	/** Names its files. */
	readonly name: string;
	/** The step that is asked, where one is. */
	readonly step?: StepId | undefined;
	readonly show: (at: {readonly feed: KeyFeed; readonly look: Look; readonly size: Size}) => ReactNode;
	/** Keys that are pressed first; several in one text are typed in one go. */
	readonly keys?: readonly string[];
	/** Time that goes by then, in ms. */
	readonly waitMs?: number;
	/** The terminal is of this size, whichever is asked for. */
	readonly size?: Size;
};

// More than the feed lets pass between two keys.
const turnsPerKey = 12;
const turnsToMount = 20;
const mostPages = 60;

// A lone Esc is held back for a moment, the countdown and the invented bench go by the second: time goes by at a word.
mock.timers.enable({apis: ['setTimeout', 'setInterval']});

const turns = async (count: number): Promise<void> => {
	for (let turn = 0; turn < count; turn++) await new Promise(setImmediate);
};

/** Stands for the terminal that is written to: it has a size, and keeps the last frame. */
class Shown extends EventEmitter {
	readonly isTTY = true;
	readonly columns: number;
	readonly rows: number;
	frame = '';
	constructor({columns, rows}: Size) {
		super();
		this.columns = columns;
		this.rows = rows;
	}
	write(text: string): boolean {
		// The bell at the end of a countdown is no frame.
		if (text !== '\u0007') this.frame = text;
		return true;
	}
}

/** Stands for the keyboard: what is emitted as data was typed. */
class Typed extends EventEmitter {
	setRawMode(): void {}
	resume(): void {}
	pause(): void {}
}

/** The frames of a scene with their escape sequences: one, or each page that it is turned through. */
export async function framesOf(scene: Scene, size: Size, look: Look): Promise<readonly string[]> {
	const shown = new Shown(scene.size ?? size);
	const typed = new Typed();
	const feed = new KeyFeed(typed);
	feed.start();
	const app = render(scene.show({feed, look, size: scene.size ?? size}), {
		stdout: shown as unknown as NodeJS.WriteStream,
		stdin: feed as unknown as NodeJS.ReadStream,
		debug: true,
		exitOnCtrlC: false,
		patchConsole: false,
		isScreenReaderEnabled: look.screenReader,
	});
	const press = async (keys: string): Promise<void> => {
		typed.emit('data', Buffer.from(keys));
		await turns(turnsPerKey * ([...keys].length + 1));
		mock.timers.tick(50);
		await turns(turnsPerKey);
	};
	try {
		await turns(turnsToMount);
		for (const keys of scene.keys ?? []) await press(keys);
		// Each second of a countdown is set going by the one before.
		for (let goneMs = 0; goneMs < (scene.waitMs ?? 0); goneMs += 100) {
			mock.timers.tick(100);
			await turns(goneMs % 1000 === 0 ? turnsPerKey : 2);
		}
		await turns(turnsPerKey);
		const frames = [shown.frame];
		for (let page = 1; page < mostPages; page++) {
			await press(KEYS.pageDown);
			if (frames.includes(shown.frame)) break;
			frames.push(shown.frame);
		}
		return frames.map((frame) => frame.replace(/\n$/, ''));
	} finally {
		app.unmount();
		feed.stop();
	}
}
