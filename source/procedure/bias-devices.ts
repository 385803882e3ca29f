import type {Facts} from './facts.js';

/** What the strength of a bias device is set by, which is what advice is given in. */
export type SetBy = 'nothing' | 'weight' | 'dial' | 'turning';

type BiasDevice = {
	readonly setBy: SetBy;
	/** What of it can be read at each radius: the lever on a clock face, or the angle between thread and bias pin. */
	readonly reads?: 'clock' | 'angle';
};

/** Bias (anti-skating) devices. What is done to each to switch it off and on stands in `words/`. */
export const biasDevices = {
	none: {setBy: 'nothing'},
	'weight-on-thread': {setBy: 'weight', reads: 'angle'},
	'weighted-lever': {setBy: 'weight', reads: 'clock'},
	spring: {setBy: 'dial'},
	magnet: {setBy: 'turning'},
	other: {setBy: 'dial'},
} as const satisfies Record<string, BiasDevice>;

export type BiasDeviceId = keyof typeof biasDevices;
export const biasDeviceIds = Object.keys(biasDevices) as BiasDeviceId[];

/** The id of the arm's bias device. */
export const biasDeviceId = (facts: Facts): BiasDeviceId =>
	biasDeviceIds.find((id) => facts.is('arm-bias-device', id)) ?? 'none';

/** The bias device of the arm. */
export const biasDeviceOf = (facts: Facts): BiasDevice => biasDevices[biasDeviceId(facts)];

/** Whether the arm has a bias device at all. */
export const hasBias = (facts: Facts): boolean => biasDeviceId(facts) !== 'none';
