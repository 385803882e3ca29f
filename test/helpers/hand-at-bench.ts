import type {Dialogue} from '../../source/check/dialogue.js';
import {isMoving} from '../../source/practice/advance.js';
import type {BenchAtWork} from '../../source/teaching/bench-at-work.js';
import {readingWanted} from '../../source/teaching/reading-wanted.js';
import type {Nudge} from '../../source/workbench.js';
import {isGoneBack} from './said.js';

/** Common practice, no source: an arm that has not moved for so long has settled. */
const settledMs = 5000;
// An arm in thick fluid creeps for half a minute.
const mostLooks = 60;
// Far more than lie between two ends of the scale.
const mostNudges = 100;

/** What the gauge shows and the arm does, as a face shows it. */
export function gaugeOf(bench: BenchAtWork, dialogue: Dialogue) {
	const [arm] = bench.shown(dialogue);
	if (arm?.kind !== 'gauged-arm') throw new Error('No arm lies on the gauge.');
	return arm;
}

/** Looks until the arm is still, then waits. */
export function settle(bench: BenchAtWork, waitMs = settledMs): void {
	for (let looks = 0; looks < mostLooks; looks++) {
		bench.pass(500);
		if (!isMoving(bench.state.probing.arm)) break;
	}
	bench.pass(waitMs);
}

/** Nudges on until the arm goes back by itself or the scale ends. @returns the reading at the last place that held */
function lastHeld(bench: BenchAtWork, dialogue: Dialogue, nudge: Nudge, waitMs: number): number {
	let heldPct = gaugeOf(bench, dialogue).readingPct;
	for (let nudges = 0; nudges < mostNudges; nudges++) {
		bench.nudge(nudge);
		settle(bench, waitMs);
		const {readingPct, topPct, state} = gaugeOf(bench, dialogue);
		if (isGoneBack(state)) return heldPct;
		heldPct = readingPct;
		if (Math.abs(readingPct) >= topPct) return readingPct;
	}
	throw new Error('The arm found no limit.');
}

export const typed = (pct: number): string => (pct > 0 ? `+${pct}` : String(pct));

/** The reading of a careful hand at the limit that is asked for, typed: found roughly, then in fine nudges. */
export function limitFound(bench: BenchAtWork, dialogue: Dialogue, waitMs = settledMs): string {
	const way = readingWanted(dialogue)?.which === 'innerLimit' ? 'in' : 'out';
	settle(bench, waitMs);
	lastHeld(bench, dialogue, {way, size: 'large'}, waitMs);
	return typed(lastHeld(bench, dialogue, {way, size: 'fine'}, waitMs));
}
