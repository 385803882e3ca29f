import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {isReadyToPlay, progressOf} from '../../source/check/progress.js';
import {promptOf} from '../../source/check/prompt.js';
import {reduce} from '../../source/check/reduce.js';
import {respond} from '../../source/check/respond.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {recordLines} from '../../source/pages/record-lines.js';
import {viewOf} from '../../source/pages/view.js';
import {biasDeviceIds} from '../../source/procedure/bias-devices.js';
import {summaryOf} from '../../source/results/record.js';
import {words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, no, say, text, waysOut, yes} from '../helpers/script.js';

const stop = [{kind: 'stop'}, yes] as const;
const {notReadyToPlay, readyToPlay} = words.pages.view;
const stepId = (dialogue: Dialogue) => positionOf(dialogue).step?.id;
const stateOfDeck = (dialogue: Dialogue) => viewOf(dialogue).progress;
const visibleBack = ({check}: Dialogue) =>
	progressOf(check)
		.visible.filter(({stage}) => stage === 'back')
		.map(({id}) => id);
const finish = (dialogue: Dialogue) => follow(dialogue, northDeck);
const at = (until: string) => follow(freshDialogue(), northDeck, {until});

describe('The deck', () => {
	it('is not ready to play on any screen until its put-back list is done', () => {
		const seen: (readonly [string | undefined, string])[] = [];
		follow(freshDialogue(), northDeck, {
			seen: (dialogue) => seen.push([stepId(dialogue), stateOfDeck(dialogue)]),
		});
		const ready = seen.filter(([, progress]) => progress !== notReadyToPlay);
		expect(ready).toEqual([
			['room-temperature', readyToPlay],
			['next-check', readyToPlay],
		]);
	});

	it('is put back in the order in which the stylus is bare last', () => {
		const all = northDeckWith({'arm-damping': 'yes', 'damping-off': 'yes'});
		expect(visibleBack(follow(freshDialogue(), all))).toEqual([
			'back-lock',
			'back-gauge',
			'back-mat',
			'back-damping',
			'back-blocks',
			'back-bias',
			'back-level',
			'back-height',
			'back-weight',
			'back-guard',
			'back-force',
			'back-covers',
		]);
	});

	it('has its leads back where they were pushed off for a suspect, and asks of none that stayed on', () => {
		const atVerdict = follow(freshDialogue(), northDeck, {until: 'verdict'});
		const off = reduce(atVerdict.check, {
			type: 'new-series',
			because: {id: 'remedy', values: {remedy: 'leads-off'}},
			steps: [],
			at: '2026-03-02T11:00:00Z',
		});
		const backSteps = (check: typeof off) => progressOf(check).visible.filter(({id}) => id === 'back-leads').length;
		expect([backSteps(off), backSteps(atVerdict.check)]).toEqual([1, 0]);
	});

	it.each(biasDeviceIds)('has its bias device put back: %s', (device) => {
		const check = follow(freshDialogue(), northDeckWith({'arm-bias-device': device}));
		expect(visibleBack(check).includes('back-bias')).toBe(device !== 'none');
		expect(finishedCheck(check.check, '2026-03-02T12:00:00Z').outcome).toBe('complete');
	});

	it('has no guard to take off where there is none', () => {
		expect(visibleBack(follow(freshDialogue(), northDeckWith({'guard-on': 'no-guard'})))).not.toContain('back-guard');
	});

	// Within 2 % of the playing force of 21 mN: 20.58 to 21.42 mN.
	it.each([
		['21.42 mN', false],
		['20.58 mN', false],
		['21.5 mN', true],
		['20.5 mN', true],
	])('weighed as played at %s is refused: %s', (typed, stuck) => {
		expect(positionOf(say(at('back-force'), [text(typed)])).stuck).toBe(stuck);
	});

	it('is ready with a force that the owner wants otherwise: that is a decision', () => {
		const wanted = say(at('back-force'), [text('22 mN'), waysOut, choose('override'), choose('owner-wants-force')]);
		const done = finish(wanted);
		expect(finishedCheck(done.check, '2026-03-02T12:00:00Z').outcome).toBe('complete');
	});

	it('is not ready with a line that was left to somebody else, whatever the screen', () => {
		const left = say(at('back-guard'), [no, choose('override'), choose('cannot-do-here')]);
		const done = finish(left);
		expect(isReadyToPlay(progressOf(done.check))).toBe(false);
		expect(stateOfDeck(done)).toBe(notReadyToPlay);
		expect(viewOf(done).ask).not.toContain(readyToPlay);
		const record = finishedCheck(done.check, '2026-03-02T12:00:00Z');
		expect(record.outcome).toBe('interrupted');
		expect(summaryOf(record).outcome).toBe('interrupted');
		expect(recordLines(record)).toContainEqual(expect.objectContaining({text: words.pages.record.deckNotReady}));
	});

	it('is no longer ready when the probe is taken up again after the list', () => {
		const ready = at('next-check');
		expect(stateOfDeck(ready)).toBe(readyToPlay);
		const more = say(ready, goTo('probe', 'probe-inner'));
		const probing = respond(more, choose('more'), more.check.touchedAt ?? '');
		expect(probing && stateOfDeck(probing)).toBe(notReadyToPlay);
		// Locking the arm and taking the guard off undid the preparation: what still holds is asked first.
		expect(probing && stepId(probing)).toBe('still-conditions');
		expect(probing?.refusal?.id).toBe('was-being-put-back');
		expect(probing && stepId(follow(probing, northDeck, {until: 'back-lock'}))).toBe('back-lock');
	});

	it('is no longer ready when a changed answer opens a new series after the list', () => {
		const changed = say(at('next-check'), [...goTo('level', 'level-lr-1'), text('0.2 right')]);
		expect(stateOfDeck(changed)).toBe(notReadyToPlay);
		expect(stepId(follow(changed, northDeck, {until: 'back-lock'}))).toBe('back-lock');
	});
});

describe('Stopping', () => {
	it.each([
		'safe',
		'arm-name',
		'gauge-step',
		'level-fb-1',
		'wires',
		'force-reading',
		'guard-gap',
		'lifter-clear',
		'first-swing',
		'probe-inner',
		'probe-closing',
		'probe-end',
		'verdict',
		'back-height',
	])('at %s leads to the put-back list', (until) => {
		const stopped = say(at(until), [...stop]);
		expect(stepId(stopped)).toBe(until === 'back-height' ? 'back-height' : 'back-lock');
		const record = finishedCheck(finish(stopped).check, '2026-03-02T12:00:00Z');
		expect(record.outcome).toBe('stopped');
	});

	it('in the middle of lines to tick leads to the put-back list', () => {
		expect(stepId(say(freshDialogue(), [yes, ...stop]))).toBe('back-lock');
		expect(stepId(say(at('wires'), [yes, yes, ...stop]))).toBe('back-lock');
	});

	it('at an answer that does not pass leads to the put-back list', () => {
		expect(stepId(say(at('guard-gap'), [text('1.7'), ...stop]))).toBe('back-lock');
	});

	it('in the middle of a round that was asked for beside the usual ones leads to the put-back list', () => {
		expect(stepId(say(at('verdict'), [choose('more-inner'), text('3 out'), ...stop]))).toBe('back-lock');
	});

	it('is asked, and n goes on', () => {
		const asked = say(at('guard-gap'), [{kind: 'stop'}]);
		expect(promptOf(asked)).toMatchObject({kind: 'yes-no'});
		expect(stepId(say(asked, [no]))).toBe('guard-gap');
	});

	it('can be taken back: the check goes on where it stopped', () => {
		const stopped = say(at('guard-gap'), [...stop]);
		const on = say(stopped, [{kind: 'steps'}, choose('carry-on')]);
		expect(stepId(on)).toBe('guard-gap');
		expect(on.check.stopped).toBeUndefined();
	});

	it('and carrying on after the list leaves the deck not ready to play', () => {
		const stopped = follow(say(at('guard-gap'), [...stop]), northDeck, {until: 'next-check'});
		expect(stateOfDeck(stopped)).toBe(readyToPlay);
		const on = say(stopped, [{kind: 'steps'}, choose('carry-on')]);
		expect(stepId(on)).toBe('still-conditions');
		expect(stateOfDeck(on)).toBe(notReadyToPlay);
	});

	it('keeps the verdict out of what is still asked', () => {
		const stopped = say(at('verdict'), [...stop]);
		expect(progressOf(stopped.check).visible.map(({id}) => id)).not.toContain('verdict');
	});
});

describe('The next date', () => {
	it('is kept when it is wanted, and left out when not', () => {
		const wanted = finishedCheck(finish(at('next-check')).check, '2026-03-02T12:00:00Z');
		expect(wanted.nextCheck?.date).toMatch(/^2026-\d\d-02$/);
		const unwanted = follow(freshDialogue(), northDeckWith({'next-check': 'no'}));
		expect(finishedCheck(unwanted.check, '2026-03-02T12:00:00Z')).not.toHaveProperty('nextCheck');
	});
});
