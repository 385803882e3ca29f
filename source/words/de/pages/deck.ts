import type {Deck, MoveId} from '../../../procedure/deck.js';

type Texts = {readonly [Part in keyof Deck]: Readonly<Record<Deck[Part], string | undefined>>};

/** What is not there, or stands away, has no words. */
const whole: Texts = {
	arm: {
		locked: 'Arm verriegelt',
		'in-rest': 'Arm in der Stütze',
		'on-gauge': 'Arm AM KRAFTMESSER',
		afloat: 'Arm SCHWEBT',
	},
	stylus: {covered: 'Nadelschutz drauf', bare: 'Nadel OFFEN'},
	mat: {on: 'Matte drauf', off: 'Matte ab'},
	bias: {
		none: undefined,
		'as-found': 'Antiskating wie vorgefunden',
		off: 'Antiskating aus',
		on: 'Antiskating AN',
		set: 'Antiskating eingestellt',
	},
	damping: {none: undefined, in: 'Dämpfung drin', out: 'Dämpfung raus'},
	gauge: {away: undefined, 'as-used': undefined, turned: 'Kraftmesser GEDREHT'},
};

/** The same where a screen is narrow. */
const short: Texts = {
	arm: {locked: 'verriegelt', 'in-rest': 'in Stütze', 'on-gauge': 'LIEGT AN', afloat: 'SCHWEBT'},
	stylus: {covered: 'Schutz an', bare: 'Nadel OFFEN'},
	mat: {on: 'mit Matte', off: 'Matte ab'},
	bias: {
		none: undefined,
		'as-found': 'Antiskating?',
		off: 'Antiskating aus',
		on: 'Antiskating AN',
		set: 'Antiskating OK',
	},
	damping: {none: undefined, in: 'gedämpft', out: 'ungedämpft'},
	gauge: {away: undefined, 'as-used': undefined, turned: 'GEDREHT'},
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
			if (part === 'arm' && isInHand) return [{part, text: isNarrow ? 'VON HAND' : 'Arm IN DER HAND'}];
			const text = textOf(isNarrow ? short : whole, now, part);
			return text === undefined ? [] : [{part, text}];
		}),
	parts: (now: Deck): readonly string[] => deck.named(now).map(({text}) => text),
	/** As a sentence, for a voice and for the last words on leaving. */
	told: (now: Deck): string => `Laufwerk jetzt: ${deck.parts(now).join(', ')}.`,
	moves: {
		'lock-arm': 'Erst den Arm anheben, in die Stütze legen und verriegeln.',
		'take-gauge-away': 'Erst den Kraftmesser wegnehmen.',
	} satisfies Record<MoveId, string>,
};
