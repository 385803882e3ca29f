import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {compute} from '../../source/findings/compute.js';
import {parseDocument} from '../../source/findings/document.js';
import {documentOfCheck, partialDocument} from '../../source/findings/document-of-check.js';
import {factsWith} from '../helpers/facts.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';
import {example} from './example.js';

const close = (value: number) => expect.closeTo(value, 6);

function documentAt({check}: Dialogue) {
	const found = documentOfCheck(check);
	if (!found.ok) throw new Error(found.sentence);
	return found.document;
}
const whole = follow(freshDialogue(), northDeck);

describe('The document of a whole check', () => {
	const document = documentAt(whole);
	const wanted = example();

	it('is the one that would be written by hand', () => {
		expect(document).toEqual({
			...wanted,
			gauge: {
				...wanted.gauge,
				relativeUncertaintyPct: close(1),
				zero: close(0.25),
				zeroUncertainty: expect.any(Number),
			},
			trackingForce: {...wanted.trackingForce, relativeUncertaintyPct: close(0.5)},
			bias: {device: 'weighted-lever'},
		});
	});

	it('knows the zero of the gauge as well as two rounds can tell it', () => {
		// Half the sum of two round centres, each with a step and a nudge of 0.5 on two readings (δ/√24: JCGM 100:2008
		// F.2.2.1 over two readings) and the pooled spread of the centres 7, 7.25, 6.75 and 5.25, 5, 5.5.
		const spreadSquared = (2 * 0.0625 + 2 * 0.0625) / 4;
		const centre = Math.sqrt(0.25 / 24 + 0.25 / 24 + spreadSquared);
		expect(document.gauge.zeroUncertainty).toEqual(close(centre / Math.SQRT2));
	});

	it('gives the printed figures of the worked example', () => {
		const gauge = {...document.gauge, zeroUncertainty: 0.1};
		const [inner, outer] = compute({...document, gauge}).probe;
		// Six digits, as they are printed in the contract.
		const printed = (value: number) => expect.toSatisfy((one: number) => Math.abs(one / value - 1) < 5e-6);
		expect(inner).toMatchObject({
			tiltSharePct: printed(-0.114869),
			pullPct: printed(6.75),
			pullUncertaintyPct: printed(0.484857),
			bandPct: printed(6.16667),
			bandUncertaintyPct: printed(0.676362),
			pullVerdict: 'beyond',
			bandVerdict: 'undecided',
		});
		expect(outer).toMatchObject({
			tiltSharePct: printed(-0.129562),
			pullPct: printed(5),
			pullUncertaintyPct: printed(0.477505),
			bandPct: printed(4.66667),
			bandUncertaintyPct: printed(0.671911),
			pullVerdict: 'beyond',
			bandVerdict: 'usable',
		});
	});

	it('is taken by the strict reader', () => {
		expect(parseDocument(JSON.parse(JSON.stringify(document)))).toMatchObject({ok: true});
	});

	it('leaves the closing round out', () => {
		const moved = northDeckWith({}, {closing: [['4.5 out', '10 out']]});
		expect(documentAt(follow(freshDialogue(), moved)).probe).toEqual(document.probe);
	});

	it('calls a third radius another place', () => {
		const third = follow(freshDialogue(), northDeckWith({'radius-extra': '100'}));
		expect(documentAt(third).probe[2]).toMatchObject({place: 'other', radiusMm: 100, rounds: {length: 3}});
	});
});

describe('How a gauge shows its readings', () => {
	const sideForces = (answers: Readonly<Record<string, string>>, rounds: [string, string][]) =>
		documentAt(
			follow(freshDialogue(), northDeckWith({'zero-way': 'cannot', ...answers}, {inner: rounds, closing: rounds})),
		).probe[0]?.rounds[0];

	it('is turned at entry: plus toward the spindle', () => {
		expect(sideForces({'gauge-sign': 'arm-in'}, [['-4', '-10']])).toEqual({innerLimit: 4, outerLimit: 10});
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
			'zero-way': 'cannot',
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

	it('turns its zero with it, in the zero check', () => {
		const zero = {
			'zero-first-inner': '-4',
			'zero-first-outer': '-10',
			'zero-turned-inner': '+3.5',
			'zero-turned-outer': '+9.5',
		};
		const inner: [string, string][] = [['-4', '-10']];
		const script = northDeckWith({'gauge-sign': 'arm-in', ...zero}, {inner, outer: inner, closing: inner});
		expect(documentAt(follow(freshDialogue(), script)).gauge.zero).toEqual(close(0.25));
	});
});

describe('How the guard stands to the weighing', () => {
	const forceOf = (answers: Readonly<Record<string, string>>) =>
		documentAt(follow(freshDialogue(), northDeckWith(answers))).trackingForce;

	it('none: the reading is what is carried', () => {
		expect(forceOf({'guard-on': 'no-guard'})).toMatchObject({guard: 'none', scaleReadingMn: 18});
	});

	it('left out: its known mass is added', () => {
		const force = forceOf({weighed: 'without', 'guard-account': 'add', 'force-reading': '14 mN', 'force-low': '14 mN'});
		expect(force).toMatchObject({guard: 'left-out', guardMassG: 0.5, scaleReadingMn: 14});
	});

	it('left out and weighed again after all: included', () => {
		expect(forceOf({weighed: 'without', 'guard-account': 'again'})).toMatchObject({guard: 'included'});
	});

	it('weighed again at probe height: that reading counts', () => {
		expect(forceOf({'arm-gravity-centre': 'far', 'force-at-height': '18.5 mN'})).toMatchObject({scaleReadingMn: 18.5});
		expect(forceOf({'arm-gravity-centre': 'far', 'force-at-height': ''})).toMatchObject({scaleReadingMn: 18});
	});
});

describe('A check that is not so far', () => {
	it('says what is missing before the weighing', () => {
		for (const until of ['safe', 'arm-length', 'wires', 'force-reading']) {
			const {check} = follow(freshDialogue(), northDeck, {until});
			expect(documentOfCheck(check)).toEqual({ok: false, sentence: expect.stringMatching(/described and weighed/)});
		}
	});

	it.each([
		['probe-inner', 'inner'],
		['probe-outer', 'outer'],
	])('says before %s which radius is missing', (until, place) => {
		const {check} = follow(freshDialogue(), northDeck, {until});
		expect(documentOfCheck(check)).toEqual({ok: false, sentence: expect.stringContaining(`at the ${place} radius`)});
	});

	it('has a document without the level where the level was not read', () => {
		expect(partialDocument(factsWith())).toBeUndefined();
	});
});
