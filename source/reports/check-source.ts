import type {PastCheck} from '../check/past-check.js';
import type {FinishedCheck} from '../results/record.js';
import type {Voids} from '../results/voids.js';

/** Everything that a report on one check is made from. */
export type CheckSource = {
	readonly record: FinishedCheck;
	/** Time at which the deck was put back, where that was done later. */
	readonly putBackAt?: string | undefined;
	/** Whether it is marked void, and marks of that kind that were taken back. */
	readonly voids?: Voids;
	/** Earlier checks of the same arm that count, newest first. */
	readonly history: readonly PastCheck[];
};

/** What is printed at the end of every report. */
export type Imprint = {
	/** Version of the program that writes the report. */
	readonly version: string;
	/** Day on which it is written, `2026-11-25`. */
	readonly writtenOn: string;
};
