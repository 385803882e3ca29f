import stringWidth from 'string-width';
import {type Clearance, type Height, toneOfHeight} from '../../pages/instruments/clearance.js';
import {words} from '../../words/index.js';
import {rounded} from '../../words/numbers.js';
import type {Row} from '../body.js';
import {type Look, toneMark} from '../look.js';
import {sideScene} from './clearance-scene.js';
import {brokenText, type Room, type Sheet, sheetOf, shownText} from './sheet.js';

type Named = Height & {readonly label: string};

const glyphs = {
	unicode: {span: '─', point: '●', below: '◄', above: '►'},
	ascii: {span: '-', point: '#', below: '<', above: '>'},
} as const;

const leastAxis = 11;
const mostAxis = 41;
const leastScene = {columns: 36, rows: 5};

/** Each height against its window, to scale, the ends numbered; under them the arm on its gauge from the side. */
export function clearancePicture(clearance: Clearance, room: Room, look: Look): Row[] {
	const heights = heightsOf(clearance);
	const lines = heights.map((height): Line => ({...height, ...textsOf(height, decimalsOf(heights), look)}));
	const widest = (part: 'label' | 'lowText' | 'highText' | 'nowText') =>
		Math.max(...lines.map((line) => stringWidth(line[part])));
	const [before, after] = [widest('label') + widest('lowText') + 2, widest('highText') + 1];
	const axis = Math.min(mostAxis, room.columns - before - after - widest('nowText') - 3);
	if (axis < leastAxis || room.rows < lines.length) return inWords(heights, room, look);
	const sheet = sheetOf(room);
	lines.forEach((line, row) => {
		sheet.write(row, 0, line.label);
		drawWindow(line, row, [before, before + axis - 1], sheet, look);
		sheet.write(row, before + axis + after + 3, line.nowText, toneOfHeight(line));
	});
	const spare = room.rows - lines.length;
	const isApart = spare > leastScene.rows;
	const scene = {columns: room.columns, rows: Math.min(spare - (isApart ? 1 : 0), mostScene)};
	if (scene.columns < leastScene.columns || scene.rows < leastScene.rows) return sheet.rows();
	const blank: Row = {text: '', tone: 'plain'};
	return [...sheet.rows(), ...(isApart ? [blank] : []), ...sideScene(clearance, scene, look, decimalsOf(heights))];
}

const mostScene = 12;

function heightsOf({stylusMm, stylusWindowMm, guard}: Clearance): Named[] {
	const {stylus, guard: guardLabel} = words.instruments.clearance;
	return [
		{label: stylus, window: stylusWindowMm, mm: stylusMm},
		...(guard
			? [{label: guardLabel, window: guard.windowMm, mm: stylusMm === undefined ? undefined : stylusMm - guard.depthMm}]
			: []),
	];
}

type Line = Named & {readonly lowText: string; readonly highText: string; readonly nowText: string};

/** One for all heights: a second place only where one of them has it. */
const decimalsOf = (heights: readonly Named[]): number =>
	heights.flatMap(({window, mm = 0}) => [...window, mm]).every((mm) => Math.abs(mm * 10 - Math.round(mm * 10)) < 1e-6)
		? 1
		: 2;

function textsOf(height: Named, decimals: number, look: Look): Omit<Line, keyof Named> {
	const [low, high] = height.window;
	const now = height.mm === undefined ? '' : `${toneMark(toneOfHeight(height), look)}${rounded(height.mm, decimals)}`;
	return {
		lowText: rounded(low, decimals),
		highText: words.instruments.clearance.end(rounded(high, decimals)),
		nowText: now,
	};
}

/** The window between brackets, with as much room on both sides for what lies outside; what lies beyond points there. */
function drawWindow(line: Line, row: number, [from, to]: readonly [number, number], sheet: Sheet, look: Look): void {
	const {window, mm, lowText, highText} = line;
	const [low, high] = window;
	const glyph = glyphs[look.unicode ? 'unicode' : 'ascii'];
	const margin = Math.floor((to - from) / 4);
	const [left, right] = [from + margin, to - margin];
	const place =
		mm === undefined || high === low ? left : Math.round(left + ((mm - low) / (high - low)) * (right - left));
	const [isBelow, isAbove] = [place < left, place > right];
	sheet.write(row, left, `[${glyph.span.repeat(right - left - 1)}]`);
	// A number stands at its bracket; it makes room for a height that lies outside.
	sheet.write(row, (isBelow ? from : left) - 1 - lowText.length, lowText);
	sheet.write(row, (isAbove ? to : right) + 2, highText);
	if (mm === undefined) return;
	const sign = place < from ? glyph.below : place > to ? glyph.above : glyph.point;
	sheet.write(row, Math.max(from, Math.min(to, place)), sign, toneOfHeight(line));
}

const inWords = (heights: readonly Named[], room: Room, look: Look): Row[] =>
	heights
		.flatMap(({label, window: [lowMm, highMm], mm}) =>
			brokenText(shownText(words.instruments.clearance.within({label, lowMm, highMm, mm}), look), room.columns),
		)
		.slice(0, room.rows)
		.map((text) => ({text, tone: 'plain'}));
