import {describe, expect, it} from 'vitest';
import {isMoving} from '../../source/practice/advance.js';
import type {ArmSpec} from '../../source/practice/arm-spec.js';
import {chanceFrom} from '../../source/practice/chance.js';
import {carefulHabit, type Hand, roundBy, standAt} from '../../source/practice/hand.js';
import {lookedFor, newPracticeArm, type PracticeArm, placeGauge} from '../../source/practice/practice-arm.js';
import {bareArm, pctMicroNm} from './bare-arm.js';

const radiusMm = 100;
const frictionPct = 2;

/** An arm that holds from −2 to +2 %, with what a setting up and a search for a limit make of that. */
const scattering = (settingUpPct: number, scatterPct: number): ArmSpec => ({
	...bareArm,
	friction: {staticMicroNm: frictionPct * pctMicroNm, kineticShare: 0.8},
	settingUpPct,
	scatterPct,
});

/** The arm through so many changes, and what it was after each. */
function drawn(spec: ArmSpec, count: number, next: (arm: PracticeArm) => PracticeArm): readonly PracticeArm[] {
	let arm = placeGauge(newPracticeArm(spec, 1), radiusMm);
	return Array.from({length: count}, () => {
		arm = next(arm);
		return arm;
	});
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const sdOf = (values: readonly number[]): number => {
	const mean = meanOf(values);
	return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

const many = 4000;
// Five standard deviations. A mean of n values scatters by 1/√n of their standard deviation; the standard deviation of n
// evenly spread ones by √(0.2/n) of itself, for their fourth moment is 1.8 of the squared variance: (1.8 − 1)/(4n), squared.
const meanTolerance = 5 / Math.sqrt(many);
const sdTolerance = 5 * Math.sqrt(0.2 / many);

const toldPct = (arms: readonly PracticeArm[], of: 'settingUpMicroNm' | 'scatterMicroNm'): number[] =>
	arms.map((arm) => arm[of] / pctMicroNm);

function expectEven(values: readonly number[], sdPct: number): void {
	expect(Math.abs(meanOf(values)) / sdPct).toBeLessThan(meanTolerance);
	expect(Math.abs(sdOf(values) / sdPct - 1)).toBeLessThan(sdTolerance);
	// Evenly spread, none lies farther off than √3 standard deviations.
	expect(Math.max(...values.map(Math.abs))).toBeLessThanOrEqual(Math.sqrt(3) * sdPct + 1e-9);
}

describe('setting up', () => {
	const spec = scattering(0.3, 0.15);

	it('moves the side force by its own standard deviation, another way each time', () => {
		const arms = drawn(spec, many, (arm) => placeGauge(arm, radiusMm));
		expectEven(toldPct(arms, 'settingUpMicroNm'), 0.3);
		expectEven(toldPct(arms, 'scatterMicroNm'), 0.15);
	});

	it('has nothing to do with how a limit scatters', () => {
		const arms = drawn(spec, many, (arm) => placeGauge(arm, radiusMm));
		const [settings, scatters] = [toldPct(arms, 'settingUpMicroNm'), toldPct(arms, 'scatterMicroNm')];
		const products = settings.map((setting, index) => (setting / 0.3) * ((scatters[index] ?? 0) / 0.15));
		// A correlation of independent values scatters by 1/√n.
		expect(Math.abs(meanOf(products))).toBeLessThan(meanTolerance);
	});

	it('is what it was while limits are looked for', () => {
		const [first, ...others] = drawn(spec, 20, lookedFor);
		expect(new Set(others.map(({settingUpMicroNm}) => settingUpMicroNm))).toEqual(new Set([first?.settingUpMicroNm]));
	});
});

describe('the place of a limit', () => {
	it('scatters from one search to the next by its own standard deviation', () => {
		expectEven(toldPct(drawn(scattering(0.3, 0.5), many, lookedFor), 'scatterMicroNm'), 0.5);
	});

	it.each([
		['outer', 1],
		['inner', -1],
	])(
		'lies where both have moved it: just inside its %s limit the arm holds, just outside it leaves',
		(_limit, side) => {
			for (const arm of drawn(scattering(0.3, 0.5), 100, (before) => placeGauge(before, radiusMm))) {
				const limitPct = (arm.settingUpMicroNm + arm.scatterMicroNm) / pctMicroNm + side * frictionPct;
				const perPct = 1 / arm.spec.gauge.restoringPctPerMm / arm.spec.geometry.effectiveLengthMm;
				const at = (pct: number): PracticeArm => ({...arm, swingRad: arm.swingRad + pct * perPct});
				expect(isMoving(at(limitPct - side * 0.01))).toBe(false);
				expect(isMoving(at(limitPct + side * 0.01))).toBe(true);
			}
		},
	);

	it('does not move where neither is there', () => {
		for (const arm of drawn(scattering(0, 0), 20, (before) => placeGauge(before, radiusMm))) {
			expect(Math.abs(arm.settingUpMicroNm)).toBe(0);
			expect(Math.abs(arm.scatterMicroNm)).toBe(0);
		}
	});
});

describe('rounds by hand', () => {
	const rounds = 120;
	/** Centre and width of so many rounds, the gauge set anew before each of them or never. */
	function roundsWith(spec: ArmSpec, isSetAnew: boolean) {
		const hand: Hand = {arm: newPracticeArm(spec, 1), habit: carefulHabit(0.1), chance: chanceFrom(2)};
		standAt(hand, radiusMm);
		return Array.from({length: rounds}, () => {
			if (isSetAnew) standAt(hand, radiusMm);
			const {inner, outer} = roundBy(hand);
			return {centrePct: (inner + outer) / 2, widthPct: outer - inner};
		});
	}
	const sdsOf = (found: ReturnType<typeof roundsWith>) => [
		sdOf(found.map(({centrePct}) => centrePct)),
		sdOf(found.map(({widthPct}) => widthPct)),
	];
	// Five standard deviations of a standard deviation, 1/√(2n) of it; and the grain of nudge and step, 0.1 % each, spread
	// evenly: 0.1/√12 twice over a limit.
	const tolerance = 5 / Math.sqrt(2 * rounds);
	const grainPct = 0.1 / Math.sqrt(6);

	function expectSd(found: number | undefined, limitSdPct: number, share: number): void {
		const least = limitSdPct * (1 - tolerance);
		const most = Math.hypot(limitSdPct, share * grainPct) * (1 + tolerance);
		expect(found).toBeGreaterThan(least);
		expect(found).toBeLessThan(most);
	}

	it('scatter by 1/√2 of one limit in their centre, and by √2 of it in their width', () => {
		const [centre, width] = sdsOf(roundsWith(scattering(0, 0.5), false));
		expectSd(centre, 0.5 / Math.SQRT2, 1 / Math.SQRT2);
		expectSd(width, 0.5 * Math.SQRT2, Math.SQRT2);
	});

	it('that are set anew scatter in their centre by what setting up makes of it, and not in their width', () => {
		const [centre, width] = sdsOf(roundsWith(scattering(0.5, 0), true));
		expectSd(centre, 0.5, 1 / Math.SQRT2);
		expect(width).toBeLessThan(Math.SQRT2 * grainPct * (1 + tolerance));
	});

	it('that are not set anew do not show what setting up has made of the pull', () => {
		const [centre] = sdsOf(roundsWith(scattering(0.5, 0), false));
		expect(centre).toBeLessThan((grainPct / Math.SQRT2) * (1 + tolerance));
	});
});
