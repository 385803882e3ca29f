import type {Shown} from '../pages/shown-lines.js';
import {isMoving, readingShown} from '../practice/advance.js';
import {type PracticeArm, stillForMs, stylusRadiusMm} from '../practice/practice-arm.js';
import {type Probing, swingWay} from '../practice/probing.js';
import {usualSettings} from '../procedure/settings.js';
import {practiceWords} from '../words/practice.js';
import type {Nudge} from '../workbench.js';
import type {Wanted} from './reading-wanted.js';

/** An arm that has not moved for so long has settled: the usual settle countdown. */
export const settledMs = 1000 * usualSettings.settleSeconds;

/** Whether an arm moves, has only just come to rest, or has settled. */
export function motionOf(arm: PracticeArm): 'moves' | 'rests' | 'settled' {
	if (isMoving(arm)) return 'moves';
	return stillForMs(arm) < settledMs ? 'rests' : 'settled';
}

/** Longer than this nobody waits for an arm to settle. */
const longMs = 10_000;

/** What the arm does, in a few words. */
function motionText({arm, nudges, nudged}: Probing, finer: Nudge['way'] | undefined): string {
	const said = practiceWords.motion;
	if (arm.finger !== null) return said.pushed({way: arm.finger.rateRadPerS > 0 ? 'out' : 'in'});
	const way = swingWay(arm);
	if (way !== null) return said.swings({way});
	if (isMoving(arm)) return said.letsGo;
	const still = {ms: stillForMs(arm) < longMs ? stillForMs(arm) : null};
	if (nudges === 0) return said.rests(still);
	if (nudged !== null) return said.holds(still);
	return finer ? said.nudgeFiner({way: finer}) : said.wentBack(still);
}

/**
 * The arm on its gauge, as a picture and in a sentence.
 *
 * @param finer which way two large nudges have let go
 */
export function gaugedArm(probing: Probing, {radiusMm, isTurned}: Wanted, finer?: Nudge['way']): Shown {
	const {arm} = probing;
	const {geometry, pivotDirectionDeg, gauge} = arm.spec;
	const {stepPct} = gauge;
	const readingPct = readingShown(arm) ?? 0;
	const state = motionText(probing, finer);
	return {
		kind: 'gauged-arm',
		...geometry,
		pivotDirectionDeg,
		stylusRadiusMm: stylusRadiusMm(arm),
		gaugeRadiusMm: radiusMm,
		readingPct,
		topPct: gauge.topPct,
		stepPct,
		isTurned,
		state,
		caption: practiceWords.bench.gauge({readingPct, stepPct, isTurned, state}),
	};
}
