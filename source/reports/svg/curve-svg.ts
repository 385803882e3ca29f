import {type CurveLayout, type CurveMark, curveLayout} from '../../pages/pictures/curve-layout.js';
import {placesOn} from '../../pages/pictures/scale.js';
import type {ShownAs, WantedAt} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {element} from '../html/markup.js';
import {
	axisNumber,
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

const [left, right, top, bottom] = [46, pictureWidth - 14, 26, 216];
/** Beyond the first radius and the last, so that nothing stands on the edge. */
const roomMm = 2;
const rows = 8;
/** The numbers under the axis have room for so many steps. */
const mostSteps = 10;
const said = words.pictures;

type Spot = readonly [x: number, y: number];
type Placings = {
	readonly x: (radiusMm: number) => number;
	readonly y: (pct: number) => number;
};

/** The wanted reading over the record, with the arm's own pull and what was read with the bias on. */
export function curveSvg(curve: ShownAs<'curve'>, told: Told): string {
	const layout = curveLayout(curve, rows);
	const {over, up} = layout;
	const places = {
		x: placesOn({low: over.low - roomMm, high: over.high + roomMm}, [left, right]),
		y: placesOn(up, [bottom, top]),
	};
	const samples = layout.marks.map((mark) => ({draw: samplesBy[mark], text: said.curve.marks[mark].whole}));
	const {height, content} = legend(samples, [8, bottom + 60], pictureWidth - 16);
	return picture(told, bottom + 64 + height, [
		...axes(layout, places),
		...wantedLine(curve, places),
		...ownMarks(layout, places),
		...measuredMarks(curve, layout, places),
		...leastMark(layout, places),
		...content,
	]);
}

function axes({over, up, radiiMm}: CurveLayout, {x, y}: Placings): string[] {
	return [
		...up.ticks.flatMap(({pct}) => [
			stroke([left, y(pct)], [right, y(pct)], pct === 0 ? 'zero' : 'grid'),
			label(left - 8, y(pct) + 4, axisNumber(pct), {'text-anchor': 'end'}),
		]),
		stroke([left, bottom], [right, bottom], 'axis'),
		...radiiMm((over.high - over.low) / mostSteps).flatMap((radius) => [
			stroke([x(radius), bottom], [x(radius), bottom + 5], 'axis'),
			label(x(radius), bottom + 19, String(radius), {'text-anchor': 'middle'}),
		]),
		label(8, 13, said.plusTowardRim, {class: 'soft'}),
		...ways(bottom + 36, [left, right], [said.curve.inside, said.curve.outside]),
		label((left + right) / 2, bottom + 52, said.curve.radius, {class: 'soft', 'text-anchor': 'middle'}),
	];
}

const points = (list: readonly Spot[]): string => list.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** The wanted reading as a line, and round it what another drag would make of it. */
function wantedLine({wanted}: ShownAs<'curve'>, {x, y}: Placings): string[] {
	const along = (pick: (one: WantedAt) => number) => wanted.map((one) => [x(one.radiusMm), y(pick(one))] as const);
	return [
		element('polygon', {
			class: 'drag',
			points: points([...along(({highPct}) => highPct), ...along(({lowPct}) => lowPct).toReversed()]),
		}),
		element('polyline', {class: 'wanted', points: points(along(({pct}) => pct))}),
	];
}

function ownMarks({own}: CurveLayout, {x, y}: Placings): string[] {
	const places = own.map(({radiusMm, pct}) => [x(radiusMm), y(pct)] as const);
	return [element('polyline', {class: 'own', points: points(places)}), ...places.map(([px, py]) => openDot(px, py))];
}

/** What was read, each joined to the curve by what is left over. */
const measuredMarks = ({measured}: ShownAs<'curve'>, {wantedAt}: CurveLayout, {x, y}: Placings): string[] =>
	measured.flatMap(({radiusMm, pct}) => {
		const [wanted, across] = [wantedAt(radiusMm), x(radiusMm)];
		return [
			...(wanted ? [stroke([across, y(wanted.pct)], [across, y(pct)], 'left-over')] : []),
			fullDot(across, y(pct)),
		];
	});

function leastMark({leastRadiusMm}: CurveLayout, {x}: Placings): string[] {
	if (leastRadiusMm === null) return [];
	const at = x(leastRadiusMm);
	const corners = [
		[at, bottom - 9],
		[at - 5, bottom],
		[at + 5, bottom],
	] as const;
	return [
		element('polygon', {class: 'least', points: points(corners)}),
		label(at + 8, bottom - 3, said.curve.leastAt({radiusMm: leastRadiusMm}), {class: 'soft'}),
	];
}

const openDot = (x: number, y: number): string => dot(x, y, 'point-open', 4.5);
const fullDot = (x: number, y: number): string => dot(x, y, 'point', 5);

const samplesBy: Readonly<Record<CurveMark, LegendSample['draw']>> = {
	wanted: (x, y) => stroke([x - 12, y], [x + 12, y], 'wanted'),
	band: (x, y) => element('rect', {x: x - 12, y: y - 6, width: 24, height: 12, class: 'drag'}),
	own: openDot,
	measured: fullDot,
	leftOver: (x, y) => stroke([x, y - 7], [x, y + 7], 'left-over'),
};
