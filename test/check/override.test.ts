import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {progressOf} from '../../source/check/progress.js';
import {promptOf} from '../../source/check/prompt.js';
import {viewOf} from '../../source/pages/view.js';
import {stepById} from '../../source/procedure/index.js';
import {words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, no, refusalOf, say, text, waysOut, yes} from '../helpers/script.js';

/** A stylus that stands too low: 1.7 mm under a guard of 1.3 mm are 3 mm where 5 to 6 mm are wanted. */
const tooLow = say(follow(freshDialogue(), northDeck, {until: 'guard-gap'}), [text('1.7')]);
const options = (dialogue: Dialogue) => {
	const prompt = promptOf(dialogue);
	return prompt.kind === 'choice'
		? prompt.options.map(({label}) => (label.id === 'way' ? label.values.way : label.id))
		: [];
};
const stateOf = ({check}: Dialogue, id: string) => {
	const step = stepById(id);
	return step && progressOf(check).stateOf(step);
};
const shownAtVerdict = (dialogue: Dialogue) =>
	viewOf(follow(dialogue, northDeck, {until: 'verdict'})).shown.map((one) => (one.kind === 'line' ? one.text : ''));

describe('A step that does not pass', () => {
	it('says why and offers the ways out', () => {
		expect(positionOf(tooLow)).toMatchObject({stuck: true, step: {id: 'guard-gap'}});
		expect(promptOf(tooLow)).toMatchObject({kind: 'field', waysOut: true});
		expect(options(say(tooLow, [waysOut]))).toEqual(['set-height', 'regardless']);
	});

	it('is mended by typing another value, the old one no longer offered', () => {
		expect(promptOf(tooLow)).toMatchObject({initial: ''});
		expect(stateOf(say(tooLow, [text('4.2')]), 'guard-gap')).toBe('done');
	});

	it('is asked again on the first way out', () => {
		const after = say(tooLow, [waysOut, choose('way-0')]);
		expect(promptOf(after)).toMatchObject({kind: 'field'});
		expect(stateOf(say(after, [text('4.2')]), 'guard-gap')).toBe('done');
	});

	it('is gone past with a reason of the list', () => {
		const after = say(tooLow, [waysOut, choose('override'), choose('arm-touches-elsewhere')]);
		expect(after.check.answers['guard-gap']?.override).toMatchObject({
			problem: {id: 'guard-gap-off', values: {side: 'low', guardMm: expect.closeTo(1.7, 12)}},
			reason: {id: 'arm-touches-elsewhere'},
		});
		expect(positionOf(after).step?.id).toBe('lifter-clear');
		expect(stateOf(after, 'guard-gap')).toBe('overridden');
	});

	it('is gone past with a typed reason, never with an empty one', () => {
		const typing = say(tooLow, [waysOut, choose('override'), choose('other')]);
		expect(refusalOf(typing, text('  '))?.id).toBe('few-words');
		expect(say(typing, [text(' a warped platter ')]).check.answers['guard-gap']?.override?.reason).toEqual({
			id: 'other',
			typed: 'a warped platter',
		});
	});

	it('comes back to the ways out on going back from the reason', () => {
		const after = say(tooLow, [waysOut, choose('override'), choose('other'), {kind: 'back'}, {kind: 'back'}]);
		expect(options(after)).toEqual(options(tooLow));
		expect(after.check).toEqual(tooLow.check);
	});
});

describe('An override', () => {
	const overridden = say(tooLow, [waysOut, choose('override'), choose('arm-touches-elsewhere')]);
	const told = {
		title: words.steps['guard-gap'].title,
		sentence: words.problems['guard-gap-off']({guardMm: 1.7, side: 'low', lowMm: 3.7, highMm: 4.7}),
		reason: words.reasons['arm-touches-elsewhere'],
		series: 1,
	};

	it('stands beside the verdict', () => {
		expect(shownAtVerdict(overridden)).toContain(words.pages.verdict.overridden({...told, holds: true}));
	});

	it('stays when the same answer is confirmed once more', () => {
		const after = say(overridden, [...goTo('clearance', 'guard-gap')]);
		expect(stateOf(after, 'guard-gap')).toBe('overridden');
	});

	it('falls when the answer changes', () => {
		const atVerdict = follow(overridden, northDeck, {until: 'verdict'});
		const after = say(atVerdict, [{kind: 'steps'}, choose('stage:clearance'), choose('step:guard-gap')]);
		const changed = say(after, [text('1')]);
		expect(changed.check.answers['guard-gap']).not.toHaveProperty('override');
		expect(positionOf(changed)).toMatchObject({stuck: true, step: {id: 'guard-gap'}});
	});

	it('falls when it is asked again', () => {
		const after = say(follow(overridden, northDeck, {until: 'verdict'}), [choose('other-way'), choose('try:height')]);
		expect(after.check.answers['guard-gap']?.override).toBeUndefined();
		expect(stateOf(after, 'guard-gap')).toBe('open');
	});

	it('of the level does not excuse another reading that is worse', () => {
		// Both readings call the right side high by 1°: a tilt of 1°; later 1° and 2.5°: a tilt of 1.75°.
		const tilted = northDeckWith({'level-lr-1': '1 right', 'level-lr-2': '1 right'});
		const before = say(follow(freshDialogue(), tilted, {until: 'level-fb-2'}), [text('0.05 front')]);
		const excused = say(before, [choose('override'), choose('cannot-level')]);
		const worse = say(excused, [...goTo('level', 'level-lr-2'), text('2.5 right')]);
		expect(positionOf(worse)).toMatchObject({stuck: true, step: {id: 'level-fb-2'}});
	});

	it('of conditions under which an earlier series was taken is told with that series', () => {
		const remedied = say(follow(overridden, northDeck, {until: 'verdict'}), [
			choose('other-way'),
			choose('try:height'),
		]);
		expect(shownAtVerdict(remedied)).toContain(words.pages.verdict.overridden({...told, holds: false}));
	});
});

describe('Lines to tick', () => {
	const atSafe = follow(freshDialogue(), northDeck, {until: 'safe'});

	it('are ticked one by one', () => {
		const after = say(atSafe, [yes, yes, yes, yes]);
		expect(positionOf(after).step?.id).toBe('safe');
		expect(positionOf(say(after, [yes])).step?.id).toBe('guard-mass');
	});

	it('that were answered with no say what to do, and only those are asked again', () => {
		const after = say(atSafe, [yes, yes, yes, no, no]);
		expect(positionOf(after).stuck).toBe(true);
		expect(viewOf(after).shown).toContainEqual(
			expect.objectContaining({text: words.problems['lines-left']({list: 'safe', lines: ['platter', 'lock']})}),
		);
		const again = say(after, [choose('way-0')]);
		expect(promptOf(again)).toMatchObject({question: {id: 'tick', values: {line: 'platter'}}});
		expect(positionOf(say(again, [yes, yes])).step?.id).toBe('guard-mass');
	});

	it('can be left with a reason', () => {
		const after = say(atSafe, [yes, yes, no, yes, yes, choose('override'), choose('licensed-person')]);
		expect(positionOf(after).step?.id).toBe('guard-mass');
	});

	it('are ticked anew, line by line, after a remedy that touched them', () => {
		const after = say(follow(freshDialogue(), northDeck, {until: 'verdict'}), [
			choose('other-way'),
			choose('try:leads'),
		]);
		expect(promptOf(after)).toMatchObject({
			kind: 'yes-no',
			question: {id: 'tick', values: {line: 'screws'}},
		});
		expect(positionOf(follow(after, northDeck, {until: 'probe-inner'})).step?.id).toBe('probe-inner');
	});
});

describe('The side of a reading', () => {
	it('is asked with one key, and accepted with it', () => {
		const at = follow(freshDialogue(), northDeck, {until: 'level-lr-1'});
		const side = say(at, [text('0.1')]);
		expect(promptOf(side)).toMatchObject({
			kind: 'side',
			options: [
				{id: 'right', keys: ['r', '+']},
				{id: 'left', keys: ['l', '-']},
			],
		});
		const after = say(side, [choose('left')]);
		expect(after.check.answers['level-lr-1']).toMatchObject({value: -0.1, typed: '0.1° left'});
		expect(positionOf(after).step?.id).toBe('level-lr-2');
	});

	it('is taken at once in the probe', () => {
		const at = follow(freshDialogue(), northDeck, {until: 'probe-inner'});
		const after = say(at, [text('4'), choose('in'), text('3'), choose('out')]);
		expect(after.check.series[0]?.inner[0]).toMatchObject({innerLimit: {value: -4}, outerLimit: {value: 3}});
	});

	it('follows from a sign that means nothing on a level', () => {
		const at = follow(freshDialogue(), northDeck, {until: 'level-lr-1'});
		const after = say(at, [text('-0.1'), choose('right')]);
		expect(after.check.answers['level-lr-1']?.value).toBe(0.1);
	});
});

describe('An answer that makes an earlier one fail', () => {
	it('leads back to it and says which answer it was', () => {
		// 0.275° makes up to 0.48 % with 21 mN and 0.52 % with the 23 mN that the gauge carries; half a percent is allowed.
		const script = northDeckWith({
			'level-lr-1': '0.3 right',
			'level-lr-2': '0.25 right',
			'force-high': '24 mN',
			'force-reading': '23 mN',
		});
		const weighed = follow(freshDialogue(), script, {until: 'force-reading'});
		const back = say(weighed, [{kind: 'text', text: '23 mN'}]);
		expect(positionOf(back).step?.id).toMatch(/^level-/);
		expect(back.notice).toEqual({id: 'does-not-pass-any-more', values: {step: 'force-reading'}});
	});
});

describe('A reading typed on a list', () => {
	it.each(['gauge-unit', 'verdict', 'mat'])('is refused in a sentence and chooses nothing: %s', (step) => {
		const here = follow(freshDialogue(), northDeck, {until: step});
		for (const typed of ['2.5', '-1.5', '2.1 out', '+2'])
			expect(refusalOf(here, text(typed))).toEqual({id: 'no-reading-here', values: {typed}});
	});

	it('is refused also where ways out, reasons, rounds and steps are listed', () => {
		const atGap = follow(freshDialogue(), northDeck, {until: 'guard-gap'});
		const ways = say(atGap, [text('9'), waysOut]);
		const atList = say(follow(freshDialogue(), northDeck, {until: 'probe-outer'}), [{kind: 'back'}]);
		for (const here of [ways, say(ways, [choose('override')]), atList, say(atList, [{kind: 'steps'}])])
			expect(refusalOf(here, text('2.5'))?.id).toBe('no-reading-here');
	});
});
