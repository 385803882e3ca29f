import {describe, expect, it} from 'vitest';
import {words} from '../helpers/said.js';

// How numbers are printed within sentences; the numbers are those that the tests of the pages work out by hand.

const {consequences, gauge, geometry, level, record, rounds, verdict, view} = words.pages;

describe('A reading in print', () => {
	const shown = (reading: number, step: number, unit: 'percent' | 'mN' | 'gf' = 'percent') =>
		gauge.reading({reading, unit, step});

	it('has as many decimals as the step of the gauge, and the way the arm pushes', () => {
		expect([shown(13.8, 0.1), shown(14, 0.5), shown(14, 1)]).toEqual(['13.8 % out', '14.0 % out', '14 % out']);
		expect([shown(-2.7, 0.1), shown(0, 0.1)]).toEqual(['2.7 % in', '0.0 %']);
		expect([shown(2.6, 0.05, 'mN'), shown(0.27, 0.01, 'gf')]).toEqual(['2.60 mN out', '0.27 g out']);
	});

	it('stands at both limits and in the middle', () => {
		const limits = {inner: 11.9, outer: 15.7};
		expect(gauge.aim({unit: 'percent', step: 0.1, middle: 13.8, limits})).toBe(
			'11.9 % out at the inner and 15.7 % out at the outer limit, 13.8 % out in the middle',
		);
	});

	it('names the limit that can be shown where the other one cannot', () => {
		const end = {unit: 'percent', step: 0.1, topOfScale: 20, radiusMm: 136} as const;
		expect(gauge.limitBeyond({...end, limit: 'outer', beyond: 20.3, other: 15.3})).toBe(
			'At 136 mm the outer limit would be 20.3 % out: this gauge ends at 20 % and cannot show it. Go by the inner limit there, 15.3 % out.',
		);
		expect(gauge.limitBeyond({...end, limit: 'inner', beyond: -20.3, other: undefined})).toMatch(/cannot show it\.$/);
	});
});

describe('Why figures are not what was typed', () => {
	it('is one sentence of what there is to say', () => {
		const none = {unit: 'percent', playing: undefined, times: undefined, zero: undefined, isHandForce: false} as const;
		expect(gauge.scale({...none, times: 1.14, zero: 0.3})).toBe(
			'Figures are percent of the playing force; this gauge carries 1.14 times as much and shows 0.3 % out at nothing.',
		);
		expect(gauge.scale({...none, times: 0.9})).toContain('carries 0.90 times as much.');
		expect(gauge.scale({...none, unit: 'mN', playing: 21})).toBe(
			'Figures are percent of the playing force, which is 21 mN here.',
		);
		expect(gauge.scale({...none, zero: -0.25, isHandForce: true})).toMatch(
			/shows 0\.25 % in at nothing\. Out and in mean the way the arm pushes\.$/,
		);
	});
});

describe('The zero of a gauge in print', () => {
	it('has its own sign, and its uncertainty where that is known', () => {
		// Two digits: 0.125 is between 0.12 and 0.13.
		expect(gauge.zero({source: 'turned', size: 0.125, side: 'plus', uncertainty: 0.4, unit: 'percent'})).toMatch(
			/ 0\.1[23] % plus ± 0\.4 %;/,
		);
		expect(gauge.zero({source: 'stated', size: 0, side: undefined, uncertainty: 0.283, unit: 'percent'})).toContain(
			' 0 % ± 0.28 %;',
		);
		expect(gauge.zero({source: 'stated', size: 0.5, side: 'minus', uncertainty: null, unit: 'percent'})).toContain(
			' 0.5 % minus;',
		);
	});
});

describe('What an answer brings about, in print', () => {
	it('is a force in both units, and part of the playing force', () => {
		// 2 g × 9.80665 mN/g (NIST SP 811 app. B.8).
		expect(consequences.bothForces({forceMn: 19.6133})).toBe('= 2 g = 19.61 mN');
		// 20.923 mN are 99.6 % of 21 mN.
		expect(consequences.carried({carriedMn: 20.923, playingMn: 21})).toContain(
			'20.92 mN (99.6 % of the playing force)',
		);
	});

	it('is a window with what stands in it', () => {
		expect(consequences.guard({lowMm: 3.7, highMm: 4.7, nowMm: 4.3})).toBe('guard: 3.7 to 4.7 mm, now 4.3 mm.');
		expect(consequences.stylus({lowMm: 5, highMm: 6, nowMm: undefined})).toBe('stylus: 5 to 6 mm.');
	});

	it('is the layout of an arm to a tenth of a millimetre', () => {
		expect(geometry.layout({name: undefined, nulls: [65.998, 120.891], overhangMm: 18.1734})).toBe(
			'this arm: null radii 66.0 and 120.9, overhang 18.2 mm.',
		);
		expect(geometry.layout({name: 'x', nulls: null, overhangMm: null})).toBe('x: null radii no two, overhang none mm.');
		expect(geometry.unusual({effectiveLengthMm: 228.6, pivotDistanceMm: 240})).toContain(
			'the stylus ends 11.4 mm short of the spindle',
		);
	});

	it('is a tilt with the side that is high', () => {
		expect(level.tilt({axis: 'leftRight', tiltDeg: 0.1, zeroErrorDeg: 0.05})).toBe(
			"Left to right: 0.10° right high; the level's own error 0.05°",
		);
		expect(level.tilt({axis: 'frontBack', tiltDeg: -0.025, zeroErrorDeg: null})).toMatch(
			/Front to back: 0\.0[23]° front high; the level's own error unknown after one reading/,
		);
		expect(level.tilt({axis: 'frontBack', tiltDeg: -0.001, zeroErrorDeg: 0})).toContain('Front to back: level;');
	});
});

describe('The rounds so far, in print', () => {
	it('never break within a round', () => {
		const one = {number: 1, innerLimit: '3 % out', outerLimit: '7.5 % out', isTurned: false, isStruck: true};
		const asked = {number: 2, usual: 3, isTurned: true};
		expect(rounds.soFar({round: asked, count: 1, isOffScale: false, last: [one]})).toBe(
			'Round 2 of 3, gauge turned · 1:\u00a03\u00a0%\u00a0out\u00a0/\u00a07.5\u00a0%\u00a0out\u00a0(struck)',
		);
	});

	it('are counted', () => {
		const said = (count: number, isOffScale: boolean) => rounds.soFar({round: undefined, count, isOffScale, last: []});
		expect([said(1, false), said(2, false), said(1, true), said(3, true)]).toEqual([
			'1 round counts',
			'2 rounds count',
			'1 round, off scale',
			'3 rounds, off scale',
		]);
	});
});

describe('A verdict in print', () => {
	it('says first what is sure', () => {
		expect(verdict.headline({verdict: 'beyond', atWorst: 'beyond'})).toBe('Verdict: BEYOND LIMITS');
		expect(verdict.headline({verdict: 'off-scale', atWorst: 'off-scale'})).toBe('Verdict: OFF SCALE');
		expect(verdict.headline({verdict: 'undecided', atWorst: 'usable'})).toBe(
			'Verdict: usable at worst, good not proven (UNDECIDED)',
		);
	});

	it('tells a cost at each radius', () => {
		const costs = [
			{radiusMm: 68, isPct: 0.53, couldBePct: 0.39},
			{radiusMm: 136, isPct: 0.84, couldBePct: 0.56},
		];
		expect(verdict.notSetAnew({costs})).toMatch(
			/ ± 0\.5 instead of ± 0\.4 % at 68 mm and ± 0\.8 instead of ± 0\.6 % at 136 mm\.$/,
		);
	});

	it('tells the lean of a stylus', () => {
		const figures = {wallShare: {inner: 0.5, outer: 0.5}, tiltSharePct: null, breakawayPct: 1, torqueMicroNm: 1};
		const leans = {micrometres: [14.74, 1.07], degrees: [0.1536, 0.0112]} as const;
		const details = verdict.details({figures: {...figures, place: 'inner', radiusMm: 68} as never, leans});
		expect(details).toContain('stylus leans 15 ± 1 µm (0.15 ± 0.01°)');
	});
});

describe('A record in print', () => {
	it('has every reading with what it was taken with, and why it does not count', () => {
		expect(
			record.reading({
				series: 1,
				place: 'bias-outer',
				setting: '1: 2.4 g',
				round: 2,
				isTurned: true,
				innerLimit: '7.5 % out',
				outerLimit: undefined,
				struck: 'it slipped',
			}),
		).toBe('Series 1, bias on, outer, setting 1: 2.4 g, round 2, gauge turned: 7.5 % out / … (struck out: it slipped)');
	});

	it('has a name for an arm without one', () => {
		expect([view.arm({name: undefined, isPractice: false}), view.arm({name: 'north deck', isPractice: true})]).toEqual([
			'new arm',
			'PRACTICE: north deck',
		]);
	});
});
