import {isCounted, type PastCheck} from '../../check/past-check.js';

/** Which past checks are wanted; all of them where nothing is said. */
export type PastFilter = {
	/** Every name that the arm has had. */
	readonly armNames?: readonly string[];
	/** Four digits. */
	readonly year?: string;
	readonly verdict?: string;
};

export const isFiltered = ({armNames, year, verdict}: PastFilter): boolean =>
	armNames !== undefined || year !== undefined || verdict !== undefined;

/** What a check came to, as a filter asks for it: its verdict, that it is void or nobody knows, or that it came to none. */
export const cameTo = (past: PastCheck): string => {
	if (isCounted(past)) return past.verdict ?? 'none';
	return past.isVoidUnknown ? 'not-known' : 'void';
};

/** The checks that are wanted, in the same order. */
export const filtered = (all: readonly PastCheck[], {armNames, year, verdict}: PastFilter): readonly PastCheck[] =>
	all.filter(
		(one) =>
			(armNames === undefined || armNames.includes(one.arm)) &&
			(year === undefined || one.date.startsWith(year)) &&
			(verdict === undefined || cameTo(one) === verdict),
	);
