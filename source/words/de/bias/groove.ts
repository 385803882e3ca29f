import {inDegrees, rounded} from '../../numbers.js';

type InGroove = {
	/** Load on the inner and the outer wall, as shares of what both carry. */
	readonly inner: number;
	readonly outer: number;
	/** How far the stylus leans, where the compliance is known; as an angle where the cantilever is known too. */
	readonly leanUm?: number;
	readonly leanDeg?: number;
};

/** What bias means in the groove. */
export const groove = {
	inGroove: ({isLeaning}: {readonly isLeaning: boolean}) =>
		`Last auf innerer / äußerer Rillenwand in Prozent${isLeaning ? '; dahinter die Auslenkung der Nadel' : ''}.`,
	wallLoads: ({inner, outer, leanUm, leanDeg}: InGroove) =>
		`${rounded(100 * inner, 0)} / ${rounded(100 * outer, 0)}${leanUm === undefined ? '' : `; ${rounded(leanUm, 0)} µm`}${leanDeg === undefined ? '' : ` ${inDegrees(leanDeg, 1)}`}`,
	columns: ['ohne', 'jetzt', 'bestes'],
};
