import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {BandBars} from '../../source/pages/pictures/bands-layout.js';
import type {ShownAs} from '../../source/pages/shown-lines.js';
import {bandsSvg} from '../../source/reports/svg/bands-svg.js';
import {curveSvg} from '../../source/reports/svg/curve-svg.js';
import {historySvg} from '../../source/reports/svg/history-svg.js';
import {leverSvg} from '../../source/reports/svg/lever-svg.js';
import {pictureWidth} from '../../source/reports/svg/shapes.js';
import {bandsPicture} from '../../source/screens/instruments/bands-picture.js';
import {curvePicture} from '../../source/screens/instruments/curve-picture.js';
import {historyPicture} from '../../source/screens/instruments/history-picture.js';
import {anyCurve, nineInch} from '../helpers/curves.js';
import {drawnIn, number, ofClass, scaleBy} from './drawn.js';

const told = {id: 'p', title: 'A picture', description: 'In words.'};

const bands: BandBars = {
	kind: 'bands',
	goodPct: 2,
	usablePct: 4,
	caption: 'In words.',
	rows: [
		{label: 'inner 68', lowPct: 3.5, highPct: 9.5, pullPct: 6.5, pullUncertaintyPct: 0.6},
		{label: 'before inner', date: '2026-05-16', lowPct: -2, highPct: 1, pullPct: -0.5, earlier: true},
	],
};

describe('Hold bands', () => {
	const all = drawnIn(bandsSvg(bands, told));
	const x = scaleBy(all, 'x', ({at}) => at['text-anchor'] === 'middle');

	it('stand where the numbers of the axis say, with pull, its ± and the limits', () => {
		// Two decimals of a drawing unit are kept.
		const [band, legendBand] = ofClass(all, 'band');
		expect(legendBand).toBeDefined();
		expect(number(band, 'x')).toBeCloseTo(x(3.5), 1);
		expect(number(band, 'x') + number(band, 'width')).toBeCloseTo(x(9.5), 1);
		expect(number(ofClass(all, 'point')[0], 'cx')).toBeCloseTo(x(6.5), 1);
		expect(number(ofClass(all, 'whisker')[0], 'x1')).toBeCloseTo(x(5.9), 1);
		expect(number(ofClass(all, 'whisker')[0], 'x2')).toBeCloseTo(x(7.1), 1);
		expect(number(ofClass(all, 'zero')[0], 'x1')).toBeCloseTo(x(0), 1);
		expect(
			ofClass(all, 'limit-good')
				.slice(0, 2)
				.map((one) => number(one, 'x1')),
		).toEqual([x(-2), x(2)].map((one) => expect.closeTo(one, 1)));
		expect(
			ofClass(all, 'limit-usable')
				.slice(0, 2)
				.map((one) => number(one, 'x1')),
		).toEqual([x(-4), x(4)].map((one) => expect.closeTo(one, 1)));
	});

	it('of an earlier series differ by their shape', () => {
		const [earlier] = ofClass(all, 'band earlier');
		expect(number(earlier, 'x')).toBeCloseTo(x(-2), 1);
		expect(number(ofClass(all, 'point-open')[0], 'cx')).toBeCloseTo(x(-0.5), 1);
	});

	it('of an earlier series have their day under their name', () => {
		const [name, day] = ['before inner', '16 May 2026'].map((text) => all.find((one) => one.text === text));
		expect(number(day, 'y')).toBeGreaterThan(number(name, 'y'));
		const [, earlier] = all.filter(({at}) => at.class?.startsWith('band') && !at.class.startsWith('band-end'));
		for (const one of [name, day]) {
			expect(number(one, 'y')).toBeGreaterThan(number(earlier, 'y') - 9);
			expect(number(one, 'y')).toBeLessThan(number(earlier, 'y') + 25);
		}
	});
});

const history: ShownAs<'history'> = {
	kind: 'history',
	label: 'pull, inner 68 mm',
	points: [
		{date: '2024-05-11', pct: -1, uncertaintyPct: 0.5},
		{date: '2025-05-11', pct: 2.5, uncertaintyPct: 0.7},
		{date: '2026-05-11', pct: 3, uncertaintyPct: 0.6},
	],
	limitsPct: [-4, -2, 2, 4],
	caption: 'In words.',
};

describe('A figure over the years', () => {
	const all = drawnIn(historySvg(history, told));
	const y = scaleBy(all, 'y', ({at}) => at['text-anchor'] === 'end', 4);
	const points = ofClass(all, 'point');

	it('stands where the numbers of the axis say, with whiskers and limits', () => {
		expect(points.map((one) => number(one, 'cy'))).toEqual([-1, 2.5, 3].map((pct) => expect.closeTo(y(pct), 1)));
		const whiskers = ofClass(all, 'whisker').filter(({at}) => at.x1 === at.x2);
		expect(whiskers.map((one) => number(one, 'y1'))).toEqual([-0.5, 3.2, 3.6].map((pct) => expect.closeTo(y(pct), 1)));
		expect(whiskers.map((one) => number(one, 'y2'))).toEqual([-1.5, 1.8, 2.4].map((pct) => expect.closeTo(y(pct), 1)));
		expect(ofClass(all, 'limit-good').map((one) => number(one, 'y1'))).toEqual(
			[-2, 2].map((pct) => expect.closeTo(y(pct), 1)),
		);
		expect(ofClass(all, 'limit-usable').map((one) => number(one, 'y1'))).toEqual(
			[-4, 4].map((pct) => expect.closeTo(y(pct), 1)),
		);
	});

	it('goes with the calendar: a year apart stays a year apart', () => {
		const [first = 0, second = 0, third = 0] = points.map((one) => number(one, 'cx'));
		expect(second - first).toBeCloseTo(third - second, 1);
	});

	it('of one day has that day under it', () => {
		const [point] = history.points;
		const texts = drawnIn(historySvg({...history, points: point ? [point] : []}, told)).map(({text}) => text);
		expect(texts).toContain('11 May 2024');
	});
});

describe('The wanted reading over the record', () => {
	const curve: ShownAs<'curve'> = nineInch();
	const all = drawnIn(curveSvg(curve, told));
	const y = scaleBy(all, 'y', ({at}) => at['text-anchor'] === 'end', 4);
	const x = scaleBy(all, 'x', ({at}) => at['text-anchor'] === 'middle');

	it('and what was read stand where the numbers of both axes say', () => {
		const open = ofClass(all, 'point-open');
		expect([number(open[0], 'cx'), number(open[0], 'cy')]).toEqual([
			expect.closeTo(x(68), 1),
			expect.closeTo(y(5.375), 1),
		]);
		const read = ofClass(all, 'point');
		expect([number(read[0], 'cx'), number(read[0], 'cy')]).toEqual([
			expect.closeTo(x(136), 1),
			expect.closeTo(y(9.125), 1),
		]);
		const [first = '', last = ''] = [/^\S+/, /\S+$/].map(
			(end) => end.exec(ofClass(all, 'wanted')[0]?.at.points ?? '')?.[0] ?? '',
		);
		const [ends, wanted] = [
			[first, last],
			[curve.wanted[0], curve.wanted.at(-1)],
		];
		expect(ends.map((one) => one.split(',').map(Number))).toEqual(
			wanted.map((one) => [expect.closeTo(x(one?.radiusMm ?? 0), 0), expect.closeTo(y(one?.pct ?? 0), 0)]),
		);
	});
});

describe('A lever on its clock face', () => {
	it('points where an hour hand would, and is listed with its radius', () => {
		const lever: ShownAs<'lever'> = {
			kind: 'lever',
			places: [
				{radiusMm: 136, clockDeg: 270},
				{radiusMm: 68, clockDeg: 225},
			],
			caption: 'In words.',
		};
		const all = drawnIn(leverSvg(lever, told));
		const [flat, steep] = ofClass(all, 'wanted');
		expect(number(flat, 'y2')).toBeCloseTo(number(flat, 'y1'), 6);
		expect(number(flat, 'x2')).toBeLessThan(number(flat, 'x1'));
		// Halfway between a quarter to and the half hour: as far to the left as down, where y grows downward.
		expect(number(steep, 'y2')).toBeGreaterThan(number(steep, 'y1'));
		expect(number(steep, 'x1') - number(steep, 'x2')).toBeCloseTo(number(steep, 'y2') - number(steep, 'y1'), 1);
		expect(all.map(({text}) => text)).toEqual(expect.arrayContaining(['a   136 mm: 9:00', 'b   68 mm: 7:30']));
	});
});

describe('What was done meanwhile', () => {
	const [first, last] = [history.points[0]?.date ?? '', history.points.at(-1)?.date ?? ''];
	const events = [
		{date: first, mark: 'a', label: 'oiled <twice>'},
		{date: last, mark: 'b', label: 'moved'},
		{date: last, mark: 'c', label: 'levelled'},
	];
	const all = drawnIn(historySvg({...history, events}, told));

	it('has a line on its day, and letters that do not lie on one another', () => {
		const points = ofClass(all, 'point').map((one) => number(one, 'cx'));
		const [oiled, ...others] = ofClass(all, 'done').map((one) => number(one, 'x1'));
		expect(oiled).toBeCloseTo(Math.min(...points), 1);
		for (const one of others) expect(one).toBeCloseTo(Math.max(...points), 1);
		const letters = ofClass(all, 'done-mark').map(({at, text}) => `${text} ${at.x} ${at.y}`);
		expect(new Set(letters).size).toBe(2 * events.length);
	});

	it('is told under the picture, within its frame; a history without any has nothing of it', () => {
		const texts = all.map(({text}) => text);
		for (const {label} of events) expect(texts).toContain(label);
		const height = (svg: ReturnType<typeof drawnIn>) => Number(svg[0]?.at.viewBox?.split(' ')[3]);
		const lowest = Math.max(...all.filter(({name}) => name === 'text').map((one) => number(one, 'y')));
		expect(height(all)).toBeGreaterThan(lowest);
		const bare = drawnIn(historySvg({...history, events: []}, told));
		expect(ofClass(bare, 'done')).toEqual([]);
		expect(height(bare)).toBe(height(drawnIn(historySvg(history, told))));
	});
});

describe('Any history', () => {
	const day = fc
		.integer({min: 0, max: 4000})
		.map((days) => new Date(Date.UTC(2018, 0, 1 + days)).toISOString().slice(0, 10));
	const point = fc.record({
		date: day,
		pct: fc.double({min: -80, max: 80, noNaN: true}),
		uncertaintyPct: fc.double({min: 0, max: 20, noNaN: true}),
	});

	it('is drawn within its picture, with only a few numbers on each axis', () => {
		fc.assert(
			fc.property(fc.array(point, {minLength: 1, maxLength: 30}), (points) => {
				const all = drawnIn(
					historySvg({...history, points: points.toSorted((one, other) => one.date.localeCompare(other.date))}, told),
				);
				const height = Number(all[0]?.at.viewBox?.split(' ')[3]);
				for (const {at} of all)
					for (const [name, value] of Object.entries(at)) {
						if (['x', 'x1', 'x2', 'cx'].includes(name))
							expect(Number(value)).toSatisfy((one: number) => one >= 0 && one <= pictureWidth);
						if (['y', 'y1', 'y2', 'cy'].includes(name))
							expect(Number(value)).toSatisfy((one: number) => one >= -1 && one <= height);
					}
				expect(all.filter(({name}) => name === 'text').length).toBeLessThan(24);
			}),
			{numRuns: 200},
		);
	});
});

describe('A picture on the screen and one in a report', () => {
	const look = {unicode: true, color: false, screenReader: false};
	const sideNumbers = (rows: readonly string[]) =>
		rows
			.flatMap((row) => /^ *(-?[\d.]+)%/.exec(row)?.[1] ?? [])
			.map(Number)
			.sort((one, other) => one - other);
	const axisNumbers = (svg: string) =>
		drawnIn(svg)
			.filter(({name, at, text}) => name === 'text' && at['text-anchor'] === 'end' && /^[+-]?[\d.]+$/.test(text))
			.map(({text}) => Number(text))
			.sort((one, other) => one - other);

	it('have the same scale for a curve, and for a figure over the years', () => {
		fc.assert(
			fc.property(anyCurve, (curve) => {
				const onScreen = sideNumbers(curvePicture(curve, {columns: 78, rows: 11}, look).map(({text}) => text));
				expect(onScreen.length).toBeGreaterThan(1);
				expect(axisNumbers(curveSvg(curve, told))).toEqual(onScreen);
			}),
			{numRuns: 50},
		);
		// The foot of a history has no number on the screen.
		expect(axisNumbers(historySvg(history, told)).slice(-3)).toEqual(
			sideNumbers(historyPicture(history, {columns: 78, rows: 12}, look).map(({text}) => text)).slice(-3),
		);
	});

	it('reach as far for hold bands', () => {
		const rows = bandsPicture(bands, {columns: 78, rows: 11}, look).map(({text}) => text);
		const onScreen = /-(\d+) .*\+(\d+) %$/.exec(rows.find((row) => row.includes('%')) ?? '');
		const numbers = drawnIn(bandsSvg(bands, told)).map(({text}) => text);
		expect(onScreen?.slice(1)).toHaveLength(2);
		expect(numbers).toEqual(expect.arrayContaining([`-${onScreen?.[1]}`, `+${onScreen?.[2]}`]));
	});
});
