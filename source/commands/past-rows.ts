import type {PastCheck} from '../check/past-check.js';
import {attempt} from '../desk/hindrance.js';
import {Shelf} from '../desk/shelf.js';
import {dataDirectory} from '../store/data-directory.js';
import {practiceFolderIn} from '../store/practice-folder.js';
import {EXIT} from '../terminal/exit-paths.js';
import {orRefuse, sayFault} from './print.js';

type RowsWanted = {
	readonly data?: string | undefined;
	/** The practice checks instead of the real ones. */
	readonly practice?: boolean | undefined;
	readonly limit?: number;
};
/** @param isSound whether nothing was wrong with any of them */
type Work = (rows: readonly PastCheck[], shelf: Shelf, isSound: boolean) => number | Promise<number>;

/**
 * Hands the past checks, newest first, to a command. What was wrong with some of them is said on standard error; where
 * none could be read the command does not run. Afterwards, what reading had to make good is kept for the next time.
 * @returns exit status of the command, or 1 where nothing could be read
 */
export function withPastRows(
	{data, practice = false, limit = Number.POSITIVE_INFINITY}: RowsWanted,
	work: Work,
): Promise<number> {
	return orRefuse(async () => {
		const dataDir = dataDirectory({flag: data, env: process.env});
		const shelf = new Shelf(practice ? practiceFolderIn(dataDir) : dataDir, () => new Date());
		const {total, rows, notices} = shelf.past({offset: 0, limit});
		sayFault(...notices);
		if (total === 0 && notices.length > 0) return EXIT.cannotReadOrWrite;
		const status = await work(rows, shelf, notices.length === 0);
		sayFault(...shelf.notices.filter((one) => !notices.includes(one)));
		if (shelf.store.isListPending()) await attempt(() => shelf.store.tidy());
		return status;
	});
}
