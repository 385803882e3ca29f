import type {Hindrance} from '../desk/hindrance.js';
import {readEnvironment} from '../terminal/environment.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {orRefuse, refuseWith} from './print.js';
import type {Start} from './seat.js';

export type FaceFlags = {readonly plain?: boolean; readonly color: boolean};

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
	return orRefuse(async () => {
		const start = await begin();
		if (start.opened?.ok === false)
			return refuseWith(start.opened.sentence, start.opened.locked ? EXIT.locked : EXIT.cannotReadOrWrite);
		if (face === 'plain') {
			const {runPlain} = await import('./plain-face.js');
			return await runPlain(start);
		}
		const {runInk} = await import('./ink-face.js');
		return await runInk({...start, environment});
	}, isMissing);
}

/** What is not there was named wrongly; all else is the disk. */
const isMissing = ({code}: Hindrance): boolean => code === 'missing';
