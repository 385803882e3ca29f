import type {Facts} from '../procedure/facts.js';
import {type LevelState, levelState} from '../procedure/level.js';
import {placeLabel} from '../words/step-text.js';
import {plainNumber, sideForce} from '../words/wording.js';
import {line, type Shown} from './shown-lines.js';

/** One level has one error of its own; two that are far apart tell of a mistyped side. */
function errorsDisagree({leftRight, frontBack, pairs}: LevelState): Shown[] {
	const apart = Math.abs((leftRight.zeroErrorDeg ?? 0) - (frontBack.zeroErrorDeg ?? 0));
	return pairs && apart > 0.3
		? [
				line(
					`The level's own error differs by ${apart.toFixed(2)}° between the two directions: was a side mistyped?`,
					'warn',
				),
			]
		: [];
}

const tiltText = (tiltDeg: number, plus: string, minus: string): string => {
	const size = Math.abs(tiltDeg).toFixed(2);
	return Number(size) === 0 ? 'level' : `${size}° ${tiltDeg > 0 ? plus : minus} high`;
};

/** Tilt, the level's own error, and the side force that the tilt makes at each radius. */
export const levelConsequence = (facts: Facts): readonly Shown[] => {
	const state = levelState(facts);
	if (!state) return [];
	const axis = (
		name: string,
		{tiltDeg, zeroErrorDeg}: {tiltDeg: number; zeroErrorDeg: number | null},
		plus: string,
		minus: string,
	) =>
		line(
			`${name}: ${tiltText(tiltDeg, plus, minus)}; the level's own error ${zeroErrorDeg === null ? 'unknown after one reading' : `${Math.abs(zeroErrorDeg).toFixed(2)}°`}`,
		);
	return [
		axis('Left to right', state.leftRight, 'right', 'left'),
		...(facts.answered('level-fb-1') ? [axis('Front to back', state.frontBack, 'back', 'front')] : []),
		...state.shares.map(({place, sharePct, uncertaintyPct}) =>
			line(
				`Side force by this tilt, ${placeLabel(place)} radius: ${sideForce(sharePct, uncertaintyPct)} (allowed ±${plainNumber(state.allowedPct)} %)`,
			),
		),
		...errorsDisagree(state),
		...(state.pairs
			? [
					state.passes
						? line(state.fine ? 'Level: fine.' : 'Level: passes.', 'good')
						: line('Level: does not pass.', 'bad'),
				]
			: []),
	];
};
