import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {openSeries} from '../../source/check/series.js';
import {viewOf} from '../../source/pages/view.js';
import {compute} from '../../source/results/compute.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {newNotes} from '../../source/teaching/practice-check.js';
import {beginning, numbersIn, words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {back, choose, follow, freshDialogue, goTo, refusalOf, type Script, say, text, yes} from '../helpers/script.js';
import {stored} from '../helpers/wandering.js';

const {gauge, verdict: verdictWords} = words.pages;
const at = (until: string, script: Script = northDeck, from = freshDialogue()) => follow(from, script, {until});
const atProbe = at('probe-inner');
const slotOf = (dialogue: Dialogue) => positionOf(dialogue).slot;
const stepOf = (dialogue: Dialogue) => positionOf(dialogue).step?.id;
const standsAt = ({check}: Dialogue, place: 'inner' | 'outer' | 'extra' | 'closing') =>
	openSeries(check)[place].map(({gauge}) => gauge ?? 'as used');
const linesAt = (dialogue: Dialogue) =>
	viewOf(dialogue).shown.flatMap((one) => (one.kind === 'line' ? [one.text] : []));
const headsAt = (dialogue: Dialogue) => {
	const {ask} = viewOf(dialogue);
	return (['turned', 'turnedBack', 'anew'] as const).filter((name) => ask.startsWith(words.rounds[name]));
};

/** All rounds as used, for a gauge that is not turned at that radius. */
const used = [['3 out', '8.5 out']] as const;
const turnedAtOuter = northDeckWith(
	{'gauge-turns': 'outer'},
	{
		inner: used,
		outer: [
			['1.5 out', '5.5 out'],
			['-1', '-5'],
		],
	},
);
const notTurned = northDeckWith({'gauge-turns': 'no'}, {inner: used});

/** What is shown before each round at a place. */
function headsOf(place: 'inner' | 'outer' | 'closing', script: Script, from = freshDialogue()) {
	const heads: string[][] = [];
	follow(from, script, {
		until: 'verdict',
		seen: (dialogue) => {
			const slot = slotOf(dialogue);
			if (slot?.place === place && slot.which === 'innerLimit') heads.push(headsAt(dialogue));
		},
	});
	return heads;
}

describe('The gauge', () => {
	it('is turned for the second round at the inner radius, and turned back for the third', () => {
		const verdict = at('verdict');
		expect(standsAt(verdict, 'inner')).toEqual(['as used', 'turned', 'as used']);
		expect(standsAt(verdict, 'outer')).toEqual(['as used', 'as used', 'as used']);
		expect(standsAt(verdict, 'closing')).toEqual(['as used']);
	});

	it('is turned at the outer radius where the inner one has no room for it', () => {
		const verdict = at('verdict', turnedAtOuter);
		expect(standsAt(verdict, 'inner')).toEqual(['as used', 'as used', 'as used']);
		expect(standsAt(verdict, 'outer')).toEqual(['as used', 'turned', 'as used']);
	});

	it('is not turned where it cannot be', () => {
		const verdict = at('verdict', notTurned);
		for (const place of ['inner', 'outer', 'closing'] as const)
			expect(standsAt(verdict, place)).not.toContain('turned');
	});

	it('is not turned at a third radius, nor for more rounds than the usual ones', () => {
		const wide = northDeckWith({'radius-extra': '98'});
		const verdict = at('verdict', wide);
		expect(standsAt(verdict, 'extra')).toEqual(['as used', 'as used', 'as used']);
		const more = say(verdict, [choose('more-inner'), text('3 out'), text('8 out')]);
		expect(standsAt(more, 'inner')).toEqual(['as used', 'turned', 'as used', 'as used']);
	});

	it('is not turned in a first try of one round a radius', () => {
		const fresh = freshDialogue();
		const practice = newNotes({arm: 'sticks-and-pulls', seed: 1, isPrepared: true, roundsEach: 1});
		const start: Dialogue = {...fresh, check: {...fresh.check, practice}};
		const verdict = at('verdict', northDeck, start);
		expect(standsAt(verdict, 'inner')).toEqual(['as used']);
		expect(standsAt(verdict, 'outer')).toEqual(['as used']);
	});
});

describe('What the hands do before a round', () => {
	it('is to turn the gauge, to turn it back, and else to set it anew', () => {
		expect(headsOf('inner', northDeck)).toEqual([[], ['turned'], ['turnedBack']]);
		expect(headsOf('outer', northDeck)).toEqual([[], ['anew'], ['anew']]);
		expect(headsOf('outer', turnedAtOuter)).toEqual([[], ['turned'], ['turnedBack']]);
		expect(headsOf('inner', notTurned)).toEqual([[], ['anew'], ['anew']]);
	});

	it('is told before the first limit only, and not where a reading is corrected', () => {
		const second = say(atProbe, [text('3 out'), text('8.5 out')]);
		expect(headsAt(second)).toEqual(['turned']);
		const half = say(second, [text('-2.5')]);
		expect(headsAt(half)).toEqual([]);
		expect(headsAt(say(half, [back]))).toEqual([]);
	});

	it('leaves the gauge alone between rounds where it is not set anew, but for turning it', () => {
		const {check, ...rest} = freshDialogue();
		const once: Dialogue = {...rest, check: {...check, setAnew: false}};
		expect(headsOf('inner', northDeck, once)).toEqual([[], ['turned'], ['turnedBack']]);
		expect(headsOf('outer', northDeck, once)).toEqual([[], [], []]);
	});
});

describe('A round with the gauge turned', () => {
	const second = say(atProbe, [text('3 out'), text('8.5 out')]);

	it('is asked in the sign of the gauge', () => {
		expect(slotOf(second)).toEqual({place: 'inner', index: 1, which: 'innerLimit', gauge: 'turned'});
		const asked = {which: 'innerLimit', isTurned: true, showsHand: false} as const;
		expect(viewOf(second).ask).toContain(words.rounds.limit(asked));
		const round = {number: 2, usual: 3, isTurned: true};
		expect(viewOf(second).title).toBe(words.pages.view.titled({title: words.steps['probe-inner'].title, round}));
		expect(refusalOf(second, text('2.5 in'))?.id).toBe('gauge-sign-counts');
	});

	it('takes sign or word, and asks for the side where neither was typed', () => {
		for (const typed of ['-2.5', '2.5 minus', '\u22122,5 %'])
			expect(openSeries(say(second, [text(typed)]).check).inner[1]).toMatchObject({
				gauge: 'turned',
				innerLimit: {value: -2.5},
			});
		const side = say(second, [text('2.5')]);
		expect(promptOf(side)).toMatchObject({kind: 'side', options: [{id: 'plus'}, {id: 'minus'}]});
		const after = say(side, [choose('minus')]);
		expect(openSeries(after.check).inner[1]).toMatchObject({gauge: 'turned', innerLimit: {value: -2.5}});
	});

	it('has its limits the other way round', () => {
		const half = say(second, [text('-2.5')]);
		const crossed = (other: string) => ({id: 'crossed-turned', values: {other}});
		expect(refusalOf(half, text('-2'))).toEqual(crossed('-2.5 %'));
		expect(refusalOf(half, text('+8'))).toEqual(crossed('-2.5 %'));
		expect(stepOf(say(half, [text('-2.5')]))).toBe('probe-inner');
		expect(openSeries(say(half, [text('-8')]).check).inner[1]?.outerLimit?.value).toBe(-8);
		// The inner one is looked at against the outer one as well.
		const whole = say(half, [text('-8')]);
		expect(refusalOf(whole, back, back, text('-9'))).toEqual(crossed('-8 %'));
	});

	it('stays turned when its reading is corrected or taken back', () => {
		const mended = say(second, [text('-2.5'), back, text('-3')]);
		expect(openSeries(mended.check).inner[1]).toMatchObject({gauge: 'turned', innerLimit: {value: -3}});
		const whole = say(second, [text('-2.5'), text('-8'), {kind: 'steps'}, choose('take-back')]);
		expect(slotOf(whole)).toEqual({place: 'inner', index: 1, which: 'outerLimit', gauge: 'turned'});
		const none = say(whole, [{kind: 'steps'}, choose('take-back')]);
		expect(slotOf(none)).toEqual({place: 'inner', index: 1, which: 'innerLimit', gauge: 'turned'});
	});

	it('that is struck out is asked again, and one as used is replaced by one as used', () => {
		const verdict = at('verdict');
		const struck = say(verdict, [choose('strike'), choose('inner:1'), choose('bumped')]);
		expect(slotOf(struck)).toEqual({place: 'inner', index: 3, which: 'innerLimit', gauge: 'turned'});
		expect(headsAt(struck)).toEqual(['turned']);
		const again = say(struck, [text('-2.5'), text('-8')]);
		expect(openSeries(again.check).inner.map(({gauge, struck: out}) => [gauge, out !== undefined])).toEqual([
			[undefined, false],
			['turned', true],
			[undefined, false],
			['turned', false],
		]);
		expect(compute(documentAt(again)).zero.source).toBe('turned');
		const other = say(verdict, [choose('strike'), choose('inner:0'), choose('bumped')]);
		expect(slotOf(other)).toEqual({place: 'inner', index: 3, which: 'innerLimit'});
	});

	it('is asked for even where three as used are there already', () => {
		const verdict = at('verdict', notTurned);
		const turns = say(verdict, [...goTo('tools', 'gauge-turns'), choose('inner')]);
		// That began a new series; struck there, the turned round is wanted beside the three as used.
		const taken = follow(turns, northDeck, {until: 'verdict'});
		const four = say(taken, [choose('more-inner'), text('3 out'), text('8 out'), yes]);
		const struck = say(four, [choose('strike'), choose('inner:1'), choose('bumped')]);
		expect(stepOf(struck)).toBe('probe-inner');
		expect(slotOf(struck)?.gauge).toBe('turned');
	});

	it('survives the disk', () => {
		const {check} = at('verdict');
		expect(stored(check)).toEqual(check);
	});
});

function documentAt({check}: Dialogue) {
	const found = documentOfCheck(check);
	if (!found.ok) throw new Error(found.missing);
	return found.document;
}

describe('Figures of a check with a turned round', () => {
	const rounds = [
		{innerLimit: 3, outerLimit: 8.5},
		{innerLimit: -2.5, outerLimit: -8, gauge: 'turned'},
		{innerLimit: 3, outerLimit: 8},
		{innerLimit: 2.5, outerLimit: 8, closing: true},
	];

	it('take it with the closing round among the inner ones', () => {
		const document = documentAt(at('verdict'));
		expect(document.probe[0]?.rounds).toEqual(rounds);
		expect(document.gauge).not.toHaveProperty('zero');
		const {probe, zero} = compute(document);
		// As used the middles are 5.75, 5.5 and 5.25, on the mean 5.5; turned it is -5.25. Half their difference is the
		// arm's pull, half their sum the zero of the gauge.
		expect(probe[0]?.pullPct).toBeCloseTo((5.5 + 5.25) / 2, 12);
		expect(zero).toMatchObject({source: 'turned', zero: expect.closeTo((5.5 - 5.25) / 2, 12)});
	});

	// The same arm and the same gauge body: where plus means toward the spindle every sign that it shows is the other one.
	const signTurned = {
		inner: [
			['-3', '-8.5'],
			['+2.5', '8 plus'],
			['-3', '-8'],
		],
		outer: [
			['-1.5', '-5.5'],
			['-1.5', '-5'],
			['-2', '-5.5'],
		],
		closing: [['-2.5', '-8']],
	} as const;

	it.each(['arm-in', 'hand-out'])('are the same with a gauge whose plus means toward the spindle: %s', (sign) => {
		const verdict = at('verdict', northDeckWith({'gauge-sign': sign}, signTurned));
		expect(documentAt(verdict)).toEqual(documentAt(at('verdict')));
	});

	it('name the zero in the sign that such a gauge shows', () => {
		// Free of the arm it shows the middle of -5.5 and +5.25: 0.125 on the minus side.
		const verdict = at('verdict', northDeckWith({'gauge-sign': 'arm-in'}, signTurned));
		const zeroAt = (side: 'plus' | 'minus') =>
			gauge.zero({source: 'turned', size: 0.13, side, uncertainty: 0.4, unit: 'percent'});
		expect(linesAt(verdict).join('\n')).toContain(zeroAt('minus'));
		expect(linesAt(at('verdict')).join('\n')).toContain(zeroAt('plus'));
	});
});

describe('Whether arm and gauge are set up anew', () => {
	const {check, ...rest} = freshDialogue();
	const once = at('verdict', northDeck, {...rest, check: {...check, setAnew: false}});

	it('is kept in the check, whatever is answered, and enters its figures', () => {
		expect(once.check.setAnew).toBe(false);
		expect(stored(once.check).setAnew).toBe(false);
		expect(documentAt(once).gauge.setAnew).toBe(false);
		expect(documentAt(at('verdict')).gauge.setAnew).toBe(true);
		const remedied = say(once, [choose('other-way'), choose('try:again')]);
		expect(documentAt(follow(remedied, northDeck, {until: 'verdict'})).gauge.setAnew).toBe(false);
	});

	it('is told at the verdict with what it costs, where it was not', () => {
		// Set anew the pull is known to ± 0.391683 % and ± 0.562731 %.
		const sentence = verdictWords.notSetAnew({
			costs: [
				{radiusMm: 68, isPct: 7, couldBePct: 0.391683},
				{radiusMm: 136, isPct: 7, couldBePct: 0.562731},
			],
		});
		const told = linesAt(once).filter((one) => one.startsWith(beginning(sentence)));
		expect(told).toHaveLength(1);
		const [inner = 0, outer = 0, ...more] = numbersIn(told[0] ?? '', sentence, 7, 7);
		expect(inner).toBeGreaterThan(0.4);
		expect(outer).toBeGreaterThan(0.6);
		expect(more).toEqual([]);
		expect(linesAt(at('verdict')).join('\n')).not.toContain(beginning(sentence));
	});
});
