import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {takenUp} from '../../source/check/entry.js';
import {progressOf} from '../../source/check/progress.js';
import {promptOf} from '../../source/check/prompt.js';
import {reduce} from '../../source/check/reduce.js';
import {openSeries} from '../../source/check/series.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, clockFrom, follow, freshDialogue, no, refusalOf, say, text, yes} from '../helpers/script.js';

// Time stands still while the script is followed, so that every answer is equally old.
const confirmedAt = '2026-03-02T10:00:00Z';
const still = () => confirmedAt;
const at = (until: string, answers: Readonly<Record<string, string>> = {}) =>
	follow(freshDialogue(), northDeckWith(answers), {until, now: still});

const resumedAt = (dialogue: Dialogue, time: string): Dialogue =>
	startDialogue(reduce(dialogue.check, {type: 'resume', at: time}), []);
const minutesLater = (minutes: number, seconds = 0) =>
	new Date(Date.parse(confirmedAt) + 60_000 * minutes + 1000 * seconds).toISOString();
/** For a gauge that cannot be turned: all rounds as used. */
const asUsedRounds = {inner: [['3 out', '8.5 out']]} as const;
const stepId = (dialogue: Dialogue) => positionOf(dialogue).step?.id;
const itemsOf = (dialogue: Dialogue) => {
	const prompt = promptOf(dialogue);
	return prompt.kind === 'still' ? prompt.items.map((item) => item.id === 'in-doubt' && item.values.item) : [];
};

const probing = at('probe-outer');

describe('Taking a check up again', () => {
	it.each([
		[29, 0, []],
		[29, 59, []],
		[30, 0, ['conditions']],
		[31, 0, ['conditions']],
		[12 * 60 - 1, 59, ['conditions']],
		[12 * 60, 0, ['conditions', 'level', 'force']],
		[60 * 24 * 400, 0, ['conditions', 'level', 'force']],
	] as const)('after %d minutes and %d seconds asks again about %j', (minutes, seconds, doubts) => {
		expect(resumedAt(probing, minutesLater(minutes, seconds)).check.doubts).toEqual([...doubts]);
	});

	it.each([
		[12 * 60 - 1, 1],
		[12 * 60, 2],
	])(
		'after %d minutes a probe that was left half done has series %d: rounds of yesterday are kept apart',
		(minutes, count) => {
			const {check} = resumedAt(probing, minutesLater(minutes));
			expect(check.series.length).toBe(count);
			expect(check.series[0]?.inner.length).toBe(3);
			expect(check.series[0]?.closed?.because.id).toBe(count === 1 ? undefined : 'left-overnight');
			// What was read and judged is judged: its series stays.
			expect(resumedAt(at('back-lock'), minutesLater(minutes)).check.series.length).toBe(1);
		},
	);

	it('at once goes on where it stopped', () => {
		const resumed = resumedAt(probing, minutesLater(1));
		expect(positionOf(resumed)).toMatchObject({step: {id: 'probe-outer'}, slot: {index: 0, which: 'innerLimit'}});
	});

	it('begins a round anew that was begun, keeps its reading as withdrawn, and says so', () => {
		const half = say(probing, [text('3 out')], still);
		const resumed = takenUp(half, minutesLater(1));
		expect(positionOf(resumed).slot).toEqual({place: 'outer', index: 0, which: 'innerLimit'});
		expect(resumed.notice?.id).toBe('round-anew');
		const {outer, withdrawn} = openSeries(resumed.check);
		expect(outer).toEqual([]);
		expect(withdrawn).toMatchObject([{place: 'outer', limit: 'innerLimit', reading: {typed: '3 % out', value: 3}}]);
	});

	it('asks first what may have changed, and then begins the round anew', () => {
		const half = say(probing, [text('1.5 out'), text('5.5 out'), text('1.5 out')], still);
		const later = takenUp(half, minutesLater(31));
		expect(stepId(later)).toBe('still-conditions');
		expect(later.notice).toBeUndefined();
		const after = say(later, [yes], () => minutesLater(32));
		expect(after.notice?.id).toBe('round-anew');
		expect(positionOf(after).slot).toEqual({place: 'outer', index: 1, which: 'innerLimit'});
		expect(openSeries(after.check).outer).toHaveLength(1);
	});

	it('begins a round anew that was asked for beside the usual ones', () => {
		const more = say(at('verdict'), [choose('more-inner'), text('3 out')], still);
		expect(positionOf(takenUp(more, minutesLater(1)))).toMatchObject({
			step: {id: 'probe-inner'},
			slot: {index: 3, which: 'innerLimit'},
		});
	});

	it('says nothing of rounds where none was begun, and leaves a stopped check as it is', () => {
		expect(takenUp(probing, minutesLater(1)).notice).toBeUndefined();
		const stopped = say(probing, [text('3 out'), {kind: 'stop'}, yes], still);
		const resumed = takenUp(stopped, minutesLater(1));
		expect(openSeries(resumed.check).outer).toHaveLength(1);
		expect(resumed.notice).toBeUndefined();
		const carried = say(resumed, [{kind: 'steps'}, choose('carry-on')], still);
		expect(positionOf(carried).slot).toMatchObject({place: 'outer', index: 0, which: 'innerLimit'});
		expect(openSeries(carried.check).withdrawn).toHaveLength(1);
	});

	it('with a clock that was set back asks everything: nobody knows how long it was', () => {
		expect(resumedAt(probing, '2026-03-02T08:00:00Z').check.doubts).toEqual(['conditions', 'level', 'force']);
	});

	it.each([
		['+01:00', '2026-03-02T11:29:00+01:00', '2026-03-02T11:30:00+01:00'],
		['-05:00', '2026-03-02T05:29:00-05:00', '2026-03-02T05:30:00-05:00'],
		['+05:45', '2026-03-02T16:14:00+05:45', '2026-03-02T16:15:00+05:45'],
	])('counts real minutes in a zone of %s', (_zone, before, after) => {
		expect(resumedAt(probing, before).check.doubts).toEqual([]);
		expect(resumedAt(probing, after).check.doubts).toEqual(['conditions']);
	});

	it('counts real minutes through the night in which clocks are put forward or back', () => {
		// Central Europe, 29 March 2026: 01:59 +01:00 is followed by 03:00 +02:00. 25 October 2026: 02:59 +02:00 by 02:00 +01:00.
		const taken = (time: string) => follow(freshDialogue(), northDeck, {until: 'probe-outer', now: () => time});
		expect(resumedAt(taken('2026-03-29T01:50:00+01:00'), '2026-03-29T03:05:00+02:00').check.doubts).toEqual([]);
		expect(resumedAt(taken('2026-10-25T02:50:00+02:00'), '2026-10-25T02:05:00+01:00').check.doubts).toEqual([]);
		expect(resumedAt(taken('2026-10-25T02:50:00+02:00'), '2026-10-25T02:20:00+01:00').check.doubts).toEqual([
			'conditions',
		]);
	});
});

describe('What is asked again', () => {
	const later = resumedAt(probing, minutesLater(31));

	it('is one screen with all of it, and the word of one key', () => {
		expect(stepId(later)).toBe('still-conditions');
		expect(itemsOf(later)).toEqual(['guard', 'bias-off', 'wires', 'height']);
	});

	it('is only what was confirmed already', () => {
		expect(itemsOf(resumedAt(at('force-reading'), minutesLater(31)))).toEqual(['guard', 'bias-off', 'wires']);
		expect(itemsOf(resumedAt(at('bias-off'), minutesLater(31)))).toEqual(['guard']);
		expect(resumedAt(at('guard-on'), minutesLater(31)).check.doubts).toEqual([]);
		expect(resumedAt(at('level-fb-1'), minutesLater(800)).check.doubts).toEqual(['conditions', 'level']);
	});

	it('never says that a guard is on where there is none', () => {
		const bare = resumedAt(at('probe-outer', {'guard-on': 'no-guard'}), minutesLater(31));
		expect(itemsOf(bare)[0]).toBe('guard');
	});

	it('names the damping where it was put out of action', () => {
		const damped = resumedAt(at('probe-outer', {'arm-damping': 'yes', 'damping-off': 'yes'}), minutesLater(31));
		expect(itemsOf(damped)).toContain('damping');
	});

	it('is nothing after the verdict, and nothing once the check was stopped', () => {
		expect(stepId(resumedAt(at('back-lock'), minutesLater(2000)))).toBe('back-lock');
		const stopped = say(probing, [{kind: 'stop'}, yes], still);
		expect(resumedAt(stopped, minutesLater(2000)).check.doubts).toEqual([]);
	});

	it('is asked before the verdict is read', () => {
		expect(resumedAt(at('verdict'), minutesLater(31)).check.doubts).toEqual(['conditions']);
	});
});

describe('The answer to it', () => {
	const later = resumedAt(probing, minutesLater(31));
	const now = () => minutesLater(32);

	it('y goes on in the same series, and holds for as long again', () => {
		const after = say(later, [yes], now);
		expect(stepId(after)).toBe('probe-outer');
		expect(after.check.series).toHaveLength(1);
		expect(resumedAt(after, minutesLater(61)).check.doubts).toEqual([]);
		expect(resumedAt(after, minutesLater(62)).check.doubts).toEqual(['conditions']);
	});

	it('keeps the value and its first time', () => {
		const {wires} = say(later, [yes], now).check.answers;
		expect(wires).toMatchObject({at: confirmedAt, confirmedAt: minutesLater(32)});
	});

	it('a number opens a new series and asks that step anew, the others still being in doubt', () => {
		const after = say(later, [{kind: 'number', number: 3}], now);
		expect(after.check.series).toHaveLength(2);
		expect(after.check.series[0]?.closed?.because).toEqual({id: 'changed-while-left', values: {item: 'wires'}});
		expect(itemsOf(after)).toEqual(['guard', 'bias-off', 'height']);
		const rest = say(after, [yes], now);
		expect(stepId(rest)).toBe('wires');
		expect(stepId(follow(rest, northDeck, {until: 'probe-inner', now}))).toBe('probe-inner');
	});

	it('one number after another leaves nothing to doubt', () => {
		const entry = {kind: 'number', number: 1} as const;
		const after = say(later, [entry, entry, entry, entry], now);
		expect(after.check.doubts).toEqual([]);
		expect(stepId(after)).toBe('bias-off');
		expect(after.check.series).toHaveLength(2);
	});

	it.each([0, 5, -1, 99])('%d is refused in a sentence', (number) => {
		expect(refusalOf(later, {kind: 'number', number})?.id).toBe('press-still');
	});

	it('n alone is refused where there are several things', () => {
		expect(refusalOf(later, no)?.id).toBe('press-still');
	});

	it('n is enough where there is one thing: level after a night', () => {
		const night = resumedAt(at('wires'), minutesLater(13 * 60));
		const level = say(night, [yes], () => minutesLater(13 * 60 + 1));
		expect(stepId(level)).toBe('still-level');
		const changed = say(level, [no], () => minutesLater(13 * 60 + 2));
		expect(stepId(changed)).toBe('level-lr-1');
		// A reading of a deck that was touched is not offered again.
		expect(promptOf(changed)).toMatchObject({kind: 'field', initial: ''});
	});

	it('opens a new series where the gauge is read free again, and what was read before keeps its own zero', () => {
		const turnless = northDeckWith({'gauge-turns': 'no', 'zero-free-before': '+0.5'}, asUsedRounds);
		const taken = follow(freshDialogue(), turnless, {until: 'probe-outer', now: still});
		const after = say(resumedAt(taken, minutesLater(31)), [{kind: 'number', number: 4}, yes], now);
		expect(after.check.series).toHaveLength(2);
		expect(stepId(follow(after, turnless, {until: 'zero-free-before', now}))).toBe('zero-free-before');
		expect(after.check.series[0]?.was['zero-free-before']?.value).toBe(0.5);
	});

	it('is written down with every return', () => {
		const twice = resumedAt(resumedAt(probing, minutesLater(5)), minutesLater(7));
		expect(twice.check.resumedAt).toEqual([minutesLater(5), minutesLater(7)]);
	});
});

describe('A doubt left open', () => {
	it('is still there after one more interruption', () => {
		const later = resumedAt(probing, minutesLater(31));
		expect(resumedAt(later, minutesLater(33)).check.doubts).toEqual(['conditions']);
	});

	it('does not hide the list of steps', () => {
		const later = resumedAt(probing, minutesLater(31));
		const listed = say(later, [{kind: 'steps'}, choose('stage:clearance'), choose('step:guard-gap')]);
		expect(stepId(listed)).toBe('guard-gap');
		const answered = say(listed, [text('4.2')], clockFrom(minutesLater(33)));
		expect(stepId(answered)).toBe('still-conditions');
		expect(progressOf(answered.check).current?.id).toBe('still-conditions');
	});
});
