import path from 'node:path';
import {type Hindrance, hindranceOf} from '../desk/hindrance.js';
import {EXIT} from '../terminal/exit-paths.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {watchOutput, writeOut} from './write-out.js';

/**
 * Writes to standard output. A full disk is said in a sentence; a reader that went away (`| head`) is no fault worth one.
 * @returns exit status: 0, or 1 where it could not be written
 */
export async function printOut(text: string): Promise<number> {
	const code = await writeOut(text);
	return code === undefined ? EXIT.done : outputLost(code);
}

/** Says why standard output could not be written. @returns exit status */
export function outputLost(code: string): number {
	if (code !== 'EPIPE') sayFault(words.commands.outputFailed({code}));
	return EXIT.cannotReadOrWrite;
}

/** Writes lines to standard output, each made safe to show. @returns exit status */
export const printLines = (lines: readonly string[]): Promise<number> =>
	printOut(lines.map((line) => `${printable(line)}\n`).join(''));

/** One sentence, or several, on standard error. */
export function sayFault(...sentences: readonly string[]): void {
	watchOutput();
	for (const sentence of sentences) process.stderr.write(`${printable(sentence)}\n`);
}

/** One sentence on standard error, and the status to leave with. */
export function refuseWith(sentence: string, status: number = EXIT.usage): number {
	sayFault(sentence);
	return status;
}

/**
 * Runs a command, or says in a sentence what of the disk came in its way.
 * @param isNamedWrongly whether it is a fault of the command line
 * @returns exit status
 */
export async function orRefuse(
	work: () => number | Promise<number>,
	isNamedWrongly: (hindrance: Hindrance) => boolean = () => false,
): Promise<number> {
	try {
		return await work();
	} catch (error) {
		const hindrance = hindranceOf(error);
		if (hindrance.code === 'locked') return refuseWith(hindrance.sentence, EXIT.locked);
		return refuseWith(hindrance.sentence, isNamedWrongly(hindrance) ? EXIT.usage : EXIT.cannotReadOrWrite);
	}
}

/** Whether something stands where a file was to go. */
export const isBlocked = ({code}: Hindrance): boolean => code === 'blocked';

/** Whether a file that was named is there already, and must not be replaced. */
export const mustNotReplace =
	(named: string | undefined) =>
	({code, file}: Hindrance): boolean =>
		code === 'blocked' && named !== undefined && file === path.resolve(named);

/** Whether somebody sits there who can be asked. */
export const canAsk = (): boolean => process.stdin.isTTY === true && process.stdout.isTTY === true;
