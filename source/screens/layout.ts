import stringWidth from 'string-width';
import type {View} from '../pages/view.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {footRows, pageRow, type Row, rowsOf, textRows} from './body.js';
import {keyedLines} from './inputs/keyed.js';
import type {Look} from './look.js';
import {linesOfOptions} from './option-pages.js';
import {pageOf} from './pages.js';

export type LayoutInput = {
	readonly view: View;
	readonly width: number;
	/** Lines that the frame may have. */
	readonly height: number;
	readonly page: number;
	/** Why and the usual mistake are shown instead of the question. */
	readonly isWhy: boolean;
	/** The countdown, or nothing. */
	readonly notice: string;
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

/** Puts a view into a frame of a given size. What does not fit is turned page by page; nothing is ever taller than the frame. */
export function layoutOf({view, width, height, page, isWhy, notice, look}: LayoutInput): Layout {
	const head = headRows(view, width, look);
	const foot = keyRows(view, isWhy, width, look);
	const top = [...textRows(view.title, width, look, 'strong'), ...(isWhy ? [] : textRows(view.ask, width, look))];
	const notes = isWhy
		? []
		: [...textRows(notice, width, look, 'strong'), ...textRows(view.refusal ?? '', width, look, 'warn')];
	const sheet = isWhy ? [] : rowsOf(view.sheet, width, look);
	const shown = isWhy ? whyRows(view, width, look) : rowsOf(view.shown, width, look);
	const free = height - head.length - top.length - notes.length - foot.length;
	const controlRows = isWhy ? 0 : rowsOfControl(view, width, free, sheet.length + shown.length, look);
	const room = free - controlRows;
	// The other lines of the page give way before anything that belongs to this question.
	const whole = sheet.length + shown.length <= room ? [...sheet, ...shown] : shown;
	const body = fitBody(whole, room, page, view, look);
	const spare = free - controlRows - body.rows.length;
	return {
		head: spare > 1 ? [...head, blank] : head,
		body: [
			...top,
			...(spare > 2 && body.rows.length > 0 ? [blank] : []),
			...body.rows,
			...(spare > 3 && controlRows > 0 ? [blank] : []),
			...notes,
		],
		foot: spare > 0 ? [blank, ...foot] : foot,
		controlRows,
		pages: body.pages,
	};
}

/** Arm and stage; under them how the deck stands, which is never faint. */
function headRows({arm, stage, deck, progress}: View, width: number, look: Look): Row[] {
	const place = printable(`${arm}${look.unicode ? ' · ' : ', '}${stage}`, width);
	const parts = textRows(words.pages.deck.parts(deck).join(look.unicode ? ' · ' : ', '), width, look);
	const last = parts.at(-1);
	const gap = last ? width - stringWidth(last.text) - progress.length : 0;
	const state: Row[] =
		last && gap >= 2
			? [...parts.slice(0, -1), {text: `${last.text}${' '.repeat(gap)}${progress}`, tone: 'plain'}]
			: [...parts, {text: progress, tone: 'plain'}];
	return [{text: place, tone: 'dim'}, ...state];
}

function whyRows({why, mistake}: View, width: number, look: Look): Row[] {
	return [...textRows(why, width, look), blank, ...textRows(words.faces.mistake({mistake}), width, look)];
}

/** Lines that the control wants, and at least gets: a list keeps three, so that it can be scrolled. */
function rowsOfControl({prompt, long}: View, width: number, free: number, bodyRows: number, look: Look): number {
	switch (prompt.kind) {
		case 'none':
			return 0;
		case 'field':
			return 1;
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

function fitBody(
	shown: readonly Row[],
	room: number,
	page: number,
	{prompt, long}: View,
	look: Look,
): {rows: readonly Row[]; pages: number} {
	if (shown.length <= room) return {rows: shown, pages: 1};
	const essential = shown.filter(({tone}) => tone !== 'dim');
	// What is to be read whole is turned page by page; elsewhere the fainter lines give way first.
	if (!long && essential.length <= room) return {rows: essential, pages: 1};
	const turned = pageOf(shown, page, room - 1);
	const note = pageRow({page: turned.page + 1, of: turned.pages, byArrows: prompt.kind !== 'field'}, look);
	return {rows: [...turned.rows, note], pages: turned.pages};
}

/** What the keys do; those of the number pad too where they take no line more. */
function keyRows(view: View, isWhy: boolean, width: number, look: Look): Row[] {
	const rows = footRows(hintsFor(view, isWhy, false), width, look);
	const withPad = footRows(hintsFor(view, isWhy, true), width, look);
	return withPad.length > rows.length ? rows : withPad;
}

function hintsFor({prompt, unit, long}: View, isWhy: boolean, isPadNamed: boolean): readonly string[] {
	const {hints, escapes} = words.faces;
	if (isWhy) return [hints.close, hints.leave];
	const common = [
		...(isPadNamed ? [hints.backByPad, hints.whyByPad] : [escapes.back, hints.why]),
		hints.steps,
		hints.leave,
	];
	switch (prompt.kind) {
		case 'field':
			if (unit === '' || !prompt.settle) return [hints.accept, ...common];
			return prompt.initial === '' ? [hints.settleFirst, ...common] : [hints.accept, hints.settle, ...common];
		case 'yes-no':
			return [hints.yes, hints.notYet, ...common];
		case 'still':
			return [hints.still, ...common];
		case 'side':
			return [hints.side, ...common];
		case 'choice':
			return long ? [hints.choose, hints.pages, ...common] : [hints.choose, ...common];
		case 'none':
			return [hints.leave];
	}
}
