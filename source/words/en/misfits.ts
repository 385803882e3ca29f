import type {FoundValue, Misfit} from '../../store/store-fault.js';
import {found as foundIn} from '../speaker.js';

/** What belongs there, by what the schema wanted. */
const wanted: Readonly<Record<string, string>> = {
	array: 'a list',
	boolean: 'true or false',
	'finite-number': 'a finite number',
	instant: 'a time like 2026-05-04T10:00:00+02:00',
	number: 'a number',
	object: 'a group of keys',
	record: 'a group of keys',
	positive: 'a number above zero',
	string: 'a text',
};

/** Content that is not of its form, at a key: 'answers.mat.typed is not a text', without a full stop. */
export const misfitText = ({at, why}: Misfit): string => {
	const what = foundIn(wanted, why);
	if (at === '') return what === undefined ? 'its content is wrong' : `its content is not ${what}`;
	return what === undefined ? `${at} is wrong` : `${at} is not ${what}`;
};

/** A value that no file can hold, at a key: 'content.a[0] is Infinity'. */
export const valueText = ({at, found}: FoundValue): string =>
	typeof found === 'number' || found === 'missing' ? `${at} is ${found}` : `${at} is a ${found}`;
