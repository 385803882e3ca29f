import {describe, expect, it} from 'vitest';
import {inOrder, words} from '../helpers/said.js';

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

	it('stands at both limits, or in the middle where nobody knows how far they lie apart', () => {
		const aim = {unit: 'percent', step: 0.1, middle: 13.8} as const;
		const limits = {inner: 11.9, outer: 15.7};
		expect(gauge.aim({...aim, limits})).toMatch(inOrder('11.9 % out', '15.7 % out'));
		expect(gauge.aim({...aim, limits})).not.toContain('13.8');
		expect(gauge.aim({...aim, limits: undefined})).toContain('13.8 % out');
	});

	it('names the limit that can be shown where the other one cannot', () => {
		const end = {unit: 'percent', step: 0.1, topOfScale: 20, radiusMm: 136} as const;
		expect(gauge.limitBeyond({...end, limit: 'outer', beyond: 20.3, other: 15.3})).toMatch(
			inOrder('136 mm', '20.3 % out', '20 %', '15.3 % out'),
		);
		const alone = gauge.limitBeyond({...end, limit: 'inner', beyond: -20.3, other: undefined});
		expect(alone).toMatch(/136 mm\D*20\.3 % in\D* 20 %\D*\.$/);
		expect(alone).toContain(gauge.ends(end));
	});
});

describe('Why figures are not what was typed', () => {
	it('is a sentence for each thing that there is to say', () => {
		const none = {unit: 'percent', playing: undefined, times: undefined, zero: undefined, isHandForce: false} as const;
		const sentences = (text: string): number => text.split(/\.(?= |$)/).length - 1;
		const both = gauge.scale({...none, times: 1.14, zero: 0.3});
		expect(both).toMatch(/^\D*1\.14\D*0\.3 % out\D*$/);
		const carries = gauge.scale({...none, times: 0.9});
		expect(carries).toMatch(/^\D*0\.90\D*$/);
		const plays = gauge.scale({...none, unit: 'mN', playing: 21});
		expect(plays).toMatch(/^\D*21 mN\D*$/);
		expect([both, carries, plays].map(sentences)).toEqual([3, 2, 1]);
		const ofArm = gauge.scale({...none, zero: -0.25});
		expect(ofArm).toMatch(/^\D*0\.25 % in\D*$/);
		// Whose push is meant comes as a sentence more.
		const ofHand = gauge.scale({...none, zero: -0.25, isHandForce: true});
		expect(ofHand.startsWith(ofArm)).toBe(true);
		expect(ofHand.slice(ofArm.length)).toMatch(/^ [^.]+\.$/);
	});
});

describe('The zero of a gauge in print', () => {
	it('has its own sign, and its uncertainty where that is known', () => {
		// As many decimals as its uncertainty has (JCGM 100:2008 7.2.6).
		expect(gauge.zero({source: 'turned', size: 0.125, side: 'plus', uncertainty: 0.4, unit: 'percent'})).toMatch(
			/ \+0\.1 % ± 0\.4 %\./,
		);
		expect(gauge.zero({source: 'stated', size: 0, side: undefined, uncertainty: 0.283, unit: 'percent'})).toContain(
			' 0.0 % ± 0.3 %.',
		);
		expect(gauge.zero({source: 'stated', size: 0.5, side: 'minus', uncertainty: null, unit: 'percent'})).toContain(
			' -0.5 %.',
		);
	});
});

describe('What an answer brings about, in print', () => {
	it('is a force in both units, and part of the playing force', () => {
		// 2 g × 9.80665 mN/g (NIST SP 811 app. B.8).
		expect(consequences.bothForces({forceMn: 19.6133})).toBe('= 2 g = 19.61 mN');
		// 20.923 mN are 99.6 % of 21 mN.
		expect(consequences.carried({carriedMn: 20.923, playingMn: 21})).toMatch(inOrder('20.92 mN', '99.6 %'));
	});

	it('is a window with what stands in it', () => {
		expect(consequences.guard({lowMm: 3.7, highMm: 4.7, nowMm: 4.3})).toMatch(/^\D*3\.7\D*4\.7 mm\D*4\.3 mm\D*$/);
		expect(consequences.stylus({lowMm: 5, highMm: 6, nowMm: undefined})).toMatch(/^\D*5\D*6 mm\D*$/);
	});

	it('is the layout of an arm to a tenth of a millimetre', () => {
		const known = geometry.layout({name: undefined, nulls: [65.998, 120.891], overhangMm: 18.1734});
		expect(known).toMatch(/^\D*66\.0\D*120\.9\D*18\.2 mm\D*$/);
		const unknown = geometry.layout({name: 'x', nulls: null, overhangMm: null});
		expect(unknown).toMatch(/^x\b\D*$/);
		expect(unknown).not.toMatch(/undefined|NaN/);
		expect(unknown.split('null')).toHaveLength(known.split('null').length);
		const short = geometry.unusual({effectiveLengthMm: 228.6, pivotDistanceMm: 240});
		expect(short).toMatch(inOrder('228.6 mm', '240 mm', '11.4 mm'));
		// As far beyond the spindle is another matter.
		const beyond = geometry.unusual({effectiveLengthMm: 240, pivotDistanceMm: 228.6});
		expect(beyond).toMatch(inOrder('240 mm', '228.6 mm', '11.4 mm'));
		expect(beyond.replaceAll(/[\d.]/g, '')).not.toBe(short.replaceAll(/[\d.]/g, ''));
	});

	it('is a tilt with the side that is high', () => {
		expect(level.tilt({axis: 'leftRight', tiltDeg: 0.1, zeroErrorDeg: 0.05})).toMatch(
			new RegExp(`^\\D*0\\.10° ${words.written.sides.right}\\b\\D*0\\.05°$`),
		);
		expect(level.tilt({axis: 'leftRight', tiltDeg: -0.1, zeroErrorDeg: 0.05})).toContain(
			`0.10° ${words.written.sides.left}`,
		);
		expect(level.tilt({axis: 'frontBack', tiltDeg: -0.025, zeroErrorDeg: null})).toMatch(
			new RegExp(`^\\D*0\\.0[23]° ${words.written.sides.front}\\b\\D*$`),
		);
		// A tilt that prints as zero has no side.
		expect(level.tilt({axis: 'frontBack', tiltDeg: -0.001, zeroErrorDeg: 0})).toMatch(/^\D*0\.00°$/);
		expect(level.tilt({axis: 'frontBack', tiltDeg: -0.001, zeroErrorDeg: 0})).toBe(
			level.tilt({axis: 'frontBack', tiltDeg: 0.001, zeroErrorDeg: 0}),
		);
	});
});

describe('The rounds so far, in print', () => {
	it('never break within a round', () => {
		const one = {number: 1, innerLimit: '3 % out', outerLimit: '7.5 % out', isTurned: false, isStruck: true};
		const soFar = (isStruck: boolean) =>
			rounds.soFar({isAsked: true, count: 1, isOffScale: false, last: [{...one, isStruck}]});
		expect(soFar(true)).toMatch(/^1:\u00a03\u00a0%\u00a0out\u00a0\/\u00a07\.5\u00a0%\u00a0out\u00a0[^ ]+$/);
		// That a round was struck out is marked.
		expect(soFar(false)).toBe('1:\u00a03\u00a0%\u00a0out\u00a0/\u00a07.5\u00a0%\u00a0out');
	});

	it('are counted', () => {
		const said = (count: number, isOffScale: boolean) => rounds.soFar({isAsked: false, count, isOffScale, last: []});
		const all = [said(1, false), said(2, false), said(1, true), said(3, true)];
		expect(all.map((text) => text.match(/\d+/g))).toEqual([['1'], ['2'], ['1'], ['3']]);
		// One or several, and off the scale or not: each has words of its own.
		expect(new Set(all.map((text) => text.replace(/\d/, ''))).size).toBe(4);
	});
});

describe('A verdict in print', () => {
	const {sureFirst, verdictWord} = words.figures;

	it('says first what is sure', () => {
		expect(verdict.headline({verdict: 'beyond', atWorst: 'beyond'})).toContain(verdictWord.beyond);
		expect(verdict.headline({verdict: 'off-scale', atWorst: 'off-scale'})).toContain(verdictWord['off-scale']);
		expect(verdict.headline({verdict: 'undecided', atWorst: 'usable'})).toMatch(
			inOrder(sureFirst('usable'), verdictWord.undecided),
		);
	});

	it('tells a cost at each radius', () => {
		const costs = [
			{radiusMm: 68, isPct: 0.53, couldBePct: 0.39},
			{radiusMm: 136, isPct: 0.84, couldBePct: 0.56},
		];
		expect(verdict.notSetAnew({costs})).toMatch(inOrder('± 0.5 %', '± 0.4 %', '68 mm', '± 0.8 %', '± 0.6 %', '136 mm'));
	});

	it('tells the lean of a stylus', () => {
		const figures = {wallShare: {inner: 0.5, outer: 0.5}, tiltSharePct: null, breakawayPct: 1, torqueMicroNm: 1};
		const leans = {micrometres: [14.74, 1.07], degrees: [0.1536, 0.0112]} as const;
		const details = verdict.details({figures: {...figures, place: 'inner', radiusMm: 68} as never, leans});
		expect(details).toContain(' 15 µm ± 1 µm (0.15° ± 0.01°)');
	});
});

describe('A record in print', () => {
	it('has every reading with what it was taken with, and why it does not count', () => {
		const half = {
			series: 1,
			place: 'bias-outer',
			setting: '1: 2.4 g',
			round: 2,
			isTurned: true,
			innerLimit: '7.5 % out',
			outerLimit: undefined,
			struck: 'it slipped',
		} as const;
		const text = record.reading(half);
		expect(text).toMatch(inOrder('1', words.places['bias-outer'], '1: 2.4 g', '2', '7.5 % out', '/ …', 'it slipped'));
		const whole = record.reading({...half, isTurned: false, outerLimit: '11 % out', struck: undefined});
		expect(whole).toMatch(/7\.5 % out \/ 11 % out$/);
		// That the gauge was turned is told before the limits.
		const head = (one: string): string => one.slice(0, one.indexOf(': 7.5'));
		expect(head(text).startsWith(head(whole))).toBe(true);
		expect(head(text)).not.toBe(head(whole));
	});

	it('has a name for an arm without one', () => {
		expect(view.arm({name: undefined, isPractice: false})).toMatch(/^\p{L}[^\d]+$/u);
		expect(view.arm({name: 'north deck', isPractice: false})).toBe('north deck');
		expect(view.arm({name: 'north deck', isPractice: true})).toMatch(/^\p{Lu}{2,}\P{Ll}*north deck$/u);
	});
});
