import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {openSeries} from '../../source/check/series.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {back, choose, follow, freshDialogue, refusalOf, say, text, yes} from '../helpers/script.js';

const atProbe = follow(freshDialogue(), northDeck, {until: 'probe-inner'});
const atVerdict = follow(freshDialogue(), northDeck, {until: 'verdict'});
const valuesAt = ({check}: Dialogue, place: 'inner' | 'outer' | 'closing' = 'inner') =>
	openSeries(check)[place].map(({innerLimit, outerLimit}) => [innerLimit.value, outerLimit?.value]);
const slotOf = (dialogue: Dialogue) => positionOf(dialogue).slot;
const optionIds = (dialogue: Dialogue) => {
	const prompt = promptOf(dialogue);
	return prompt.kind === 'choice' ? prompt.options.map(({id}) => id) : [];
};

describe('Rounds', () => {
	it('are asked limit by limit, three of them', () => {
		const typed = ['3 out', '8.5 out', '-2.5', '-8', '3 out'];
		const five = say(atProbe, typed.map(text));
		expect(slotOf(five)).toEqual({place: 'inner', index: 2, which: 'outerLimit'});
		const six = say(five, [text('8 out')]);
		expect(slotOf(six)).toBeUndefined();
		expect(optionIds(six)).toEqual(['go-on', 'more', 'strike', 'take-back']);
	});

	it('keep each reading as it was typed, with its unit', () => {
		const after = say(atProbe, [text('+3'), text('8,5 out')]);
		expect(openSeries(after.check).inner[0]).toMatchObject({
			innerLimit: {typed: '+3 %', value: 3},
			outerLimit: {typed: '8,5 % out', value: 8.5},
		});
	});

	it('may be more than three', () => {
		const four = say(atVerdict, [choose('more-inner'), text('3 out'), text('8.5 out')]);
		expect(valuesAt(four)).toHaveLength(4);
		// It left the arm on the gauge.
		expect(positionOf(four).step?.id).toBe('probe-end');
		expect(positionOf(say(four, [yes])).step?.id).toBe('verdict');
	});

	it('may be fewer, by the list of steps', () => {
		const one = say(atProbe, [text('3 out'), text('8.5 out'), {kind: 'steps'}, choose('enough')]);
		expect(positionOf(one).step?.id).toBe('probe-outer');
		expect(refusalOf(atProbe, {kind: 'steps'}, choose('enough'))?.id).toBe('one-round-at-least');
		const half = [text('3 out'), text('8.5 out'), text('-2.5')];
		expect(refusalOf(atProbe, ...half, {kind: 'steps'}, choose('enough'))?.id).toBe('outer-limit-lacks');
	});

	it('refuse a limit that crosses the other one, and say how to go on', () => {
		const inner = say(atProbe, [text('3 out')]);
		expect(refusalOf(inner, text('2.5 out'))).toEqual({id: 'crossed-signs', values: {other: '3 % out'}});
		expect(say(inner, [text('3 out')]).check.series[0]?.inner[0]?.outerLimit?.value).toBe(3);
	});

	it('can be mended where both limits were wrong', () => {
		const wrong = say(atProbe, [text('3 out'), text('8.5 out')]);
		const mended = say(wrong, [back, back, text('-8.5'), back, text('3 in')]);
		expect(valuesAt(mended)).toEqual([[-8.5, -3]]);
	});

	it('keep a reading that was replaced in the record', () => {
		const mended = say(atProbe, [text('3 out'), back, text('3.5 out')]);
		expect(openSeries(mended.check).withdrawn).toMatchObject([
			{place: 'inner', limit: 'innerLimit', reading: {value: 3}},
		]);
	});
});

describe('A reading off the scale', () => {
	const off = say(atProbe, [text('3 out'), text('20 out')]);

	it('stops the rounds at that place at once', () => {
		expect(slotOf(off)).toBeUndefined();
		expect(optionIds(off)).toContain('go-on');
	});

	it('leaves the rest of the check to be done', () => {
		const after = follow(say(off, [choose('go-on')]), northDeck, {until: 'verdict'});
		expect(positionOf(after).step?.id).toBe('verdict');
	});

	it('goes away when it is taken back', () => {
		expect(slotOf(say(off, [choose('take-back')]))).toEqual({place: 'inner', index: 0, which: 'outerLimit'});
	});

	it('or when its round is struck out', () => {
		const struck = say(off, [choose('strike'), choose('inner:0'), choose('misread')]);
		expect(slotOf(struck)).toEqual({place: 'inner', index: 1, which: 'innerLimit'});
	});
});

describe('Taking the last reading back', () => {
	it('takes one limit at a time and keeps it as withdrawn', () => {
		const two = say(atProbe, [text('3 out'), text('8.5 out')]);
		const one = say(two, [{kind: 'steps'}, choose('take-back')]);
		expect(valuesAt(one)).toEqual([[3, undefined]]);
		const none = say(one, [{kind: 'steps'}, choose('take-back')]);
		expect(valuesAt(none)).toEqual([]);
		expect(openSeries(none.check).withdrawn).toHaveLength(2);
	});

	it('takes the one that was taken last, not the one that comes last in the procedure', () => {
		const more = say(atVerdict, [choose('more-inner'), text('3 out')]);
		const after = say(more, [{kind: 'steps'}, choose('take-back')]);
		expect(valuesAt(after)).toHaveLength(3);
		expect(valuesAt(after, 'closing')).toHaveLength(1);
	});

	it('takes what was shown: the last reading of the place, even when another place was read later', () => {
		const inner = say(atVerdict, [{kind: 'steps'}, choose('stage:probe'), choose('step:probe-inner')]);
		const after = say(inner, [choose('take-back')]);
		expect([valuesAt(after).length, valuesAt(after).at(-1)]).toEqual([3, [3, undefined]]);
		expect(valuesAt(after, 'closing')).toEqual([[2.5, 8]]);
	});

	it('opens the place again, and the verdict', () => {
		const after = say(atVerdict, [{kind: 'steps'}, choose('take-back')]);
		expect(positionOf(after)).toMatchObject({step: {id: 'probe-closing'}, slot: {which: 'outerLimit'}});
	});
});

describe('Striking a round out', () => {
	it('keeps it in the record with the reason, and asks for another', () => {
		const after = say(atVerdict, [choose('strike'), choose('inner:2'), choose('bumped')]);
		expect(openSeries(after.check).inner[2]?.struck?.reason).toEqual({id: 'bumped'});
		expect(slotOf(after)).toEqual({place: 'inner', index: 3, which: 'innerLimit'});
	});

	it('leaves the place as it is where enough rounds remain', () => {
		const four = say(atVerdict, [choose('more-inner'), text('3 out'), text('8.5 out'), yes]);
		const after = say(four, [choose('strike'), choose('inner:2'), choose('other'), text('the telephone rang')]);
		expect(positionOf(after).step?.id).toBe('verdict');
		expect(openSeries(after.check).inner[2]?.struck?.reason).toEqual({id: 'other', typed: 'the telephone rang'});
	});

	it('offers only rounds that still count', () => {
		const after = say(atVerdict, [choose('strike'), choose('inner:1'), choose('bumped'), {kind: 'steps'}]);
		const again = say(after, [choose('strike')]);
		expect(optionIds(again)).toEqual(['inner:0', 'inner:2', 'outer:0', 'outer:1', 'outer:2', 'closing:0']);
	});

	it('of a round whose reading is then taken back lets the round count again', () => {
		const struck = say(follow(atProbe, northDeck, {until: 'probe-outer'}), [
			{kind: 'steps'},
			choose('strike'),
			choose('inner:2'),
			choose('misread'),
		]);
		const retyped = say(struck, [{kind: 'steps'}, choose('take-back'), text('8 out')]);
		expect(openSeries(retyped.check).inner[2]?.struck).toBeUndefined();
	});
});

describe('Going back through the rounds', () => {
	it('visits reading after reading without changing anything', () => {
		let here = follow(freshDialogue(), northDeckWith({}), {until: 'probe-outer'});
		const {check} = here;
		const seen = [];
		for (let count = 0; count < 7; count++) {
			here = say(here, [back]);
			seen.push(slotOf(here)?.which);
		}
		expect(here.check).toEqual(check);
		expect(seen).toEqual([
			undefined,
			'outerLimit',
			'innerLimit',
			'outerLimit',
			'innerLimit',
			'outerLimit',
			'innerLimit',
		]);
		expect(positionOf(say(here, [back])).step?.id).toBe('first-swing');
	});
});
