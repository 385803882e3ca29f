import type {MeasuredWith, PastCheck, PastProbe} from '../check/past-check.js';

/** A summary with the size and time of the file it was taken from. */
export type IndexRow = {readonly sizeBytes: number; readonly changedMs: number; readonly summary: PastCheck};

/** Bare lists without names: ten thousand rows are read in one go, and names would double the time for it. */
type PackedRow = readonly unknown[];

const CONDITIONS_AT = 9;
const FIXED_FIELDS = 20;
const PROBE_FIELDS = 8;

const packProbe = (probe: PastProbe): PackedRow => [
	probe.place,
	probe.radiusMm,
	probe.pullPct,
	probe.pullUncertaintyPct,
	probe.bandPct,
	probe.bandUncertaintyPct,
	probe.tiltPct,
	probe.tiltUncertaintyPct,
];

const packConditions = (measured: MeasuredWith | null): PackedRow =>
	measured === null
		? [null, null, null, null, null, null, null]
		: [
				measured.playingMn,
				measured.effectiveLengthMm,
				measured.loading,
				measured.guard,
				measured.tools,
				measured.temperatureC,
				measured.withoutSettingUp,
			];

export const packRow = ({sizeBytes, changedMs, summary}: IndexRow): PackedRow => [
	summary.id,
	sizeBytes,
	changedMs,
	summary.date,
	summary.startedAt,
	summary.arm,
	summary.outcome,
	summary.verdict,
	summary.atWorst,
	...packConditions(summary.measuredWith),
	summary.doneSince,
	summary.doneNote,
	summary.nextDate,
	summary.tookMinutes,
	...summary.probe.flatMap(packProbe),
];

const isNumberOrNull = (value: unknown): value is number | null => value === null || typeof value === 'number';
const isTextOrNull = (value: unknown): value is string | null => value === null || typeof value === 'string';
const isTexts = (value: unknown): value is readonly string[] =>
	Array.isArray(value) && value.every((one) => typeof one === 'string');

const unpackProbe = (packed: PackedRow, at: number): PastProbe | undefined => {
	// By number, not by destructuring: that would make ten thousand short-lived lists.
	const place = packed[at];
	const radiusMm = packed[at + 1];
	const pullPct = packed[at + 2];
	const pullUncertaintyPct = packed[at + 3];
	const bandPct = packed[at + 4];
	const bandUncertaintyPct = packed[at + 5];
	const tiltPct = packed[at + 6];
	const tiltUncertaintyPct = packed[at + 7];
	if (typeof place !== 'string' || typeof radiusMm !== 'number') return undefined;
	if (!isNumberOrNull(pullPct) || !isNumberOrNull(pullUncertaintyPct)) return undefined;
	if (!isNumberOrNull(bandPct) || !isNumberOrNull(bandUncertaintyPct)) return undefined;
	if (!isNumberOrNull(tiltPct) || !isNumberOrNull(tiltUncertaintyPct)) return undefined;
	return {place, radiusMm, pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct, tiltPct, tiltUncertaintyPct};
};

/** Null where the check has none; undefined where the list is none of ours, or of before there were any. */
const unpackConditions = (packed: PackedRow): MeasuredWith | null | undefined => {
	const playingMn = packed[CONDITIONS_AT];
	if (playingMn === null) return null;
	const effectiveLengthMm = packed[CONDITIONS_AT + 1];
	const loading = packed[CONDITIONS_AT + 2];
	const guard = packed[CONDITIONS_AT + 3];
	const tools = packed[CONDITIONS_AT + 4];
	const temperatureC = packed[CONDITIONS_AT + 5];
	const withoutSettingUp = packed[CONDITIONS_AT + 6];
	if (typeof playingMn !== 'number' || typeof effectiveLengthMm !== 'number') return undefined;
	if (typeof loading !== 'string' || typeof guard !== 'string' || typeof tools !== 'string') return undefined;
	if (!isNumberOrNull(temperatureC) || typeof withoutSettingUp !== 'boolean') return undefined;
	return {playingMn, effectiveLengthMm, loading, guard, tools, temperatureC, withoutSettingUp};
};

const isPacked = (value: unknown): value is PackedRow => Array.isArray(value);

/** The row, or `undefined` where the list is none of ours. */
export const unpackRow = (packed: unknown): IndexRow | undefined => {
	if (!isPacked(packed)) return undefined;
	const id = packed[0];
	const sizeBytes = packed[1];
	const changedMs = packed[2];
	const date = packed[3];
	const startedAt = packed[4];
	const arm = packed[5];
	const outcome = packed[6];
	const verdict = packed[7];
	const atWorst = packed[8];
	if (typeof sizeBytes !== 'number' || typeof changedMs !== 'number') return undefined;
	if (typeof id !== 'string' || typeof date !== 'string' || typeof startedAt !== 'string') return undefined;
	if (typeof arm !== 'string' || typeof outcome !== 'string') return undefined;
	if (!isTextOrNull(verdict) || !isTextOrNull(atWorst)) return undefined;
	const doneSince = packed[FIXED_FIELDS - 4];
	const doneNote = packed[FIXED_FIELDS - 3];
	const nextDate = packed[FIXED_FIELDS - 2];
	const tookMinutes = packed[FIXED_FIELDS - 1];
	const measuredWith = unpackConditions(packed);
	if (measuredWith === undefined || !isTextOrNull(nextDate)) return undefined;
	if (!isTexts(doneSince) || !isTextOrNull(doneNote) || !isNumberOrNull(tookMinutes)) return undefined;
	const probe: PastProbe[] = [];
	for (let at = FIXED_FIELDS; at < packed.length; at += PROBE_FIELDS) {
		const place = unpackProbe(packed, at);
		if (place === undefined) return undefined;
		probe.push(place);
	}
	return {
		sizeBytes,
		changedMs,
		summary: {
			id,
			date,
			startedAt,
			arm,
			outcome,
			verdict,
			atWorst,
			probe,
			measuredWith,
			doneSince,
			doneNote,
			nextDate,
			tookMinutes,
		},
	};
};
