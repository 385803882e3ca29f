import type {FoundValue, Misfit} from '../../store/store-fault.js';

/** Content that is not of its form, at a key: 'answers.mat.typed is not what is wanted here (…).' */
export const misfitText = ({at, why}: Misfit): string =>
	`${at === '' ? 'its content' : at} is not what is wanted here (${why}).`;

/** A value that no file can hold, at a key: 'content.a[0] is Infinity'. */
export const valueText = ({at, found}: FoundValue): string =>
	typeof found === 'number' || found === 'missing' ? `${at} is ${found}` : `${at} is a ${found}`;
