import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {progressOf} from '../../source/check/progress.js';
import {openSeries} from '../../source/check/series.js';
import type {Document} from '../../source/results/document.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, say, text, yes} from '../helpers/script.js';

/** A whole series taken, standing at the verdict. */
const atVerdict = follow(freshDialogue(), northDeck, {until: 'verdict'});
const done = ({check}: Dialogue) => Object.keys(check.answers).filter((id) => id.startsWith('probe-'));

function documentOf({check}: Dialogue, index = check.series.length - 1): Document {
	const found = documentOfCheck(check, check.series[index]);
	if (!found.ok) throw new Error(found.missing);
	return found.document;
}

/** Steps that wait to be confirmed again, in order. */
const again = ({check}: Dialogue) => {
	const progress = progressOf(check);
	return progress.visible.filter((step) => progress.stateOf(step) === 'again').map(({id}) => id);
};

describe('A changed answer', () => {
	// Readings of the same stage are named by their step; what is typed differs from the script.
	it.each([
		['level', 'level-lr-1', '0.2 right', []],
		['level', 'level-fb-2', '0.15 front', []],
		['force', 'force-reading', '21.5 mN', ['guard-gap']],
		['clearance', 'guard-gap', '4.2', ['lifter-clear']],
		['mat', 'mat-thickness', '3.1', ['guard-gap']],
		['arm', 'radius-inner', '70', []],
		['arm', 'radius-outer', '135', []],
		['tools', 'gauge-sign', 'arm-in', []],
		['tools', 'gauge-turns', 'outer', []],
		['tools', 'gauge-turns', 'no', []],
	] as const)('in stage %s, to %s, closes the series and marks only what hangs on it', (stage, step, typed, marked) => {
		const entry = step === 'gauge-sign' || step === 'gauge-turns' ? choose(typed) : text(typed);
		const after = say(atVerdict, [...goTo(stage, step), entry]);
		expect(after.check.series).toHaveLength(2);
		expect(after.check.series[0]?.closed?.because.id).toBe('answer-changed');
		expect(done(after)).toEqual([]);
		expect(again(after)).toEqual(marked);
	});

	it.each([
		['next', 'room-note', 'a note'],
		['arm', 'cartridge-compliance', '13'],
		['arm', 'arm-name', 'north deck 2'],
	] as const)('in stage %s, to %s, keeps the series and its rounds', (stage, step, typed) => {
		const after = say(atVerdict, [...goTo(stage, step), text(typed)]);
		expect(after.check.series).toHaveLength(1);
		expect(done(after)).toEqual(done(atVerdict));
		expect(done(after)).not.toEqual([]);
		expect(again(after)).toEqual([]);
		expect(positionOf(after).step?.id).toBe('verdict');
	});

	it('to the room temperature, asked last, keeps the series, its rounds and the verdict', () => {
		const atEnd = follow(atVerdict, northDeck, {until: 'next-check'});
		const after = say(atEnd, [...goTo('next', 'room-temperature'), text('25')]);
		expect(after.check.series).toEqual(atEnd.check.series);
		expect(done(after)).toEqual(done(atVerdict));
		expect(again(after)).toEqual([]);
		expect(positionOf(after).step?.id).toBe('next-check');
	});

	it('of the mat asks level and height again as well', () => {
		const after = say(atVerdict, [...goTo('mat', 'mat'), choose('on')]);
		expect(again(after)).toEqual(['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2', 'guard-gap']);
	});

	it('of a wire closes the series with its first tick', () => {
		const after = say(atVerdict, [...goTo('wires', 'wires'), {kind: 'no'}]);
		expect(after.check.series).toHaveLength(2);
		expect(positionOf(after).step?.id).toBe('wires');
	});

	it('that is the same as before changes nothing but the time of its confirmation', () => {
		const after = say(atVerdict, [...goTo('force', 'force-reading'), text('21 mN')]);
		expect(after.check.series).toEqual(atVerdict.check.series);
		expect(again(after)).toEqual([]);
	});

	it('before any round was taken closes nothing', () => {
		const before = follow(freshDialogue(), northDeck, {until: 'probe-inner'});
		const after = say(before, [...goTo('level', 'level-lr-1'), text('0.2 right')]);
		expect(after.check.series).toHaveLength(1);
	});
});

describe('A closed series', () => {
	const changedThings = [
		['level', 'level-lr-1', text('0.2 right')],
		['force', 'force-reading', text('21.5 mN')],
		['clearance', 'guard-gap', text('4.2')],
		['mat', 'mat', choose('on')],
		['mat', 'mat-thickness', text('3.1')],
		['arm', 'radius-inner', text('70')],
		['tools', 'gauge-sign', choose('arm-in')],
		['tools', 'gauge-unit', choose('mN')],
		['tools', 'gauge-turns', choose('outer')],
		['tools', 'gauge-turns', choose('no')],
		['safe', 'guard-on', choose('no-guard')],
	] as const;

	it.each(changedThings)('keeps the document that was measured: stage %s, %s', (stage, step, entry) => {
		const after = say(atVerdict, [...goTo(stage, step), entry]);
		expect(documentOf(after, 0)).toEqual(documentOf(atVerdict));
	});

	it('keeps it through all that is asked after it, in another unit', () => {
		const changed = say(atVerdict, [...goTo('tools', 'gauge-unit'), choose('mN')]);
		const round = ['0.7 out', '1.8 out'] as const;
		const script = northDeckWith(
			{'gauge-unit': 'mN', 'gauge-step': '0.1', 'gauge-top': '4', 'gauge-nudge': '0.1'},
			{inner: [round, ['-0.6', '-1.7'], round], outer: [round], closing: [round]},
		);
		const after = follow(changed, script, {until: 'verdict'});
		expect(documentOf(after).gauge).toMatchObject({unit: 'mN', step: 0.1, topOfScale: 4});
		expect(documentOf(after, 0)).toEqual(documentOf(atVerdict));
	});

	it('keeps it over several series, each its own', () => {
		const levelled = (reading: string) => northDeckWith({'level-lr-1': reading, 'level-lr-2': '0 right'});
		const documents = [documentOf(atVerdict)];
		let here = atVerdict;
		for (const reading of ['0.2 right', '0.12 right', '0.04 right']) {
			here = follow(say(here, [choose('other-way'), choose('try:level')]), levelled(reading), {until: 'verdict'});
			documents.push(documentOf(here));
		}
		expect(here.check.series).toHaveLength(4);
		expect(documents.map((_, index) => documentOf(here, index))).toEqual(documents);
		expect(documents.map(({level}) => level?.leftRightDeg[0])).toEqual([0.15, 0.2, 0.12, 0.04]);
	});

	it('says why it was closed', () => {
		const after = say(atVerdict, [choose('other-way'), choose('try:leads')]);
		expect(after.check.series[0]?.closed?.because).toMatchObject({id: 'remedy'});
	});
});

describe('A remedy', () => {
	it('asks its step again, then opens the probe anew', () => {
		const after = say(atVerdict, [choose('other-way'), choose('try:leads')]);
		expect(positionOf(after).step?.id).toBe('wires');
		const next = follow(after, northDeck, {until: 'probe-inner'});
		expect(positionOf(next)).toMatchObject({slot: {place: 'inner', index: 0, which: 'innerLimit'}});
	});

	it('that touches nothing goes straight to the probe, with its first swing', () => {
		const after = say(atVerdict, [choose('other-way'), choose('try:again')]);
		expect(positionOf(after).step?.id).toBe('first-swing');
		expect(positionOf(say(after, [yes])).step?.id).toBe('probe-inner');
		expect(after.check.series).toHaveLength(2);
	});

	it('puts a new verdict at the end, with figures of the new series only', () => {
		const better = northDeckWith(
			{},
			{
				inner: [
					['1 in', '1 out'],
					['+1', '-1'],
					['1 in', '1 out'],
				],
				outer: [['1 in', '1 out']],
				closing: [['1 in', '1 out']],
			},
		);
		const after = follow(say(atVerdict, [choose('other-way'), choose('try:again')]), better, {until: 'verdict'});
		expect(documentOf(after).probe[0]?.rounds).toEqual([
			{innerLimit: -1, outerLimit: 1},
			{innerLimit: 1, outerLimit: -1, gauge: 'turned'},
			{innerLimit: -1, outerLimit: 1},
			{innerLimit: -1, outerLimit: 1, closing: true},
		]);
		expect(openSeries(after.check).closed).toBeUndefined();
	});
});

describe('A closing round that is off', () => {
	// Middles 5.75 and 5.5 at the inner radius, 3.5, 3.25, 3.75 at the outer one: on 1 + 2 degrees of freedom the pooled
	// spread is √((0.125² × 2 + 0.25² × 2) / 3) = 0.228 %, and Student's t for 3 is 3.182, so 3.182 × 0.228 × √(1 + 1/2) =
	// 0.89 % is no change. This one is 8.25 − 5.625 = 2.6 % off.
	const moved = northDeckWith({}, {closing: [['5.5 out', '11 out']]});

	it('says that something moved, and offers a new series', () => {
		const here = follow(freshDialogue(), moved, {until: 'probe-closing'});
		const stuck = say(here, [text('5.5 out'), text('11 out'), choose('go-on')]);
		expect(positionOf(stuck)).toMatchObject({stuck: true, step: {id: 'probe-closing'}});
		const after = say(stuck, [choose('way-0')]);
		expect(after.check.series).toHaveLength(2);
		expect(positionOf(after).step?.id).toBe('wires');
	});

	it('can be gone past with a reason', () => {
		const here = follow(freshDialogue(), moved, {until: 'probe-closing'});
		const stuck = say(here, [
			text('5.5 out'),
			text('11 out'),
			choose('go-on'),
			choose('override'),
			choose('time-short'),
		]);
		expect(positionOf(stuck).step?.id).toBe('probe-end');
		expect(positionOf(say(stuck, [yes])).step?.id).toBe('verdict');
	});
});
