/** One line of the list of past checks. */
export type Summary = {
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
	readonly probe: readonly ProbeSummary[];
};

export type ProbeSummary = {
	readonly place: string;
	readonly radiusMm: number;
	readonly pullPct: number | null;
	readonly pullUncertaintyPct: number | null;
	readonly bandPct: number | null;
	readonly bandUncertaintyPct: number | null;
};

type Fields = {readonly [field: string]: unknown};

const isObject = (value: unknown): value is Fields =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
const isNumberOrNull = (value: unknown): boolean => value === null || typeof value === 'number';
const isTextOrNull = (value: unknown): boolean => value === null || typeof value === 'string';

const isProbe = (value: unknown): boolean =>
	isObject(value) &&
	typeof value.place === 'string' &&
	typeof value.radiusMm === 'number' &&
	[value.pullPct, value.pullUncertaintyPct, value.bandPct, value.bandUncertaintyPct].every(isNumberOrNull);

/** Whether something read from an index is a summary. By hand, since ten thousand of them are looked at in one go. */
export const isSummary = (value: unknown): value is Summary =>
	isObject(value) &&
	[value.id, value.date, value.startedAt, value.arm, value.outcome].every((field) => typeof field === 'string') &&
	[value.verdict, value.atWorst].every(isTextOrNull) &&
	Array.isArray(value.probe) &&
	value.probe.every(isProbe);
