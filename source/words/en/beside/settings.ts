import {type Language, languages} from '../../../language.js';
import type {SettingId, SettingsFault, SwitchId, TextId} from '../../../procedure/settings.js';
import {plainNumber} from '../../numbers.js';

type Number = {readonly value: number};

/** Every setting with its present value. */
const numbers = {
	pullGoodPct: ({value}: Number) => `pull: good to ${plainNumber(value)} %`,
	pullUsablePct: ({value}: Number) => `pull: usable to ${plainNumber(value)} %`,
	bandGoodPct: ({value}: Number) => `friction: good to ${plainNumber(value)} %`,
	bandUsablePct: ({value}: Number) => `friction: usable to ${plainNumber(value)} %`,
	settleSeconds: ({value}: Number) => `countdown ${plainNumber(value)} s`,
} satisfies Record<SettingId, (values: Number) => string>;

type Switch = {readonly isOn: boolean};
const onOff = ({isOn}: Switch): string => (isOn ? 'on' : 'off');

const switches = {
	setAnew: (now: Switch) => `gauge lifted and placed again for each round: ${onOff(now)}`,
	brisk: (now: Switch) => `short questions, for those who know the way: ${onOff(now)}`,
	bell: (now: Switch) => `bell at the end of the countdown: ${onOff(now)}`,
} satisfies Record<SwitchId, (now: Switch) => string>;

const texts = {
	shop: {
		now: ({text}) => `shop: ${text === '' ? 'none' : text}`,
		about: "Type your shop's name, for the customer's sheet. New checks then ask for the customer. Type - for none.",
	},
} satisfies Record<TextId, {readonly now: (value: {readonly text: string}) => string; readonly about: string}>;

/** Why settings cannot be taken together. */
const faults: Readonly<Record<SettingsFault, string>> = {
	'pull-good-above-usable': 'For the pull, good must not be more than usable.',
	'band-good-above-usable': 'For the friction, good must not be more than usable.',
};

export const settings = {
	title: 'Settings',
	about:
		'What counts as good or usable is a default of this program, from trade practice. No published values were found. A change holds for new checks. If the gauge is not lifted and placed again for each round, the ± of the pull is larger.',
	numbers,
	switches,
	texts,
	faults,
	language: ({language}: {readonly language: Language | ''}) =>
		`language: ${language === '' ? 'as the system has it' : languages[language]} (from the next start)`,
	typeWhole: 'Type a whole number.',
	typeBetween: ({low, high}: {readonly low: number; readonly high: number}) => `Type a number from ${low} to ${high}.`,
};
