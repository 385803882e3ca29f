import {describe, expect, it} from 'vitest';
import {advance} from '../../source/practice/advance.js';
import {chanceFrom} from '../../source/practice/chance.js';
import {carefulHabit, type Habit, type Hand, roundBy, standAt} from '../../source/practice/hand.js';
import {newPracticeArm} from '../../source/practice/practice-arm.js';
import {bareArm, pctMicroNm} from './bare-arm.js';

const holding = {
	...bareArm,
	friction: {staticMicroNm: 2 * pctMicroNm, kineticShare: 0.8},
	wire: {...bareArm.wire, twistMicroNm: 3 * pctMicroNm},
};

const handWith = (change: Partial<Habit> = {}, spec = holding): Hand => {
	const hand = {arm: newPracticeArm(spec, 1), habit: {...carefulHabit(0.1), ...change}, chance: chanceFrom(2)};
	standAt(hand, 100);
	return hand;
};

describe('a careful hand', () => {
	it('finds both limits to a nudge and a step, and never past them', () => {
		// The limits lie at 3 − 2 and 3 + 2 percent: Coulomb's law, OpenStax University Physics vol. 1, 6.2.
		const hand = handWith();
		for (let round = 0; round < 5; round++) {
			const {inner, outer} = roundBy(hand);
			expect(inner).toBeGreaterThanOrEqual(1);
			expect(inner).toBeLessThanOrEqual(1.2);
			expect(outer).toBeLessThanOrEqual(5);
			expect(outer).toBeGreaterThanOrEqual(4.8);
		}
	});

	it('reads in the sign of the gauge, also when that is turned', () => {
		const hand = handWith();
		standAt(hand, 100, true);
		const {inner, outer} = roundBy(hand);
		expect([inner, outer]).toEqual([expect.closeTo(-1.1, 0), expect.closeTo(-4.9, 0)]);
	});

	it('stops at the end of the scale', () => {
		const hand = handWith({}, {...holding, wire: {...holding.wire, twistMicroNm: 19 * pctMicroNm}});
		expect(roundBy(hand).outer).toBe(20);
	});
});

describe('a hasty hand', () => {
	const hasty = {settleMs: 80, nudgePct: 0.4};

	it('that reads before the arm has settled finds too wide a band', () => {
		const {inner, outer} = roundBy(handWith(hasty));
		expect(outer - inner).toBeGreaterThan(4.5);
	});

	it('that nudges in leaps finds too narrow a band', () => {
		const {inner, outer} = roundBy(handWith({nudgePct: 2, searchPct: 2, unevenness: 0}));
		expect(outer - inner).toBeLessThan(3.7);
	});

	it('leaves the arm in the same world as a careful one: it can be gone on with', () => {
		const hand = handWith(hasty);
		roundBy(hand);
		expect(advance(hand.arm, 10_000).timeMs).toBe(hand.arm.timeMs + 10_000);
	});
});
