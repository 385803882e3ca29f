import type {FoundValue, Misfit} from '../../store/store-fault.js';

/** What was wanted, where the form has an id for it. */
const wanted: Readonly<Record<string, string>> = {
	instant: 'a time like 2026-05-04T10:00:00+02:00',
	'finite-number': 'a finite number',
};

/** Content that is not of its form, at a key: 'answers.mat.typed is not what is wanted here (…).' */
export const misfitText = ({at, why}: Misfit): string =>
	`${at === '' ? 'its content' : at} is wrong (wanted: ${wanted[why] ?? why}).`;

/** A value that no file can hold, at a key: 'content.a[0] is Infinity'. */
export const valueText = ({at, found}: FoundValue): string =>
	typeof found === 'number' || found === 'missing' ? `${at} is ${found}` : `${at} is a ${found}`;
