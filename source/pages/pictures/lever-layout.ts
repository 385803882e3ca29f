import {clockText} from '../../measures/lever.js';
import type {LeverAt, ShownAs} from '../shown-lines.js';

/** A lever on its clock face: a letter at its tip, which a list explains by radius and by the time it would show. */
export type LeverMark = LeverAt & {readonly letter: string; readonly radius: string; readonly time: string};

export const leverMarks = ({places}: ShownAs<'lever'>): LeverMark[] =>
	places.map((place, index) => ({
		...place,
		letter: String.fromCharCode('a'.charCodeAt(0) + (index % 26)),
		radius: String(Number(place.radiusMm.toFixed(1))),
		time: clockText(place.clockDeg),
	}));

/** The hours of the face; every third one has its number. */
export const leverHours = Array.from({length: 12}, (_, index) => ({
	clockDeg: (index + 1) * 30,
	number: (index + 1) % 3 === 0 ? String(index + 1) : undefined,
}));
