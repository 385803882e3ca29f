import type {Facts} from '../procedure/facts.js';
import {firstLevelProblem, type LevelState, levelState} from '../procedure/level.js';
import {words} from '../words/index.js';
import {line, type Shown} from './shown-lines.js';

const {level} = words.pages;

/** One level has one error of its own; two that are so far apart tell of a mistyped side. */
const farApartDeg = 0.3;

function errorsDisagree({leftRight, frontBack, pairs}: LevelState): Shown[] {
	const apartDeg = Math.abs((leftRight.zeroErrorDeg ?? 0) - (frontBack.zeroErrorDeg ?? 0));
	return pairs && apartDeg > farApartDeg ? [line(level.errorsDiffer({apartDeg}), 'warn')] : [];
}

function passing({pairs, passes, fine}: LevelState): Shown[] {
	if (!pairs) return [];
	return [passes ? line(fine ? level.fine : level.passes, 'good') : line(level.fails, 'bad')];
}

/** How far the feet go down where the level does not pass: for each 100 mm between them. Nothing where it rounds to nothing. */
function lowered(axis: 'leftRight' | 'frontBack', {tiltDeg}: LevelState['leftRight']): Shown[] {
	const mmPer100 = 100 * Math.tan((Math.abs(tiltDeg) * Math.PI) / 180);
	return mmPer100 < leastLoweredMm ? [] : [line(level.lower({axis, tiltDeg, mmPer100}), 'strong')];
}

/** Both directions read and not passing, or a first reading that cannot pass. */
const isTooMuch = ({passes}: LevelState, facts: Facts): boolean =>
	facts.answered('level-fb-2') ? !passes : firstLevelProblem(facts, 'lr') !== undefined;

/** Half of the last digit that is printed. */
const leastLoweredMm = 0.05;

/** Tilt, the level's own error, and the side force that the tilt makes at each radius. */
export function levelConsequence(facts: Facts): readonly Shown[] {
	const state = levelState(facts);
	if (!state) return [];
	const {leftRight, frontBack, shares, allowedPct} = state;
	return [
		line(level.tilt({axis: 'leftRight', ...leftRight})),
		...(isTooMuch(state, facts) ? lowered('leftRight', leftRight) : []),
		...(facts.answered('level-fb-1') ? [line(level.tilt({axis: 'frontBack', ...frontBack}))] : []),
		...(firstLevelProblem(facts, 'fb') || (facts.answered('level-fb-2') && !state.passes)
			? lowered('frontBack', frontBack)
			: []),
		...shares.map((share) => line(level.share({...share, allowedPct}))),
		...errorsDisagree(state),
		...passing(state),
	];
}
