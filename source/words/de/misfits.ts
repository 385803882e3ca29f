import type {FoundValue, Misfit} from '../../store/store-fault.js';
import {found as foundIn} from '../speaker.js';

/** What belongs there, by what the schema wanted. */
const wanted: Readonly<Record<string, string>> = {
	array: 'keine Liste',
	boolean: 'weder true noch false',
	'finite-number': 'keine endliche Zahl',
	instant: 'keine Zeit wie 2026-05-04T10:00:00+02:00',
	number: 'keine Zahl',
	object: 'keine Gruppe von Schlüsseln',
	record: 'keine Gruppe von Schlüsseln',
	positive: 'keine Zahl über null',
	string: 'kein Text',
};

/** Content that is not of its form, at a key: 'answers.mat.typed ist kein Text', without a full stop. */
export const misfitText = ({at, why}: Misfit): string =>
	`${at === '' ? 'der Inhalt' : at} ist ${foundIn(wanted, why) ?? 'falsch'}`;

const kinds = {
	bigint: 'ein bigint',
	function: 'eine Funktion',
	symbol: 'ein Symbol',
	'forbidden-key': 'ein verbotener Schlüssel',
};

/** A value that no file can hold, at a key: 'content.a[0] ist Infinity'. */
export const valueText = ({at, found}: FoundValue): string => {
	if (found === 'missing') return `${at} fehlt`;
	return `${at} ist ${typeof found === 'number' ? found : kinds[found]}`;
};
