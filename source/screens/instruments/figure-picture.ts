import stringWidth from 'string-width';
import type {BigFigure, Countdown} from '../../pages/instruments/figure.js';
import type {Tone} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {type BigRows, bigText} from './big-text.js';
import {brokenText, type Room, sheetOf, shownText} from './sheet.js';

/** Where digits begin, and how far what stands beside them is off. */
const [indent, gap] = [4, 2];

/** A figure in the largest digits for which there is room, with its unit and side beside and what it stands against. */
export function figurePicture(figure: BigFigure, room: Room, look: Look): Row[] {
	const beside = shownText([figure.unit, figure.side ?? ''].filter((one) => one !== '').join(' '), look);
	const note = shownText(figure.note ?? '', look);
	const digits = shownText(figure.text === '' ? words.instruments.nothingTyped : figure.text, look);
	return laidOut({digits, beside, note, tone: figure.tone ?? 'strong'}, room, look);
}

/** The seconds that are left, large, over a bar that grows shorter. */
export function countdownPicture(countdown: Countdown, room: Room, look: Look): Row[] {
	const {seconds, ofSeconds} = countdown;
	const said = {
		digits: String(seconds),
		beside: shownText(words.instruments.seconds, look),
		note: shownText(countdown.note ?? '', look),
		tone: 'strong' as const,
	};
	const barRows = room.rows > 1 ? 1 : 0;
	const rows = laidOut(said, {...room, rows: room.rows - barRows}, look);
	if (barRows === 0) return rows;
	const most = Math.max(1, Math.min(mostBar, room.columns - 2 * indent));
	const left = Math.round((Math.max(0, Math.min(seconds, ofSeconds)) / Math.max(1, ofSeconds)) * most);
	const [full, empty] = look.unicode ? ['█', '░'] : ['#', '.'];
	const margin = ' '.repeat(Math.min(indent, Math.max(0, room.columns - most)));
	const bar: Row = {text: `${margin}${full.repeat(left)}${empty.repeat(most - left)}`, tone: 'strong'};
	const isRoomBetween = rows.length + 1 < room.rows && rows.length > 1;
	return [...rows, ...(isRoomBetween ? [{text: '', tone: 'plain'} as const] : []), bar];
}

const mostBar = 50;

type Said = {readonly digits: string; readonly beside: string; readonly note: string; readonly tone: Tone};

function laidOut(said: Said, room: Room, look: Look): Row[] {
	const sizes: readonly BigRows[] = look.unicode ? [5, 3, 1] : [1];
	for (const rows of sizes)
		for (const isNoteBeside of [true, false]) {
			const drawn = drawnAs(said, rows, isNoteBeside, room, look);
			if (drawn) return drawn;
		}
	const text = [said.digits, said.beside, said.note].filter((one) => one !== '').join(' ');
	return brokenText(text, room.columns)
		.slice(0, Math.max(0, room.rows))
		.map((line) => ({text: line, tone: said.tone}));
}

/** Undefined where there is no room for it. */
function drawnAs(said: Said, rows: BigRows, isNoteBeside: boolean, room: Room, look: Look): Row[] | undefined {
	const digits = bigText(said.digits, {rows, unicode: look.unicode});
	const digitsWidth = stringWidth(digits[0] ?? '');
	const under = said.note !== '' && !isNoteBeside ? 1 : 0;
	const width = digitsWidth + (said.beside === '' ? 0 : gap + stringWidth(said.beside));
	const beside = said.note !== '' && isNoteBeside ? 2 * gap + stringWidth(said.note) : 0;
	const spare = room.columns - Math.max(width + beside, under * stringWidth(said.note));
	// Five rows are for a room that they do not fill.
	if (spare < 0 || digits.length + under > room.rows || (rows === 5 && room.rows < leastRowsForFive)) return;
	const left = Math.min(indent, spare);
	const sheet = sheetOf(room);
	const foot = digits.length - 1;
	digits.forEach((line, row) => {
		sheet.write(row, left, line, said.tone);
	});
	sheet.write(foot, left + digitsWidth + gap, said.beside, said.tone);
	// To the right, where the eye finds it on every screen; and level with the middle of the digits.
	const noteAt = Math.max(left + width + 2 * gap, Math.min(noteColumn, room.columns - stringWidth(said.note)));
	if (under) sheet.write(foot + 1, left, said.note);
	else sheet.write(foot, noteAt, said.note);
	return sheet.rows();
}

const leastRowsForFive = 7;
const noteColumn = 46;
