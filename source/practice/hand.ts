import {advance, readingShown} from './advance.js';
import {between, type Chance} from './chance.js';
import {lookedFor, offNeutralMm, type PracticeArm, placeGauge, type SwingWay, withFinger} from './practice-arm.js';
import type {Push} from './probing.js';

/** How someone probes. */
export type Habit = {
	/** Size of the nudge, in percent of the force carried. */
	readonly nudgePct: number;
	/** Size of the nudges that only look for where about the limit is. */
	readonly searchPct: number;
	/** No two nudges are alike: a share either way. */
	readonly unevenness: number;
	readonly quicknessMmPerS: number;
	readonly searchQuicknessMmPerS: number;
	/** How long they wait to see whether the arm stays. */
	readonly settleMs: number;
	/** The smallest movement that they see, in mm. */
	readonly seesMm: number;
};

/** A careful hand: quickness, unevenness and eyesight are invented, five seconds are common practice. */
export const carefulHabit = (nudgePct: number): Habit => ({
	nudgePct,
	searchPct: Math.max(1, nudgePct),
	unevenness: 0.3,
	quicknessMmPerS: 0.3,
	searchQuicknessMmPerS: 1,
	settleMs: 5000,
	seesMm: 0.05,
});

/** A hand at the arm; what it holds changes with every nudge. */
export type Hand = {arm: PracticeArm; readonly habit: Habit; readonly chance: Chance};

// Far more than lie between two ends of any scale; a hand that is still going is lost.
const mostNudges = 1000;

const shown = ({arm}: Hand): number => readingShown(arm) ?? Number.NaN;

const isAtEnd = (hand: Hand): boolean => Math.abs(shown(hand)) >= hand.arm.spec.gauge.topPct;

const signOf = (way: SwingWay): number => (way === 'out' ? 1 : -1);

/** Puts the gauge under the arm and waits until it is still. */
export function standAt(hand: Hand, radiusMm: number, isTurned = false): void {
	hand.arm = advance(placeGauge(hand.arm, radiusMm, isTurned), hand.habit.settleMs);
}

/** Nudges once and waits. @returns whether the arm stayed where it was left, as far as can be seen */
function staysAfter({pct, quicknessMmPerS}: Push, way: SwingWay, hand: Hand): boolean {
	const {habit, chance, arm} = hand;
	const uneven = 1 + habit.unevenness * between(chance, -1, 1);
	const mm = (uneven * pct) / arm.spec.gauge.restoringPctPerMm;
	const pushing = withFinger(arm, mm, way, quicknessMmPerS);
	const left = advance(pushing, Math.ceil((1000 * mm) / quicknessMmPerS) + 1);
	hand.arm = advance(left, habit.settleMs);
	return (offNeutralMm(hand.arm) - offNeutralMm(left)) * signOf(way) > -habit.seesMm;
}

/** Nudges on until the arm swings back, or the scale ends. @returns the last reading that held */
function nudgeOn(push: Push, way: SwingWay, hand: Hand): number {
	let held = shown(hand);
	for (let nudges = 0; nudges < mostNudges; nudges++) {
		if (isAtEnd(hand)) return shown(hand);
		if (!staysAfter(push, way, hand)) return held;
		held = shown(hand);
	}
	throw new RangeError('The arm found no limit.');
}

/** The hold limit on one side: found roughly, then come back to and found with small nudges. */
function limitAt(way: SwingWay, hand: Hand): number {
	const {nudgePct, searchPct, quicknessMmPerS, searchQuicknessMmPerS} = hand.habit;
	hand.arm = lookedFor(hand.arm);
	const roughly = nudgeOn({pct: searchPct, quicknessMmPerS: searchQuicknessMmPerS}, way, hand);
	if (isAtEnd(hand)) return roughly;
	if (searchPct > nudgePct) {
		const wayBack = Math.abs(roughly - shown(hand)) - nudgePct;
		if (wayBack > nudgePct) staysAfter({pct: wayBack, quicknessMmPerS: searchQuicknessMmPerS}, way, hand);
	}
	return nudgeOn({pct: nudgePct, quicknessMmPerS}, way, hand);
}

/** One round: the innermost and the outermost place where the arm still holds, as the gauge showed them in its own sign. */
export function roundBy(hand: Hand) {
	const inner = limitAt('in', hand);
	const outer = limitAt('out', hand);
	return {inner, outer};
}
