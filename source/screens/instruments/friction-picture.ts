import stringWidth from 'string-width';
import type {FrictionBars, FrictionRow} from '../../pages/instruments/bands.js';
import {axisReach} from '../../pages/pictures/bands-layout.js';
import {placesOn} from '../../pages/pictures/scale.js';
import type {Tone} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {percent} from '../../words/numbers.js';
import type {Row, Span} from '../body.js';
import {type Look, toneMark} from '../look.js';
import {brokenText, type Room, sheetOf, shownText} from './sheet.js';

const glyphs = {
	unicode: {left: '├', right: '┤', span: '─', limit: '╎', crossed: '┼'},
	ascii: {left: '[', right: ']', span: '-', limit: ':', crossed: '+'},
} as const;

const leastAxis = 25;

/** How wide each band is against the limits of friction; a line of words for each where there is no room for bars. */
export function frictionPicture(bars: FrictionBars, room: Room, look: Look): Row[] {
	const said = words.instruments.friction;
	const figures = bars.rows.map((row) => figureOf(row, look));
	const before = Math.max(...[said.heading, ...bars.rows.map(({label}) => label)].map((text) => stringWidth(text))) + 1;
	const after = Math.max(2, ...figures.map((text) => stringWidth(text) + 2));
	const [from, to] = [before, room.columns - after - 1];
	if (to - from + 1 < leastAxis || room.rows < bars.rows.length + 1) return inWords(bars, room, look);
	const sheet = sheetOf(room);
	const glyph = glyphs[look.unicode ? 'unicode' : 'ascii'];
	const reach = axisReach([bars.usablePct * 1.2, ...bars.rows.map(({bandPct}) => bandPct)]);
	const place = placesOn({low: 0, high: reach}, [from, to]);
	const at = (pct: number) => Math.round(place(pct));
	const limits = [at(bars.goodPct), at(bars.usablePct)] as const;
	const good = shownText(said.good({pct: bars.goodPct}), look);
	const usable = shownText(said.usable({pct: bars.usablePct}), look);
	// One ends at its line and the other begins there, so that they never touch.
	const goodAt = Math.max(from, limits[0] - stringWidth(good) + 1);
	sheet.write(0, 0, said.heading);
	sheet.write(0, goodAt, good);
	sheet.write(0, Math.max(goodAt + stringWidth(good) + 1, limits[1]), usable);
	bars.rows.forEach(({label, bandPct, figure}, index) => {
		const [row, end] = [index + 1, at(bandPct)];
		sheet.write(row, 0, shownText(label, look));
		sheet.write(row, from, glyph.left + glyph.span.repeat(end - from), figure?.tone);
		for (const limit of limits) sheet.write(row, limit, limit < end ? glyph.crossed : glyph.limit);
		sheet.write(row, end, glyph.right, figure?.tone);
		sheet.write(row, to + 3, figures[index] ?? '', figure?.tone);
	});
	return sheet.rows();
}

const figureOf = ({bandPct, figure}: FrictionRow, look: Look): string =>
	figure ? `${toneMark(figure.tone, look)}${shownText(figure.text, look)}` : percent(bandPct, 1);

function inWords(bars: FrictionBars, room: Room, look: Look): Row[] {
	const said = words.instruments.friction;
	const figures = bars.rows.map((row) => ({
		text: shownText(said.row({label: row.label, figure: figureOf(row, look)}), look),
		tone: row.figure?.tone ?? ('plain' as const),
	}));
	const heading = shownText(said.heading, look);
	const widths = figures.map(({text}) => between + stringWidth(text));
	const oneLine = widths.reduce((sum, width) => sum + width, stringWidth(heading));
	const limits = brokenText(shownText(said.limits(bars), look), room.columns).map(
		(text): Row => ({text, tone: 'plain'}),
	);
	const lines = oneLine <= room.columns ? sideBySide(heading, figures) : underEachOther(heading, figures, room);
	return [...lines, ...limits].slice(0, Math.max(0, room.rows));
}

type Said = {readonly text: string; readonly tone: Tone};

const between = 2;

function sideBySide(heading: string, figures: readonly Said[]): Row[] {
	let text = heading;
	const spans = figures.map((figure): Span => {
		const from = stringWidth(text) + between;
		text = `${text}${' '.repeat(between)}${figure.text}`;
		return {from, to: stringWidth(text), tone: figure.tone};
	});
	return [{text, tone: 'plain', spans}];
}

const underEachOther = (heading: string, figures: readonly Said[], {columns}: Room): Row[] =>
	figures.flatMap(({text, tone}) => brokenText(`${heading} ${text}`, columns).map((line): Row => ({text: line, tone})));
