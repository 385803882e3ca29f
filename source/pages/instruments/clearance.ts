import type {WindowMm} from '../../measures/clearance.js';
import {isWithin} from '../../measures/compare.js';
import type {Tone} from '../shown-lines.js';

/** How high stylus and guard stand over what is under them, seen from the side, with the arm on its gauge. */
export type Clearance = {
	readonly kind: 'clearance';
	/** Over the surface under the stylus; undefined until it was read. */
	readonly stylusMm: number | undefined;
	readonly stylusWindowMm: WindowMm;
	/** How far it hangs below the stylus, and where its underside should be; undefined without a guard of known depth. */
	readonly guard: {readonly depthMm: number; readonly windowMm: WindowMm} | undefined;
	/** The surface: mat, or the bare platter. */
	readonly isMatOn: boolean;
	readonly caption: string;
};

/** A height with the window in which it should lie, mm; undefined until it was read. */
export type Height = {readonly window: WindowMm; readonly mm: number | undefined};

/** How a height is meant: by whether it lies in its window, ends included. */
export const toneOfHeight = ({window, mm}: Height): Tone =>
	mm === undefined ? 'plain' : isWithin(mm, window) ? 'good' : 'bad';
