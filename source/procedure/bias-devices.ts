import type {Facts} from './facts.js';

export type BiasDevice = {
	readonly label: string;
	/** How it is put out of action for the probe. */
	readonly off: string;
	/** What is asked to be confirmed. */
	readonly confirm: string;
	/** What still pulls when it is not quite off. */
	readonly mistake: string;
	/** How it is switched on as it is played. */
	readonly on: string;
	/** How it is restored on put-back. */
	readonly restore: string;
	/** What its strength is set by, which is what advice is given in. */
	readonly setBy: 'nothing' | 'weight' | 'dial' | 'turning';
	/** What of it can be read at each radius: the lever on a clock face, or the angle between thread and stub. */
	readonly reads?: 'clock' | 'angle';
};

const zeroIsNotOff =
	'Zero on a dial is not always zero force: a spring or a magnet may still pull a little. Where the maker allows it, unhook it.';

/** Bias (anti-skating) devices. A row added here is offered, switched off, restored and stored without further edits. */
export const biasDevices = {
	none: {label: 'none', off: '', confirm: '', mistake: '', on: '', restore: '', setBy: 'nothing'},
	'weight-on-thread': {
		label: 'weight on a thread',
		off: 'Unhook the bias weight and lay its thread clear of the arm.',
		confirm: 'Weight unhooked and thread clear?',
		mistake: 'A thread that is still looped over its stub drags, even without the weight.',
		on: 'Hook the bias weight on, its thread over the guide and free of everything else.',
		restore: 'Hook the bias weight on again, thread over its guide, at its usual notch.',
		setBy: 'weight',
		reads: 'angle',
	},
	'weighted-lever': {
		label: 'weighted lever with pulley',
		off: 'Take the weight off the lever, or unhook the thread from the arm.',
		confirm: "Lever's weight off, thread slack?",
		mistake: 'The bare lever has weight of its own: a taut thread still pulls.',
		on: "Put the lever's weight on and lay the thread over its pulley.",
		restore: "Put the lever's weight back and lay the thread over its pulley.",
		setBy: 'weight',
		reads: 'clock',
	},
	spring: {
		label: 'spring',
		off: 'Set the bias dial to zero; unhook the spring where the maker allows it.',
		confirm: 'Bias dial at zero, or spring unhooked?',
		mistake: zeroIsNotOff,
		on: 'Hook the spring in and set the bias dial as it is played.',
		restore: 'Set the bias dial back to its usual value, spring hooked in.',
		setBy: 'dial',
	},
	magnet: {
		label: 'magnet',
		off: 'Set the bias dial to zero; turn the magnet away where the maker allows it.',
		confirm: 'Bias dial at zero?',
		mistake: zeroIsNotOff,
		on: 'Set the bias dial as it is played.',
		restore: 'Set the bias dial back to its usual value.',
		setBy: 'turning',
	},
	other: {
		label: 'other',
		off: 'Put the bias device out of action the way its maker says.',
		confirm: 'Bias device out of action?',
		mistake: 'A device at its lowest setting is not the same as a device that is off.',
		on: 'Switch the bias device on the way its maker says, as it is played.',
		restore: 'Set the bias device back the way its maker says.',
		setBy: 'dial',
	},
} as const satisfies Record<string, BiasDevice>;

export type BiasDeviceId = keyof typeof biasDevices;
export const biasDeviceIds = Object.keys(biasDevices) as BiasDeviceId[];

const idOf = (facts: Facts): BiasDeviceId => biasDeviceIds.find((id) => facts.is('arm-bias-device', id)) ?? 'none';

/** The bias device of the arm. */
export const biasDeviceOf = (facts: Facts): BiasDevice => biasDevices[idOf(facts)];

/** Whether the arm has a bias device at all. */
export const hasBias = (facts: Facts): boolean => idOf(facts) !== 'none';
