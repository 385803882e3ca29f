import limits from '../../shared/limits.json' with {type: 'json'};
import {degrees, radians} from '../measures/angles.js';
import {isAbove} from '../measures/compare.js';
import {
	allowedTiltSharePct,
	dropPer100Mm,
	levelIsFine,
	levelPasses,
	levelTilt,
	type Tilt,
	tiltUncertaintyDeg,
	wholeTiltDeg,
} from '../measures/level.js';
import {outwardDirection, type TiltAxes, tiltSharePct, tiltShareUncertaintyPct} from '../measures/tilt-share.js';
import type {Facts} from './facts.js';
import {armOf, pivotDirectionDeg, probeRadii} from './geometry.js';
import {type Problem, problem, wayTo} from './problem.js';
import {isPushedByHand} from './readings.js';
import {levelSteps} from './step-groups.js';
import {carriedMn, guardWeightMn} from './weighing.js';

export type LevelState = NonNullable<ReturnType<typeof levelState>>;

/**
 * Level readings in the level's own scale, as documents hold them. The technician names the side that is called
 * high; turned round, the level's plus end points the other way, so the second reading changes its sign.
 */
export function levelReadings(facts: Facts, axis: 'lr' | 'fb'): readonly number[] {
	const first = facts.number(`level-${axis}-1`);
	const second = facts.number(`level-${axis}-2`);
	if (first === undefined) return [];
	return second === undefined ? [first] : [first, 0 - second];
}

/** Tilt, the level's own error and the side force at each probe radius; undefined until the first reading. */
export function levelState(facts: Facts) {
	const leftRightDeg = levelReadings(facts, 'lr');
	const frontBackDeg = levelReadings(facts, 'fb');
	if (leftRightDeg.length === 0) return;
	const leftRight = levelTilt(leftRightDeg);
	const frontBack = levelTilt(frontBackDeg);
	const wholeDeg = wholeTiltDeg(leftRight, frontBack);
	const stepDeg = facts.number('level-step') ?? 0;
	const uncertaintyDeg = Math.max(tiltUncertaintyDeg(stepDeg, leftRightDeg), tiltUncertaintyDeg(stepDeg, frontBackDeg));
	const leaning = leaningShare(facts);
	const arm = armOf(facts);
	const axes = {leftRightDeg: leftRight.tiltDeg, frontBackDeg: frontBack.tiltDeg};
	const shares = !arm
		? []
		: probeRadii(facts).map((probe) => ({
				...probe,
				sharePct: tiltSharePct(leaning, axes, outwardDirection(arm, pivotDirectionDeg(facts), probe.radiusMm)),
				uncertaintyPct: tiltShareUncertaintyPct(leaning, uncertaintyDeg),
			}));
	const {pullGoodPct} = facts.limits;
	const sharesPct = shares.map(({sharePct}) => sharePct);
	const passes = levelPasses(sharesPct, wholeDeg, pullGoodPct);
	return {
		leftRight,
		frontBack,
		/** Both directions were read twice, with the level turned round. */
		pairs: leftRightDeg.length === 2 && frontBackDeg.length === 2,
		wholeTiltDeg: wholeDeg,
		shares,
		allowedPct: allowedTiltSharePct(pullGoodPct),
		allowedDeg: allowedTiltDeg(facts),
		/** How much lower the high side goes, in mm for each 100 mm between the feet; nothing while it may still pass, and where it is level. */
		dropsMm: {
			leftRight: mustDrop(facts, 'lr', passes) ? dropOf(leftRight) : 0,
			frontBack: mustDrop(facts, 'fb', passes) ? dropOf(frontBack) : 0,
		},
		passes,
		/** So good that it need not be looked at again. */
		fine: levelIsFine(sharesPct, wholeDeg, pullGoodPct),
	};
}

/** How far the deck may lean in each direction alone, degrees. */
export const allowedTiltDeg = (facts: Facts) => ({
	leftRight: allowedAlongDeg(facts, {leftRightDeg: 1, frontBackDeg: 0}),
	frontBack: allowedAlongDeg(facts, {leftRightDeg: 0, frontBackDeg: 1}),
});

/** The largest lean in one direction that passes: a tilt's share of the pull grows as its tangent does. */
function allowedAlongDeg(facts: Facts, oneDegree: TiltAxes): number {
	const arm = armOf(facts);
	const sharesPct = !arm
		? []
		: probeRadii(facts).map(({radiusMm}) =>
				tiltSharePct(leaningShare(facts), oneDegree, outwardDirection(arm, pivotDirectionDeg(facts), radiusMm)),
			);
	const mostPct = Math.max(0, ...sharesPct.map(Math.abs));
	const whole = limits.levelWholeTiltDeg.value;
	if (mostPct === 0) return whole;
	const byShareDeg = degrees(
		Math.atan((allowedTiltSharePct(facts.limits.pullGoodPct) / mostPct) * Math.tan(radians(1))),
	);
	return Math.min(whole, byShareDeg);
}

/** Half of the last digit that is printed: feet that would go down by less stay as they are. */
const leastDropMm = 0.05;

function dropOf({tiltDeg}: Pick<Tilt, 'tiltDeg'>): number {
	const dropMm = dropPer100Mm(tiltDeg);
	return dropMm < leastDropMm ? 0 : dropMm;
}

/** All was read and does not pass, or a first reading cannot pass. */
const mustDrop = (facts: Facts, axis: 'lr' | 'fb', passes: boolean): boolean =>
	facts.answered('level-fb-2') ? !passes : firstLevelProblem(facts, axis) !== undefined;

/**
 * Force that a tilt acts on, over the playing force. Before the weighing the playing force stands in for the carried one; an arm that
 * will float carries nothing.
 */
function leaningShare(facts: Facts): number {
	const playingMn = facts.number('playing-force');
	if (playingMn === undefined) return 0;
	if (facts.is('arm-loading', 'spring')) return guardWeightMn(facts) / playingMn;
	return isPushedByHand(facts) ? 0 : (carriedMn(facts) ?? playingMn) / playingMn;
}

/**
 * A first reading so far off that no second one can make it pass: the level's own zero would have to be wrong by more
 * than is believed of any. Nobody turns the level round for that.
 */
export function firstLevelProblem(facts: Facts, axis: 'lr' | 'fb'): Problem | undefined {
	const read = facts.number(`level-${axis}-1`);
	const allowedDeg = limits.levelWholeTiltDeg.value;
	if (read === undefined || !isAbove(Math.abs(read), allowedDeg + limits.levelZeroErrorMostDeg.value)) return;
	return problem('leans-at-once', {readDeg: Math.abs(read), allowedDeg}, wayTo('level-again', `level-${axis}-1`));
}

/** Why the level does not pass, if so. */
export function levelProblem(facts: Facts): Problem | undefined {
	const level = levelState(facts);
	if (!level) return;
	if (!level.pairs) return problem('level-read-once', {}, wayTo('turn-level', ...unread(facts)));
	if (level.passes) return;
	const worst = Math.max(...level.shares.map(({sharePct}) => Math.abs(sharePct)));
	const {allowedPct, wholeTiltDeg} = level;
	const again = wayTo('level-again', ...levelSteps);
	return isAbove(worst, allowedPct)
		? problem('tilt-too-much', {sharePct: worst, allowedPct}, again)
		: problem('deck-leans', {leanDeg: wholeTiltDeg, allowedDeg: limits.levelWholeTiltDeg.value}, again);
}

const unread = (facts: Facts) => (['level-lr-2', 'level-fb-2'] as const).filter((id) => facts.number(id) === undefined);
