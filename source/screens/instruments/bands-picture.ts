import stringWidth from 'string-width';
import type {Judged} from '../../pages/instruments/bands.js';
import {bandsLayout} from '../../pages/pictures/bands-layout.js';
import type {BandRow, ShownAs} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import type {Row} from '../body.js';
import {type Look, toneMark} from '../look.js';
import {type BandAxis, bandAxis, bandGlyphs} from './band-axis.js';
import {frictionPicture} from './friction-picture.js';
import {brokenText, packed, type Room, type Sheet, sheetOf, shownText} from './sheet.js';

/** A row of the picture: a band, or the one of a round that has begun. */
type Line = {readonly label: string; readonly figure: Judged | undefined; readonly band: BandRow | number};

type Form = {
	/** Columns to the left of the axis and to its right. */
	readonly before: number;
	readonly after: number;
	/** Label and figure stand on a row of their own, over the band. */
	readonly isStacked: boolean;
	/** Of a figure only the mark of how it is judged is shown. */
	readonly isMarkOnly: boolean;
	readonly headRows: number;
};

// Where 'good', 'usable', the ends and zero have room beside each other.
const leastAxis = 31;
const leastBriefAxis = 13;
/** From here on the limits have names on the screen: columns and rows. */
const namedFrom = {columns: 60, rows: 5};

/**
 * Hold bands to scale, the spindle to the left: a row for each round or radius, the limits of the pull as upright lines
 * that carry name and number; the limit of what is usable begins higher up. Under them the friction, where it is given.
 */
export function bandsPicture(bands: ShownAs<'bands'>, room: Room, look: Look): Row[] {
	const all = linesOf(bands, look);
	const form = formFor(all, room, look);
	if (!form) return inWords(all, room, look);
	const perLine = form.isStacked ? 2 : 1;
	const lines = fitting(all, Math.floor((room.rows - form.headRows) / perLine));
	const sheet = sheetOf(room);
	const span = [form.before, room.columns - form.after - 1] as const;
	const axis = bandAxis(bandsLayout(bands), span, sheet, look);
	if (form.headRows === 2) axis.whole(0);
	else axis.brief(0);
	const spare = room.rows - form.headRows - perLine * lines.length;
	// A row between two bands keeps them apart where there is room for it and for the rest.
	const wanted = noteRows(bands, look, room).length + (bands.friction ? bands.friction.rows.length + 2 : 0);
	const step = perLine + (spare >= lines.length - 1 + wanted ? 1 : 0);
	const end = form.headRows + step * (lines.length - 1) + perLine;
	lines.forEach((line, index) => {
		drawLine(line, form.headRows + index * step, form, {sheet, axis, room, look});
		if (step > perLine && index < lines.length - 1) axis.lines(form.headRows + index * step + perLine);
	});
	return [...sheet.rows(), ...under(bands, {...room, rows: room.rows - end}, look)];
}

const linesOf = ({rows, begun}: ShownAs<'bands'>, look: Look): Line[] => [
	...rows.map((band) => ({label: shownText(band.label, look), figure: band.figure, band})),
	...(begun ? [{label: shownText(begun.label, look), figure: undefined, band: begun.lowPct}] : []),
];

/** An earlier band gives way first, then the oldest of the others. */
function fitting(lines: readonly Line[], room: number): readonly Line[] {
	const most = Math.max(1, room);
	const isEarlier = ({band}: Line) => typeof band !== 'number' && band.earlier === true;
	const today = lines.filter((line) => !isEarlier(line)).slice(-most);
	const before = lines.filter(isEarlier).slice(0, most - today.length);
	return lines.filter((line) => today.includes(line) || before.includes(line));
}

const figureText = (figure: Judged | undefined, look: Look): string =>
	figure ? `${toneMark(figure.tone, look)}${shownText(figure.text, look)}` : '';

/** The largest form for which there is room. */
function formFor(lines: readonly Line[], {columns, rows}: Room, look: Look): Form | undefined {
	const widest = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => stringWidth(text)));
	const label = widest(lines.map((line) => line.label)) + 1;
	const figure = widest(lines.map((line) => figureText(line.figure, look)));
	const mark = widest(lines.map((line) => (line.figure ? toneMark(line.figure.tone, look) : '')));
	const isNamed = columns >= namedFrom.columns && rows >= namedFrom.rows;
	const headRows = isNamed ? 2 : 1;
	const form = {before: label, headRows, isStacked: false, isMarkOnly: false};
	// Two columns are kept for the percent sign behind the axis.
	const whole = {...form, after: Math.max(2, figure === 0 ? 0 : figure + 2)};
	if (columns - whole.before - whole.after >= leastAxis) return whole;
	if (headRows + 2 * lines.length <= rows && label + figure < columns)
		return {...form, before: 0, after: 0, isStacked: true};
	const brief = {...form, after: mark === 0 ? 0 : mark + 1, isMarkOnly: true};
	return columns - brief.before - brief.after >= (isNamed ? leastAxis : leastBriefAxis) ? brief : undefined;
}

type Drawing = {readonly sheet: Sheet; readonly axis: BandAxis; readonly room: Room; readonly look: Look};

function drawLine(line: Line, row: number, form: Form, {sheet, axis, room, look}: Drawing): void {
	const {label, figure, band} = line;
	const bandRow = form.isStacked ? row + 1 : row;
	const text = figure && form.isMarkOnly ? toneMark(figure.tone, look).trimEnd() : figureText(figure, look);
	sheet.write(row, 0, label);
	// Figures begin under each other, but where one is under its label: there it ends with the axis.
	const start = form.isStacked ? room.columns - stringWidth(text) : room.columns - form.after + 2;
	sheet.write(row, form.isMarkOnly ? room.columns - 1 : start, text, figure?.tone);
	axis.lines(bandRow);
	if (typeof band === 'number') axis.begun(band, bandRow);
	else axis.band(band, bandRow);
}

/** What the marks and the numbers stand for. */
function noteRows(bands: ShownAs<'bands'>, look: Look, {columns}: Room): Row[] {
	const said = words.instruments.bands;
	const {now, earlier} = bandGlyphs[look.unicode ? 'unicode' : 'ascii'];
	const notes = [
		...(columns < namedFrom.columns ? [said.limits(bands)] : [said.judged({middle: now.middle})]),
		...(bands.rows.some((row) => row.earlier) ? [said.earlier({middle: earlier.middle})] : []),
	].map((note) => shownText(note, look));
	return packed(notes, columns).map((text) => ({text, tone: 'plain'}));
}

/** The friction comes before what explains: it is read, the other is known after the first time. */
function under(bands: ShownAs<'bands'>, room: Room, look: Look): Row[] {
	const blank: Row = {text: '', tone: 'plain'};
	const notes = noteRows(bands, look, room);
	const friction = bands.friction ? frictionPicture(bands.friction, room, look) : [];
	const spare = room.rows - friction.length;
	const kept = notes.slice(0, Math.max(0, spare));
	const isApart = friction.length > 0 && spare > kept.length;
	return [...kept, ...(isApart ? [blank] : []), ...friction];
}

/** Where there is no room for an axis. */
const inWords = (lines: readonly Line[], room: Room, look: Look): Row[] =>
	fitting(lines, room.rows)
		.flatMap(({label, figure}) =>
			brokenText(`${label} ${figureText(figure, look)}`.trim(), room.columns).map((text) => ({
				text,
				tone: figure?.tone ?? ('plain' as const),
			})),
		)
		.slice(0, room.rows);
