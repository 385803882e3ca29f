/** Something that was done to an arm or its deck: a kind as in `doneKinds`, and the day on the wall calendar, `2026-11-25`. */
export type ArmEvent = {readonly kind: string; readonly on: string; readonly note?: string | undefined};

/** The same, noted at some time outside a check; one that was wrong is struck out, and stays. */
export type NotedEvent = ArmEvent & {
	/** When it was noted, with its offset. */
	readonly at: string;
	readonly struckAt?: string | undefined;
};
