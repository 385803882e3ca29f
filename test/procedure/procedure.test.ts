import {describe, expect, it} from 'vitest';
import {afterStop, procedure, stepById} from '../../source/procedure/index.js';
import {linesOf, readAnswer, unitOf} from '../../source/procedure/read-answer.js';
import {stages, takes} from '../../source/procedure/step.js';
import {answerKinds} from '../../source/procedure/step-ids.js';
import {gaugeUnits, units} from '../../source/units.js';
import {says} from '../../source/words/says.js';
import {askOf, mistakeOf, optionsOf, tickText, titleOf, whyOf} from '../../source/words/step-text.js';
import {factsWith, watched} from '../helpers/facts.js';
import {troubles} from '../helpers/troubles.js';

const each = procedure.map((step) => [step.id, step] as const);
const ids = new Set<string>(procedure.map(({id}) => id));

describe('The procedure', () => {
	it('has an id of its own for each step, lower case with hyphens', () => {
		expect(ids.size).toBe(procedure.length);
		for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
		for (const id of ids) expect(stepById(id)?.id).toBe(id);
	});

	it('goes through its stages in order, each of them once', () => {
		const seen = procedure.map(({stage}) => stage).filter((stage, index, all) => stage !== all[index - 1]);
		expect(seen).toEqual([...stages]);
	});

	it('asks in the order of the hands: what is known first, then arm locked and covered, the stylus bare last', () => {
		const wanted = [
			...['done-since', 'arm-name', 'playing-force', 'arm-bias-device', 'tools-name', 'gauge-mount', 'gauge-top'],
			...['safe', 'guard-on', 'guard-depth', 'mat', 'level-lr-1', 'damping-off', 'bias-off', 'wires'],
			...['force-reading', 'arm-afloat', 'guard-gap', 'lifter-clear', 'first-swing', 'zero-free-before'],
			...['probe-inner', 'probe-outer', 'probe-extra', 'probe-closing', 'zero-free-after', 'probe-end', 'verdict'],
			...['bias-drag', 'bias-set', 'bias-on', 'probe-bias-outer', 'probe-bias-inner', 'bias-result'],
			...['back-lock', 'back-gauge', 'back-mat', 'back-damping', 'back-blocks', 'back-bias', 'back-level'],
			...['back-height', 'back-weight', 'back-guard', 'back-force', 'back-upright', 'back-covers'],
			...['room-temperature', 'next-check'],
		];
		expect(procedure.map(({id}) => id).filter((id) => wanted.includes(id))).toEqual(wanted);
	});

	it('keeps the put-back list and the next date when it is stopped', () => {
		expect(afterStop).toEqual(['back', 'next']);
	});

	it.each(each)('%s says what to do, why, and the usual mistake', (id, step) => {
		for (const values of troubles) {
			const facts = factsWith({'arm-bias-device': 'spring', ...values});
			if (id !== 'verdict' && id !== 'bias-result') expect(askOf(step, facts)).toMatch(/[.?]$/);
			expect(whyOf(step, facts)).toMatch(/^[A-Z].{20,}\.$/);
			expect(mistakeOf(step, facts)).toMatch(/^.{10,}[.?]$/);
		}
		expect(titleOf(step.id)).toMatch(/^[A-Z±].*\S$/);
	});

	it.each(each)('%s asks in few words: three lines of 80 columns, title and question together', (_id, step) => {
		for (const values of troubles) expect(askOf(step, factsWith(values)).length).toBeLessThanOrEqual(200);
		expect(titleOf(step.id).length).toBeLessThanOrEqual(40);
	});

	it.each(each)('%s names the dash where there may be no answer: an empty line takes what is offered', (id, step) => {
		const {input} = step;
		if (!('optional' in input && input.optional)) return;
		const facts = factsWith({'radius-inner': 68, 'radius-outer': 136});
		expect(`${askOf(step, facts)} ${mistakeOf(step, facts)}`).not.toMatch(/empty/i);
		// A second reading of the level is not done without; it may only be missing.
		if (!id.startsWith('level-')) expect(askOf(step, facts)).toMatch(/(?:Type|or) - (?:for|if|to) \p{L}/u);
		const read = readAnswer(step, '-', facts);
		expect(read.kind === 'value' && (read.value === null || read.value === '')).toBe(true);
	});

	it('has a step for each row of the table of ids, in its order, with just the options of the row', () => {
		const rows = Object.entries(answerKinds);
		expect(procedure.map(({id}) => id)).toEqual(rows.map(([id]) => id));
		const offered = procedure.map(({input}) => (input.kind === 'choice' ? input.options : input.kind));
		expect(offered).toEqual(rows.map(([, kind]) => kind));
	});

	it.each(each)('%s offers at least two options, each once', (id, {input}) => {
		if (input.kind !== 'choice') return;
		const options = optionsOf(id, input.options);
		expect(options.length).toBeGreaterThanOrEqual(2);
		expect(new Set(input.options).size).toBe(options.length);
		expect(new Set(options.map(({label}) => label)).size).toBe(options.length);
		for (const {label} of options) expect(label.length).toBeGreaterThan(0);
	});

	it.each(each)('%s has lines to tick that say what to do when the answer is no', (_id, step) => {
		if (!takes(step, 'ticks')) return;
		const lines = linesOf(step.input, factsWith({'arm-bearing': 'unipivot'}));
		expect(lines.length).toBeGreaterThan(1);
		for (const id of lines) {
			expect(id).toMatch(/^[a-z-]+$/);
			expect(tickText(step.id, id)).toMatch(/^[A-Z].{5,69}$/);
			expect(says.problem({id: 'lines-left', values: {list: step.id, lines: [id]}})).toMatch(/^[A-Z].*\.$/);
		}
	});

	it.each(each)('%s believes a range that is not empty, in a unit that there is', (_id, {input}) => {
		if (input.kind !== 'number' && input.kind !== 'signed') return;
		for (const unit of gaugeUnits) {
			const facts = factsWith({'gauge-unit': unit});
			const [low, high] = typeof input.between === 'function' ? input.between(facts) : input.between;
			expect(low).toBeLessThan(high);
			expect(units[unitOf(input, facts)]).toBeDefined();
		}
	});

	it.each(each)('%s touches, looks at and leads to steps that there are', (_id, step) => {
		const named = new Set<string>(step.touches?.filter((one) => one !== 'rounds' && one !== 'trial'));
		for (const values of troubles) {
			const {facts, asked} = watched(values);
			step.when?.(facts);
			step.suggest?.(facts);
			askOf(step, facts);
			mistakeOf(step, facts);
			for (const way of step.verify?.(facts)?.ways ?? []) {
				if (way.do === 'set') named.add(way.step);
				else for (const id of way.steps) named.add(id);
			}
			for (const id of asked) named.add(id);
		}
		expect([...named].filter((id) => !ids.has(id))).toEqual([]);
	});

	it.each(each)('%s touches only what comes after it', (id, step) => {
		const place = (one: string) => procedure.findIndex((other) => other.id === one);
		for (const touched of step.touches ?? [])
			if (touched !== 'rounds' && touched !== 'trial') expect(place(touched), touched).toBeGreaterThan(place(id));
	});

	it.each(each)('%s suggests only what it takes itself', (_id, step) => {
		const known = [
			...troubles,
			...gaugeUnits.map((unit) => ({'gauge-unit': unit, 'gauge-step': unit === 'percent' ? 0.5 : 0.1})),
			...[3, 10, 15, 17.5, 20, 30, 50].map((force) => ({'playing-force': force})),
		];
		for (const values of known) {
			const facts = factsWith(values);
			const suggested = step.suggest?.(facts);
			if (suggested === undefined) continue;
			const read = readAnswer(step, suggested, facts);
			expect(read).toMatchObject({kind: 'value'});
			if (read.kind !== 'value') continue;
			const after = step.verify?.(factsWith({...values, [step.id]: read.value}));
			if (step.id !== 'radius-inner' && step.id !== 'radius-outer') expect(after).toBeUndefined();
		}
	});

	it('has no two steps that the same reader could take for one another', () => {
		expect(new Set(procedure.map(({id, stage}) => `${stage}: ${titleOf(id)}`)).size).toBe(procedure.length);
	});
});
