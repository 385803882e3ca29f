import stringWidth from 'string-width';
import type {LevelScale} from '../../pages/instruments/level.js';
import {placesOn} from '../../pages/pictures/scale.js';
import type {Tone} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {stepDecimals, withSign} from '../../words/numbers.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {packed, type Room, type Sheet, sheetOf, shownText, startAbout} from './sheet.js';

const glyphs = {
	unicode: {left: '├', right: '┤', span: '─', zero: '┼', tilt: '●'},
	ascii: {left: '<', right: '>', span: '-', zero: '|', tilt: '#'},
} as const;

/** Round ends of a scale, degrees. */
const reaches = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 45, 90];

// Brackets, zero and both ends have their numbers on it.
const leastAxis = 23;
const mostAxis = 61;

type Mark = {readonly sign: string; readonly deg: number; readonly said: string; readonly tone: Tone};

/** What a level showed both ways round, the tilt between, and how far the deck may lean: brackets with their numbers. */
export function levelPicture(level: LevelScale, room: Room, look: Look): Row[] {
	const marks = marksOf(level, look);
	const [minus, plus] = words.instruments.level.ends[level.axis];
	const before = stringWidth(minus) + 1;
	// The number of the end stands under it, with the unit beyond.
	const columns = Math.min(mostAxis, room.columns - before - Math.max(stringWidth(plus) + 1, 4));
	const legend = legendOf(marks, room.columns, look);
	if (columns < leastAxis || room.rows < scaleRows)
		return [...legend, allowedRow(level, look)].slice(0, Math.max(0, room.rows));
	const sheet = sheetOf(room);
	drawScale(level, marks, [before, before + columns - 1], sheet, look);
	sheet.write(1, 0, minus);
	sheet.write(1, before + columns + 1, plus);
	const blank: Row = {text: '', tone: 'plain'};
	const isApart = legend.length + scaleRows < room.rows;
	return [...sheet.rows(), ...(isApart ? [blank] : []), ...legend].slice(0, room.rows);
}

const scaleRows = 3;

function marksOf({firstDeg, turnedDeg, tiltDeg, axis, stepDeg, tone = 'strong'}: LevelScale, look: Look): Mark[] {
	const said = words.instruments.level;
	const sign = glyphs[look.unicode ? 'unicode' : 'ascii'].tilt;
	const marks = [
		{sign: '1', deg: firstDeg, name: said.first, tone: 'plain'},
		{sign: '2', deg: turnedDeg, name: said.turned, tone: 'plain'},
		{sign, deg: tiltDeg, name: said.tilt, tone},
	] as const;
	return marks.flatMap(({deg, name, ...mark}) =>
		deg === undefined ? [] : [{...mark, deg, said: said.mark({name, deg, axis, decimals: decimalsOf(stepDeg)})}],
	);
}

/** The tilt lies between two readings, so it has no fewer places than they. */
const decimalsOf = (stepDeg: number): number => Math.max(2, Math.min(3, stepDecimals(stepDeg)));

function drawScale(
	{allowedDeg, stepDeg}: LevelScale,
	marks: readonly Mark[],
	[from, to]: readonly [number, number],
	sheet: Sheet,
	look: Look,
): void {
	const glyph = glyphs[look.unicode ? 'unicode' : 'ascii'];
	const least = Math.max(allowedDeg * 1.25, ...marks.map(({deg}) => Math.abs(deg)));
	const reach = reaches.find((one) => one >= least - 1e-9) ?? least;
	const place = placesOn({low: -reach, high: reach}, [from, to]);
	const at = (deg: number) => Math.round(place(deg));
	sheet.write(1, from, `${glyph.left}${glyph.span.repeat(to - from - 1)}${glyph.right}`);
	sheet.write(1, at(0), glyph.zero);
	for (const [deg, bracket] of [
		[-allowedDeg, '['],
		[allowedDeg, ']'],
	] as const) {
		const text = withSign(deg, decimalsOf(stepDeg));
		sheet.write(1, at(deg), bracket, 'strong');
		sheet.write(2, startAbout(text, at(deg), deg < 0 ? [from, at(0) - 2] : [at(0) + 2, to]), text);
	}
	sheet.write(2, at(0), '0');
	const end = withSign(reach);
	const unit = shownText(words.instruments.level.degrees, look);
	for (const [text, start] of [
		[withSign(-reach), from],
		[`${end}${unit}`, to - end.length + 1],
	] as const)
		if (sheet.isFree(2, start, text)) sheet.write(2, start, text);
	for (const {sign, deg, tone} of marks) {
		if (sign === glyph.tilt) sheet.write(1, at(deg), sign, tone);
		// Two readings in one column stand side by side.
		else sheet.write(0, sheet.isFree(0, at(deg), '') ? at(deg) : at(deg) + 1, sign, tone);
	}
}

/** Where there is no scale, whose brackets tell it. */
const allowedRow = ({allowedDeg, stepDeg}: LevelScale, look: Look): Row => ({
	text: shownText(words.instruments.level.allowed({deg: allowedDeg, decimals: decimalsOf(stepDeg)}), look),
	tone: 'plain',
});

function legendOf(marks: readonly Mark[], columns: number, look: Look): Row[] {
	const [readings, tilt] = [marks.filter(({tone}) => tone === 'plain'), marks.filter(({tone}) => tone !== 'plain')];
	const row = (list: readonly Mark[], tone: Tone): Row[] =>
		packed(
			list.map(({sign, said}) => shownText(`${sign} ${said}`, look)),
			columns,
		).map((text) => ({text, tone}));
	return [...row(tilt, tilt[0]?.tone ?? 'plain'), ...row(readings, 'plain')];
}
