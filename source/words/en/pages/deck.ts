import type {Deck, MoveId} from '../../../procedure/deck.js';

const arm: Readonly<Record<Deck['arm'], string>> = {
	locked: 'arm locked',
	'in-rest': 'arm in its rest',
	'on-gauge': 'arm ON THE GAUGE',
	afloat: 'arm AFLOAT',
};
const stylus: Readonly<Record<Deck['stylus'], string>> = {covered: 'guard on', bare: 'stylus BARE'};
const damping: Readonly<Record<Deck['damping'], string | undefined>> = {
	none: undefined,
	in: 'damping in',
	out: 'damping out',
};
const bias: Readonly<Record<Deck['bias'], string | undefined>> = {
	none: undefined,
	'as-found': 'bias as found',
	off: 'bias off',
	on: 'bias ON',
	set: 'bias set',
};
const gauge: Readonly<Record<Deck['gauge'], string | undefined>> = {
	away: undefined,
	'as-used': 'gauge set',
	turned: 'gauge TURNED',
};

/** How the deck stands, and what hands do before a step where it stands otherwise. */
export const deck = {
	/** What is not there, or stands away, is left out. */
	parts: (now: Deck): readonly string[] =>
		[arm[now.arm], stylus[now.stylus], `mat ${now.mat}`, bias[now.bias], damping[now.damping], gauge[now.gauge]].filter(
			(part) => part !== undefined,
		),
	/** As a sentence, for a voice and for the last words on leaving. */
	told: (now: Deck): string => `Deck now: ${deck.parts(now).join(', ')}.`,
	moves: {
		'lock-arm': 'First lift the arm, into its rest, and lock it.',
		'take-gauge-away': 'First take the gauge away.',
	} satisfies Record<MoveId, string>,
};
