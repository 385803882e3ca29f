import type {BiasDeviceId} from '../../procedure/bias-devices.js';

const zeroIsNotOff =
	'Der Null am Antiskating-Knopf getraut. Feder oder Magnet können noch ziehen: aushängen, wo der Hersteller es erlaubt.';

type BiasDeviceWords = {
	/** How it is put out of action for the probe, and what is asked to be confirmed. */
	readonly off: string;
	/** What still pulls when it is not quite off. */
	readonly mistake: string;
	/** How it is switched on as it is played. */
	readonly on: string;
	/** How it is restored on put-back. */
	readonly restore: string;
};

/** What is done to each bias (anti-skating) device; what it is called stands with the options. */
export const deviceWords: Readonly<Record<BiasDeviceId, BiasDeviceWords>> = {
	none: {off: '', mistake: '', on: '', restore: ''},
	'weight-on-thread': {
		off: 'Antiskating-Gewicht aushängen. Faden abseits vom Arm ablegen. Erledigt?',
		mistake: 'Faden am Antiskating-Stab gelassen. Er bremst auch ohne Gewicht.',
		on: 'Antiskating-Gewicht einhängen, Faden über die Führung.',
		restore: 'Antiskating-Gewicht einhängen, Faden über die Führung.',
	},
	'weighted-lever': {
		off: 'Gewicht vom Hebel nehmen oder Faden aushängen. Erledigt?',
		mistake: 'Faden gespannt gelassen. Auch der leere Hebel wiegt etwas.',
		on: 'Gewicht auf den Hebel, Faden über die Rolle.',
		restore: 'Gewicht auf den Hebel, Faden über die Rolle.',
	},
	spring: {
		off: 'Antiskating-Knopf auf null. Feder aushängen, wo der Hersteller es erlaubt. Erledigt?',
		mistake: zeroIsNotOff,
		on: 'Feder einhängen. Antiskating-Knopf wie beim Abspielen stellen.',
		restore: 'Feder einhängen. Antiskating-Knopf zurückstellen.',
	},
	magnet: {
		off: 'Antiskating-Knopf auf null. Magnet wegdrehen, wo der Hersteller es erlaubt. Erledigt?',
		mistake: zeroIsNotOff,
		on: 'Antiskating-Knopf wie beim Abspielen stellen.',
		restore: 'Antiskating-Knopf zurückstellen.',
	},
	other: {
		off: 'Antiskating nach Anleitung des Herstellers ausschalten. Erledigt?',
		mistake: 'Die kleinste Einstellung für aus gehalten. Sie wirkt noch.',
		on: 'Antiskating nach Anleitung des Herstellers einschalten.',
		restore: 'Antiskating nach Anleitung des Herstellers zurückstellen.',
	},
};
