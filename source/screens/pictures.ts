import {words} from '../words/index.js';

/** The deck from above with the numbers of the choices where the pivot may stand. */
export function planPicture(unicode: boolean): string[] {
	const spindle = unicode ? '◉' : '(o)';
	const {back, front} = words.pictures.plan;
	return [`   4     3     1   ${back}`, `   5    ${spindle.padEnd(3)}    2`, `   6     7     8   ${front}`];
}
