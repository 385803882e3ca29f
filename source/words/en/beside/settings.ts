import type {SettingId, SettingsFault, SwitchId, TextId} from '../../../procedure/settings.js';
import {plainNumber} from '../../numbers.js';

type Number = {readonly value: number};

/** Every setting with its present value. */
const numbers = {
	pullGoodPct: ({value}: Number) => `pull: good to ${plainNumber(value)} %`,
	pullUsablePct: ({value}: Number) => `pull: usable to ${plainNumber(value)} %`,
	bandGoodPct: ({value}: Number) => `hold band: good to ${plainNumber(value)} %`,
	bandUsablePct: ({value}: Number) => `hold band: usable to ${plainNumber(value)} %`,
	settleSeconds: ({value}: Number) => `settle countdown ${plainNumber(value)} s`,
} satisfies Record<SettingId, (values: Number) => string>;

type Switch = {readonly isOn: boolean};
const onOff = ({isOn}: Switch): string => (isOn ? 'on' : 'off');

const switches = {
	setAnew: (now: Switch) => `gauge set anew for each round: ${onOff(now)}`,
	brisk: (now: Switch) => `brisk, for those who know the way: ${onOff(now)}`,
	bell: (now: Switch) => `bell at the end of the countdown: ${onOff(now)}`,
} satisfies Record<SwitchId, (now: Switch) => string>;

const texts = {
	shop: {
		now: ({text}) => `shop: ${text === '' ? 'none' : text}`,
		about:
			"Your shop's name, for the customer's sheet. Checks that start from now on ask for the customer too. Type - for none.",
	},
} satisfies Record<TextId, {readonly now: (value: {readonly text: string}) => string; readonly about: string}>;

/** Why settings cannot be taken together. */
const faults: Readonly<Record<SettingsFault, string>> = {
	'pull-good-above-usable': "The pull's good limit must not be above its usable limit.",
	'band-good-above-usable': "The hold band's good limit must not be above its usable limit.",
};

export const settings = {
	title: 'Settings',
	about:
		'Limits are defaults of this program, from memory of trade practice; no published limits were found. They hold for checks that start from now on. A gauge that is not set anew for each round leaves 0.3 % more open in every pull.',
	numbers,
	switches,
	texts,
	faults,
	typeWhole: 'Type a whole number.',
	typeBetween: ({low, high}: {readonly low: number; readonly high: number}) => `Type a number from ${low} to ${high}.`,
};
