import type {Facts} from '../procedure/facts.js';
import {allowedTiltDeg, type LevelState, levelState} from '../procedure/level.js';
import {words} from '../words/index.js';
import {line, type Shown, unheard} from './shown-lines.js';
import {feetShown} from './touches.js';

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
	return mmPer100 === 0 ? [] : [line(level.lower({axis, tiltDeg: state[axis].tiltDeg, mmPer100}), 'strong')];
}

/** In sentences: tilt, the level's own error, and the side force that the tilt makes at each radius. */
export function levelLines(facts: Facts): readonly Shown[] {
	const state = levelState(facts);
	if (!state) return [];
	const {leftRight, frontBack} = state;
	return [
		line(level.tilt({axis: 'leftRight', ...leftRight})),
		...lowered('leftRight', state),
		...(facts.answered('level-fb-1') ? [line(level.tilt({axis: 'frontBack', ...frontBack}))] : []),
		...lowered('frontBack', state),
		...shared(state),
		...passing(state),
	];
}

const shared = (state: LevelState): Shown[] => [
	...state.shares.map((share) => line(level.share({...share, allowedPct: state.allowedPct}))),
	...errorsDisagree(state),
];

/** While one direction is read: what is to be done, the level to scale, and what the tilt makes of the pull. */
export const levelConsequence =
	(axis: 'leftRight' | 'frontBack') =>
	(facts: Facts): readonly Shown[] => {
		const state = levelState(facts);
		if (!state) return [unheard({...emptyScale(axis, facts), caption: ''})];
		return [
			...passing(state),
			...lowered('leftRight', state),
			...lowered('frontBack', state),
			// Which feet go down counts more than by how much they were read.
			...feetShown(facts),
			levelScale(worseOf(axis, state), facts, state),
			...(axis === 'frontBack' ? [line(level.tilt({axis: 'leftRight', ...state.leftRight}))] : []),
			// One reading holds the level's own error: what the tilt makes is known after two.
			...(state.pairs ? shared(state) : []),
		];
	};

/** Once all is read and does not pass, the direction that leans more of what it may. */
function worseOf(asked: 'leftRight' | 'frontBack', state: LevelState): 'leftRight' | 'frontBack' {
	if (!state.pairs || state.passes) return asked;
	const share = (axis: 'leftRight' | 'frontBack') => Math.abs(state[axis].tiltDeg) / state.allowedDeg[axis];
	return share('leftRight') > share('frontBack') ? 'leftRight' : 'frontBack';
}

/** The scale before anything was read: how far the deck may lean. */
const emptyScale = (axis: 'leftRight' | 'frontBack', facts: Facts) =>
	({kind: 'level', axis, allowedDeg: allowedTiltDeg(facts)[axis], stepDeg: facts.number('level-step') ?? 0}) as const;

/** A level as it was read in one direction, to scale. */
function levelScale(axis: 'leftRight' | 'frontBack', facts: Facts, state: LevelState): Shown {
	const [firstDeg, turnedDeg] = axis === 'leftRight' ? read(facts, 'lr') : read(facts, 'fb');
	const {tiltDeg, zeroErrorDeg} = state[axis];
	return {
		...emptyScale(axis, facts),
		firstDeg,
		turnedDeg,
		tiltDeg: turnedDeg === undefined ? undefined : tiltDeg,
		tone: Math.abs(tiltDeg) > state.allowedDeg[axis] ? 'bad' : 'good',
		caption: level.tilt({axis, tiltDeg, zeroErrorDeg}),
		// One reading by itself was just typed, and holds the level's own error.
		...(turnedDeg === undefined ? {heard: ''} : {}),
	};
}

/** Which side each reading calls high. */
const read = (facts: Facts, axis: 'lr' | 'fb') =>
	[facts.number(`level-${axis}-1`), facts.number(`level-${axis}-2`)] as const;
