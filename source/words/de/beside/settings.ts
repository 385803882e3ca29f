import {type Language, languages} from '../../../language.js';
import type {SettingId, SettingsFault, SwitchId, TextId} from '../../../procedure/settings.js';
import {plainNumber} from '../../numbers.js';

type Number = {readonly value: number};

/** Every setting with its present value. */
const numbers = {
	pullGoodPct: ({value}: Number) => `Zug: gut bis ${plainNumber(value)} %`,
	pullUsablePct: ({value}: Number) => `Zug: brauchbar bis ${plainNumber(value)} %`,
	bandGoodPct: ({value}: Number) => `Reibung: gut bis ${plainNumber(value)} %`,
	bandUsablePct: ({value}: Number) => `Reibung: brauchbar bis ${plainNumber(value)} %`,
	settleSeconds: ({value}: Number) => `Countdown ${plainNumber(value)} s`,
} satisfies Record<SettingId, (values: Number) => string>;

type Switch = {readonly isOn: boolean};
const onOff = ({isOn}: Switch): string => (isOn ? 'an' : 'aus');

const switches = {
	setAnew: (now: Switch) => `Kraftmesser vor jeder Runde neu aufstellen: ${onOff(now)}`,
	brisk: (now: Switch) => `kurze Fragen, für Geübte: ${onOff(now)}`,
	bell: (now: Switch) => `Ton am Ende des Countdowns: ${onOff(now)}`,
} satisfies Record<SwitchId, (now: Switch) => string>;

const texts = {
	shop: {
		now: ({text}) => `Werkstatt: ${text === '' ? 'keine' : text}`,
		about:
			'Namen der Werkstatt eintippen, fürs Kundenblatt. Neue Prüfungen fragen dann nach dem Kunden. Keine: „-“ eintippen.',
	},
} satisfies Record<TextId, {readonly now: (value: {readonly text: string}) => string; readonly about: string}>;

/** Why settings cannot be taken together. */
const faults: Readonly<Record<SettingsFault, string>> = {
	'pull-good-above-usable': 'Beim Zug darf „gut“ nicht über „brauchbar“ liegen.',
	'band-good-above-usable': 'Bei der Reibung darf „gut“ nicht über „brauchbar“ liegen.',
};

export const settings = {
	title: 'Einstellungen',
	about:
		'Was als gut oder brauchbar gilt, ist aus der Werkstattpraxis voreingestellt. Veröffentlichte Werte wurden nicht gefunden. Eine Änderung gilt für neue Prüfungen. Wird der Kraftmesser nicht vor jeder Runde neu aufgestellt, ist das ± des Zugs größer.',
	numbers,
	switches,
	texts,
	faults,
	language: ({language}: {readonly language: Language | ''}) =>
		`Sprache: ${language === '' ? 'wie im System' : languages[language]} (ab dem nächsten Start)`,
	typeWhole: 'Ganze Zahl eintippen.',
	typeBetween: ({low, high}: {readonly low: number; readonly high: number}) =>
		`Zahl von ${plainNumber(low)} bis ${plainNumber(high)} eintippen.`,
};
