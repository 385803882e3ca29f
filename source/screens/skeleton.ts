import stringWidth from 'string-width';
import type {Tone} from '../pages/shown-lines.js';
import {printable} from '../terminal/printable.js';
import {pageRow, type Row, textRows} from './body.js';
import {type Look, written} from './look.js';
import {isOnePage, pageOf} from './pages.js';

/** Lines of a frame by their place: only the body between task and answer grows and shrinks. */
export type Skeleton = {
	/** Bar, state of the deck, and what is to be done. */
	readonly head: readonly Row[];
	/** Lines that the body may have. */
	readonly room: number;
	/** The body filled up so that the answer stands still; under it what turns its pages, unless something else is said. */
	readonly filled: (body: readonly Row[], pageNote?: Row) => readonly Row[];
	/** What the keys do, at the foot. */
	readonly foot: readonly Row[];
};

export type SkeletonParts = {
	readonly width: number;
	/** Lines that the frame may have. */
	readonly height: number;
	readonly look: Look;
	readonly bar: readonly Row[];
	readonly state: readonly Row[];
	readonly task: readonly Row[];
	/** Lines that are kept for the task, so that what stands under it does not jump. */
	readonly taskRoom: number;
	/** Above the answer: a fault, a warning, the countdown. */
	readonly notes: readonly Row[];
	/** Lines of the answer's control. */
	readonly answer: number;
	readonly keys: readonly Row[];
};

const blank: Row = {text: '', tone: 'plain'};
const blanks = (count: number): readonly Row[] => Array.from({length: Math.max(0, count)}, () => blank);

/** With fewer lines than this there are none to spare between the parts. */
const airyRows = 22;
/** The answer stands where a list of three begins. */
export const answerRows = 3;
/** Beyond this a frame does not grow: eyes would have to travel. */
const mostRows = 39;

/** Where everything stands in a frame of a given size. Who listens hears no empty lines. */
export function skeletonOf(parts: SkeletonParts): Skeleton {
	const {look, bar, state, task, taskRoom, notes, answer, keys} = parts;
	const height = Math.min(parts.height, look.screenReader ? parts.height : mostRows);
	const gap = height >= airyRows && !look.screenReader ? [blank] : [];
	const head = [
		...bar,
		...state,
		...gap,
		...task,
		...(look.screenReader ? [] : blanks(taskRoom - task.length)),
		...gap,
	];
	// Where nothing is to be answered, the body has those lines too.
	const under = look.screenReader || answer === 0 ? [] : blanks(answerRows - answer);
	// A line is kept for what is said above the answer; without that it says which page is shown.
	const kept = Math.max(1, notes.length);
	const foot = [...under, ...gap, ...keys];
	const room = Math.max(0, height - head.length - kept - answer - foot.length);
	const filled = (body: readonly Row[], pageNote?: Row): readonly Row[] => {
		const fill = look.screenReader ? [] : blanks(room - body.length);
		if (notes.length > 0) return [...body, ...fill, ...notes];
		return [...body, ...fill, ...(pageNote ? [pageNote] : look.screenReader ? [] : [blank])];
	};
	return {head, room, filled, foot};
}

/**
 * The bar over a screen, all across it: at the left what it is about, at the right what is left of the room. Who listens
 * hears it as a sentence.
 */
export function barRows(parts: readonly string[], right: string, width: number, look: Look): readonly Row[] {
	const all = [...parts, right].filter((part) => part !== '');
	if (look.screenReader) return textRows(all.join(', '), width, look);
	const inner = width - 2;
	// What stands at the right gives way before a place is cut.
	const fits = inner - stringWidth(right) - 2 >= stringWidth(written(parts.at(-1) ?? '', look));
	const end = right !== '' && fits ? right : '';
	const left = leftOf(parts, inner - (end === '' ? 0 : stringWidth(end) + 2), look);
	const gap = ' '.repeat(Math.max(0, inner - stringWidth(left) - stringWidth(end)));
	return [{text: ` ${left}${gap}${end} `, tone: 'bar'}];
}

/**
 * The head of a page beside a check, where there is no deck to tell of: its title in the bar, and under it whole where
 * the bar has no room for all of it.
 */
export function headOfPage(title: string, width: number, look: Look) {
	const isCut = !look.screenReader && stringWidth(written(printable(title), look)) > width - 2;
	const task = isCut ? textRows(title, width, look, 'strong') : [];
	return {bar: barRows([title], '', width, look), state: [], task, taskRoom: 0, notes: []} as const;
}

/** A name that is shorter says nothing. */
const minName = 6;

/** The last part is the place; names before it give way where there is no room. */
function leftOf(parts: readonly string[], room: number, look: Look): string {
	const sep = look.unicode ? ' · ' : ', ';
	const place = cut(parts.at(-1) ?? '', room, look);
	const names = parts
		.slice(0, -1)
		.filter((part) => part !== '')
		.join(sep);
	const left = room - stringWidth(place) - sep.length;
	return names === '' || left < minName ? place : `${cut(names, left, look)}${sep}${place}`;
}

/** A text in a number of columns, as this terminal can show it: its mark of being cut may take more than one. */
const cut = (text: string, columns: number, look: Look): string => {
	const whole = written(printable(text), look);
	if (stringWidth(whole) <= columns) return whole;
	return written(printable(whole, columns - stringWidth(written('…', look)) + 1), look);
};

/** A text as lines, whole sentences first: those that fit a number of lines, and the rest. */
export function headAndRest(
	text: string,
	lines: number,
	width: number,
	look: Look,
	tone: Tone,
): readonly [Row[], string] {
	const sentences = text.split(/(?<=[.?!])\s+(?=\S)/u);
	for (let count = sentences.length; count > 1; count--) {
		const rows = textRows(sentences.slice(0, count).join(' '), width, look, tone);
		if (rows.length <= lines) return [rows, sentences.slice(count).join(' ')];
	}
	return [textRows(sentences[0] ?? '', width, look, tone), sentences.slice(1).join(' ')];
}

/** One page of a body that may have several, and the line that says which. */
export type PageOfBody = {readonly rows: readonly Row[]; readonly pages: number; readonly note?: Row};

/** The page of a body that is wanted, in so many lines. */
export function pageOfBody(
	rows: readonly Row[],
	page: number,
	{room, byArrows}: {readonly room: number; readonly byArrows: boolean},
	look: Look,
): PageOfBody {
	if (isOnePage(rows, room)) return {rows, pages: 1};
	const turned = pageOf(rows, page, room);
	const note = pageRow({page: turned.page + 1, of: turned.pages, byArrows, next: turned.next}, look);
	return {rows: turned.rows, pages: turned.pages, note};
}

/** Lines that a field takes: what is typed may be long. */
export const fieldRows = (typed: string, width: number, look: Look): number =>
	// The cursor stands behind it.
	textRows(`> ${typed}_`, width, look).length;
