import {describe, expect, it} from 'vitest';
import {issuedOf} from '../../source/pages/issued.js';
import {standingReadings, truthLines} from '../../source/teaching/truth-lines.js';
import {type AtPractice, answered, begun, checkOf, goneOn, wordsOf} from '../helpers/practised.js';
import {words} from '../helpers/said.js';
import {choose, text, yes} from '../helpers/script.js';

const said = words.practice.truth;

const toProbe = (arm = 'well-behaved', seed = 1) => begun({arm, seed, isPrepared: true});
const standing = (here: AtPractice) => standingReadings(checkOf(here));
const truth = (here: AtPractice) => wordsOf(truthLines(checkOf(here), issuedOf(checkOf(here))));
const pct = (here: AtPractice) => standing(here).map(({readingPct}) => readingPct);
const takenBack = (here: AtPractice) => [{kind: 'steps'} as const, choose('take-back')].reduce(answered, here);

describe('a reading that was taken back', () => {
	it('leaves its note, but does not stand', () => {
		const wrong = answered(toProbe(), text('-7'));
		expect(pct(wrong)).toEqual([-7]);
		const back = takenBack(wrong);
		expect(back.bench.notes.readings).toHaveLength(1);
		expect(standing(back)).toEqual([]);
		const right = answered(back, text('-0.5'));
		expect(right.bench.notes.readings.map(({readingPct}) => readingPct)).toEqual([-7, -0.5]);
		expect(pct(right)).toEqual([-0.5]);
	});

	it('and is not taken anew stands no more, also where others do', () => {
		const round = [text('-0.5'), text('+1'), text('-7')].reduce(answered, toProbe());
		expect(pct(takenBack(round))).toEqual([-0.5, 1]);
	});

	it('and typed over by going back stands as it is now', () => {
		const over = [text('-7'), {kind: 'back'} as const, text('-0.5')].reduce(answered, toProbe());
		expect(pct(over)).toEqual([-0.5]);
	});
});

it('a round that was struck out stands no more', () => {
	// The second round is taken with the gauge turned.
	const rounds = ['-7', '+1', '+1', '-0.5', '-0.5', '+1'].map(text).reduce(answered, toProbe());
	const struck = [choose('strike'), choose('inner:0'), choose('misread')].reduce(answered, rounds);
	expect(pct(struck)).toEqual([1, -0.5, -0.5, 1]);
});

it('the readings with the gauge turned stand among the others, in the sign of the gauge', () => {
	const probed = goneOn(toProbe('bias-left-on'), {}, 'probe-outer');
	expect(standing(probed).map(({index, isTurned}) => [index, isTurned])).toEqual([
		[0, false],
		[0, false],
		[1, true],
		[1, true],
		[2, false],
		[2, false],
	]);
	// The bias that was left on pushes outward by 5.5 %: turned, the gauge shows that with the other sign.
	for (const {readingPct, isTurned} of standing(probed)) expect(Math.sign(readingPct)).toBe(isTurned ? -1 : 1);
});

describe('a series that was begun after a remedy and not measured', () => {
	const seen = goneOn(toProbe('tilted-deck'), {}, 'verdict');
	const before = truth(seen);
	const relevel = [choose('other-way'), choose('try:level')].reduce(answered, seen);
	const levelled = goneOn(relevel, {deeds: ['levelled']}, 'probe-inner');

	it('takes nothing from the readings of the one before, nor from the deck that it found', () => {
		const oneMore = answered(levelled, text('-0.5'));
		const stopped = [{kind: 'stop'} as const, yes].reduce(answered, oneMore);
		expect(standing(stopped).every(({deck}) => deck.done.length === 0)).toBe(true);
		expect(standing(stopped)).toHaveLength(14);
		expect(truth(stopped)).toBe(before);
	});

	it('takes nothing from them either where its own rounds were struck out', () => {
		const rounds = goneOn(levelled, {}, 'verdict');
		const struck = ['outer:0', 'outer:1'].reduce(
			(here, round) =>
				[{kind: 'steps'} as const, choose('strike'), choose(round), choose('misread')].reduce(answered, here),
			rounds,
		);
		const stopped = [{kind: 'stop'} as const, yes].reduce(answered, struck);
		expect(truth(stopped)).toBe(before);
	});

	it('gives way to one that was measured, on the deck as it was by then', () => {
		const after = goneOn(answered(goneOn(levelled, {}, 'verdict'), choose('judge')), {}, 'verdict');
		expect(standing(after).every(({deck}) => deck.done.includes('levelled'))).toBe(true);
		expect(truth(after)).toContain(said.cured);
		expect(before).toContain(said.named({likely: '', found: ''}));
	});
});

describe('of several settings of the bias device', () => {
	const seen = answered(goneOn(toProbe('lever-badly-set'), {}, 'verdict'), choose('bias'));
	const first = goneOn(seen, {deeds: ['bias-on']}, 'bias-result');
	const second = goneOn(answered(first, choose('adjust')), {deeds: ['pulley-moved']}, 'bias-result');
	const onDecks = (here: AtPractice) =>
		standing(here)
			.filter(({step}) => step.startsWith('probe-bias-'))
			.map(({deck}) => deck.done.join(' and '));

	it('the readings of the one that was read last stand', () => {
		expect(new Set(onDecks(second))).toEqual(new Set(['bias-on and pulley-moved']));
		expect(truth(second)).toContain(said.cured);
	});

	it('the readings of an earlier one stand where that was gone back to, with what it had hidden', () => {
		const back = answered(second, choose('back-to:1'));
		expect(new Set(onDecks(back))).toEqual(new Set(['bias-on']));
		expect(onDecks(back)).toHaveLength(6);
		expect(truth(back)).toContain(said.named({likely: '', found: ''}));
		const hidden = (here: AtPractice) =>
			truthLines(checkOf(here), issuedOf(checkOf(here)))
				.flatMap((one) => (one.kind === 'table' ? one.rows : []))
				.find(([name]) => name === said.bias.name({radiusMm: 68}))?.[2];
		// Of a weight of 12 % a lever at a quarter past seven lets 0.608761 act (sin 37.5°), and 0.910864 where it has travelled a
		// quarter as far from half past eight (sin 65.625°): 7.31 and 10.93 %.
		expect([hidden(back), hidden(second)]).toEqual([7.31, 10.93].map((pct) => said.bias.hidden({pct})));
	});
});
