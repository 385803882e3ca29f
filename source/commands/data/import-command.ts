import path from 'node:path';
import {createInterface} from 'node:readline';
import {dataDirectory} from '../../store/data-directory.js';
import {StoreError} from '../../store/store-error.js';
import {EXIT, ExitPaths} from '../../terminal/exit-paths.js';
import {printable} from '../../terminal/printable.js';
import {printOut, sayFault} from '../print-out.js';
import {type CheckStore, storeOf} from '../shelf.js';
import {Addition} from './addition.js';
import {ImportFile} from './import-file.js';
import {addsNothing, checkedIds, importPlan} from './import-plan.js';
import {addedLine, planLines} from './plan-lines.js';

type Options = {readonly file: string; readonly yes?: boolean | undefined; readonly data?: string | undefined};

/** Broken or foreign content is bad input; everything else could not be read or written. */
const statusOf = ({code}: StoreError): number => {
	if (code === 'damaged' || code === 'missing') return EXIT.usage;
	return code === 'locked' ? EXIT.locked : EXIT.cannotReadOrWrite;
};

/**
 * `armdrift import`: shows what of an export is new here, and adds it after a yes. The whole file is looked at before
 * anything is written, and nothing that is here is ever replaced.
 * @returns exit status
 */
export async function runImportCommand({file, yes = false, data}: Options): Promise<number> {
	try {
		const dataDir = dataDirectory({flag: data, env: process.env});
		const opened = new ImportFile(file);
		try {
			const store = storeOf(dataDir, () => new Date(), sayFault);
			return await imported({opened, name: path.basename(file), store, yes});
		} finally {
			opened.close();
		}
	} catch (error) {
		if (!(error instanceof StoreError)) throw error;
		sayFault(error.sentence);
		return statusOf(error);
	}
}

type Import = {readonly opened: ImportFile; readonly name: string; readonly store: CheckStore; readonly yes: boolean};

async function imported(one: Import): Promise<number> {
	const ids = checkedIds(one.opened);
	const canAsk = process.stdin.isTTY === true && process.stdout.isTTY === true;
	if (one.yes || canAsk) return underLock(one, ids);
	const plan = importPlan(one.opened, ids, one.store);
	const shown = await printLines(planLines(one.name, one.opened, plan));
	if (shown !== EXIT.done || addsNothing(plan)) return shown;
	sayFault('Nothing was added: without a terminal to ask at, use --yes.');
	return EXIT.usage;
}

/** From the look at the data folder to the last write nobody else writes. */
async function underLock({opened, name, store, yes}: Import, ids: readonly string[]): Promise<number> {
	const addition = new Addition(opened, store);
	const paths = new ExitPaths({partingText: () => addition.stoppedText()});
	paths.install();
	const lock = store.lock();
	if (!lock.held) throw new StoreError('locked', lock.file, lock.sentence);
	paths.onLeave(lock.release);
	try {
		sayFault(...lock.notices);
		const plan = importPlan(opened, ids, store);
		const shown = await printLines(planLines(name, opened, plan));
		if (shown !== EXIT.done || addsNothing(plan)) return shown;
		if (!yes && !(await isConfirmed())) return await printLines(['Nothing was changed.']);
		await addition.run(plan);
		return await printLines([addedLine(plan)]);
	} finally {
		lock.release();
	}
}

const printLines = (lines: readonly string[]): Promise<number> =>
	printOut(lines.map((line) => `${printable(line)}\n`).join(''));

/** Asks until there is a y or an n; the end of input is a no. */
async function isConfirmed(): Promise<boolean> {
	const question = 'Add what is new? y / n ';
	// Not in raw mode, so that the terminal itself makes a signal of Ctrl+C.
	const reader = createInterface({input: process.stdin, terminal: false});
	try {
		await printOut(question);
		for await (const line of reader) {
			if (/^\s*y(es)?\s*$/i.test(line)) return true;
			if (/^\s*no?\s*$/i.test(line)) return false;
			await printOut(question);
		}
		return false;
	} finally {
		reader.close();
	}
}
