import type {PastCheck} from '../check/past-check.js';
import {didYouMean} from '../desk/did-you-mean.js';
import {pastCells} from '../pages/beside/past-labels.js';
import {namesOf} from '../results/years/arms.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {withPastRows} from './past-rows.js';
import {printOut, refuseWith, sayFault} from './print.js';

const say = words.commands.list;

type Options = {
	readonly arm?: string | undefined;
	readonly limit?: number | undefined;
	readonly as: string;
	readonly data?: string | undefined;
};

/** `armdrift list`: the past checks, newest first. @returns exit status */
export function runList({arm, limit, as, data}: Options): Promise<number> {
	// The newest checks of one arm may lie far back.
	const read = arm === undefined && limit !== undefined ? {data, limit} : {data};
	return withPastRows(read, (all, shelf) => {
		const names = arm === undefined ? undefined : new Set(namesOf(arm.trim(), shelf.profiles()));
		const rows = (names ? all.filter((one) => names.has(one.arm)) : all).slice(0, limit);
		if (rows.length === 0 && arm !== undefined) {
			const known = new Set(all.map((one) => one.arm));
			return refuseWith(say.noneOfArm({arm: arm.trim(), meant: didYouMean(arm.trim(), [...known])}));
		}
		if (as === 'json') return printOut(asJson(rows));
		if (rows.length > 0) return printOut(columns(pastCells(rows)));
		sayFault(say.none(shelf));
		return EXIT.done;
	});
}

/** A list with one check a line: whole for a parser, and fit for tools that know only lines. */
const asJson = (rows: readonly PastCheck[]): string =>
	rows.length === 0 ? '[]\n' : `[\n${rows.map((row) => JSON.stringify(row)).join(',\n')}\n]\n`;
