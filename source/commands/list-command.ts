import type {PastCheck} from '../check/past-check.js';
import {pastCells} from '../pages/beside/past-list.js';
import {namesOf} from '../results/years/arms.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {didYouMean} from './did-you-mean.js';
import {withPastRows} from './past-rows.js';
import {printOut, sayFault} from './print-out.js';

type Options = {
	readonly arm?: string | undefined;
	readonly limit?: number | undefined;
	readonly as: string;
	readonly data?: string | undefined;
};

/** `armdrift list`: the past checks, newest first. @returns exit status */
export function runListCommand({arm, limit, as, data}: Options): Promise<number> {
	// The newest checks of one arm may lie far back.
	const read = arm === undefined && limit !== undefined ? {data, limit} : {data};
	return withPastRows(read, (all, shelf) => {
		const names = arm === undefined ? undefined : new Set(namesOf(arm.trim(), shelf.profiles()));
		const rows = (names ? all.filter((one) => names.has(one.arm)) : all).slice(0, limit);
		if (rows.length === 0 && arm !== undefined) return refuse(arm.trim(), all);
		if (as === 'json') return printOut(asJson(rows));
		if (rows.length > 0) return printOut(columns(pastCells(rows)));
		sayFault(`There are no past checks in "${shelf.dataDir}".`);
		return EXIT.done;
	});
}

function refuse(arm: string, all: readonly PastCheck[]): number {
	const meant = didYouMean(arm, [...new Set(all.map((one) => one.arm))]);
	const way = meant === undefined ? 'see "armdrift list" for the arms that have any' : `did you mean "${meant}"?`;
	sayFault(`There is no past check of "${arm}"; ${way.replace(/[^?]$/, '$&.')}`);
	return EXIT.usage;
}

/** A list with one check a line: whole for a parser, and fit for tools that know only lines. */
const asJson = (rows: readonly PastCheck[]): string =>
	rows.length === 0 ? '[]\n' : `[\n${rows.map((row) => JSON.stringify(row)).join(',\n')}\n]\n`;
