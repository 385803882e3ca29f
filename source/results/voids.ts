import {readText} from '../procedure/read-answer.js';

/** Whether a past check is marked void, and marks of that kind that were taken back. */
export type Voids = {
	readonly voided?: {readonly reason: string; readonly at: string} | undefined;
	readonly formerVoids?:
		| readonly {readonly reason: string; readonly at: string; readonly takenBackAt: string}[]
		| undefined;
	/** What is noted beside the check cannot be read: why, with the way out. Then nobody knows whether it is void. */
	readonly unknownBecause?: string | undefined;
};

/** Whether a check is known to count. */
export const isKnownToCount = ({voided, unknownBecause}: Voids = {}): boolean =>
	voided === undefined && unknownBecause === undefined;

/** Why a check is marked void, in the order in which it is asked; the last one is typed. What is kept is its text. */
export const voidReasons = ['forgotten', 'disturbed', 'other-meant', 'tried', 'typed'] as const;
export type VoidReason = (typeof voidReasons)[number];

/** A typed reason as it is kept: one line, at most 80 letters; undefined where it is none. */
export function readReason(typed: string): string | undefined {
	const read = readText(typed.trim());
	return read.kind === 'value' ? read.typed : undefined;
}
