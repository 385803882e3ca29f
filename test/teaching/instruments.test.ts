import {describe, expect, it} from 'vitest';
import {positionOf} from '../../source/check/dialogue.js';
import {swingAngleDeg} from '../../source/measures/geometry.js';
import {clockDeg} from '../../source/measures/lever.js';
import {lessonArms} from '../../source/practice/arms.js';
import {turnedAngleDeg} from '../../source/practice/bias-torque.js';
import {gaugeLoadMn} from '../../source/practice/torques.js';
import {clearanceProblem, clearanceState} from '../../source/procedure/clearance.js';
import type {Facts} from '../../source/procedure/facts.js';
import {stepById} from '../../source/procedure/index.js';
import {levelState} from '../../source/procedure/level.js';
import {readAnswer} from '../../source/procedure/read-answer.js';
import {type StepId, stepIdsOf} from '../../source/procedure/step-ids.js';
import {carriedMn} from '../../source/procedure/weighing.js';
import {benchNow} from '../../source/teaching/bench-state.js';
import {lessonOf, specOn} from '../../source/teaching/deck.js';
import {handsOn} from '../../source/teaching/hands.js';
import {instruments} from '../../source/teaching/instruments.js';
import {knownOfArm} from '../../source/teaching/prepared.js';
import {answered, begun, goneOn, type Habits} from '../helpers/practised.js';
import {words} from '../helpers/said.js';
import {choose, text, waysOut} from '../helpers/script.js';

const everyArm = lessonArms.map(({id}) => id);

/** The facts of a check up to its probe, answered by what the instruments show. */
function answeredBench(arm: string, habits: Habits = {}) {
	const {bench, dialogue} = goneOn(begun({arm, seed: 1, isPrepared: false}), habits, 'probe-inner');
	const {facts} = positionOf(dialogue).progress;
	return benchNow(bench.state, facts);
}

/** A step by its id. */
function stepOf(id: string) {
	const step = stepById(id);
	if (!step) throw new Error(`There is no step ${id}.`);
	return step;
}

describe.each(everyArm)('answering what is shown at %s', (arm) => {
	it.each([
		['as it came', []],
		['levelled', ['levelled']],
	] as const)('gives its tilt and the error of its level back, %s', (_how, deeds) => {
		const {facts, spec, lesson} = answeredBench(arm, {deeds});
		const level = levelState(facts);
		// A reading is off by half a step at most, half the sum or difference of two no more than that.
		const most = lesson.bench.level.stepDeg / 2 + 1e-9;
		expect(level?.pairs).toBe(true);
		for (const axis of ['leftRight', 'frontBack'] as const) {
			expect(Math.abs((level?.[axis].tiltDeg ?? 9) - spec.tilt[`${axis}Deg`])).toBeLessThanOrEqual(most);
			expect(Math.abs((level?.[axis].zeroErrorDeg ?? 9) - lesson.bench.level.errorDeg)).toBeLessThanOrEqual(most);
		}
	});

	// Half a step of the scale, and half of the last digit of a gram in which it shows: 0.005 g, or 0.05 mN.
	const mostOffMn = lessonOf({arm}).bench.scaleStepMn / 2 + 0.05;

	it('gives the force that the gauge carries back, weighed with the guard', () => {
		const {facts, spec} = answeredBench(arm);
		expect(facts.is('weighed', 'with')).toBe(true);
		expect(Math.abs((carriedMn(facts) ?? 0) - gaugeLoadMn(spec))).toBeLessThan(mostOffMn);
	});

	it('gives it back too where the guard was left out and is added', () => {
		const atScale = goneOn(begun({arm, seed: 1, isPrepared: false}), {deeds: ['levelled']}, 'force-reading');
		const {spec} = lessonOf({arm});
		// The guard weighs 9.80665 mN a gram (3rd CGPM 1901).
		const withoutMn = (gaugeLoadMn(spec) - spec.guardMassG * 9.80665).toFixed(2);
		const said = [text(`${withoutMn} mN`), waysOut, choose('way-1'), choose('add')].reduce(answered, atScale);
		const {facts} = positionOf(goneOn(said, {}, 'guard-gap').dialogue).progress;
		expect(facts.is('weighed', 'without')).toBe(true);
		expect(Math.abs((carriedMn(facts) ?? 0) - gaugeLoadMn(spec))).toBeLessThan(mostOffMn);
	});

	it.each(['off', 'on'] as const)('passes the clearance, stylus and guard, with the mat %s', (mat) => {
		const {facts} = answeredBench(arm, {answers: {mat}});
		expect(facts.is('mat', mat)).toBe(true);
		expect(clearanceState(facts).stylusMm).toBeGreaterThan(0);
		expect(clearanceProblem(facts)).toBeUndefined();
	});
});

/** Facts in which the bias is read at three radii, as far as an instrument asks for them. */
const withRadii: Facts = {
	...answeredBench('well-behaved').facts,
	number: (id) =>
		new Map<string, number>([
			['radius-outer', 136],
			['bias-radius-middle', 98],
			['radius-inner', 68],
		]).get(id),
};
const placed = [
	['outer', 136],
	['middle', 98],
	['inner', 68],
] as const;

/** What a step reads of an instrument. */
function readOf(id: StepId, arm: string) {
	const lesson = lessonOf({arm});
	const text = instruments[id]?.answer?.({lesson, spec: lesson.spec, done: [], facts: withRadii});
	return text === undefined ? undefined : readAnswer(stepOf(id), text, withRadii);
}

/** Where lever or thread stands in truth. */
function hiddenDeg(arm: string, radiusMm: number): number {
	const {spec} = lessonOf({arm});
	const device = spec.bias?.device;
	if (!device || !('angle' in device)) throw new Error(`${arm} has nothing that turns.`);
	return turnedAngleDeg(device.angle, swingAngleDeg(spec.geometry, radiusMm));
}

describe('the lever that is badly set', () => {
	it.each([
		['outer', '8:30'],
		['inner', '7:15'],
	] as const)('points, at the %s radius, at %s', (radius, clock) => {
		expect(readOf(`bias-clock-${radius}`, 'lever-badly-set')).toMatchObject({kind: 'value', value: clock});
	});
});

describe('what turns with the arm', () => {
	it.each(placed)(
		'is, at the %s radius, a time of the clock face to a quarter of an hour for a lever',
		(radius, mm) => {
			const read = readOf(`bias-clock-${radius}`, 'lever-badly-set');
			const clock = read?.kind === 'value' ? String(read.value) : '';
			// A quarter of an hour is 7.5°.
			expect(Math.abs((clockDeg(clock) ?? 999) - hiddenDeg('lever-badly-set', mm))).toBeLessThanOrEqual(7.5 / 2);
		},
	);

	it.each(placed)('is, at the %s radius, an angle to five degrees for a thread', (radius, mm) => {
		const read = readOf(`bias-angle-${radius}`, 'bias-left-on');
		const deg = read?.kind === 'value' ? Number(read.value) : 999;
		expect(Math.abs(deg - hiddenDeg('bias-left-on', mm))).toBeLessThanOrEqual(2.5);
	});

	it('is not there to be read on an arm without it', () => {
		expect(readOf('bias-clock-inner', 'bias-left-on')).toBeUndefined();
		expect(readOf('bias-angle-inner', 'lever-badly-set')).toBeUndefined();
		expect(readOf('bias-weight', 'well-behaved')).toBeUndefined();
	});
});

describe.each(stepIdsOf(instruments))('the instrument at %s', (id) => {
	it.each(everyArm)('shows in a sentence what its step takes as an answer, on %s', (arm) => {
		const lesson = lessonOf({arm});
		for (const done of [[], ['levelled', 'damping-out', 'bias-off', 'leads-dressed'], ['bias-on']]) {
			const bench = {lesson, spec: specOn(lesson, {done}), done, facts: withRadii};
			const seen = instruments[id]?.see(bench);
			const text = instruments[id]?.answer?.(bench);
			if (seen !== undefined) expect(seen).toMatch(/^[A-Z].*\.$/);
			if (text === undefined) continue;
			expect(readAnswer(stepOf(id), text, withRadii).kind).toBe('value');
			// What is no choice is read off the sentence.
			if (stepOf(id).input.kind !== 'choice') expect(seen).toContain(text.split(' ')[0]);
		}
	});
});

describe('looking at the deck', () => {
	const seen = (arm: string, id: StepId, ...done: readonly string[]) => {
		const lesson = lessonOf({arm});
		return instruments[id]?.see({lesson, spec: specOn(lesson, {done: [...done]}), done, facts: withRadii});
	};

	it('shows what is wrong, and once it was put right, that it is', () => {
		const {bias, damping, wires} = words.practice.looks;
		expect(seen('bias-left-on', 'bias-off')).toBe(bias['weight-on-thread']);
		expect(seen('bias-left-on', 'bias-off', 'bias-off')).toBe(bias.off);
		expect(seen('paddle-left-in', 'damping-off')).toBe(damping.in);
		expect(seen('paddle-left-in', 'damping-off', 'damping-out')).toBe(damping.out);
		expect(seen('stiff-wire', 'wires')).toBe(wires['stiff-bow']);
		expect(seen('stiff-wire', 'wires', 'leads-dressed')).toBe(wires.dressed);
		expect(seen('lever-badly-set', 'bias-on')).toBe(bias['lever-unweighted']);
		expect(seen('lever-badly-set', 'bias-on', 'bias-on')).toBe(bias.on);
	});
});

describe('every step that is named beside the procedure is one of it:', () => {
	it.each([
		['instruments', Object.keys(instruments)],
		['hands', handsOn.flatMap(({at}) => at)],
		['what is known of an arm', lessonArms.flatMap((arm) => Object.keys(knownOfArm(arm, 'x')))],
	])('%s', (_where, ids) => {
		expect([...new Set(ids)].filter((id) => stepById(id) === undefined)).toEqual([]);
	});

	it.each(lessonArms.map((arm) => [arm.id, arm] as const))('what is known of %s is taken by its steps', (_id, arm) => {
		for (const [id, text] of Object.entries(knownOfArm(arm, 'an invented name')))
			expect(readAnswer(stepOf(id), text, withRadii), id).toMatchObject({kind: 'value'});
	});
});
