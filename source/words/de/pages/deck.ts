import type {Deck, MoveId} from '../../../procedure/deck.js';

type Texts = {readonly [Part in keyof Deck]: Readonly<Record<Deck[Part], string | undefined>>};

/** What is not there, or stands away, has no words. */
const whole: Texts = {
	arm: {locked: 'arm locked', 'in-rest': 'arm in its rest', 'on-gauge': 'arm ON THE GAUGE', afloat: 'arm AFLOAT'},
	stylus: {covered: 'guard on', bare: 'stylus BARE'},
	mat: {on: 'mat on', off: 'mat off'},
	bias: {none: undefined, 'as-found': 'bias as found', off: 'bias off', on: 'bias ON', set: 'bias set'},
	damping: {none: undefined, in: 'damping in', out: 'damping out'},
	gauge: {away: undefined, 'as-used': undefined, turned: 'gauge TURNED'},
};

/** The same where a screen is narrow. */
const short: Texts = {
	arm: {locked: 'arm locked', 'in-rest': 'arm in rest', 'on-gauge': 'ON THE GAUGE', afloat: 'arm AFLOAT'},
	stylus: {covered: 'guard on', bare: 'BARE'},
	mat: {on: 'mat on', off: 'mat off'},
	bias: {none: undefined, 'as-found': 'bias as is', off: 'bias off', on: 'bias ON', set: 'bias set'},
	damping: {none: undefined, in: 'damping in', out: 'damping out'},
	gauge: {away: undefined, 'as-used': undefined, turned: 'TURNED'},
};

/** In the order in which they are told. */
const parts = Object.keys(whole) as readonly (keyof Deck)[];

const textOf = <Part extends keyof Deck>(texts: Texts, now: Deck, part: Part): string | undefined =>
	texts[part][now[part]];

/** How the deck stands, and what hands do before a step where it stands otherwise. */
export const deck = {
	/** Part by part; what is not there, or stands away, is left out. */
	named: (
		now: Deck,
		isNarrow = false,
		isInHand = false,
	): readonly {readonly part: keyof Deck; readonly text: string}[] =>
		parts.flatMap((part) => {
			if (part === 'arm' && isInHand) return [{part, text: 'arm IN HAND'}];
			const text = textOf(isNarrow ? short : whole, now, part);
			return text === undefined ? [] : [{part, text}];
		}),
	parts: (now: Deck): readonly string[] => deck.named(now).map(({text}) => text),
	/** As a sentence, for a voice and for the last words on leaving. */
	told: (now: Deck): string => `Deck now: ${deck.parts(now).join(', ')}.`,
	moves: {
		'lock-arm': 'First lift the arm, into its rest, and lock it.',
		'take-gauge-away': 'First take the gauge away.',
	} satisfies Record<MoveId, string>,
};
