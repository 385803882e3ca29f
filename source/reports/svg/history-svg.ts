import {plainNumber} from '../../words/wording.js';
import type {History} from '../report.js';
import {dateTicks, dayNumber} from './dates.js';
import {niceRange, type Scale, scaleOf, signed, ticksOf} from './scale.js';
import {box, dot, label, picture, pictureWidth, stroke, type Told} from './shapes.js';

const [left, right, top, bottom] = [46, pictureWidth - 14, 24, 196];

/** A figure over the years: each check with its uncertainty as a whisker, the limits as broken lines. */
export function historySvg(history: History, told: Told): string {
	const {points} = history;
	const days = points.map(({date}) => dayNumber(date));
	const [first, last] = [Math.min(...days), Math.max(...days)];
	const span = Math.max(1, last - first);
	// On the right, room is kept for the names of the limits.
	const over = scaleOf([first - 0.04 * span, last + 0.4 * span], [left, right]);
	const up = scaleOf(niceRange(...rangeOf(history), 7), [bottom, top]);
	return picture(told, bottom + 34, [
		...ground(history, up),
		...sideAxis(up),
		...dayAxis(
			points.map(({date}) => date),
			over,
		),
		...points.flatMap((point, index) => pointAt(point, over.at(days[index] ?? 0), up, points.length)),
	]);
}

/** Zero is always on it, and the limits on the side where anything was measured. */
function rangeOf({points, limitsPct}: History): [number, number] {
	const lows = points.map(({pct, uncertaintyPct}) => pct - uncertaintyPct);
	const highs = points.map(({pct, uncertaintyPct}) => pct + uncertaintyPct);
	const [low, high] = [Math.min(0, ...lows), Math.max(0, ...highs)];
	const below = low < 0 ? limitsPct.filter((one) => one < 0) : [];
	const above = high > 0 ? limitsPct.filter((one) => one > 0) : [];
	return [Math.min(low, ...below), Math.max(high, ...above)];
}

function ground({limitsPct}: History, {at, low, high}: Scale): string[] {
	const sizes = [...new Set(limitsPct.map(Math.abs))].sort((one, other) => one - other);
	const [good = 0, usable = good] = sizes;
	const isTwoSided = limitsPct.some((one) => one < 0);
	const zone = (size: number, className: string) => {
		const [to, from] = [Math.min(high, size), Math.max(low, isTwoSided ? -size : 0)];
		return box(left, at(to), right - left, at(from) - at(to), className);
	};
	const limits = limitsPct.filter((one) => one >= low && one <= high);
	return [
		zone(usable, 'zone-usable'),
		zone(good, 'zone-good'),
		...limits.flatMap((one) => {
			const isGood = Math.abs(one) === good;
			const name = `${isGood ? 'good' : 'usable'} to ${plainNumber(Math.abs(one))} %`;
			return [
				stroke([left, at(one)], [right, at(one)], isGood ? 'limit-good' : 'limit-usable'),
				label(right - 4, at(one) + (one < 0 ? 13 : -4), name, {'text-anchor': 'end', class: 'soft'}),
			];
		}),
		stroke([left, at(0)], [right, at(0)], 'zero'),
	];
}

const sideAxis = ({at, low, high}: Scale): string[] => [
	stroke([left, top], [left, bottom], 'axis'),
	...ticksOf(low, high, 7).flatMap((tick) => [
		stroke([left - 5, at(tick)], [left, at(tick)], 'axis'),
		label(left - 8, at(tick) + 4, low < 0 ? signed(tick) : plainNumber(tick), {'text-anchor': 'end'}),
	]),
	label(8, 13, low < 0 ? '%, + toward the rim' : '% of force', {class: 'soft'}),
];

function dayAxis(dates: readonly string[], {at, low}: Scale): string[] {
	return [
		stroke([left, bottom], [right, bottom], 'axis'),
		...dateTicks(dates, low, Math.max(...dates.map(dayNumber))).flatMap(({day, text}) => [
			stroke([at(day), bottom], [at(day), bottom + 5], 'axis'),
			label(at(day), bottom + 19, text, {'text-anchor': anchorAt(at(day))}),
		]),
	];
}

/** A text at the edge stays within the picture. */
const anchorAt = (x: number): string => (x < left + 30 ? 'start' : x > right - 34 ? 'end' : 'middle');

/** More points than this stand too close for the ends of their whiskers. */
const fewPoints = 60;

function pointAt({pct, uncertaintyPct}: History['points'][number], x: number, {at}: Scale, count: number): string[] {
	const [high, low] = [at(pct + uncertaintyPct), at(pct - uncertaintyPct)];
	const bar = stroke([x, high], [x, low], 'whisker');
	if (count > fewPoints) return [bar, dot(x, at(pct), 'point', 2)];
	const end = (y: number) => stroke([x - 4, y], [x + 4, y], 'whisker');
	return [bar, end(high), end(low), dot(x, at(pct), 'point')];
}
