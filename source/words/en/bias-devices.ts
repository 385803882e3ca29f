import type {BiasDeviceId} from '../../procedure/bias-devices.js';

const zeroIsNotOff = 'Trusting zero on the dial. A spring or magnet may still pull: unhook it where its maker allows.';

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
		off: 'Unhook the bias weight. Lay its thread clear of the arm. Done?',
		mistake: 'Leaving the thread on the bias pin. It drags without the weight too.',
		on: 'Hook the bias weight on, thread over its guide.',
		restore: 'Hook the bias weight on, thread over its guide.',
	},
	'weighted-lever': {
		off: 'Take the weight off the lever, or unhook the thread. Done?',
		mistake: 'Leaving the thread taut. The bare lever has weight too.',
		on: 'Put the weight on the lever, thread over its pulley.',
		restore: 'Put the weight on the lever, thread over its pulley.',
	},
	spring: {
		off: 'Set the bias dial to zero. Unhook the spring where its maker allows. Done?',
		mistake: zeroIsNotOff,
		on: 'Hook the spring in. Set the bias dial as played.',
		restore: 'Hook the spring in. Set the bias dial back.',
	},
	magnet: {
		off: 'Set the bias dial to zero. Turn the magnet away where its maker allows. Done?',
		mistake: zeroIsNotOff,
		on: 'Set the bias dial as played.',
		restore: 'Set the bias dial back.',
	},
	other: {
		off: 'Take the bias off the way its maker says. Done?',
		mistake: 'Leaving it at its lowest setting. That is not off.',
		on: 'Put the bias on the way its maker says.',
		restore: 'Set the bias back the way its maker says.',
	},
};
