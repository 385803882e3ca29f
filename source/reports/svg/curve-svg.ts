import {element} from '../html/markup.js';
import type {Curve} from '../report.js';
import {niceRange, type Scale, scaleOf, signed, ticksOf} from './scale.js';
import {dot, label, legend, picture, pictureWidth, type Sample, stroke, type Told} from './shapes.js';

const [left, right, top, bottom] = [46, pictureWidth - 14, 26, 216];

type Scales = {readonly over: Scale; readonly up: Scale};

/** The wanted reading over the record, with the arm's own pull and what was read with the bias on. */
export function curveSvg(curve: Curve, told: Told): string {
	const {wanted, own, measured} = curve;
	const radii = [...wanted, ...own, ...measured].map(({radiusMm}) => radiusMm);
	const pcts = [
		0,
		...wanted.flatMap(({lowPct, highPct}) => [lowPct, highPct]),
		...[...own, ...measured].map(({pct}) => pct),
	];
	const over = scaleOf([Math.min(...radii) - 2, Math.max(...radii) + 2], [left, right]);
	const up = scaleOf(niceRange(Math.min(...pcts), Math.max(...pcts), 8), [bottom, top]);
	const {height, content} = legend(entriesOf(curve), [8, bottom + 44], pictureWidth - 16);
	return picture(told, bottom + 48 + height, [
		...axes(over, up),
		...wantedPart(curve, {over, up}),
		...ownPart(curve, {over, up}),
		...measuredPart(curve, {over, up}),
		...leastMark(curve, {over, up}),
		...content,
	]);
}

function axes(over: Scale, up: Scale): string[] {
	return [
		...ticksOf(up.low, up.high, 8).flatMap((tick) => [
			stroke([left, up.at(tick)], [right, up.at(tick)], tick === 0 ? 'zero' : 'grid'),
			label(left - 8, up.at(tick) + 4, signed(tick), {'text-anchor': 'end'}),
		]),
		stroke([left, bottom], [right, bottom], 'axis'),
		...ticksOf(over.low, over.high, 10).flatMap((tick) => [
			stroke([over.at(tick), bottom], [over.at(tick), bottom + 5], 'axis'),
			label(over.at(tick), bottom + 19, String(tick), {'text-anchor': 'middle'}),
		]),
		label(8, 13, '%, + toward the rim', {class: 'soft'}),
		label(left, bottom + 36, '\u25C4 inside of the record', {class: 'soft'}),
		label((left + right) / 2, bottom + 36, 'radius in mm', {class: 'soft', 'text-anchor': 'middle'}),
		label(right, bottom + 36, 'outside \u25BA', {class: 'soft', 'text-anchor': 'end'}),
	];
}

const points = (list: readonly (readonly [number, number])[]): string =>
	list.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** The wanted reading as a line, and round it what another drag would make of it. */
function wantedPart({wanted}: Curve, {over, up}: Scales): string[] {
	const along = (pick: (one: Curve['wanted'][number]) => number) =>
		wanted.map((one) => [over.at(one.radiusMm), up.at(pick(one))] as const);
	return [
		element('polygon', {
			class: 'drag',
			points: points([...along(({highPct}) => highPct), ...along(({lowPct}) => lowPct).toReversed()]),
		}),
		element('polyline', {class: 'wanted', points: points(along(({pct}) => pct))}),
	];
}

function ownPart({own}: Curve, {over, up}: Scales): string[] {
	const places = own
		.toSorted((one, other) => one.radiusMm - other.radiusMm)
		.map(({radiusMm, pct}) => [over.at(radiusMm), up.at(pct)] as const);
	return [
		element('polyline', {class: 'own', points: points(places)}),
		...places.map(([x, y]) => dot(x, y, 'point-open', 4.5)),
	];
}

/** What was read, each joined to the curve by what is left over. */
function measuredPart({measured, wanted}: Curve, {over, up}: Scales): string[] {
	return measured.flatMap(({radiusMm, pct}) => {
		const at = wanted.reduce<Curve['wanted'][number] | undefined>(
			(best, one) => (best && Math.abs(best.radiusMm - radiusMm) <= Math.abs(one.radiusMm - radiusMm) ? best : one),
			undefined,
		);
		const x = over.at(radiusMm);
		return [...(at ? [stroke([x, up.at(at.pct)], [x, up.at(pct)], 'left-over')] : []), dot(x, up.at(pct), 'point', 5)];
	});
}

function leastMark({leastRadiusMm}: Curve, {over}: Scales): string[] {
	if (leastRadiusMm === null || leastRadiusMm < over.low || leastRadiusMm > over.high) return [];
	const x = over.at(leastRadiusMm);
	return [
		element('polygon', {
			class: 'least',
			points: points([
				[x, bottom - 9],
				[x - 5, bottom],
				[x + 5, bottom],
			]),
		}),
		label(x + 8, bottom - 3, `least at ${Math.round(leastRadiusMm)}`, {class: 'soft'}),
	];
}

function entriesOf({own, measured}: Curve): Sample[] {
	const sample = (className: string) => (x: number, y: number) => stroke([x - 12, y], [x + 12, y], className);
	return [
		{draw: sample('wanted'), text: 'wanted reading'},
		{
			draw: (x, y) => element('rect', {x: x - 12, y: y - 6, width: 24, height: 12, class: 'drag'}),
			text: 'if the drag is 0.05 more or less',
		},
		...(own.length > 0
			? [{draw: (x: number, y: number) => dot(x, y, 'point-open', 4.5), text: 'read with bias off'}]
			: []),
		...(measured.length > 0
			? [
					{draw: (x: number, y: number) => dot(x, y, 'point', 5), text: 'read with bias on'},
					{draw: (x: number, y: number) => stroke([x, y - 7], [x, y + 7], 'left-over'), text: 'left over'},
				]
			: []),
	];
}
