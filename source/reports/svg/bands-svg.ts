import {type BandBar, type BandsLayout, bandsLayout} from '../../pages/pictures/bands-layout.js';
import {placesOn} from '../../pages/pictures/scale.js';
import {dayText} from '../../words/dates.js';
import {words} from '../../words/index.js';
import type {NamedBands} from '../report.js';
import {
	axisNumber,
	box,
	dot,
	type LegendSample,
	label,
	legend,
	picture,
	pictureWidth,
	stroke,
	type Told,
	ways,
} from './shapes.js';

const [left, right, top, rowHeight] = [112, pictureWidth - 14, 66, 34];
const said = words.pictures;

type Placing = (pct: number) => number;

/** Hold bands to scale, one under the other, against zero and between the limits of the pull as brackets. */
export function bandsSvg(bands: NamedBands, told: Told): string {
	const {rows} = bands;
	const layout = bandsLayout(bands);
	const at = placesOn(layout.axis, [left, right]);
	const bottom = top + rows.length * rowHeight;
	const {height, content} = legend(bandSamples(bands), [8, bottom + 30], pictureWidth - 16);
	return picture(told, bottom + 34 + height, [
		...ground(layout, at, bottom),
		...rows.flatMap((row, index) => bar(row, top + (index + 0.5) * rowHeight, at)),
		stroke([left, bottom], [right, bottom], 'axis'),
		...layout.manyTicks.flatMap((tick) => [
			stroke([at(tick), bottom], [at(tick), bottom + 5], 'axis'),
			label(at(tick), bottom + 19, axisNumber(tick), {'text-anchor': 'middle'}),
		]),
		...content,
	]);
}

const ground = ({limits}: BandsLayout, at: Placing, bottom: number): string[] => [
	...limits.flatMap(({pct, zone}) => limitEnd(at(pct), pct < 0 ? 1 : -1, zone, bottom)),
	...limits
		.filter(({pct}) => pct < 0)
		.map(({pct, zone}) =>
			label(
				at(pct) - 6,
				bracketTops[zone] + 5,
				zone === 'good' ? said.goodTo({pct: -pct}) : said.usableTo({pct: -pct}),
				{
					'text-anchor': 'end',
					class: `name-${zone}`,
				},
			),
		),
	stroke([at(0), top - 6], [at(0), bottom + 6], 'zero'),
	label(8, 14, said.ofForce, {class: 'soft'}),
	...ways(14, [left, right], [said.spindle, said.rim]),
];

/** The bracket of the narrower limit reaches higher, so that the words of both have room beside it. */
const bracketTops = {good: 30, usable: 50} as const;
const footLength = 7;

/** One end of a bracket from its top to the axis; its feet point to what is within. */
const limitEnd = (x: number, inward: 1 | -1, zone: keyof typeof bracketTops, bottom: number): string[] => {
	const foot = (y: number) => stroke([x, y], [x + inward * footLength, y], `limit-${zone} foot`);
	return [stroke([x, bracketTops[zone]], [x, bottom], `limit-${zone}`), foot(bracketTops[zone]), foot(bottom - 1)];
};

/** The band from limit to limit with its ends, its middle as a dot, and how surely that is known as a whisker. */
function bar(
	{label: name, date, lowPct, highPct, pullPct, earlier, pullUncertaintyPct = 0}: BandBar,
	y: number,
	at: Placing,
): string[] {
	const kind = earlier ? 'band earlier' : 'band';
	const [from, to] = [at(lowPct), at(highPct)];
	return [
		label(left - 10, date === undefined ? y + 4 : y - 3, name, {'text-anchor': 'end'}),
		...(date === undefined ? [] : [label(left - 10, y + 11, dayText(date), {'text-anchor': 'end', class: 'soft'})]),
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

function bandSamples({rows, names}: NamedBands): LegendSample[] {
	const band = (className: string) => (x: number, y: number) => box(x - 12, y - 6, 24, 12, className);
	const isKnown = rows.some(({pullUncertaintyPct = 0}) => pullUncertaintyPct > 0);
	return [
		{draw: band('band'), text: names?.band ?? said.bands.band},
		{
			draw: (x, y) => [...(isKnown ? whisker(x - 11, x + 11, y) : []), dot(x, y, 'point')].join(''),
			text: names?.pull ?? (isKnown ? said.bands.pullWithUncertainty : said.bands.pull),
		},
		...(rows.some(({earlier}) => earlier) ? [{draw: band('band earlier'), text: said.bands.earlier}] : []),
	];
}
