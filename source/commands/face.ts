import {hindranceOf} from '../desk/hindrance.js';
import type {StoreErrorCode} from '../store/store-error.js';
import {type Environment, readEnvironment} from '../terminal/environment.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import type {Opened, PracticeDesk} from '../workbench.js';
import {refuseWith} from './print.js';
import type {Seat} from './seat.js';

export type FaceFlags = {readonly plain?: boolean; readonly color: boolean};

/** What a face begins with. */
export type Start = {
	readonly seat: Seat;
	/** The workbench, where practice comes first. */
	readonly desk?: PracticeDesk | undefined;
	/** A check to begin with, instead of the first screen; or why there is none. */
	readonly opened?: Opened;
	/** Something to say on the first screen. */
	readonly notice?: string;
};

export type InkStart = Start & {readonly environment: Environment};

/** Picks the face that the terminal can show, and begins there. @returns exit status */
export async function onFace(flags: FaceFlags, begin: () => Promise<Start>): Promise<number> {
	const environment = readEnvironment({
		variables: process.env,
		inputIsTerminal: process.stdin.isTTY === true,
		outputIsTerminal: process.stdout.isTTY === true,
		platform: process.platform,
		plain: flags.plain ?? false,
		color: flags.color,
	});
	const {face} = environment;
	if (face === 'none') return refuseWith(words.terminal.noTerminal);
	try {
		const start = await begin();
		if (start.opened?.ok === false)
			return refuseWith(start.opened.sentence, start.opened.locked ? EXIT.locked : EXIT.cannotReadOrWrite);
		if (face === 'plain') {
			const {runPlain} = await import('./plain-face.js');
			return await runPlain(start);
		}
		const {runInk} = await import('./ink-face.js');
		return await runInk({...start, environment});
	} catch (error) {
		const {code, sentence} = hindranceOf(error);
		return refuseWith(sentence, statusOf(code));
	}
}

/** What is not there was named wrongly; all else is the disk. */
function statusOf(code: StoreErrorCode): number {
	if (code === 'locked') return EXIT.locked;
	return code === 'missing' ? EXIT.usage : EXIT.cannotReadOrWrite;
}
