import {dayNumber} from '../../pages/pictures/date-ticks.js';
import {type HistoryLayout, type HistoryMark, historyLayout, roomBeside} from '../../pages/pictures/history-layout.js';
import {placesOn} from '../../pages/pictures/scale.js';
import type {ShownAs} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {axisNumber, dot, label, legend, picture, pictureWidth, stroke, type Told} from './shapes.js';

const [left, right, top, bottom] = [46, pictureWidth - 14, 24, 196];
const rows = 8;
const said = words.pictures;

type Placing = (value: number) => number;

/** A figure over the years: each check with its uncertainty as a whisker, the limits as brackets. */
export function historySvg(history: ShownAs<'history'>, told: Told): string {
	const layout = historyLayout(history, rows);
	const {over, up, points} = layout;
	// On the right, room is kept for the names of the limits.
	const [before, after] = roomBeside.map((part) => part * (over.high - over.low));
	const x = placesOn({low: over.low - (before ?? 0), high: over.high + (after ?? 0)}, [left, right]);
	const y = placesOn(up, [bottom, top]);
	const done = doneMarks(history, x);
	return picture(told, bottom + 34 + done.height, [
		...ground(layout, y),
		...done.lines,
		...sideAxis(layout, y),
		...dayAxis(layout, x),
		...points.flatMap((point) => pointAt(point, x(point.day), y, points.length)),
		...done.names,
	]);
}

/** What was done meanwhile: a line with its letter on its day, and under the picture what the letters stand for. */
function doneMarks({events = []}: ShownAs<'history'>, x: Placing) {
	const letter = (mark: string) => (at: number, middle: number) =>
		label(at, middle + 4, mark, {'text-anchor': 'middle', class: 'done-mark'});
	const names = legend(
		events.map(({mark, label: text}) => ({draw: letter(mark), text})),
		[left, bottom + 30],
		right - left,
	);
	return {
		lines: events.flatMap(({date, mark}, index) => {
			const at = x(dayNumber(date));
			const before = events.slice(0, index).filter((one) => one.date === date).length;
			return [stroke([at, top], [at, bottom], 'done'), letter(mark)(at + 8 + 10 * before, bottom - 12)];
		}),
		names: names.content,
		height: events.length === 0 ? 0 : names.height,
	};
}

const ground = ({zones, limits}: HistoryLayout, y: Placing): string[] => [
	...zones.map(({zone, lowPct, highPct}) => {
		const x = bracketEnds[zone];
		return stroke([x, y(highPct)], [x, y(lowPct)], `limit-${zone} side`);
	}),
	...limits.flatMap(({pct, zone}) => {
		const upTo = {pct: Math.abs(pct)};
		const name = zone === 'good' ? said.goodTo(upTo) : said.usableTo(upTo);
		return [
			stroke([left, y(pct)], [bracketEnds[zone], y(pct)], `limit-${zone}`),
			label(bracketEnds.good - 4, y(pct) + (pct < 0 ? 13 : -4), name, {'text-anchor': 'end', class: `name-${zone}`}),
		];
	}),
	stroke([left, y(0)], [right, y(0)], 'zero'),
];

/** Where the brackets close on the right; that of the wider limit reaches farther. */
const bracketEnds = {good: right - 8, usable: right} as const;

function sideAxis({up}: HistoryLayout, y: Placing): string[] {
	// What rounding leaves below zero is no side.
	const isTwoSided = up.low < -1e-6;
	return [
		stroke([left, top], [left, bottom], 'axis'),
		...up.ticks.flatMap(({pct}) => [
			stroke([left - 5, y(pct)], [left, y(pct)], 'axis'),
			label(left - 8, y(pct) + 4, isTwoSided ? axisNumber(pct) : String(pct), {'text-anchor': 'end'}),
		]),
		label(8, 13, isTwoSided ? said.plusTowardRim : said.ofForce, {class: 'soft'}),
	];
}

const dayAxis = ({dayTicks}: HistoryLayout, x: Placing): string[] => [
	stroke([left, bottom], [right, bottom], 'axis'),
	...dayTicks.map(({day}) => stroke([x(day), bottom], [x(day), bottom + 5], 'axis')),
	...apart(dayTicks, x).map(({day, text}) => label(x(day), bottom + 19, text, {'text-anchor': anchorAt(x(day))})),
];

/** Room of a month and a year with a gap. */
const leastBetween = 64;

/** Ticks whose texts do not touch; the last one stays, the days before it give way. */
function apart(ticks: HistoryLayout['dayTicks'], x: Placing): HistoryLayout['dayTicks'] {
	const kept: (typeof ticks)[number][] = [];
	for (const tick of ticks.toReversed()) {
		const next = kept.at(-1);
		if (!next || x(next.day) - x(tick.day) >= leastBetween) kept.push(tick);
	}
	return kept.toReversed();
}

/** A text at the edge stays within the picture. */
const anchorAt = (x: number): string => (x < left + 30 ? 'start' : x > right - 34 ? 'end' : 'middle');

/** More points than this stand too close for the ends of their whiskers. */
const fewPoints = 60;

function pointAt({pct, lowPct, highPct}: HistoryMark, x: number, y: Placing, count: number): string[] {
	const bar = stroke([x, y(highPct)], [x, y(lowPct)], 'whisker');
	if (count > fewPoints) return [bar, dot(x, y(pct), 'point', 2)];
	const end = (at: number) => stroke([x - 4, at], [x + 4, at], 'whisker');
	return [bar, end(y(highPct)), end(y(lowPct)), dot(x, y(pct), 'point')];
}
