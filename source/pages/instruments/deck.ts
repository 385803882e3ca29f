import type {ArmGeometry} from '../../measures/geometry.js';

/** A corner of the deck, seen from who stands in front of it. */
export type Foot = 'front-left' | 'front-right' | 'back-left' | 'back-right';

/** What hands touch that has one place: where it lies along the arm or about its pivot is only drawn. */
export type TouchedPart = 'bias' | 'lifter' | 'rest' | 'counterweight' | 'pivot' | 'leads' | 'head';

/** The one place to touch, and which way. */
export type Touch =
	| {readonly kind: 'feet'; readonly feet: readonly {readonly foot: Foot; readonly way: 'up' | 'down'}[]}
	/** Where the gauge stands, with the stylus of the arm over it. */
	| {readonly kind: 'gauge'; readonly radiusMm: number}
	/** The head's side, on the gauge. */
	| {readonly kind: 'nudge'; readonly radiusMm: number; readonly way: 'outward' | 'inward'}
	| {readonly kind: 'part'; readonly part: TouchedPart};

/** The deck from above with the one place to touch. */
export type DeckTouch = ArmGeometry & {
	readonly kind: 'deck';
	/** Where the pivot stands seen from the spindle: degrees anticlockwise from the right, from above. */
	readonly pivotDirectionDeg: number;
	readonly touch: Touch;
	readonly caption: string;
};
