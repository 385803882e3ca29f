import {formatISO} from 'date-fns/formatISO';
import {isEmpty} from '../desk/filing.js';
import {type CheckStore, storeOf} from '../desk/stored-forms.js';
import {type CsvTableName, csvExport, jsonExport} from '../exchange/write-export.js';
import {dataDirectory} from '../store/data-directory.js';
import {TargetFile} from '../store/target-file.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';
import {mustNotReplace, orRefuse, printOut, refuseWith, sayFault} from './print.js';

const say = words.commands.exchange;

type ExportForm = 'json' | 'csv';

export type ExportFlags = {
	readonly as: ExportForm;
	/** Which table; of a form that has tables. */
	readonly table?: CsvTableName | undefined;
	/** File to write; `-` or nothing for standard output. */
	readonly out?: string | undefined;
	readonly force?: boolean | undefined;
};

type Options = ExportFlags & {readonly data?: string | undefined; readonly version: string};

/** Where an export goes. Nothing of a file is left unless it comes to its end. */
type Target = {
	/** @returns exit status; not 0 where nothing more can be written */
	readonly write: (text: string) => Promise<number>;
	readonly finish: () => void;
	readonly discard: () => void;
};

/**
 * `armdrift export`: all filed checks as JSON, one a line, or their figures as CSV, to a file or to standard output.
 * @returns exit status; 1 also where a check could not be read and is missing in the export
 */
export function runExport(options: Options): Promise<number> {
	if (options.as === 'json' && options.table) return Promise.resolve(refuseWith(say.tableOfCsv));
	return orRefuse(async () => {
		const dataDir = dataDirectory({flag: options.data, env: process.env});
		const store = storeOf(dataDir, () => new Date(), sayFault);
		const {out = '-', force = false} = options;
		const target = out === '-' ? standardOutput : fileTarget(out, force);
		try {
			return await exported({store, dataDir}, target, options);
		} finally {
			target.discard();
		}
	}, mustNotReplace(options.out));
}

const standardOutput: Target = {
	write: (text) => printOut(process.stdout.isTTY ? seenOnTerminal(text) : text),
	finish() {},
	discard() {},
};

/** Names and notes come from anywhere, and a terminal obeys control characters. */
const seenOnTerminal = (text: string): string =>
	text
		.split(/\r?\n/)
		.map((line) => printable(line))
		.join('\n');

function fileTarget(out: string, force: boolean): Target {
	const file = new TargetFile(out, {thing: {id: 'export', values: {}}, force});
	const paths = new ExitPaths();
	paths.onLeave(file.discard);
	paths.install();
	const write = async (text: string) => {
		file.write(text);
		// So that Ctrl+C is heard.
		await new Promise((resolve) => setImmediate(resolve));
		return EXIT.done;
	};
	return {write, finish: () => file.finish(), discard: file.discard};
}

const PIECE_LETTERS = 64 * 1024;

type Source = {readonly store: CheckStore; readonly dataDir: string};

async function exported(
	{store, dataDir}: Source,
	target: Target,
	{as, table, version: program}: Options,
): Promise<number> {
	const faults: string[] = [];
	const tell = (sentence: string) => {
		faults.push(sentence);
	};
	const source = {store, program, at: formatISO(new Date()), tell};
	let waiting = '';
	for (const piece of as === 'json' ? jsonExport(source) : csvExport(source, table)) {
		waiting += piece;
		if (waiting.length < PIECE_LETTERS) continue;
		const status = await target.write(waiting);
		if (status !== EXIT.done) return status;
		waiting = '';
	}
	const status = await target.write(waiting);
	if (status !== EXIT.done) return status;
	target.finish();
	sayFault(...faults, ...asides(store, dataDir));
	return faults.length === 0 ? EXIT.done : EXIT.cannotReadOrWrite;
}

/** What is not in an export, though it is in the data folder. */
function asides(store: CheckStore, dataDir: string): string[] {
	const {check, notices} = store.draft();
	const isOpen = check !== undefined && !isEmpty(check);
	return [
		...notices.map(storeText),
		...(store.ids().length === 0 ? [say.nothingFiled({dataDir})] : []),
		...(isOpen ? [say.openLeftOut] : []),
	];
}
