import {describe, expect, it} from 'vitest';
import type {ArmSpec} from '../../source/practice/arm-spec.js';
import {chanceFrom} from '../../source/practice/chance.js';
import {probed, type Task} from '../../source/practice/operator.js';
import {radiiMm} from '../../source/practice/proof.js';
import {randomArm} from '../../source/practice/random-arm.js';
import {ordinaryBench} from '../../source/practice/sound-arm.js';
import {bareArm, pctMicroNm} from './bare-arm.js';

const [pullPct, frictionPct, zeroPct, stepPct] = [3, 2, 0.5, 0.1];

/** An arm with a pull of 3 % outward on a gauge that shows half a percent too much. */
const pulling: ArmSpec = {
	...bareArm,
	friction: {staticMicroNm: frictionPct * pctMicroNm, kineticShare: 0.8},
	wire: {...bareArm.wire, twistMicroNm: pullPct * pctMicroNm},
	gauge: {...bareArm.gauge, stepPct, zeroPct},
};

const read = (change: Partial<Task> = {}, seed = 1) =>
	probed({spec: pulling, bench: ordinaryBench, radiiMm, rounds: 3, setAnew: true, readsBias: false, ...change}, seed);

const roundsAt = (document: ReturnType<typeof read>, place: string) =>
	document.probe.find((one) => one.place === place)?.rounds ?? [];

const centreOf = ({innerLimit, outerLimit}: {readonly innerLimit: number; readonly outerLimit: number}): number =>
	(innerLimit + outerLimit) / 2;

describe('the scripted operator', () => {
	it.each([3, 5])(
		'turns the gauge for the second of %s rounds at the inner radius, and goes back there to close',
		(rounds) => {
			const document = read({rounds});
			const inner = roundsAt(document, 'inner');
			expect(inner.map(({gauge}) => gauge)).toEqual(
				Array.from({length: rounds + 1}, (_, index) => (index === 1 ? 'turned' : undefined)),
			);
			expect(inner.map(({closing}) => closing === true)).toEqual([...Array.from({length: rounds}, () => false), true]);
			const outer = roundsAt(document, 'outer');
			expect(outer.map(({gauge, closing}) => [gauge, closing])).toEqual(outer.map(() => [undefined, undefined]));
			expect(outer).toHaveLength(rounds);
		},
	);

	it('takes one round alone as used, and closes with none', () => {
		const document = read({rounds: 1});
		for (const place of ['inner', 'outer']) {
			const [only, ...more] = roundsAt(document, place);
			expect([only?.gauge, only?.closing, more]).toEqual([undefined, undefined, []]);
		}
	});

	it('reads the turned round in the sign of the gauge, so that half the sum of two centres is its zero', () => {
		const [asUsed, turned] = roundsAt(read(), 'inner');
		if (!asUsed || !turned) throw new Error('There are three rounds.');
		// Limits at 3 ∓ 2 and half a percent too much; turned, the gauge shows their negative and as much too much. A limit is
		// found short by an uneven nudge at most, and read to half a step.
		const most = 1.3 * stepPct + stepPct / 2;
		for (const [found, wanted] of [
			[asUsed.innerLimit, 1.5],
			[asUsed.outerLimit, 5.5],
			[turned.innerLimit, -0.5],
			[turned.outerLimit, -4.5],
		] as const)
			expect(Math.abs(found - wanted)).toBeLessThanOrEqual(most + 1e-9);
		expect(turned.innerLimit).toBeGreaterThanOrEqual(turned.outerLimit);
		expect(Math.abs((centreOf(asUsed) + centreOf(turned)) / 2 - zeroPct)).toBeLessThanOrEqual(most + 1e-9);
	});

	it('sets arm and gauge up anew for each round, or once a radius: then its rounds agree', () => {
		const spec = {...pulling, settingUpPct: 1};
		const apart = (setAnew: boolean) => {
			const centres = roundsAt(read({spec, rounds: 5, setAnew}), 'outer').map(centreOf);
			return Math.max(...centres) - Math.min(...centres);
		};
		// Nudge and step alone leave no more than this between two centres.
		const grainPct = 1.3 * stepPct + stepPct;
		expect(apart(false)).toBeLessThanOrEqual(grainPct);
		expect(apart(true)).toBeGreaterThan(2 * grainPct);
		expect([read({setAnew: true}), read({setAnew: false})].map(({gauge}) => gauge.setAnew)).toEqual([true, false]);
	});

	it('says where the scale of the gauge ends, and states no zero of it: the turned round shows that', () => {
		const {gauge} = read();
		expect(gauge).toMatchObject({topOfScale: 20, step: stepPct});
		expect(gauge.zero).toBeUndefined();
	});

	it('reads the same from the same seed, and otherwise from another', () => {
		const {spec, bench} = randomArm(chanceFrom(3));
		const scattering = {...spec, settingUpPct: 0.3, scatterPct: 0.15};
		const at = (seed: number) => read({spec: scattering, bench}, seed);
		expect(at(9)).toEqual(at(9));
		expect(at(10).probe).not.toEqual(at(9).probe);
	});
});
