import {describe, expect, it} from 'vitest';
import type {Document} from '../../source/findings/document.js';
import {figuresOf, isMeasured} from '../../source/findings/figures.js';
import {documentWith, example} from './example.js';

// Six digits, as the contract prints them.
const near = (printed: number) => expect.toSatisfy((value: number) => Math.abs(value / printed - 1) < 5e-6);

const innerPrinted = {
	place: 'inner',
	radiusMm: 65,
	tiltSharePct: near(-0.114869),
	tiltShareUncertaintyPct: near(0.0349132),
	pullPct: near(6.75),
	pullUncertaintyPct: near(0.484857),
	bandPct: near(6.16667),
	bandUncertaintyPct: near(0.676362),
	breakawayPct: near(3.08333),
	torqueMicroNm: near(278.235),
	effectiveDegreesOfFreedom: near(29.1319),
	repeatability: 'pooled',
	pullVerdict: 'beyond',
	pullAtWorst: 'beyond',
	bandVerdict: 'undecided',
	bandAtWorst: 'beyond',
	pullWouldDecide: null,
	bandWouldDecide: {finerStep: true},
	wallShare: {inner: near(0.46625), outer: near(0.53375)},
	lean: {micrometres: near(18.225), degrees: near(0.174035)},
};
const outerPrinted = {
	place: 'outer',
	radiusMm: 140,
	tiltSharePct: near(-0.129562),
	tiltShareUncertaintyPct: near(0.0349132),
	pullPct: near(5),
	pullUncertaintyPct: near(0.477505),
	bandPct: near(4.66667),
	bandUncertaintyPct: near(0.671911),
	breakawayPct: near(2.33333),
	torqueMicroNm: near(206.1),
	effectiveDegreesOfFreedom: near(27.04),
	repeatability: 'pooled',
	pullVerdict: 'beyond',
	pullAtWorst: 'beyond',
	bandVerdict: 'usable',
	bandAtWorst: 'usable',
	pullWouldDecide: null,
	bandWouldDecide: null,
	wallShare: {inner: near(0.475), outer: near(0.525)},
	lean: {micrometres: near(13.5), degrees: near(0.128915)},
};

describe('the worked example of the contract', () => {
	const figures = figuresOf(example());

	it('has the printed figures at both radii', () => {
		expect(figures.probe).toEqual([innerPrinted, outerPrinted]);
	});

	it('has the printed preparation and overall words', () => {
		expect(figures).toMatchObject({
			scaleFactor: 1,
			carriedMn: 18,
			level: {
				leftRight: {tiltDeg: near(0.075), zeroErrorDeg: near(0.025)},
				frontBack: {tiltDeg: 0, zeroErrorDeg: near(0.05)},
				passes: true,
			},
			clearance: {stylusWindowMm: [4, 5], guardWindowMm: [3, 4], passes: true},
			verdict: 'beyond',
			atWorst: 'beyond',
		});
	});

	it('has the printed difference between the radii', () => {
		expect(figures.betweenRadii).toEqual({
			en: near(2.55),
			differs: true,
			bandEn: near(1.57335),
			bandDiffers: true,
			torqueSlopeMicroNmPerDeg: near(-3.49668),
			neutralRadiusMm: null,
		});
	});

	it('has the printed bias figures', () => {
		expect(figures.bias).toEqual({
			effectiveDrag: 0.3,
			leastRadiusMm: near(88.2797),
			rows: [
				{
					radiusMm: 140,
					fraction: near(0.427219),
					wantedPct: near(12.8166),
					pullOnPct: near(10.75),
					biasPct: near(5.75),
					leftoverPct: near(-2.06658),
				},
				{
					radiusMm: 65,
					fraction: near(0.403705),
					wantedPct: near(12.1112),
					pullOnPct: near(9),
					biasPct: near(2.25),
					leftoverPct: near(-3.11116),
				},
			],
			fit: {
				factor: near(1.68809),
				worstBeforePct: near(3.43811),
				worstAfterPct: near(1.88992),
				rmsBeforePct: near(2.1835),
				rmsAfterPct: near(1.27159),
				frictionFloorPct: near(3.08333),
				targets: [
					{radiusMm: 140, targetPct: near(14.7065)},
					{radiusMm: 65, targetPct: near(10.5482)},
				],
			},
			lever: [
				{radiusMm: 140, clock: '3:00', share: 1},
				{radiusMm: 65, clock: '1:30', share: near(Math.SQRT1_2)},
			],
		});
	});

	it('keeps the order of keys', () => {
		expect(Object.keys(figures)).toEqual([
			'scaleFactor',
			'carriedMn',
			'level',
			'clearance',
			'probe',
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
		expect(figures).toMatchObject({level: null, clearance: null, bias: null});
		expect(figures.probe[0]).toMatchObject({tiltSharePct: null, tiltShareUncertaintyPct: null, lean: null});
	});

	it('leaves the lean without its angle when the cantilever is not known, and no lean without a compliance', () => {
		const lean = (cartridge: Document['cartridge']) =>
			figuresOf(documentWith({pull: 1, band: 2}, {pull: 1, band: 2}, {cartridge})).probe[0]?.lean;
		expect(lean({staticComplianceUmPerMn: 10})).toEqual({micrometres: near(2), degrees: null});
		expect(lean({cantileverMm: 6})).toBeNull();
	});

	it('says that repeatability is unknown after single rounds', () => {
		const once = {pull: 1, band: 2, rounds: 1};
		const figures = figuresOf(documentWith(once, once));
		expect(figures.probe[0]).toMatchObject({repeatability: 'unknown', effectiveDegreesOfFreedom: null});
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
				radius.place === 'outer' ? {...radius, rounds: [{innerLimit: 3, outerLimit: 16}]} : radius,
			),
		});
	};

	it('leaves only place, tilt share and verdicts at its radius', () => {
		const {place, radiusMm, tiltSharePct, tiltShareUncertaintyPct, ...rest} = off().probe[1] ?? {};
		expect({place, radiusMm}).toEqual({place: 'outer', radiusMm: 140});
		expect(tiltSharePct).toEqual(near(-0.129562));
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
		// By hand: inner centres 6.75, 7, 6.5 with two degrees of freedom have s = 0.25; with t = 4.30 at most.
		const inner = figures.probe[0];
		expect(inner && isMeasured(inner) && inner.effectiveDegreesOfFreedom).toBeLessThan(29);
	});
});
