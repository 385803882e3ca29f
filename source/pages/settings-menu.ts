import {readNumber} from '../procedure/read-number.js';
import {
	type SettingId,
	type Settings,
	type SwitchId,
	settingItems,
	settingsFault,
	switchIds,
} from '../procedure/settings.js';
import {units} from '../units.js';
import {words} from '../words/index.js';
import {refusalText} from '../words/step-text.js';
import {plainNumber} from '../words/wording.js';

type SettingOption = {readonly id: SettingId | SwitchId | 'back'; readonly label: string};

/** The settings as a list, each with its present value. */
export const settingOptions = (settings: Settings): SettingOption[] => [
	...settingItems.map(
		({id, unit}): SettingOption => ({
			id,
			label: `${words.settings[id]} ${plainNumber(settings[id])} ${units[unit].label}`,
		}),
	),
	...switchIds.map((id): SettingOption => ({id, label: `${words.settings[id]}: ${settings[id] ? 'on' : 'off'}`})),
	{id: 'back', label: 'back'},
];

/** Whether a line of the list is switched on or off. */
export const isSwitch = (id: string): id is SwitchId => switchIds.some((one) => one === id);

/** The settings with one number changed, or one sentence saying why not. */
export function readSetting(
	settings: Settings,
	id: SettingId,
	text: string,
): {ok: true; settings: Settings} | {ok: false; sentence: string} {
	const item = settingItems.find((one) => one.id === id);
	if (!item) return {ok: false, sentence: 'There is no such setting.'};
	const read = readNumber(text, units[item.unit].of, item.unit);
	if (!read.ok) return {ok: false, sentence: refusalText(read.refusal)};
	if (item.whole && !Number.isInteger(read.value)) return {ok: false, sentence: 'Type a whole number.'};
	const [low, high] = item.between;
	if (read.value < low || read.value > high) return {ok: false, sentence: `Type a number from ${low} to ${high}.`};
	const next = {...settings, [id]: read.value};
	const fault = settingsFault(next);
	return fault === undefined ? {ok: true, settings: next} : {ok: false, sentence: words.settingsFaults[fault]};
}
