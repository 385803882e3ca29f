import type {ArmEvent} from '../procedure/arm-event.js';

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
	/** Under what it was measured; null where it came to no figures. */
	readonly measuredWith: MeasuredWith | null;
	/** Day of the next check; null where none was wanted. */
	readonly nextDate: string | null;
	/** What was done to the arm since the check before, by id; empty where nothing was, or nobody was asked. */
	readonly doneSince: readonly string[];
	/** What was done in words, where it was something else. */
	readonly doneNote: string | null;
	/** What was noted later as done between this check and the next one of the arm; not in the index. */
	readonly doneAfter?: readonly ArmEvent[];
	/** Minutes that hands were at it, long silences left out; null where it came to no end. */
	readonly tookMinutes: number | null;
	/** Why it does not count, where it was marked void later. */
	readonly voidBecause?: string;
	/** What is noted beside it cannot be read, so nobody knows whether it was marked void. */
	readonly isVoidUnknown?: true;
};

/** Whether a check counts for sure: nobody marked it void, and what is noted beside it can be read. */
export const isCounted = ({voidBecause, isVoidUnknown}: Pick<PastCheck, 'voidBecause' | 'isVoidUnknown'>): boolean =>
	voidBecause === undefined && isVoidUnknown !== true;

/** What must agree, or be said, when two checks are compared. */
export type MeasuredWith = {
	readonly playingMn: number;
	readonly effectiveLengthMm: number;
	readonly loading: string;
	/** How the stylus guard was handled in the weighing. */
	readonly guard: string;
	/** Name of the set of gauge, scale and level. */
	readonly tools: string;
	/** Room temperature in °C; null when not known. */
	readonly temperatureC: number | null;
	/** Its uncertainties leave out what setting arm and gauge up makes: it was issued before they held that. */
	readonly withoutSettingUp: boolean;
};

export type PastProbe = {
	readonly place: string;
	readonly radiusMm: number;
	readonly pullPct: number | null;
	readonly pullUncertaintyPct: number | null;
	readonly bandPct: number | null;
	readonly bandUncertaintyPct: number | null;
	/** What the tilt makes of the pull, and its uncertainty (95 %); null without level readings. */
	readonly tiltPct: number | null;
	readonly tiltUncertaintyPct: number | null;
};
