import type {BiasDeviceId} from '../../procedure/bias-devices.js';

const zeroIsNotOff =
	'Zero on a dial is not always zero force: a spring or a magnet may still pull a little. Where the maker allows it, unhook it.';

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
		off: 'Unhook the bias weight and lay its thread clear of the arm. Weight unhooked and thread clear?',
		mistake: 'A thread that is still looped over its stub drags, even without the weight.',
		on: 'Hook the bias weight on, its thread over the guide and free of everything else.',
		restore: 'Hook the bias weight on again, thread over its guide, at its usual notch.',
	},
	'weighted-lever': {
		off: "Take the weight off the lever, or unhook the thread from the arm. Lever's weight off, thread slack?",
		mistake: 'The bare lever has weight of its own: a taut thread still pulls.',
		on: "Put the lever's weight on and lay the thread over its pulley.",
		restore: "Put the lever's weight back and lay the thread over its pulley.",
	},
	spring: {
		off: 'Set the bias dial to zero; unhook the spring where the maker allows it. Bias dial at zero, or spring unhooked?',
		mistake: zeroIsNotOff,
		on: 'Hook the spring in and set the bias dial as it is played.',
		restore: 'Set the bias dial back to its usual value, spring hooked in.',
	},
	magnet: {
		off: 'Set the bias dial to zero; turn the magnet away where the maker allows it. Bias dial at zero?',
		mistake: zeroIsNotOff,
		on: 'Set the bias dial as it is played.',
		restore: 'Set the bias dial back to its usual value.',
	},
	other: {
		off: 'Put the bias device out of action the way its maker says. Bias device out of action?',
		mistake: 'A device at its lowest setting is not the same as a device that is off.',
		on: 'Switch the bias device on the way its maker says, as it is played.',
		restore: 'Set the bias device back the way its maker says.',
	},
};
