import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {compute} from '../../source/results/compute.js';
import {parseDocument} from '../../source/results/document.js';
import {documentOfCheck, partialDocument} from '../../source/results/document-of-check.js';
import {factsWith} from '../helpers/facts.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';
import {example} from './example.js';

const close = (value: number) => expect.closeTo(value, 6);

function documentAt({check}: Dialogue) {
	const found = documentOfCheck(check);
	if (!found.ok) throw new Error(found.missing);
	return found.document;
}
const whole = follow(freshDialogue(), northDeck);

describe('The document of a whole check', () => {
	const document = documentAt(whole);
	const wanted = example();

	it('is the one that would be written by hand', () => {
		const [inner, outer] = wanted.probe;
		const [turned, first, ...others] = inner?.rounds ?? [];
		expect(document).toEqual({
			...wanted,
			gauge: {...wanted.gauge, relativeUncertaintyPct: close(1)},
			trackingForce: {...wanted.trackingForce, relativeUncertaintyPct: close(0.5)},
			// In the order in which they were taken: as used, turned, as used, and the closing one.
			probe: [{...inner, rounds: [first, turned, ...others]}, outer],
			bias: {device: 'weighted-lever'},
		});
	});

	it('gives the printed figures of the worked example', () => {
		const {
			zero,
			closing,
			probe: [inner, outer],
		} = compute(document);
		// Six digits, as they are printed with the worked example.
		const printed = (value: number) => expect.toSatisfy((one: number) => Math.abs(one / value - 1) < 5e-6);
		expect(zero).toEqual({source: 'turned', zero: printed(0.125), zeroUncertainty: printed(0.400745)});
		expect(closing).toEqual({movedPct: printed(-0.375), allowedPct: printed(0.889521), moved: false});
		expect(inner).toMatchObject({
			tiltSharePct: printed(-0.174481),
			pullPct: printed(5.375),
			pullUncertaintyPct: printed(0.391683),
			bandPct: printed(5.875),
			bandUncertaintyPct: printed(0.385349),
			pullVerdict: 'beyond',
			bandVerdict: 'undecided',
		});
		expect(outer).toMatchObject({
			tiltSharePct: printed(-0.179451),
			pullPct: printed(3.375),
			pullUncertaintyPct: printed(0.562731),
			bandPct: printed(4.16667),
			bandUncertaintyPct: printed(0.420795),
			pullVerdict: 'usable',
			bandVerdict: 'usable',
		});
	});

	it('is taken by the strict reader', () => {
		expect(parseDocument(JSON.parse(JSON.stringify(document)))).toMatchObject({ok: true});
	});

	it('holds the closing round among the inner ones, marked', () => {
		const closing = northDeckWith({}, {closing: [['3 out', '8 out']]});
		const rounds = documentAt(follow(freshDialogue(), closing)).probe[0]?.rounds ?? [];
		expect(rounds.map((one) => one.closing)).toEqual([undefined, undefined, undefined, true]);
		expect(rounds.at(-1)).toEqual({innerLimit: 3, outerLimit: 8, closing: true});
	});

	it('tells whether the gauge was set anew between the rounds', () => {
		expect(document.gauge.setAnew).toBe(true);
		expect(documentOfCheck({...whole.check, setAnew: false})).toMatchObject({document: {gauge: {setAnew: false}}});
	});

	it('holds the turned round at the outer radius where the gauge is turned there', () => {
		const script = northDeckWith(
			{'gauge-turns': 'outer'},
			{
				inner: [['3 out', '8 out']],
				outer: [
					['1.5 out', '5.5 out'],
					['-1', '-5'],
					['2 out', '5.5 out'],
				],
			},
		);
		const turnedAt = documentAt(follow(freshDialogue(), script)).probe.map(({rounds}) =>
			rounds.map(({gauge}) => gauge),
		);
		expect(turnedAt).toEqual([Array(4).fill(undefined), [undefined, 'turned', undefined]]);
	});

	it('calls a third radius another place', () => {
		const third = follow(freshDialogue(), northDeckWith({'radius-extra': '98'}));
		expect(documentAt(third).probe[2]).toMatchObject({place: 'other', radiusMm: 98, rounds: {length: 3}});
	});
});

describe('How a gauge shows its readings', () => {
	const notTurned = {'gauge-turns': 'no', 'zero-free-before': '-', 'zero-free-after': '-'};
	const sideForces = (answers: Readonly<Record<string, string>>, rounds: [string, string][]) =>
		documentAt(follow(freshDialogue(), northDeckWith({...notTurned, ...answers}, {inner: rounds, closing: rounds})))
			.probe[0]?.rounds[0];

	it('is turned at entry: plus toward the spindle', () => {
		expect(sideForces({'gauge-sign': 'arm-in'}, [['-3.5', '-9']])).toEqual({innerLimit: 3.5, outerLimit: 9});
	});

	// Force of the hand: outer limit = −(reading that just starts it inward), inner limit = −(reading that starts it outward).
	it('is negated for a gauge that shows the force of the hand', () => {
		expect(sideForces({'gauge-sign': 'hand-out'}, [['+2', '-5']])).toEqual({innerLimit: -2, outerLimit: 5});
		expect(sideForces({'gauge-sign': 'hand-in'}, [['-2', '+5']])).toEqual({innerLimit: -2, outerLimit: 5});
	});

	it.each([
		['mN', '3', '0.1', [['0.7 out', '1.8 out']]],
		['gf', '0.3', '0.01', [['0.07 out', '0.18 out']]],
	] as const)('stays in its own unit: %s', (unit, top, step, [[inner, outer]]) => {
		const answers = {
			'gauge-unit': unit,
			'gauge-top': top,
			'gauge-step': step,
			'gauge-nudge': step,
			...notTurned,
		};
		const rounds = [[inner, outer]] as const;
		const script = northDeckWith(answers, {inner: rounds, outer: rounds, closing: rounds});
		const {gauge, probe} = documentAt(follow(freshDialogue(), script));
		expect(gauge).toMatchObject({unit, topOfScale: Number(top), step: Number(step), nudge: Number(step)});
		expect(probe[0]?.rounds[0]).toEqual({
			innerLimit: Number.parseFloat(inner),
			outerLimit: Number.parseFloat(outer),
		});
	});

	it('keeps its own sign while it is turned', () => {
		// Plus toward the spindle: an arm that pushes out by 4 to 10 reads −4 and −10 as used, +4 and +10 turned.
		const inner: [string, string][] = [
			['-4', '-10'],
			['+3.5', '+9.5'],
			['-4', '-10'],
		];
		const script = northDeckWith({'gauge-sign': 'arm-in'}, {inner, closing: [['-4', '-10']]});
		const {gauge, probe} = documentAt(follow(freshDialogue(), script));
		expect(probe[0]?.rounds[1]).toEqual({innerLimit: -3.5, outerLimit: -9.5, gauge: 'turned'});
		expect(gauge.zero).toBeUndefined();
	});

	it('states its zero, turned with it, where it cannot be turned and was read free', () => {
		const rounds: [string, string][] = [['-4', '-10']];
		const zeroOf = (before: string, after: string) => {
			const zero = {...notTurned, 'gauge-sign': 'arm-in', 'zero-free-before': before, 'zero-free-after': after};
			const script = northDeckWith(zero, {inner: rounds, outer: rounds, closing: rounds});
			return documentAt(follow(freshDialogue(), script)).gauge;
		};
		// Steps of 0.5: one reading has δ/√12, the mean of two that over √2 (JCGM 100:2008 F.2.2.1); half of what lies
		// between the two may be drift, a rectangular bound (4.3.7).
		expect(zeroOf('+0.5', '+0.5')).toMatchObject({zero: close(-0.5), zeroUncertainty: close(0.5 / Math.sqrt(24))});
		expect(zeroOf('+0.5', '0')).toMatchObject({
			zero: close(-0.25),
			zeroUncertainty: close(Math.sqrt(0.25 / 24 + 0.25 ** 2 / 3)),
		});
		expect(zeroOf('-', '+0.5')).toMatchObject({zero: close(-0.5), zeroUncertainty: close(0.5 / Math.sqrt(12))});
		expect(zeroOf('-', '-').zero).toBeUndefined();
	});
});

describe('How the guard stands to the weighing', () => {
	const forceOf = (answers: Readonly<Record<string, string>>) =>
		documentAt(follow(freshDialogue(), northDeckWith(answers))).trackingForce;

	it('none: the reading is what is carried', () => {
		expect(forceOf({'guard-on': 'no-guard'})).toMatchObject({guard: 'none', scaleReadingMn: 21});
	});

	it('left out: its known mass is added', () => {
		const force = forceOf({weighed: 'without', 'guard-account': 'add', 'force-reading': '17 mN', 'force-low': '17 mN'});
		expect(force).toMatchObject({guard: 'left-out', guardMassG: 0.4, scaleReadingMn: 17});
	});

	it('left out and weighed again after all: included', () => {
		expect(forceOf({weighed: 'without', 'guard-account': 'again'})).toMatchObject({guard: 'included'});
	});

	it('weighed again at probe height: that reading counts', () => {
		expect(forceOf({'arm-gravity-centre': 'far', 'force-at-height': '21.5 mN'})).toMatchObject({scaleReadingMn: 21.5});
		expect(forceOf({'arm-gravity-centre': 'far', 'force-at-height': ''})).toMatchObject({scaleReadingMn: 21});
	});
});

describe('A check that is not so far', () => {
	it('says what is missing before the weighing', () => {
		for (const until of ['safe', 'arm-length', 'wires', 'force-reading']) {
			const {check} = follow(freshDialogue(), northDeck, {until});
			expect(documentOfCheck(check)).toEqual({ok: false, missing: 'description'});
		}
	});

	it.each([
		['probe-inner', 'inner'],
		['probe-outer', 'outer'],
	])('says before %s which radius is missing', (until, place) => {
		const {check} = follow(freshDialogue(), northDeck, {until});
		expect(documentOfCheck(check)).toEqual({ok: false, missing: place});
	});

	it('has a document without the level where the level was not read', () => {
		expect(partialDocument(factsWith())).toBeUndefined();
	});
});
