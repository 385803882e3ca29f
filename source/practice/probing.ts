import {advance, isMoving, readingShown} from './advance.js';
import {lookedFor, type PracticeArm, placeGauge, type SwingWay, stillForMs, withFinger} from './practice-arm.js';

/** A time at rest between two movements: when it began, what the gauge showed meanwhile, and how long it lasted. */
export type Rest = {
	readonly sinceMs: number;
	readonly lowPct: number;
	readonly highPct: number;
	readonly stillMs: number;
};

/** An arm on its gauge with a finger at it, and what is noted while one limit is looked for. */
export type Probing = {
	readonly arm: PracticeArm;
	/** Oldest first. */
	readonly rests: readonly Rest[];
	readonly nudges: number;
	/** Nudges on an arm that moved, or had only just come to rest. */
	readonly hurried: number;
	/** How often the arm went back by itself after a nudge. */
	readonly lettingGo: number;
	/** The way of the latest nudge, as long as the arm has not gone back from it. */
	readonly nudged: SwingWay | null;
	/** How many of the latest nudges, all of one size and one way, the arm went back from; others of them may have held. */
	readonly inVain: {readonly way: SwingWay; readonly pct: number; readonly times: number} | null;
};

/** A nudge sooner than this after the last movement is hasty; invented: about the time that the eye needs. */
export const hastyMs = 800;

/** What is looked at in one piece: the gauge shows anew five times a second. */
const lookMs = 50;

const anew = {rests: [], nudges: 0, hurried: 0, lettingGo: 0, nudged: null, inVain: null} as const;

/** The gauge is put under the arm at a radius, and the arm let go on it. */
export const probingAt = (arm: PracticeArm, radiusMm: number, isTurned: boolean): Probing => ({
	...anew,
	arm: placeGauge(arm, radiusMm, isTurned),
});

/** The arm stays where it is, and the next limit is looked for. */
export const nextLimit = ({arm}: Pick<Probing, 'arm'>): Probing => ({...anew, arm: lookedFor(arm)});

/** So many ms later. It is looked at by the clock of the arm, so that splitting a time gives the same as the whole. */
export function passed(probing: Probing, ms: number): Probing {
	const endMs = probing.arm.timeMs + ms;
	let now = probing;
	while (now.arm.timeMs < endMs) {
		const lookAtMs = (Math.floor(now.arm.timeMs / lookMs) + 1) * lookMs;
		const arm = advance(now.arm, Math.min(endMs, lookAtMs) - now.arm.timeMs);
		now = arm.timeMs === lookAtMs ? looked({...now, arm}) : {...now, arm};
	}
	return now;
}

function looked(now: Probing): Probing {
	const {arm} = now;
	if (isMoving(arm)) return goesBack(now) ? letGo(now) : now;
	const shownPct = readingShown(arm);
	if (shownPct === null) return now;
	const last = now.rests.at(-1);
	const stillMs = stillForMs(arm);
	const sinceMs = arm.movedAtMs;
	if (last?.sinceMs !== sinceMs)
		return {...now, rests: [...now.rests, {sinceMs, lowPct: shownPct, highPct: shownPct, stillMs}]};
	const {lowPct, highPct} = last;
	const rest = {sinceMs, lowPct: Math.min(lowPct, shownPct), highPct: Math.max(highPct, shownPct), stillMs};
	return {...now, rests: [...now.rests.slice(0, -1), rest]};
}

const letGo = (now: Probing): Probing => ({
	...now,
	lettingGo: now.lettingGo + 1,
	nudged: null,
	inVain: now.inVain && {...now.inVain, times: now.inVain.times + 1},
});

/** Whether the arm, left to itself, moves against the nudge. */
const goesBack = ({arm, nudged}: Probing): boolean =>
	nudged !== null && arm.finger === null && swingWay(arm) !== null && swingWay(arm) !== nudged;

/** The way in which the arm moves by itself; null while it is still, or pushed. */
export function swingWay({rateRadPerS, finger}: PracticeArm): SwingWay | null {
	if (finger !== null || rateRadPerS === 0) return null;
	return rateRadPerS > 0 ? 'out' : 'in';
}

/** How much a push moves the arm, as percent on the gauge, and how quickly. */
export type Push = {readonly pct: number; readonly quicknessMmPerS: number};

/** Nudges the arm. One that still moves, or was not looked at, is nudged in haste. */
export function nudged(probing: Probing, way: SwingWay, {pct, quicknessMmPerS}: Push): Probing {
	const {arm} = probing;
	const isAlike = probing.inVain?.way === way && probing.inVain.pct === pct;
	const isHasty = isMoving(arm) || stillForMs(arm) < hastyMs;
	return {
		...probing,
		arm: withFinger(arm, pct / arm.spec.gauge.restoringPctPerMm, way, quicknessMmPerS),
		nudges: probing.nudges + 1,
		hurried: probing.hurried + (isHasty && probing.nudges > 0 ? 1 : 0),
		nudged: way,
		inVain: isAlike ? probing.inVain : {way, pct, times: 0},
	};
}

/**
 * For how long, in ms, the arm was at rest with a reading on the gauge: the longest time, counted up to one step beside what
 * was shown, since a reading may be typed halfway; null where the gauge never showed it at rest.
 */
export function restWith(shownPct: number, {rests, arm}: Probing): number | null {
	const {stepPct} = arm.spec.gauge;
	const fitting = rests.filter(({lowPct, highPct}) => shownPct >= lowPct - stepPct && shownPct <= highPct + stepPct);
	return fitting.length === 0 ? null : Math.max(...fitting.map(({stillMs}) => stillMs));
}
