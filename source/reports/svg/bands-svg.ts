import {plainNumber} from '../../words/wording.js';
import type {BandBar, Bands} from '../report.js';
import {type Scale, scaleOf, signed, ticksOf} from './scale.js';
import {box, dot, label, legend, picture, pictureWidth, type Sample, stroke, type Told} from './shapes.js';

const [left, right, top, rowHeight] = [92, pictureWidth - 14, 30, 34];

/** Hold bands to scale, one under the other, against zero and the limits of the pull. */
export function bandsSvg(bands: Bands, told: Told): string {
	const {rows, usablePct} = bands;
	const reach = reachOf(usablePct, rows);
	const scale = scaleOf([-reach, reach], [left, right]);
	const bottom = top + rows.length * rowHeight;
	const {height, content} = legend(entriesOf(bands), [8, bottom + 30], pictureWidth - 16);
	return picture(told, bottom + 34 + height, [
		...ground(bands, scale, bottom),
		...rows.flatMap((row, index) => bar(row, top + (index + 0.5) * rowHeight, scale)),
		...axis(scale, bottom),
		...content,
	]);
}

const reachOf = (usablePct: number, rows: readonly BandBar[]): number => {
	const least = Math.max(
		usablePct * 1.2,
		...rows.flatMap(({lowPct, highPct}) => [Math.abs(lowPct), Math.abs(highPct)]),
	);
	return [5, 8, 10, 12, 16, 20, 30, 50, 100].find((one) => one >= least) ?? Math.ceil(least / 100) * 100;
};

function ground({goodPct, usablePct}: Bands, {at, high}: Scale, bottom: number): string[] {
	const zone = (pct: number, className: string) =>
		box(at(-Math.min(pct, high)), top, at(Math.min(pct, high)) - at(-Math.min(pct, high)), bottom - top, className);
	const limit = (pct: number, className: string) =>
		[-pct, pct].map((one) => stroke([at(one), top], [at(one), bottom], className));
	return [
		zone(usablePct, 'zone-usable'),
		zone(goodPct, 'zone-good'),
		...limit(goodPct, 'limit-good'),
		...limit(usablePct, 'limit-usable'),
		stroke([at(0), top - 6], [at(0), bottom + 6], 'zero'),
		label(8, 18, '% of force', {class: 'soft'}),
		label(left, 18, '\u25C4 in, toward the spindle', {class: 'soft'}),
		label(right, 18, 'out, toward the rim \u25BA', {class: 'soft', 'text-anchor': 'end'}),
	];
}

/** The band from limit to limit with its ends, its middle as a dot, and how surely that is known as a whisker. */
function bar(
	{label: name, lowPct, highPct, pullPct, earlier, pullUncertaintyPct = 0}: BandBar,
	y: number,
	{at}: Scale,
): string[] {
	const kind = earlier ? 'band earlier' : 'band';
	const [from, to] = [at(lowPct), at(highPct)];
	return [
		label(left - 10, y + 4, name, {'text-anchor': 'end'}),
		box(from, y - 8, to - from, 16, kind),
		stroke([from, y - 11], [from, y + 11], 'band-end'),
		stroke([to, y - 11], [to, y + 11], 'band-end'),
		...(pullUncertaintyPct > 0 ? whisker(at(pullPct - pullUncertaintyPct), at(pullPct + pullUncertaintyPct), y) : []),
		dot(at(pullPct), y, earlier ? 'point-open' : 'point'),
	];
}

const whisker = (from: number, to: number, y: number): string[] => [
	stroke([from, y], [to, y], 'whisker'),
	stroke([from, y - 4], [from, y + 4], 'whisker'),
	stroke([to, y - 4], [to, y + 4], 'whisker'),
];

const axis = ({at, low, high}: Scale, bottom: number): string[] => [
	stroke([at(low), bottom], [at(high), bottom], 'axis'),
	...ticksOf(low, high, 12).flatMap((tick) => [
		stroke([at(tick), bottom], [at(tick), bottom + 5], 'axis'),
		label(at(tick), bottom + 19, signed(tick), {'text-anchor': 'middle'}),
	]),
];

function entriesOf({rows, goodPct, usablePct}: Bands): Sample[] {
	const sample = (className: string) => (x: number, y: number) => stroke([x - 12, y], [x + 12, y], className);
	const isKnown = rows.some(({pullUncertaintyPct = 0}) => pullUncertaintyPct > 0);
	return [
		{draw: (x, y) => box(x - 12, y - 6, 24, 12, 'band'), text: 'hold band'},
		{
			draw: (x, y) => [...(isKnown ? whisker(x - 11, x + 11, y) : []), dot(x, y, 'point')].join(''),
			text: isKnown ? 'side pull and its ± (95 %)' : 'side pull',
		},
		...(rows.some(({earlier}) => earlier)
			? [{draw: (x: number, y: number) => box(x - 12, y - 6, 24, 12, 'band earlier'), text: 'earlier'}]
			: []),
		{draw: sample('limit-good'), text: `good to ${plainNumber(goodPct)} % of pull`},
		{draw: sample('limit-usable'), text: `usable to ${plainNumber(usablePct)} % of pull`},
	];
}
