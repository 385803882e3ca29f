import {dataDirectory} from '../store/data-directory.js';
import {markOfList, readView} from '../store/kept-view.js';
import {EXIT} from '../terminal/exit-paths.js';
import type {ListOptions} from './list-rows.js';
import {writeOut} from './write-out.js';

/**
 * `armdrift list`: the past checks, newest first. The whole list of many checks is printed as it was kept the last time,
 * where nothing that it was taken from has changed; to print it needs next to nothing of the program.
 * @returns exit status
 */
export async function runList(options: ListOptions): Promise<number> {
	const mark = isWhole(options) ? markIn(options.data) : undefined;
	const kept = mark && readView(mark.dataDir, 'list', mark.mark);
	if (kept) {
		const code = await writeOut(kept);
		if (code === undefined) return EXIT.done;
		const {outputLost} = await import('./print.js');
		return outputLost(code);
	}
	const {printRows} = await import('./list-rows.js');
	return printRows(options, mark?.mark);
}

const isWhole = ({arm, verdict, since, until, limit, as}: ListOptions): boolean =>
	as === 'text' && [arm, verdict, since, until, limit].every((one) => one === undefined);

function markIn(data: string | undefined): {readonly dataDir: string; readonly mark: string} | undefined {
	try {
		const dataDir = dataDirectory({flag: data, env: process.env});
		const mark = markOfList(dataDir);
		return mark === undefined ? undefined : {dataDir, mark};
	} catch {
		// Whoever reads the rows says why.
		return undefined;
	}
}
