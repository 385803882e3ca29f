import type {Shown} from '../pages/shown-lines.js';
import {isMoving, readingShown} from '../practice/advance.js';
import {type PracticeArm, stillForMs, stylusRadiusMm} from '../practice/practice-arm.js';
import {type Probing, wayOf} from '../practice/probing.js';
import {readingText} from '../words/wording.js';
import type {Wanted} from './reading-wanted.js';
import {settledMs} from './settled.js';

/** Whether an arm moves, has only just come to rest, or has settled. */
export function motionOf(arm: PracticeArm): 'moves' | 'rests' | 'settled' {
	if (isMoving(arm)) return 'moves';
	return stillForMs(arm) < settledMs ? 'rests' : 'settled';
}

/** Longer than this nobody waits for an arm to settle. */
const longMs = 10_000;

/** What the arm does, in a few words. */
function stateOf({arm, nudges, nudged}: Probing): string {
	if (arm.finger !== null) return `your finger pushes it ${arm.finger.rateRadPerS > 0 ? 'outward' : 'inward'}`;
	const way = wayOf(arm);
	if (way !== null) return `it swings ${way === 'out' ? 'outward' : 'inward'} by itself`;
	if (isMoving(arm)) return 'it lets go';
	const seconds = Math.floor(Math.min(stillForMs(arm), longMs) / 1000);
	const still = seconds >= longMs / 1000 ? 'still' : `still for ${seconds} s`;
	if (nudges === 0) return still;
	return nudged === null ? `it let go and went back; ${still}` : `it holds, ${still}`;
}

/** The arm on its gauge, as a picture and in a sentence. */
export function gaugedArm(probing: Probing, {radiusMm, isTurned}: Wanted): Shown {
	const {arm} = probing;
	const {geometry, pivotDirectionDeg, gauge} = arm.spec;
	const readingPct = readingShown(arm) ?? 0;
	const state = stateOf(probing);
	const reading = `${readingText(readingPct, gauge.stepPct)} %`;
	return {
		kind: 'gauged-arm',
		...geometry,
		pivotDirectionDeg,
		stylusRadiusMm: stylusRadiusMm(arm),
		gaugeRadiusMm: radiusMm,
		readingPct,
		topPct: gauge.topPct,
		stepPct: gauge.stepPct,
		isTurned,
		state,
		caption: `The gauge${isTurned ? ', turned end for end,' : ''} shows ${reading}; the arm: ${state}.`,
	};
}
