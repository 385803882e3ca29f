import {readNumber} from '../../procedure/read-number.js';
import {type Settings, type SwitchId, settingItems, settingsFault, switchIds} from '../../procedure/settings.js';
import {units} from '../../units.js';
import {words} from '../../words/index.js';
import {refusalText} from '../../words/step-text.js';
import type {Workbench} from '../../workbench.js';
import {line} from '../shown-lines.js';
import type {BesidePlace} from './beside-pages.js';
import {back, go, type Stop, type Turn} from './page.js';

type SettingItem = (typeof settingItems)[number];

export type SettingPlace = {readonly at: 'settings'} | {readonly at: 'setting'; readonly item: SettingItem};

const say = words.beside.settings;
const toList = go({at: 'settings'} as const);

/** Limits of the verdict, how rounds are taken, settle countdown and bell. They hold for checks that start afterwards. */
export function settingsAt(workbench: Workbench, place: SettingPlace): Stop<BesidePlace> {
	const settings = workbench.settings();
	const keeping = (next: Settings): Turn<BesidePlace> => ({
		kind: 'save',
		save: () => workbench.saveSettings(next),
		to: toList.to,
	});
	if (place.at === 'setting') {
		const {item} = place;
		const {id} = item;
		return {
			page: {
				title: say.title,
				shown: [line(say.numbers[id]({value: settings[id]}))],
				prompt: {kind: 'field', initial: String(settings[id]), mayBeEmpty: false, unit: ''},
			},
			turn: (entry) => {
				const read = readSetting(settings, item, entry);
				return read.ok ? keeping(read.settings) : {kind: 'refused', sentence: read.sentence};
			},
			back: toList,
		};
	}
	const toHome = go({at: 'home'} as const);
	return {
		page: {
			title: say.title,
			shown: [line(say.about)],
			prompt: {kind: 'choice', options: settingOptions(settings)},
		},
		turn: (entry) => {
			if (isSwitch(entry)) return keeping({...settings, [entry]: !settings[entry]});
			const item = settingItems.find(({id}) => id === entry);
			return item ? go({at: 'setting', item}) : toHome;
		},
		back: toHome,
	};
}

/** The settings as a list, each with its present value. */
const settingOptions = (settings: Settings) => [
	...settingItems.map(({id}) => ({id, label: say.numbers[id]({value: settings[id]})})),
	...switchIds.map((id) => ({id, label: say.switches[id]({isOn: settings[id]})})),
	back,
];

/** Whether a line of the list is switched on or off. */
const isSwitch = (id: string): id is SwitchId => switchIds.some((one) => one === id);

/** The settings with one number changed, or one sentence saying why not. */
function readSetting(
	settings: Settings,
	{id, unit, whole, between: [low, high]}: SettingItem,
	text: string,
): {ok: true; settings: Settings} | {ok: false; sentence: string} {
	const read = readNumber(text, units[unit].of, unit);
	if (!read.ok) return {ok: false, sentence: refusalText(read.refusal)};
	if (whole && !Number.isInteger(read.value)) return {ok: false, sentence: say.typeWhole};
	if (read.value < low || read.value > high) return {ok: false, sentence: say.typeBetween({low, high})};
	const next = {...settings, [id]: read.value};
	const fault = settingsFault(next);
	return fault === undefined ? {ok: true, settings: next} : {ok: false, sentence: say.faults[fault]};
}
