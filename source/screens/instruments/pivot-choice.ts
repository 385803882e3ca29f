import {words} from '../../words/index.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {type Room, sheetOf, shownText} from './sheet.js';

/** The deck from above with the numbers of the choices where the pivot may stand. */
export function pivotChoice(room: Room, look: Look): Row[] {
	const spindle = look.unicode ? '◉' : '(o)';
	const {back, front} = words.pictures.plan;
	const lines = ['   4     3     1', `   5    ${spindle.padEnd(3)}    2`, '   6     7     8'];
	const sheet = sheetOf(room);
	const aside = 19;
	lines.forEach((line, row) => {
		sheet.write(row, 0, line);
	});
	for (const [row, text] of [
		[0, back],
		[2, front],
	] as const)
		if (sheet.isFree(row, aside, shownText(text, look))) sheet.write(row, aside, shownText(text, look));
	return sheet.rows();
}
