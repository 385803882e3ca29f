import {typedFigure} from '../pages/figure-asked.js';
import type {Countdown} from '../pages/instruments/figure.js';
import {line, type Shown} from '../pages/shown-lines.js';
import type {View} from '../pages/view.js';
import {words} from '../words/index.js';
import {rowsOf, wideColumns} from './arrange.js';
import {type Row, rowsOfOne, textRows} from './body.js';
import {deckRows} from './deck-row.js';
import {keyedLines} from './inputs/keyed.js';
import {keyRows} from './key-rows.js';
import {type Look, toneMark} from './look.js';
import {linesOfOptions} from './option-pages.js';
import {isOnePage} from './pages.js';
import {answerRows, barRows, fieldRows, headAndRest, pageOfBody, skeletonOf} from './skeleton.js';

export type LayoutInput = {
	readonly view: View;
	/** What stands in the field so far. */
	readonly typed?: string;
	readonly width: number;
	/** Lines that the frame may have. */
	readonly height: number;
	readonly page: number;
	/** Why and the usual mistake are shown instead of the instrument. */
	readonly isWhy: boolean;
	/** What is said above the answer; empty for nothing. */
	readonly notice: string;
	/** While the arm must hold still, it takes the place of the instrument. */
	readonly countdown?: Countdown | undefined;
	readonly look: Look;
};

export type Layout = {
	readonly head: readonly Row[];
	readonly body: readonly Row[];
	readonly foot: readonly Row[];
	/** Lines left for the control. */
	readonly controlRows: number;
	readonly pages: number;
};

const blank: Row = {text: '', tone: 'plain'};

/**
 * Puts a view into a frame of a given size, each part in its place: bar, deck, what is to be done, one instrument,
 * answer, keys. What does not fit is turned page by page; nothing is ever taller than the frame.
 */
export function layoutOf({view, typed = '', width, height, page, isWhy, notice, countdown, look}: LayoutInput): Layout {
	const isNarrow = width < wideColumns;
	const taskRoom = isNarrow ? 3 : 2;
	const [task, rest] = headAndRest(
		`${toneMark(view.askTone, look)}${taskIn(view)}`,
		taskRoom,
		width,
		look,
		view.askTone,
	);
	const notes = isWhy
		? []
		: [...textRows(notice, width, look, 'strong'), ...textRows(refusalOf(view, look), width, look, 'warn')];
	const sheet = isWhy ? [] : rowsOf(view.sheet, width, look);
	const parts = {
		width,
		height,
		look,
		bar: barOf(view, isNarrow, width, look),
		state: deckRows(view, isNarrow, width, look),
		task,
		taskRoom,
		notes,
		keys: keyRows(view, isWhy, width, look),
	};
	const {room: usual} = skeletonOf({...parts, answer: answerRows});
	const asked = shownWith(view, typed, look);
	const restRows = textRows(rest, width, look);
	// What its gauge shows is the last line of an arm, and must not give way to the one that tells the page.
	const kept = restRows.length + (hasArmToNudge(view) ? 1 : 0);
	const free = usual + answerRows;
	const answerFor = (bodyRows: number) => rowsOfControl(view, typed, width, free, bodyRows, look);
	// A long list of choices takes lines from what stands over it.
	const most = usual - Math.max(0, answerFor(Number.POSITIVE_INFINITY) - answerRows);
	const shown = [...restRows, ...rowsOf(asked, width, look, most - kept)];
	const answer = isWhy ? 0 : answerFor(shown.length);
	const {head, room, filled, foot} = skeletonOf({...parts, answer});
	// The other lines of the page give way before anything that belongs to this question.
	const left = room - shown.length;
	const whole = left < fewLines ? shown : underWarnings(shown, around(sheet, left));
	const all = isWhy
		? whyRows(view, width, look)
		: countdown
			? rowsOfOne(countdown, {columns: width, rows: room}, look)
			: whole;
	const fits = {room, byArrows: turnsByArrows(view, typed)};
	const body = pageOfBody(isOnePage(all, room) ? all : inOrder(all, view), page, fits, look);
	return {head, body: filled(body.rows, body.note), foot, controlRows: answer, pages: body.pages};
}

/** What is to be done; of a list that is ticked line by line, with the line that is asked. */
const taskIn = ({ask, prompt}: View): string =>
	prompt.kind === 'yes-no' && prompt.question !== undefined ? `${ask} ${prompt.question.replace(/\??$/, '?')}` : ask;

/** What may be hurt stands right under the task, before what was done. */
function underWarnings(shown: readonly Row[], sheet: readonly Row[]): readonly Row[] {
	const end = shown.findIndex(({tone}) => tone !== 'warn' && tone !== 'bad');
	return end < 0 ? [...shown, ...sheet] : [...shown.slice(0, end), ...sheet, ...shown.slice(end)];
}

/** Fewer lines of a page tell nothing. */
const fewLines = 3;

/** As many lines as there is room for, about the one that is asked. */
function around(sheet: readonly Row[], room: number): readonly Row[] {
	if (sheet.length <= room) return sheet;
	const asked = sheet.findIndex(({tone}) => tone === 'strong');
	const first = Math.max(0, Math.min(sheet.length - room, asked - Math.floor(room / 2)));
	return sheet.slice(first, first + Math.max(0, room));
}

/** Why the last entry was not taken, with its mark. */
const refusalOf = ({refusal}: View, look: Look): string =>
	refusal === undefined ? '' : `${toneMark('warn', look)}${refusal}`;

/** Arm, where this is in the whole, and how long it takes yet. */
function barOf({arm, place, title, minutes}: View, isShort: boolean, width: number, look: Look): readonly Row[] {
	const left = minutes === null ? '' : words.pages.view.minutes({minutes, isShort});
	return barRows([arm, [place, title].filter((part) => part !== '').join(' ')], left, width, look);
}

function whyRows({why, mistake}: View, width: number, look: Look): Row[] {
	return [...textRows(why, width, look), blank, ...textRows(words.faces.mistake({mistake}), width, look)];
}

/** Lines that the control wants, and at least gets: a list keeps three, so that it can be scrolled. */
function rowsOfControl(
	{prompt, long}: View,
	typed: string,
	width: number,
	free: number,
	bodyRows: number,
	look: Look,
): number {
	switch (prompt.kind) {
		case 'none':
			return 0;
		case 'field':
			return fieldRows(typed, width, look);
		case 'yes-no':
		case 'side':
		case 'still':
			return keyedLines(prompt).flatMap((line) => textRows(line, width, look)).length;
		case 'choice': {
			// What is to be read whole needs room for a picture; the list can be scrolled.
			const kept = Math.min(bodyRows, long ? 10 : 6);
			// The first two are seen without scrolling, also where their names take a second line.
			const least = Math.min(5, linesOfOptions(prompt.options.slice(0, 2), width) + 1);
			return Math.min(linesOfOptions(prompt.options, width), Math.max(least, free - kept));
		}
	}
}

/** What is the one thing stands on the first page; what is aside comes behind it. */
const inOrder = (rows: readonly Row[], {long}: View): readonly Row[] =>
	long || rows.some(({leaf}) => leaf !== undefined)
		? rows
		: rows.toSorted((one, other) => Number(one.tone === 'aside') - Number(other.tone === 'aside'));

const hasArmToNudge = ({shown}: View): boolean => shown.some(({kind}) => kind === 'gauged-arm');

/** In a field arrows move the cursor, and an arm that can be nudged is nudged by them. */
const turnsByArrows = (view: View, typed: string): boolean =>
	!hasArmToNudge(view) && (view.prompt.kind !== 'field' || typed === '');

/** Of a list that one key answers its lines; else the question names the one that it asks. */
const linesAtOnce = ({prompt}: View): readonly Shown[] =>
	prompt.kind === 'yes-no' && prompt.lines && prompt.lines[0] !== prompt.question
		? prompt.lines.map((text) => line(text))
		: [];

/** What is shown, under the figure that is read off; an arm that can be nudged takes all the room there is. */
function shownWith(view: View, typed: string, look: Look): readonly Shown[] {
	const {figure, unit, shown} = view;
	if (look.screenReader) return [...shown, ...linesAtOnce(view)];
	if (!figure || hasArmToNudge(view)) return shown;
	const digits = typed === '' && figure.target ? figure.target : typedFigure(typed, unit, figure.note);
	// What is wrong and what may be hurt stand over it: on a small screen the rest is a page further.
	const under = shown.findIndex((one) => one.kind !== 'line' || (one.tone !== 'bad' && one.tone !== 'warn'));
	return shown.toSpliced(under < 0 ? shown.length : under, 0, digits);
}
