import type {Tilt} from '../../../measures/level.js';
import type {Place} from '../../../procedure/places.js';
import {inDegrees, plainNumber, printsAsZero, rounded} from '../../numbers.js';
import {entries} from '../entries.js';
import {sideForce} from '../figures.js';

const axes = {
	leftRight: {name: 'Left to right', plus: 'right', minus: 'left'},
	frontBack: {name: 'Front to back', plus: 'back', minus: 'front'},
};

/** The level of the deck. */
export const levelFound = {
	tilt: ({axis, tiltDeg, zeroErrorDeg}: Pick<Tilt, 'tiltDeg' | 'zeroErrorDeg'> & {axis: keyof typeof axes}) => {
		const {name, plus, minus} = axes[axis];
		const side = tiltDeg > 0 ? plus : minus;
		const tilt = printsAsZero(tiltDeg, 2) ? 'level' : `${inDegrees(Math.abs(tiltDeg), 2)} ${side} high`;
		const error = zeroErrorDeg === null ? 'not known from one reading' : inDegrees(Math.abs(zeroErrorDeg), 2);
		return `${name}: ${tilt}; the level's own error ${error}`;
	},
	share: ({
		place,
		sharePct,
		uncertaintyPct,
		allowedPct,
	}: {
		place: Place;
		sharePct: number;
		uncertaintyPct: number;
		allowedPct: number;
	}) =>
		`Pull from this tilt, ${entries.places[place]} radius: ${sideForce(sharePct, uncertaintyPct)} (allowed ± ${plainNumber(allowedPct)} %)`,
	/** Which side goes down, and how much at the feet. */
	lower: ({axis, tiltDeg, mmPer100}: {axis: keyof typeof axes; tiltDeg: number; mmPer100: number}) =>
		`Lower the ${tiltDeg > 0 ? axes[axis].plus : axes[axis].minus} by ${rounded(mmPer100, 1)} mm for each 100 mm between the feet.`,
	errorsDiffer: ({apartDeg}: {apartDeg: number}) =>
		`Across and along, the level's own error differs by ${inDegrees(apartDeg, 2)}. Was a side mistyped?`,
	fine: 'Level: fine.',
	passes: 'Level: passes.',
	fails: 'Level: does not pass.',
};
