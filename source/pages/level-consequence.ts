import type {Facts} from '../procedure/facts.js';
import {type LevelState, levelState} from '../procedure/level.js';
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

/** Nothing where it prints as nothing. */
function lowered(axis: keyof LevelState['dropsMm'], state: LevelState): Shown[] {
	const mmPer100 = state.dropsMm[axis];
	return mmPer100 < leastLoweredMm ? [] : [line(level.lower({axis, tiltDeg: state[axis].tiltDeg, mmPer100}), 'strong')];
}

/** Half of the last digit that is printed. */
const leastLoweredMm = 0.05;

/** Tilt, the level's own error, and the side force that the tilt makes at each radius. */
export function levelConsequence(facts: Facts): readonly Shown[] {
	const state = levelState(facts);
	if (!state) return [];
	const {leftRight, frontBack, shares, allowedPct} = state;
	return [
		line(level.tilt({axis: 'leftRight', ...leftRight})),
		...lowered('leftRight', state),
		...(facts.answered('level-fb-1') ? [line(level.tilt({axis: 'frontBack', ...frontBack}))] : []),
		...lowered('frontBack', state),
		...shares.map((share) => line(level.share({...share, allowedPct}))),
		...errorsDisagree(state),
		...passing(state),
	];
}
