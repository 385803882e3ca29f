import stringWidth from 'string-width';
import type {PlanPlace} from '../../pages/arm-in-plan.js';
import type {Tone} from '../../pages/shown-lines.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import type {DeckPlan} from './deck-plan.js';
import {brokenText, type Room, sheetOf, shownText} from './sheet.js';

/** A sign in the plan; with a text it is named in the list beside it. */
export type PlanMark = {
	readonly sign: string;
	readonly at: PlanPlace | readonly PlanPlace[];
	readonly said?: string;
	readonly tone?: Tone;
};

const [indent, gap] = [2, 3];

/** Columns that a list of marks wants beside its plan. */
export const leastList = 14;

/** A plan with its marks, and beside it what they stand for; the foot of the list says where one stands. */
export function planWithList(plan: DeckPlan, marks: readonly PlanMark[], foot: string, room: Room, look: Look): Row[] {
	const sheet = sheetOf(room);
	const left = room.columns - plan.columns >= indent + gap + leastList ? indent : 0;
	plan.lines(look.unicode).forEach((line, row) => {
		sheet.write(row, left, line);
	});
	for (const {sign, at, tone} of marks)
		for (const place of 'x' in at ? [at] : at) {
			const {row, column} = plan.cellOf(place);
			sheet.write(row, left + column, sign, tone);
		}
	const listAt = left + plan.columns + gap;
	const width = room.columns - listAt;
	const list = marks.flatMap(({sign, said, tone}) => {
		if (said === undefined) return [];
		const lines = brokenText(shownText(said, look), width - 2);
		return lines.map((line, index) => ({text: `${index === 0 ? sign : ' '} ${line}`, tone}));
	});
	// A mark more than there are rows is left out, never half of the first.
	const above = room.rows > list.length + 2 ? 1 : 0;
	list.slice(0, room.rows - above).forEach(({text, tone}, index) => {
		sheet.write(above + index, listAt, text, tone);
	});
	const footText = shownText(foot, look);
	if (stringWidth(footText) <= width && above + list.length < room.rows - 1)
		sheet.write(room.rows - 1, listAt, footText);
	return sheet.rows();
}
