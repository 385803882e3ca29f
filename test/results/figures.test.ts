import {describe, expect, it} from 'vitest';
import type {Document} from '../../source/results/document.js';
import {figuresOf, isMeasured} from '../../source/results/figures.js';
import {documentWith, example} from './example.js';

// Six digits, as they are printed with the worked example.
const near = (printed: number) => expect.toSatisfy((value: number) => Math.abs(value / printed - 1) < 5e-6);

const innerPrinted = {
	place: 'inner',
	radiusMm: 68,
	tiltSharePct: near(-0.174481),
	tiltShareUncertaintyPct: near(0.0349132),
	pullPct: near(5.375),
	pullUncertaintyPct: near(0.391683),
	bandPct: near(5.875),
	bandUncertaintyPct: near(0.385349),
	breakawayPct: near(2.9375),
	torqueMicroNm: near(262.999),
	effectiveDegreesOfFreedom: near(5.18632),
	repeatability: 'pooled',
	pullVerdict: 'beyond',
	pullAtWorst: 'beyond',
	bandVerdict: 'undecided',
	bandAtWorst: 'beyond',
	ownPullPct: near(5.54948),
	pullWouldDecide: null,
	bandWouldDecide: {onLimit: true},
	wallShare: {inner: near(0.470747), outer: near(0.529253)},
	lean: {micrometres: near(14.7438), degrees: near(0.153592)},
};
const outerPrinted = {
	place: 'outer',
	radiusMm: 136,
	tiltSharePct: near(-0.179451),
	tiltShareUncertaintyPct: near(0.0349132),
	pullPct: near(3.375),
	pullUncertaintyPct: near(0.562731),
	bandPct: near(4.16667),
	bandUncertaintyPct: near(0.420795),
	breakawayPct: near(2.08333),
	torqueMicroNm: near(165.139),
	effectiveDegreesOfFreedom: near(4.22169),
	repeatability: 'pooled',
	pullVerdict: 'usable',
	pullAtWorst: 'usable',
	bandVerdict: 'usable',
	bandAtWorst: 'usable',
	ownPullPct: near(3.55445),
	pullWouldDecide: null,
	bandWouldDecide: null,
	wallShare: {inner: near(0.48144), outer: near(0.51856)},
	lean: {micrometres: near(9.35442), degrees: near(0.0974488)},
};

describe('the worked example', () => {
	const figures = figuresOf(example());

	it('has the printed figures at both radii', () => {
		expect(figures.probe).toEqual([innerPrinted, outerPrinted]);
	});

	it('has the printed preparation and overall words', () => {
		expect(figures).toMatchObject({
			scaleFactor: 1,
			carriedMn: 21,
			level: {
				leftRight: {tiltDeg: near(0.1), zeroErrorDeg: near(0.05)},
				frontBack: {tiltDeg: near(-0.025), zeroErrorDeg: near(0.075)},
				passes: true,
			},
			clearance: {stylusWindowMm: [near(5), near(6)], guardWindowMm: [near(3.7), near(4.7)], passes: true},
			verdict: 'beyond',
			atWorst: 'beyond',
		});
	});

	it('has the printed zero of the gauge and closing round', () => {
		expect(figures.zero).toEqual({source: 'turned', zero: near(0.125), zeroUncertainty: near(0.400745)});
		expect(figures.closing).toEqual({movedPct: near(-0.375), allowedPct: near(0.889521), moved: false});
	});

	it('has the printed difference between the radii', () => {
		expect(figures.betweenRadii).toEqual({
			pullDifferencePct: near(-1.99503),
			pullDifferenceUncertaintyPct: near(0.565113),
			bandDifferencePct: near(-1.70833),
			bandDifferenceUncertaintyPct: near(0.557597),
			en: near(3.53032),
			differs: true,
			bandEn: near(3.06374),
			bandDiffers: true,
			torqueSlopeMicroNmPerDeg: near(-5.37129),
			neutralRadiusMm: null,
		});
	});

	it('has the printed bias figures', () => {
		expect(figures.bias).toEqual({
			effectiveDrag: 0.3,
			leastRadiusMm: near(88.836),
			rows: [
				{
					radiusMm: 136,
					fraction: near(0.41637),
					wantedPct: near(12.4911),
					pullOnPct: near(9.125),
					biasPct: near(5.75),
					leftoverPct: near(-3.36609),
				},
				{
					radiusMm: 68,
					fraction: near(0.394971),
					wantedPct: near(11.8491),
					pullOnPct: near(8.875),
					biasPct: near(3.5),
					leftoverPct: near(-2.97413),
				},
			],
			fit: {
				factor: near(1.72737),
				worstBeforePct: near(3.75399),
				worstAfterPct: near(0.909509),
				worstAfterDragPct: near(2.96456),
				rmsBeforePct: near(2.90665),
				rmsAfterPct: near(0.704211),
				frictionFloorPct: near(2.9375),
				targets: [
					{radiusMm: 136, targetPct: near(13.3074)},
					{radiusMm: 68, targetPct: near(11.4208)},
				],
			},
			lever: [
				{radiusMm: 136, clock: '8:30', share: near(0.965926)},
				{radiusMm: 68, clock: '7:15', share: near(0.608761)},
			],
		});
	});

	it('keeps the order of keys', () => {
		expect(Object.keys(figures)).toEqual([
			'scaleFactor',
			'carriedMn',
			'level',
			'clearance',
			'zero',
			'probe',
			'closing',
			'verdict',
			'atWorst',
			'betweenRadii',
			'bias',
		]);
		expect(Object.keys(figures.probe[0] ?? {})).toEqual(Object.keys(innerPrinted));
	});
});

describe('what is absent', () => {
	it('is null', () => {
		const figures = figuresOf(documentWith({pull: 1, band: 2}, {pull: 1, band: 2}));
		expect(figures).toMatchObject({level: null, clearance: null, closing: null, bias: null});
		expect(figures.probe[0]).toMatchObject({
			tiltSharePct: null,
			tiltShareUncertaintyPct: null,
			ownPullPct: null,
			lean: null,
		});
	});

	it('leaves the lean without its angle when the cantilever is not known, and no lean without a compliance', () => {
		const lean = (cartridge: Document['cartridge']) =>
			figuresOf(documentWith({pull: 1, band: 2}, {pull: 1, band: 2}, {cartridge})).probe[0]?.lean;
		// 1 % of 20 mN is 0.2 mN; the groove wall carries it over the cosine of the angle whose sine is 0.394971 at 68 mm.
		const micrometres = near((0.2 * 10) / Math.sqrt(1 - 0.394971 ** 2));
		expect(lean({staticComplianceUmPerMn: 10})).toEqual({micrometres, degrees: null});
		expect(lean({cantileverMm: 6})).toBeNull();
	});

	it('says that repeatability is assumed after single rounds', () => {
		const once = {pull: 1, band: 2, rounds: 1};
		const figures = figuresOf(documentWith(once, once));
		expect(figures.probe[0]).toMatchObject({repeatability: 'assumed', effectiveDegreesOfFreedom: null});
	});

	it('shows no window for a guard that is not on, and does not ask it to be clear', () => {
		const clearance = {stylusMm: 2.5, guardDepthMm: 2.4};
		const inPlace = {pull: 1, band: 2};
		const trackingForce = {playingMn: 20, scaleReadingMn: 20, guard: 'included'} as const;
		expect(figuresOf(documentWith(inPlace, inPlace, {clearance})).clearance).toEqual({
			stylusWindowMm: [2, 3],
			guardWindowMm: null,
			passes: true,
		});
		expect(figuresOf(documentWith(inPlace, inPlace, {clearance, trackingForce})).clearance?.passes).toBe(false);
	});
});

describe('an off-scale reading', () => {
	const off = () => {
		const document = example();
		return figuresOf({
			...document,
			probe: document.probe.map((radius) =>
				radius.place === 'outer' ? {...radius, rounds: [{innerLimit: 3, outerLimit: 20}]} : radius,
			),
		});
	};

	it('leaves only place, tilt share and verdicts at its radius', () => {
		const {place, radiusMm, tiltSharePct, tiltShareUncertaintyPct, ...rest} = off().probe[1] ?? {};
		expect({place, radiusMm}).toEqual({place: 'outer', radiusMm: 136});
		expect(tiltSharePct).toEqual(near(-0.179451));
		expect(tiltShareUncertaintyPct).toEqual(near(0.0349132));
		const verdicts = Object.entries(rest).filter(([, value]) => value !== null);
		expect(Object.fromEntries(verdicts)).toEqual({
			pullVerdict: 'off-scale',
			pullAtWorst: 'off-scale',
			bandVerdict: 'off-scale',
			bandAtWorst: 'off-scale',
		});
	});

	it('makes the whole off-scale, with nothing between the radii, and feeds no pool', () => {
		const figures = off();
		expect(figures).toMatchObject({verdict: 'off-scale', atWorst: 'off-scale', betweenRadii: null});
		// By hand: the inner centres 5.75, 5.5 and 5.25 as used have s² = 0.0625 with two degrees of freedom, and with one
		// turned round A = 0.0625·(1/3 + 1)/4; the step shows in the scatter, so B is the gain alone, 1 % of 5.375 %.
		const scatter = (0.0625 * (1 / 3 + 1)) / 4;
		const inner = figures.probe[0];
		expect(inner && isMeasured(inner) && inner.effectiveDegreesOfFreedom).toBeCloseTo(
			2 * ((scatter + 0.05375 ** 2) / scatter) ** 2,
			9,
		);
	});

	it('at the radius with the turned round leaves the zero unknown and the closing round untold', () => {
		const document = example();
		const [inner, outer] = document.probe;
		if (!inner || !outer) throw new Error('the example has two radii');
		const rounds = inner.rounds.map((one) => (one.closing ? {...one, outerLimit: 20} : one));
		const figures = figuresOf({...document, probe: [{...inner, rounds}, outer]});
		expect(figures.zero).toEqual({source: 'unchecked', zero: null, zeroUncertainty: null});
		expect(figures.closing).toBeNull();
	});
});

describe('the zero of the gauge', () => {
	const without = (gauge: Partial<Document['gauge']>) => {
		const {zero: _zero, ...rest} = documentWith({pull: 1, band: 2}, {pull: 1, band: 2}).gauge;
		return figuresOf(documentWith({pull: 1, band: 2}, {pull: 1, band: 2}, {gauge: {...rest, ...gauge}}));
	};

	it('that nobody looked at is nothing, and makes every pull less sure', () => {
		const figures = without({});
		expect(figures.zero).toEqual({source: 'unchecked', zero: null, zeroUncertainty: null});
		// Rounds all alike, a step of 0.1 %: u² = 0.1²/24 + 0.5²/3, k = 1.959964 as no scatter shows.
		expect(figures.probe[0]?.pullPct).toBeCloseTo(1, 9);
		expect(figures.probe[0]?.pullUncertaintyPct).toBeCloseTo(1.959964 * Math.sqrt(0.01 / 24 + 0.25 / 3), 5);
	});

	it('that is stated comes off every pull', () => {
		const figures = without({zero: 0.2, zeroUncertainty: 0.1});
		expect(figures.zero).toEqual({source: 'stated', zero: 0.2, zeroUncertainty: near(1.959964 * 0.1)});
		for (const {pullPct} of figures.probe) expect(pullPct).toBeCloseTo(0.8, 9);
	});
});
