import {readText} from '../../procedure/read-answer.js';
import {readNumber} from '../../procedure/read-number.js';
import {
	languageChoices,
	type Settings,
	settingItems,
	settingsFault,
	switchIds,
	textIds,
} from '../../procedure/settings.js';
import {units} from '../../units.js';
import {words} from '../../words/index.js';
import {refusalText} from '../../words/step-text.js';
import type {Workbench} from '../../workbench.js';
import {line} from '../shown-lines.js';
import {backOffer, fieldStop, go, listStop, type Offer, type Stop, type Turn} from './page.js';
import {type BesidePlace, type SettingPlace, toHome} from './places.js';

const say = words.beside.settings;
const {title} = say;
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
		const value = settings[item.id];
		const turn = (typed: string): Turn<BesidePlace> => {
			const read = readSetting(settings, item, typed);
			return typeof read === 'string' ? {kind: 'refused', sentence: read} : keeping(read);
		};
		return fieldStop({title, shown: [line(say.numbers[item.id]({value}))]}, toList, turn, {initial: String(value)});
	}
	if (place.at === 'setting-text') {
		const {id} = place;
		const turn = (typed: string): Turn<BesidePlace> => {
			const text = typed.trim();
			const read = text === '' || text === '-' ? undefined : readText(text);
			if (read?.kind === 'refused') return {kind: 'refused', sentence: refusalText(read.refusal)};
			return keeping({...settings, [id]: read?.kind === 'value' ? read.typed : ''});
		};
		const field = {initial: settings[id], mayBeEmpty: true};
		return fieldStop({title, shown: [line(say.texts[id].about)]}, toList, turn, field);
	}
	return listStop<BesidePlace>({title, shown: [line(say.about)]}, toHome, [
		// First, for whoever cannot read the rest.
		['language', say.language(settings), () => keeping({...settings, language: nextLanguage(settings)})],
		...settingItems.map((item): Offer<BesidePlace> => {
			const label = say.numbers[item.id]({value: settings[item.id]});
			return [item.id, label, () => go({at: 'setting', item})];
		}),
		...switchIds.map((id): Offer<BesidePlace> => {
			const label = say.switches[id]({isOn: settings[id]});
			return [id, label, () => keeping({...settings, [id]: !settings[id]})];
		}),
		...textIds.map((id): Offer<BesidePlace> => {
			return [id, say.texts[id].now({text: settings[id]}), () => go({at: 'setting-text', id})];
		}),
		backOffer(toHome),
	]);
}

/** The one behind it, and the first after the last. */
const nextLanguage = ({language}: Settings): Settings['language'] =>
	languageChoices[languageChoices.indexOf(language) + 1] ?? languageChoices[0];

/** The settings with one number changed, or one sentence saying why not. */
function readSetting(
	settings: Settings,
	{id, unit, whole, between: [low, high]}: (typeof settingItems)[number],
	typed: string,
): Settings | string {
	const read = readNumber(typed, units[unit].of, unit);
	if (!read.ok) return refusalText(read.refusal);
	if (whole && !Number.isInteger(read.value)) return say.typeWhole;
	if (read.value < low || read.value > high) return say.typeBetween({low, high});
	const next = {...settings, [id]: read.value};
	const fault = settingsFault(next);
	return fault === undefined ? next : say.faults[fault];
}
