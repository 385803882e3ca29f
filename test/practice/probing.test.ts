import * as fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {isMoving, readingShown} from '../../source/practice/advance.js';
import {newPracticeArm, stillForMs} from '../../source/practice/practice-arm.js';
import {
	hastyMs,
	nextLimit,
	nudged,
	type Probing,
	type Push,
	passed,
	probingAt,
	restWith,
	swingWay,
} from '../../source/practice/probing.js';
import {soundArm} from '../../source/practice/sound-arm.js';
import {bareArm, pctMicroNm} from './bare-arm.js';

const radiusMm = 100;

/** An arm that holds from −2 to +2 %: Coulomb's law, OpenStax University Physics vol. 1, 6.2. */
const holding = {...bareArm, friction: {staticMicroNm: 2 * pctMicroNm, kineticShare: 0.8}};
const begun = (spec = holding, seed = 1): Probing => probingAt(newPracticeArm(spec, seed), radiusMm, false);

const quietly = (pct: number): Push => ({pct, quicknessMmPerS: 0.3});
const longMs = 6000;

/** Nudged outward, and waited until all is still. */
const pushedOut = (probing: Probing, pct: number): Probing => passed(nudged(probing, 'out', quietly(pct)), longMs);

describe('a nudge', () => {
	it('is hasty on an arm that still moves', () => {
		const moving = passed(nudged(begun(), 'out', quietly(1)), 100);
		expect(isMoving(moving.arm)).toBe(true);
		expect(nudged(moving, 'out', quietly(0.5))).toMatchObject({nudges: 2, hurried: 1});
	});

	it('is hasty on an arm that has only just come to rest, and not once there was time to look', () => {
		const rested = (ms: number): Probing => {
			let probing = nudged(begun(), 'out', quietly(0.5));
			while (isMoving(probing.arm)) probing = passed(probing, 1);
			return passed(probing, ms);
		};
		expect(nudged(rested(hastyMs - 100), 'out', quietly(0.5)).hurried).toBe(1);
		expect(nudged(rested(hastyMs + 100), 'out', quietly(0.5)).hurried).toBe(0);
	});

	it('is never hasty where it is the first: nobody has touched the arm yet', () => {
		expect(nudged(begun(), 'in', quietly(0.5))).toMatchObject({nudges: 1, hurried: 0, nudged: 'in'});
	});

	it('pushes by the percent that the gauge shows of it', () => {
		// Left inside its band the arm stays: the finger's path over the stiffness of the gauge, and one trembling step.
		expect(readingShown(pushedOut(begun(), 1.5).arm)).toBeCloseTo(1.5, 1);
	});
});

describe('the times at rest', () => {
	it('are kept one by one, with what the gauge showed and how long', () => {
		const probing = pushedOut(pushedOut(passed(begun(), 1000), 0.8), 0.8);
		const shown = probing.rests.map(({lowPct, highPct}) => [lowPct, highPct]);
		expect(shown).toEqual([
			[0, 0],
			[0.8, 0.8],
			[1.6, 1.6],
		]);
		expect(probing.rests[0]?.stillMs).toBe(1000);
		expect(probing.rests.at(-1)?.stillMs).toBe(stillForMs(probing.arm));
	});

	it('hold all that a trembling gauge showed meanwhile', () => {
		const trembling = {...holding, gauge: {...holding.gauge, stepPct: 0.5, trembleSteps: 0.4}};
		// 1.24 % stands near the middle between two steps.
		const [, rest] = passed(pushedOut(passed(begun(trembling), 1000), 1.24), 20_000).rests;
		expect(rest).toMatchObject({lowPct: 1, highPct: 1.5});
	});

	it.each([1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8])(
		'are not run together by one that was all too short, before a nudge of %s percent',
		(pct) => {
			// Put under the gauge a moment before it is looked at, and nudged a moment after.
			const brief = passed(probingAt(passed(begun(), 40).arm, radiusMm, false), 10);
			expect(brief.rests).toMatchObject([{lowPct: 0, highPct: 0, stillMs: 10}]);
			const probing = pushedOut(brief, pct);
			expect(probing.rests.map(({lowPct}) => lowPct)).toEqual([0, pct]);
			expect(restWith(0.6, probing)).toBeNull();
		},
	);

	it('begin anew for the next limit, where the arm lies as it was left', () => {
		const before = pushedOut(begun(), 0.8);
		const next = nextLimit(before);
		expect(next).toMatchObject({rests: [], nudges: 0, hurried: 0, lettingGo: 0, nudged: null});
		const {swingRad, rateRadPerS, timeMs, gauge} = before.arm;
		expect(next.arm).toMatchObject({swingRad, rateRadPerS, timeMs, gauge});
		expect(passed(next, 100).rests).toMatchObject([{lowPct: 0.8, highPct: 0.8}]);
	});

	it('are none while the arm is free of the gauge', () => {
		const free = nextLimit({...begun(), arm: {...newPracticeArm(holding, 1)}});
		expect(passed(free, 1000).rests).toEqual([]);
	});
});

describe('letting go', () => {
	it('is counted once for each swing back, however long that takes', () => {
		const once = pushedOut(begun(), 3);
		expect(once).toMatchObject({lettingGo: 1, nudged: null});
		expect(passed(once, longMs).lettingGo).toBe(1);
		expect(pushedOut(once, 3).lettingGo).toBe(2);
	});

	it('is not counted where the arm stays, or only flies on the way it was pushed', () => {
		const quick = passed(nudged(begun(), 'out', {pct: 0.5, quicknessMmPerS: 3}), longMs);
		expect(readingShown(quick.arm)).toBeGreaterThan(0.8);
		expect(quick).toMatchObject({lettingGo: 0, nudged: 'out'});
	});

	it('is counted in vain as long as the nudges are alike, also where one of them held, and anew once another is tried', () => {
		const twice = pushedOut(pushedOut(begun(), 3), 3);
		expect(twice.inVain).toEqual({way: 'out', pct: 3, times: 2});
		expect(pushedOut(twice, 4).inVain).toEqual({way: 'out', pct: 4, times: 1});
		expect(passed(nudged(twice, 'in', quietly(3)), longMs).inVain?.way).toBe('in');
		const held = pushedOut(pushedOut(begun(), 0.5), 0.5);
		expect(held).toMatchObject({nudged: 'out', inVain: {times: 0}});
		const between = pushedOut(pushedOut(pushedOut(begun(), 1.5), 1.5), 1.5);
		expect(between.nudges - between.lettingGo).toBeGreaterThan(0);
		expect(between.inVain?.times).toBe(between.lettingGo);
		expect(nextLimit(twice).inVain).toBeNull();
	});

	it('is counted inward as outward', () => {
		expect(passed(nudged(begun(), 'in', quietly(3)), longMs)).toMatchObject({lettingGo: 1, nudged: null});
	});

	it('has a way of its own, which a pushed or a resting arm has not', () => {
		const pushing = passed(nudged(begun(), 'out', quietly(3)), 200);
		expect(swingWay(pushing.arm)).toBeNull();
		let back = pushing;
		while (back.lettingGo === 0) back = passed(back, 10);
		expect(swingWay(back.arm)).toBe('in');
		expect(swingWay(passed(back, longMs).arm)).toBeNull();
	});
});

describe('how long a reading stood there', () => {
	it('is the longest rest with it', () => {
		const twice = pushedOut(passed(nudged(begun(), 'out', quietly(0.8)), 2000), 0.8);
		const back = passed(nudged(twice, 'in', quietly(0.8)), longMs);
		const fitting = back.rests.filter(({lowPct}) => lowPct === 0.8).map(({stillMs}) => stillMs);
		expect(fitting).toHaveLength(2);
		expect(restWith(0.8, back)).toBe(Math.max(...fitting));
	});

	it('counts a reading up to one step beside what was shown', () => {
		const probing = pushedOut(begun(), 1.6);
		expect([1.5, 1.7].map((pct) => restWith(pct, probing))).toEqual([stillForMs(probing.arm), stillForMs(probing.arm)]);
		expect([1.4, 1.8].map((pct) => restWith(pct, probing))).toEqual([null, null]);
	});

	it('is unknown for what was shown on the way only', () => {
		const flown = pushedOut(passed(begun(), 1000), 3);
		// It was pushed through 2.5 %, but did not stay there.
		expect(restWith(2.5, flown)).toBeNull();
		expect(restWith(0, flown)).toBeGreaterThanOrEqual(1000);
	});
});

it('time that goes by in pieces leaves the same as the whole, whatever the pieces', () => {
	const pushes = fc.record({
		way: fc.constantFrom('in', 'out'),
		tenthsPct: fc.integer({min: 2, max: 40}),
		tenthsMmPerS: fc.integer({min: 2, max: 30}),
		pieces: fc.array(fc.integer({min: 1, max: 700}), {minLength: 1, maxLength: 8}),
	});
	fc.assert(
		fc.property(fc.integer({min: 0, max: 1000}), fc.array(pushes, {minLength: 1, maxLength: 4}), (seed, all) => {
			let [whole, cut] = [begun(soundArm, seed), begun(soundArm, seed)];
			for (const {way, pieces, tenthsPct, tenthsMmPerS} of all) {
				const push = {pct: tenthsPct / 10, quicknessMmPerS: tenthsMmPerS / 10};
				whole = passed(
					nudged(whole, way, push),
					pieces.reduce((sum, ms) => sum + ms, 0),
				);
				cut = pieces.reduce((probing, ms) => passed(probing, ms), nudged(cut, way, push));
			}
			expect(cut).toEqual(whole);
		}),
		{numRuns: 60, interruptAfterTimeLimit: 10_000, markInterruptAsFailure: true},
	);
});
