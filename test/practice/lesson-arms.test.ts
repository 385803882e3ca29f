import {describe, expect, it} from 'vitest';
import limits from '../../shared/limits.json' with {type: 'json'};
import {lessonArms} from '../../source/practice/arms.js';
import {levelShownDeg, leverClockShown, scaleShownMn} from '../../source/practice/bench.js';
import {probed} from '../../source/practice/operator.js';
import {radiiMm} from '../../source/practice/proof.js';
import {soundArm} from '../../source/practice/sound-arm.js';
import {truthOf} from '../../source/practice/truth.js';
import {compute} from '../../source/results/compute.js';
import {parseDocument} from '../../source/results/document.js';
import {words} from '../helpers/said.js';

describe.each(lessonArms.map((arm) => [arm.id, arm] as const))('the practice arm %s', (id, arm) => {
	const document = probed({...arm, radiiMm, rounds: 3, setAnew: true}, 1);

	it('is read into a document that the program takes', () => {
		expect(parseDocument(document)).toEqual({ok: true, document});
	});

	it('has its lesson named by what was read at half a percent', () => {
		expect(compute(document).findings.map(({code}) => code)).toContain(arm.finding);
	});

	it('says in words what it teaches, and what is to be seen', () => {
		const {arms, looks} = words.practice;
		const {wires, bias, damping} = arm.looks;
		for (const said of [arms[id].lesson, looks.wires[wires], looks.bias[bias], looks.damping[damping]])
			expect(said).toMatch(/^[A-Z].*\.$/);
	});
});

describe('the practice arms', () => {
	it('differ in their names and in what is wrong', () => {
		expect(new Set(lessonArms.map(({id}) => id)).size).toBe(lessonArms.length);
		expect(new Set(lessonArms.map(({spec}) => JSON.stringify(spec))).size).toBe(lessonArms.length);
	});
});

describe('the arm that sticks and pulls', () => {
	const arm = lessonArms.find(({id}) => id === 'sticks-and-pulls');

	it('pulls toward the spindle at both radii, by more than a sound arm may, and holds as the sticky one does', () => {
		if (!arm) throw new Error('There is no such arm.');
		const sticky = lessonArms.find(({id}) => id === 'sticky-bearing')?.spec ?? soundArm;
		for (const radiusMm of Object.values(radiiMm)) {
			const {pullPct, bandPct} = truthOf(arm.spec, radiusMm);
			// The usable limit of the pull: shared/limits.json.
			expect(pullPct).toBeLessThan(-limits.pullUsablePct.value);
			expect(bandPct).toBe(truthOf(sticky, radiusMm).bandPct);
		}
	});

	it('is found to pull toward the spindle', () => {
		if (!arm) throw new Error('There is no such arm.');
		const {probe} = compute(probed({...arm, radiiMm, rounds: 3, setAnew: true}, 1));
		expect(probe.map(({pullPct}) => Math.sign(pullPct ?? 0))).toEqual([-1, -1]);
	});
});

describe('the bench', () => {
	const bench = {
		level: {stepDeg: 0.05, errorDeg: 0.1},
		scaleStepMn: 0.1,
		gaugeScalePct: 2,
		clearance: {stylusMm: 5.6, matRemovedMm: 3, guardDepthMm: 1.3},
	};

	it('shows the level with its own error, which turning it round takes out', () => {
		// Reversal: half the difference is the tilt, half the sum the error of the level.
		const spec = {...soundArm, tilt: {leftRightDeg: -0.3, frontBackDeg: 0.02}};
		expect(levelShownDeg(spec, bench, 'leftRightDeg')).toEqual([-0.2, 0.4]);
		expect(levelShownDeg(spec, bench, 'frontBackDeg')).toEqual([0.1, 0.1]);
	});

	it('shows the scale with the guard on it', () => {
		// 18 mN and 0.25 g of 9.80665 mN each (3rd CGPM 1901), in steps of 0.1 mN.
		expect(scaleShownMn(soundArm, bench)).toBe(20.5);
	});

	it('shows the lever on a clock face, to a quarter of an hour', () => {
		const lever = lessonArms.find(({id}) => id === 'lever-badly-set')?.spec ?? soundArm;
		expect([leverClockShown(lever, 136), leverClockShown(lever, 68)]).toEqual(['8:30', '7:15']);
		expect(leverClockShown(soundArm, 68)).toBeUndefined();
	});
});
