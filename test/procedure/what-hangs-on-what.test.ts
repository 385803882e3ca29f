import {describe, expect, it} from 'vitest';
import {biasDeviceIds} from '../../source/procedure/bias-devices.js';
import {procedure, stepById} from '../../source/procedure/index.js';
import {remedies} from '../../source/procedure/remedies.js';
import {doubts, stepOfDoubt} from '../../source/procedure/steps-still.js';
import {askOf, mistakeOf} from '../../source/words/step-text.js';
import {factsWith, watched} from '../helpers/facts.js';
import {words} from '../helpers/said.js';

const ids = new Set<string>(procedure.map(({id}) => id));

describe('What an answer that changes does to others', () => {
	const touchesOf = (id: string): readonly string[] => stepById(id)?.touches ?? [];
	const level = ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2'];

	// At the bench: the mat carries the deck’s load, so level and clearance hang on it; every condition of a reading closes its series.
	it.each([
		['mat', [...level, 'guard-gap', 'clearance', 'rounds']],
		...level.map((id) => [id, ['rounds']] as const),
		['damping-off', ['rounds']],
		['bias-off', ['rounds']],
		['wires', ['rounds']],
		['guard-on', ['guard-gap', 'clearance', 'rounds']],
		['weighed', ['guard-gap', 'clearance', 'rounds']],
		['force-reading', ['guard-gap', 'clearance', 'rounds']],
		['guard-gap', ['lifter-clear', 'rounds']],
		['clearance', ['lifter-clear', 'rounds']],
		['room-temperature', []],
		['gauge-mount', ['gauge-sign', 'gauge-turns', 'force-reading', 'arm-afloat', 'guard-gap', 'clearance', 'rounds']],
		['arm-afloat', ['rounds']],
		['gauge-sign', ['rounds']],
		['gauge-turns', ['rounds']],
		['gauge-unit', ['gauge-step', 'gauge-top', 'gauge-nudge', 'rounds']],
		['zero-free-before', []],
		['zero-free-after', []],
		['done-since', []],
	] as const)('%s touches %j', (id, wanted) => {
		expect(touchesOf(id)).toEqual(expect.arrayContaining([...wanted]));
		if (wanted.length < 2) expect(touchesOf(id)).toEqual([...wanted]);
	});

	it.each([
		...level.map((id) => [id, 12 * 60] as const),
		['damping-off', 30],
		['bias-off', 30],
		['wires', 30],
		['guard-on', 30],
		['weighed', 30],
		['force-reading', 12 * 60],
		['force-at-height', 12 * 60],
		['arm-afloat', 12 * 60],
		['guard-gap', 30],
		['clearance', 30],
		['zero-free-before', undefined],
		['gauge-turns', undefined],
		// Asked once everything is done, just before the next date.
		['room-temperature', undefined],
		['mat', undefined],
	] as const)('%s stays true for %s minutes', (id, minutes) => {
		expect(stepById(id)?.staysTrueMinutes).toBe(minutes);
	});

	it('leaves no step that grows stale without a question on return', () => {
		const asked = doubts.filter((one) => !one.offered).flatMap(({items}) => items.flatMap(({steps}) => steps));
		const stale = procedure.filter(({staysTrueMinutes}) => staysTrueMinutes !== undefined).map(({id}) => id);
		expect([...asked].sort()).toEqual([...stale].sort());
	});
});

describe('Remedies and doubts', () => {
	it.each(remedies.map((one) => [one.id, one] as const))('%s asks steps again that there are', (id, {steps, when}) => {
		expect(steps.filter((id) => !ids.has(id))).toEqual([]);
		expect(words.remedies[id].name.length).toBeGreaterThan(5);
		const {facts, asked} = watched();
		when?.(facts);
		expect([...asked].filter((id) => !ids.has(id))).toEqual([]);
	});

	it.each(doubts.map((one) => [one.id, one] as const))(
		'%s names steps that there are, and can be answered with one key',
		(id, {items}) => {
			expect(words.steps[stepOfDoubt(id)].ask).toMatch(/\?$/);
			expect(items.length).toBeLessThanOrEqual(9);
			for (const {steps, id: item} of items) {
				expect(steps.filter((id) => !ids.has(id))).toEqual([]);
				expect(words.inDoubt[item].length).toBeGreaterThan(3);
			}
		},
	);
});

describe('Every bias device', () => {
	const off = stepById('bias-off');
	const back = stepById('back-bias');

	it.each(biasDeviceIds)('%s is put out of action and back in its own words', (id) => {
		const device = words.biasDevices[id];
		const facts = factsWith({'arm-bias-device': id});
		expect(off?.when?.(facts)).toBe(id !== 'none');
		expect(back?.when?.(facts)).toBe(id !== 'none');
		if (id === 'none' || !off || !back) return;
		expect(askOf(off, facts)).toBe(device.off);
		expect(mistakeOf(off, facts)).toBe(device.mistake);
		expect(askOf(back, facts)).toContain(device.restore);
		for (const text of [device.mistake, device.restore]) expect(text).toMatch(/^[A-Z].*\.$/);
		expect(device.off).toMatch(/^[A-Z].*\. [A-Z].*\?$/);
	});

	it.each(['spring', 'magnet'] as const)('%s: zero on the dial is not called off', (id) => {
		// Said of both in the same words, and of no device without a dial.
		const saidSo = biasDeviceIds.filter((one) => words.biasDevices[one].mistake === words.biasDevices[id].mistake);
		expect(saidSo).toEqual(['spring', 'magnet']);
	});
});
