import type {Tone} from '../shown-lines.js';

/** A level on the deck, read twice, the second time turned end for end. */
export type LevelScale = {
	readonly kind: 'level';
	readonly axis: 'leftRight' | 'frontBack';
	/** Which side each reading calls high, degrees: positive for the right, or for the back. */
	readonly firstDeg?: number | undefined;
	readonly turnedDeg?: number | undefined;
	/** Worked out between them, in the same sign. */
	readonly tiltDeg?: number | undefined;
	/** As far as the deck may lean to either side, and the smallest step of the level, degrees. */
	readonly allowedDeg: number;
	readonly stepDeg: number;
	/** How the tilt is judged. */
	readonly tone?: Tone | undefined;
	readonly caption: string;
};
