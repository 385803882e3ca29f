import path from 'node:path';
import {createInterface} from 'node:readline';
import {dataDirectory} from '../../store/data-directory.js';
import {StoreError} from '../../store/store-error.js';
import {EXIT, ExitPaths} from '../../terminal/exit-paths.js';
import {printable} from '../../terminal/printable.js';
import {didYouMean} from '../did-you-mean.js';
import {printOut, sayFault} from '../print-out.js';
import {Shelf} from '../shelf.js';
import {type ArmOnFile, armOnFile, isOpenOn} from './arm-on-file.js';
import {backupPlace} from './back-up.js';
import {asTyped, goingLines, goneLines} from './delete-lines.js';
import {Deletion} from './deletion.js';

type Options = {
	readonly arm?: string | undefined;
	/** The arm's name once more, as on a command line that nobody watches. */
	readonly name?: string | undefined;
	readonly backup?: string | undefined;
	readonly data?: string | undefined;
	readonly version: string;
};

/**
 * `armdrift delete`: an arm with its checks, what is noted beside them and its profile, after its name was typed and a
 * back-up of all of it is on the disk.
 * @returns exit status
 */
export async function runDeleteCommand(options: Options): Promise<number> {
	const {arm, data} = options;
	if (arm === undefined) return refuse('Name the arm to delete: armdrift delete --arm NAME.');
	try {
		const shelf = new Shelf(dataDirectory({flag: data, env: process.env}), () => new Date());
		return await underLock(shelf, arm.trim(), options);
	} catch (error) {
		if (!(error instanceof StoreError)) throw error;
		sayFault(error.sentence);
		if (error.code === 'locked') return EXIT.locked;
		const mustNotReplace = error.code === 'blocked' && error.file === path.resolve(options.backup ?? '');
		return mustNotReplace ? EXIT.usage : EXIT.cannotReadOrWrite;
	}
}

function refuse(sentence: string): number {
	sayFault(sentence);
	return EXIT.usage;
}

const canAsk = (): boolean => process.stdin.isTTY === true && process.stdout.isTTY === true;
const nobodyToAsk =
	'Nothing was deleted: without a terminal to ask at, give the name of the arm once more with --name.';

/** From the look at the data folder to the last file that goes nobody else writes. */
async function underLock(shelf: Shelf, arm: string, options: Options): Promise<number> {
	const deletion = new Deletion(shelf, options.version);
	const paths = new ExitPaths({partingText: () => `${deletion.stoppedText}\n`});
	paths.install();
	const lock = shelf.store.lock();
	if (!lock.held) throw new StoreError('locked', lock.file, lock.sentence);
	paths.onLeave(deletion.discard);
	paths.onLeave(lock.release);
	try {
		sayFault(...lock.notices);
		const found = armOnFile(shelf, arm);
		sayFault(...shelf.notices);
		if (!found) return refuse(unknownArm(shelf, arm));
		if (isOpenOn(shelf.store.draft().check, found)) return refuse(openCheck(found));
		if (options.name === undefined && !canAsk()) return refuse(nobodyToAsk);
		const file = path.resolve(options.backup ?? backupPlace(shelf.dataDir, found.name, new Date()));
		const shown = await printLines(goingLines(found, file));
		if (shown !== EXIT.done) return shown;
		const given = options.name ?? (await typedName());
		if (given === undefined) return inputEnded();
		if (!isSameText(given, found.name)) return refuse(otherName(given, found));
		await deletion.run(found, file);
		return await printLines(goneLines(found, file, wayBack(file, options.data)));
	} catch (error) {
		if (!(error instanceof StoreError)) throw error;
		throw new StoreError(error.code, error.file, `${error.sentence} ${deletion.stoppedText}`, error);
	} finally {
		lock.release();
	}
}

const printLines = (lines: readonly string[]): Promise<number> =>
	printOut(lines.map((line) => `${printable(line)}\n`).join(''));

/** The next line from the terminal; undefined where the input ends. */
async function typedName(): Promise<string | undefined> {
	// Not in raw mode, so that the terminal itself makes a signal of Ctrl+C.
	const reader = createInterface({input: process.stdin, terminal: false});
	try {
		await printOut('Type the name of the arm to delete it: ');
		for await (const line of reader) return line;
		return;
	} finally {
		reader.close();
	}
}

function inputEnded(): number {
	sayFault('', 'Nothing was deleted: the input ended.');
	return EXIT.leftOpen;
}

// One letter with an accent can be typed as one character or as two.
const isSameText = (one: string, other: string): boolean => one.trim().normalize() === other.normalize();

const otherName = (given: string, {name}: ArmOnFile): string =>
	`Nothing was deleted: "${given.trim()}" is not the name of the arm, which is "${name}".`;

const openCheck = ({name}: ArmOnFile): string =>
	`Nothing was deleted: a check of "${name}" is open. Start armdrift and finish it, or start another one, which files it as interrupted; then delete again.`;

function unknownArm(shelf: Shelf, arm: string): string {
	const known = new Set([
		...shelf.all().map((row) => row.arm),
		...shelf.profiles().flatMap(({kind, name}) => (kind === 'arm' ? [name] : [])),
	]);
	const meant = didYouMean(arm, [...known]);
	const way = meant === undefined ? 'see "armdrift list" for the arms that have checks.' : `did you mean "${meant}"?`;
	return `Nothing was deleted: there is no arm called "${arm}"; ${way}`;
}

const wayBack = (file: string, data: string | undefined): string =>
	['armdrift', ...(data === undefined ? [] : ['--data', asTyped(data)]), 'import', asTyped(file)].join(' ');
