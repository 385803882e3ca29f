/** One line of the list of past checks. */
export type PastCheck = {
	readonly id: string;
	/** Day on the wall calendar where the check was made, `2026-11-25`. */
	readonly date: string;
	/** ISO time of the start. */
	readonly startedAt: string;
	/** Name of the arm as typed. */
	readonly arm: string;
	readonly outcome: string;
	/** `null` where the check came to no verdict. */
	readonly verdict: string | null;
	readonly atWorst: string | null;
	readonly probe: readonly PastProbe[];
};

export type PastProbe = {
	readonly place: string;
	readonly radiusMm: number;
	readonly pullPct: number | null;
	readonly pullUncertaintyPct: number | null;
	readonly bandPct: number | null;
	readonly bandUncertaintyPct: number | null;
};
