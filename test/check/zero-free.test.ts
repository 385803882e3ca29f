import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {compute} from '../../source/results/compute.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, refusalOf, type Script, say, text, yes} from '../helpers/script.js';

/** A gauge that cannot be turned, with what its pointer shows free of the arm; all rounds as used. */
const readFree = (before: string, after: string, sign = 'arm-out'): Script =>
	northDeckWith(
		{'gauge-turns': 'no', 'gauge-sign': sign, 'zero-free-before': before, 'zero-free-after': after},
		{inner: [['3 out', '8.5 out']]},
	);
const at = (until: string, script: Script) => follow(freshDialogue(), script, {until});
const stepOf = (dialogue: Dialogue) => positionOf(dialogue).step?.id;
function documentAt({check}: Dialogue, index = check.series.length - 1) {
	const found = documentOfCheck(check, check.series[index]);
	if (!found.ok) throw new Error(found.missing);
	return found.document;
}
const gaugeAt = (script: Script) => documentAt(at('verdict', script)).gauge;

describe('The pointer of a gauge that cannot be turned', () => {
	it('is read free of the arm before the first round and after the last', () => {
		const script = readFree('+0.5', '0');
		const asked: (string | undefined)[] = [];
		follow(freshDialogue(), script, {until: 'verdict', seen: (dialogue) => asked.push(stepOf(dialogue))});
		const order = [...new Set(asked)];
		expect(order[order.indexOf('probe-inner') - 1]).toBe('zero-free-before');
		expect(order.slice(-3)).toEqual(['probe-closing', 'zero-free-after', 'probe-end']);
	});

	it('is not read where it can be turned', () => {
		const atOuter = {
			inner: [['3 out', '8.5 out']],
			outer: [
				['1.5 out', '5.5 out'],
				['-1', '-5'],
			],
		} as const;
		for (const script of [northDeck, northDeckWith({'gauge-turns': 'outer'}, atOuter)]) {
			const asked = new Set<string | undefined>();
			follow(freshDialogue(), script, {until: 'verdict', seen: (dialogue) => asked.add(stepOf(dialogue))});
			expect([...asked].filter((id) => id?.startsWith('zero-'))).toEqual([]);
		}
	});

	it('gives the zero that is taken off every reading, with its uncertainty', () => {
		// The mean of 0.5 and 0 %. Two readings with a step of 0.5 % (δ/√12 each, JCGM 100:2008 F.2.2.1) and a drift of
		// ± 0.25 % (a/√3, 4.3.7): √(0.5²/24 + 0.25²/3) = √(1/32).
		expect(gaugeAt(readFree('+0.5', '0'))).toMatchObject({
			zero: expect.closeTo(0.25, 12),
			zeroUncertainty: expect.closeTo(Math.sqrt(1 / 32), 12),
		});
		const {probe, zero} = compute(documentAt(at('verdict', readFree('+0.5', '0'))));
		expect(zero).toMatchObject({source: 'stated', zero: expect.closeTo(0.25, 12)});
		// Three middles of 5.75 and the closing one of 5.25, less the zero.
		expect(probe[0]?.pullPct).toBeCloseTo((3 * 5.75 + 5.25) / 4 - 0.25, 12);
	});

	it('may be read only once', () => {
		const once = {zero: expect.closeTo(-0.5, 12), zeroUncertainty: expect.closeTo(0.5 / Math.sqrt(12), 12)};
		expect(gaugeAt(readFree('0.5 minus', '-'))).toMatchObject(once);
		expect(gaugeAt(readFree('-', '-0.5'))).toMatchObject(once);
	});

	it('may not be readable free of the arm at all: then the zero is unchecked', () => {
		const verdict = at('verdict', readFree('-', '-'));
		expect(documentAt(verdict).gauge).not.toHaveProperty('zero');
		expect(compute(documentAt(verdict)).zero).toEqual({source: 'unchecked', zero: null, zeroUncertainty: null});
	});

	it.each([
		['arm-out', 0.5],
		['arm-in', -0.5],
		['hand-out', -0.5],
		['hand-in', 0.5],
	])("counts '+0.5' on a gauge of kind %s as %d, positive as the readings are", (sign, zero) => {
		expect(gaugeAt(readFree('+0.5', '+0.5', sign))).toMatchObject({zero: expect.closeTo(zero, 12)});
	});

	it('shows no direction of an arm, and nothing beyond the end of its scale', () => {
		const before = at('zero-free-before', readFree('0', '0'));
		expect(refusalOf(before, text('0.5 out'))?.id).toBe('gauge-sign-counts');
		expect(refusalOf(before, text('+21'))?.id).toBe('not-believable');
		expect(stepOf(say(before, [text('+20')]))).toBe('probe-inner');
	});

	it('is read anew in a new series, and the earlier one keeps the zero that it had', () => {
		const script = readFree('+0.5', '0');
		const verdict = at('verdict', script);
		const after = say(verdict, [choose('other-way'), choose('try:again')]);
		expect(stepOf(say(after, [yes]))).toBe('zero-free-before');
		const next = follow(after, readFree('+1', '+1'), {until: 'verdict'});
		expect(documentAt(next).gauge.zero).toBeCloseTo(1, 12);
		expect(documentAt(next, 0)).toEqual(documentAt(verdict));
	});

	it('that is corrected keeps the rounds', () => {
		const verdict = at('verdict', readFree('+0.5', '0'));
		const after = say(verdict, [...goTo('probe', 'zero-free-before'), text('+1')]);
		expect(after.check.series).toHaveLength(1);
		expect(documentAt(after).gauge.zero).toBeCloseTo(0.5, 12);
	});
});
