import type {FoundValue, Misfit} from '../../store/store-fault.js';

/** What was wanted, where the form has an id for it. */
const wanted: Readonly<Record<string, string>> = {
	instant: 'eine Zeit wie 2026-05-04T10:00:00+02:00',
	'finite-number': 'eine endliche Zahl',
};

/** Content that is not of its form, at a key: 'answers.mat.typed ist falsch (verlangt: …).' */
export const misfitText = ({at, why}: Misfit): string =>
	`${at === '' ? 'Der Inhalt' : at} ist falsch (verlangt: ${wanted[why] ?? why}).`;

const kinds = {bigint: 'ein bigint', function: 'eine Funktion', symbol: 'ein Symbol'};

/** A value that no file can hold, at a key: 'content.a[0] ist Infinity'. */
export const valueText = ({at, found}: FoundValue): string => {
	if (found === 'missing') return `${at} fehlt`;
	return `${at} ist ${typeof found === 'number' ? found : kinds[found]}`;
};
