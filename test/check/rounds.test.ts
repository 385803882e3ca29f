import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {reduce} from '../../source/check/reduce.js';
import {respond} from '../../source/check/respond.js';
import {openSeries} from '../../source/check/series.js';
import {recheckAction} from '../../source/desk/starting-answers.js';
import {profilesWith} from '../../source/results/profiles.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {back, choose, clockOf, follow, freshDialogue, goTo, refusalOf, say, text, yes} from '../helpers/script.js';

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
		expect(refusalOf(inner, text('2.5 out'))).toEqual({id: 'crossed-limits', values: {other: '3 % out'}});
		expect(say(inner, [text('3 out')]).check.series[0]?.inner[0]?.outerLimit?.value).toBe(3);
	});

	it('name signs that look swapped: limits on either side of zero that cross, or by the other rounds', () => {
		const swapped = (other: string) => ({id: 'signs-swapped', values: {other}});
		expect(refusalOf(atProbe, text('3 out'), text('8.5 in'))).toEqual(swapped('3 % out'));
		const third = say(atProbe, ['3 out', '8.5 out', '-2.5', '-8'].map(text));
		expect(refusalOf(third, text('-3'), text('-8'))).toEqual(swapped('-3 %'));
		// These are nearer to the round before when one is taken for the other.
		expect(refusalOf(third, text('8 out'), text('3 out'))?.id).toBe('crossed-limits');
		expect(refusalOf(third, text('3 out'), text('2.5 out'))?.id).toBe('crossed-limits');
	});

	it('of a hand that pushes are on either side of zero by nature: the pushes look swapped, unless other rounds say more', () => {
		const byHand = follow(freshDialogue(), northDeckWith({'gauge-sign': 'hand-out', 'gauge-turns': 'no'}), {
			until: 'probe-inner',
		});
		expect(refusalOf(byHand, text('3 out'), text('3 in'))?.id).toBe('crossed-pushes');
		const second = say(byHand, [text('3 in'), text('5 out')]);
		expect(refusalOf(second, text('3 out'), text('5 in'))?.id).toBe('signs-swapped');
		expect(refusalOf(second, text('5 out'), text('3 in'))?.id).toBe('crossed-pushes');
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

describe('A round that was begun', () => {
	const begun = say(atProbe, [text('3 out'), text('8.5 out'), text('-2.5')]);
	const isAnew = (after: Dialogue) => {
		expect(slotOf(after)).toEqual({place: 'inner', index: 1, which: 'innerLimit', gauge: 'turned'});
		expect(after.notice?.id).toBe('round-anew');
		expect(valuesAt(after)).toEqual([[3, 8.5]]);
		expect(openSeries(after.check).withdrawn).toMatchObject([
			{place: 'inner', limit: 'innerLimit', reading: {value: -2.5}},
		]);
	};

	it('begins anew after another step was visited, whichever way one comes back', () => {
		const away = say(begun, goTo('arm', 'arm-name'));
		expect(away.check).toBe(begun.check);
		isAnew(say(away, goTo('probe', 'probe-inner')));
		isAnew(say(away, [text('north deck')]));
	});

	it('begins anew with its inner limit, also where the same reading comes again', () => {
		const back = say(begun, [...goTo('arm', 'arm-name'), text('north deck'), text('-2.5'), text('-8')]);
		expect(valuesAt(back)).toEqual([
			[3, 8.5],
			[-2.5, -8],
		]);
		expect(openSeries(back.check).withdrawn).toHaveLength(1);
	});

	it('goes on after a look at the list of steps, and after a look back at its own inner limit', () => {
		const looked = say(begun, [{kind: 'steps'}, back, back]);
		expect(looked.check).toBe(begun.check);
		expect(slotOf(looked)?.which).toBe('innerLimit');
		const kept = say(looked, [text('-2.5')]);
		expect(slotOf(kept)?.which).toBe('outerLimit');
		expect(kept.notice).toBeUndefined();
	});

	it('goes on where the last reading of a whole round is taken back', () => {
		const after = say(begun, [text('-8'), {kind: 'steps'}, choose('take-back')]);
		expect(slotOf(after)?.which).toBe('outerLimit');
		expect(after.notice).toBeUndefined();
	});
});

describe('Going back', () => {
	it('leads over rounds that were gone past with fewer than usual to the last reading, not to a list that was not shown', () => {
		const gone = say(atProbe, [text('3 out'), text('8.5 out'), {kind: 'steps'}, choose('enough')]);
		const once = say(gone, [back]);
		expect(positionOf(once)).toMatchObject({step: {id: 'probe-inner'}, slot: {index: 0, which: 'outerLimit'}});
	});

	it('leads to the list after enough rounds, which was answered', () => {
		expect(slotOf(say(follow(atProbe, northDeck, {until: 'probe-outer'}), [back]))).toBeUndefined();
	});

	it('never leads into a question that was answered by a profile, but to where it was picked', () => {
		const profiles = profilesWith([], atProbe.check, '2026-03-02T12:00:00Z');
		const picked = follow(
			freshDialogue(profiles),
			{
				...northDeck,
				answers: {
					...northDeck.answers,
					...Object.fromEntries(profiles.map(({id, kind}) => [`${kind}-profile`, id])),
				},
			},
			{until: 'guard-on'},
		);
		const seen = [];
		for (let here: Dialogue | undefined = picked; here; here = respond(here, back, clockOf(here)()))
			seen.push(positionOf(here).step?.id);
		expect(seen).toEqual(['guard-on', 'safe', 'tools-profile', 'arm-profile']);
	});

	it('never leads into a question that was answered by the check that is repeated', () => {
		const {check} = freshDialogue();
		const repeated = startDialogue(reduce(check, recheckAction(atVerdict.check, [], '2026-03-02T09:00:01Z')), []);
		const asked = follow(repeated, northDeck, {until: 'guard-on'});
		expect(positionOf(say(asked, [back])).step?.id).toBe('safe');
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
