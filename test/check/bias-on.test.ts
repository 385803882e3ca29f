import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {respond} from '../../source/check/respond.js';
import {openSeries} from '../../source/check/series.js';
import {trialsOf} from '../../source/check/trials.js';
import {type View, viewOf} from '../../source/pages/view.js';
import {compute} from '../../source/results/compute.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {askOf} from '../../source/words/step-text.js';
import {words} from '../helpers/said.js';
import {biasAnswers, northDeckWith} from '../helpers/sample-check.js';
import {back, choose, clockOf, follow, freshDialogue, goTo, no, refusalOf, say, text, yes} from '../helpers/script.js';
import {stored} from '../helpers/wandering.js';
import {example} from '../results/example.js';

const script = northDeckWith(biasAnswers);
const atResult = follow(freshDialogue(), script, {until: 'bias-result'});
const atMiddle = follow(freshDialogue(), script, {until: 'bias-radius-middle'});
const stepOf = (dialogue: Dialogue) => positionOf(dialogue).step?.id;

function biasOf({check}: Dialogue) {
	const found = documentOfCheck(check);
	if (!found.ok) throw new Error(found.missing);
	return {document: found.document, figures: compute(found.document)};
}

/** A second setting, read at both radii with a heavier weight. */
const heavier = northDeckWith(
	{...biasAnswers, 'bias-weight': '3.2'},
	{'bias-outer': [['12 out', '15 out']], 'bias-inner': [['9 out', '13.5 out']]},
);
const second = follow(say(atResult, [choose('adjust')]), heavier, {until: 'bias-result'});

describe('The bias set against skating', () => {
	it('comes after the verdict, for those who want it', () => {
		const without = follow(freshDialogue(), northDeckWith({}), {until: 'verdict'});
		expect(stepOf(say(without, [choose('go-on')]))).toBe('back-lock');
		expect(stepOf(say(without, [choose('bias')]))).toBe('bias-radius-middle');
	});

	it('makes the bias part of the document that the worked example has', () => {
		expect(biasOf(atResult).document.bias).toEqual(example().bias);
		expect(biasOf(atResult).figures.bias?.fit?.factor).toBeCloseTo(1.72737, 5);
	});

	it('shows an arm without bias device what skating asks of it, and goes on to put it back', () => {
		const bare = northDeckWith({...biasAnswers, 'arm-bias-device': 'none'});
		const atDrag = follow(freshDialogue(), bare, {until: 'bias-drag'});
		expect(stepOf(say(atDrag, [text('0.3')]))).toBe('back-lock');
	});

	it('takes a drag from 0.15 to 0.60 only', () => {
		const atDrag = say(atMiddle, goTo('bias-on', 'bias-drag'));
		for (const typed of ['0.14', '0.61', '30']) expect(refusalOf(atDrag, text(typed))?.id).toBe('not-believable');
		expect(stepOf(say(atDrag, [text('0,15')]))).toBe('bias-radius-middle');
	});

	it('asks for no drag: the usual one is taken, stands in the list as done, and is no answer of the check', () => {
		const seen: (string | undefined)[] = [];
		const {check} = follow(freshDialogue(), script, {seen: (dialogue) => seen.push(stepOf(dialogue))});
		expect(seen).toContain('bias-result');
		expect(seen).not.toContain('bias-drag');
		expect(check.answers['bias-drag']).toBeUndefined();
		const listed = promptOf(say(atMiddle, [{kind: 'steps'}, choose('stage:bias-on')]));
		expect(listed).toMatchObject({
			options: expect.arrayContaining([
				{id: 'step:bias-drag', label: {id: 'step', values: {step: 'bias-drag', state: 'done'}}},
			]),
		});
		expect(promptOf(say(atMiddle, goTo('bias-on', 'bias-drag')))).toMatchObject({
			kind: 'field',
			initial: expect.stringMatching(/^0\.30/),
		});
	});

	it('takes another drag at the result, works the same readings out with it, and shows what they leave', () => {
		const atDrag = say(atResult, [choose('other-drag')]);
		expect(stepOf(atDrag)).toBe('bias-drag');
		const other = say(atDrag, [text('0.4')]);
		expect(stepOf(other)).toBe('bias-result');
		expect(biasOf(other).document.bias).toEqual({...example().bias, effectiveDrag: 0.4});
		expect(trialsOf(other.check)).toHaveLength(1);
	});

	it('comes back to a result that was chosen before, once another drag is typed', () => {
		const kept = say(atResult, [choose('keep:1'), ...goTo('bias-on', 'bias-result'), choose('other-drag')]);
		expect(stepOf(say(kept, [text('0.4')]))).toBe('bias-result');
	});

	it('asks for a middle radius between the others', () => {
		// Where skating asks for least: 88.836 mm on this arm.
		expect(promptOf(atMiddle)).toMatchObject({initial: '89 mm'});
		expect(positionOf(say(atMiddle, [text('136')])).stuck).toBe(true);
		expect(stepOf(say(atMiddle, [text('98')]))).toBe('bias-weight');
	});

	it('reads no bias that is not on', () => {
		const atOn = follow(freshDialogue(), script, {until: 'bias-on'});
		expect(positionOf(say(atOn, [no])).stuck).toBe(true);
		expect(stepOf(say(atOn, [yes]))).toBe('probe-bias-outer');
	});

	it.each([
		['8:30', '8:30'],
		['8.30', '8:30'],
		['830', '8:30'],
		["7 o'clock", '7:00'],
		['12', '12:00'],
	])('reads %j as a place of the lever', (typed, value) => {
		const atClock = follow(freshDialogue(), script, {until: 'bias-clock-outer'});
		expect(say(atClock, [text(typed)]).check.answers['bias-clock-outer']?.value).toBe(value);
	});

	it('refuses a place of the lever that is on no clock', () => {
		const atClock = follow(freshDialogue(), script, {until: 'bias-clock-outer'});
		for (const typed of ['13:00', '3:75', 'up'])
			expect(refusalOf(atClock, text(typed))).toEqual({id: 'no-clock-time', values: {typed}});
	});
});

describe('Another setting', () => {
	const wasSet = words.bias.setting.wasSetTo({text: '2.4 g, third notch'});

	it('keeps the one before with its readings, and reads all of it anew', () => {
		const next = say(atResult, [choose('adjust')]);
		expect(stepOf(next)).toBe('bias-weight');
		expect(next.check.answers['bias-weight']?.again).toBe(true);
		expect(openSeries(next.check)['bias-outer']).toEqual([]);
		expect(openSeries(next.check).trials).toHaveLength(1);
		expect(next.check.answers['bias-clock-outer']).toBeUndefined();
		expect(next.notice).toEqual({id: 'setting-kept', values: {number: 1}});
	});

	it('tells how the last one was, but an Enter keeps neither its weight nor its notch unseen', () => {
		const next = say(atResult, [choose('adjust')]);
		const told = ({shown}: View) => shown.flatMap((one) => (one.kind === 'line' ? [one.text] : []));
		expect(promptOf(next)).toMatchObject({kind: 'field', initial: ''});
		expect(told(viewOf(next))).toContain(wasSet);
		const entered = say(next, [text('')]);
		expect(entered.check.answers['bias-weight']?.value).toBeNull();
		expect(stepOf(entered)).toBe('bias-set');
		expect(promptOf(entered)).toMatchObject({kind: 'field', initial: ''});
		expect(told(viewOf(entered))).toContain(wasSet);
	});

	it('says once on each page to lock the arm before hands go to the device', () => {
		const next = say(atResult, [choose('adjust')]);
		const cautions = [words.bias.advice.lockFirst, words.steps['bias-set'].caution ?? ''];
		const said = (here: Dialogue) =>
			viewOf(here).shown.flatMap((one) => (one.kind === 'line' && cautions.includes(one.text) ? [one.text] : []));
		expect(said(next)).toEqual([words.bias.advice.lockFirst]);
		expect(said(say(next, [text('')]))).toEqual([words.steps['bias-set'].caution]);
	});

	it('is told in a new series too, once the bias is set there', () => {
		const remedied = say(atResult, [...goTo('verdict', 'verdict'), choose('other-way'), choose('try:leads')]);
		const again = follow(remedied, script, {until: 'bias-weight'});
		expect(promptOf(again)).toMatchObject({kind: 'field', initial: ''});
		expect(viewOf(again).shown).toContainEqual(expect.objectContaining({text: wasSet}));
	});

	it('is offered as it was typed to someone who comes back to it', () => {
		const typed = say(say(atResult, [choose('adjust')]), [text('3.2'), back]);
		expect(promptOf(typed)).toMatchObject({initial: '3.2 g', given: true});
	});

	it('is read only after the bias was confirmed on once more, with the caution for hands at the device', () => {
		const atOn = follow(say(atResult, [choose('adjust')]), heavier, {until: 'bias-on'});
		expect(stepOf(atOn)).toBe('bias-on');
		const cautions = viewOf(atOn).shown.flatMap((one) =>
			one.kind === 'line' && one.tone === 'warn' ? [one.text] : [],
		);
		expect(cautions).toContain(words.steps['bias-on'].caution);
		expect(positionOf(say(atOn, [no])).stuck).toBe(true);
		expect(stepOf(say(atOn, [yes]))).toBe('probe-bias-outer');
		expect(stepOf(second)).toBe('bias-result');
	});

	it('is asked the same after a pause, and back leads to the question before it', () => {
		const atOn = follow(say(atResult, [choose('adjust')]), heavier, {until: 'bias-on'});
		const resumed = startDialogue(stored(atOn.check), []);
		expect(stepOf(resumed)).toBe('bias-on');
		expect(stepOf(say(resumed, [back]))).toBe('bias-set');
		expect(stepOf(say(resumed, [yes, back]))).toBe('bias-on');
	});

	it('that was not confirmed on yet still has to be switched off before the arm itself is probed again', () => {
		const atVerdict = say(say(atResult, [choose('adjust')]), goTo('verdict', 'verdict'));
		const asked = respond(atVerdict, choose('more-inner'), clockOf(atVerdict)());
		expect(asked?.refusal?.id).toBe('bias-off-first');
	});

	it('gives the figures of the one that was read last', () => {
		expect(trialsOf(second.check)).toHaveLength(2);
		expect(biasOf(second).document.bias?.readings?.[0]?.rounds).toEqual([{innerLimit: 12, outerLimit: 15}]);
	});

	it('can be given up for an earlier one, which then counts and is named in the put-back list', () => {
		const back = say(second, [choose('back-to:1')]);
		expect(biasOf(back).document.bias).toEqual(example().bias);
		expect(stepOf(back)).toBe('back-lock');
		const atBias = follow(back, script, {until: 'back-bias'});
		const {step, progress} = positionOf(atBias);
		const chosen = {number: '1', setting: '2.4 g, third notch'};
		const ask = words.steps['back-bias'].ask;
		if (typeof ask !== 'function') throw new Error('it tells of the setting');
		expect(step && askOf(step, progress.facts)).toBe(ask({device: 'weighted-lever', chosen, setting: undefined}));
	});

	it('survives the disk', () => {
		expect(stored(second.check)).toEqual(second.check);
	});

	it('begins too when the weight is corrected after readings, lest both be mixed', () => {
		const corrected = say(atResult, [...goTo('bias-on', 'bias-weight'), text('2.6')]);
		expect(openSeries(corrected.check).trials).toHaveLength(1);
		expect(openSeries(corrected.check)['bias-outer']).toEqual([]);
	});
});

describe('A reading off scale with the bias on', () => {
	const {rounds} = words.pages;
	const shownAt = (dialogue: Dialogue) => {
		const {ask, shown} = viewOf(dialogue);
		return [ask, ...shown.map((one) => (one.kind === 'line' ? one.text : one.caption))].join('\n');
	};
	const off = say(follow(freshDialogue(), script, {until: 'probe-bias-outer'}), [text('13 out'), text('20 out')]);

	it('counts for no figure, and says what to do once', () => {
		const told = shownAt(off);
		const counted = (isOffScale: boolean) => rounds.soFar({isAsked: false, count: 1, isOffScale, last: []});
		expect(told).toContain(counted(true));
		expect(told).not.toContain(counted(false));
		expect(told.split(rounds.offScale({top: 20, unit: 'percent', isBiasOn: true}))).toHaveLength(2);
	});

	it('is followed by less bias at one key: the reading is kept with its setting, and all is read anew', () => {
		const prompt = promptOf(off);
		if (prompt.kind !== 'choice') throw new Error(prompt.kind);
		expect(prompt.options[0]).toMatchObject({id: 'adjust', label: {id: 'less-bias'}});
		const less = say(off, [choose('adjust')]);
		expect(stepOf(less)).toBe('bias-weight');
		expect(openSeries(less.check)['bias-outer']).toEqual([]);
		expect(openSeries(less.check).trials[0]?.['bias-outer']).toHaveLength(1);
		const read = follow(less, script, {until: 'bias-result'});
		expect(biasOf(read).document.bias).toEqual(example().bias);
	});

	it('offers no bias to be lessened where the bias is off', () => {
		const without = say(follow(freshDialogue(), script, {until: 'probe-inner'}), [text('3 out'), text('20 out')]);
		const prompt = promptOf(without);
		expect(prompt.kind === 'choice' && prompt.options.map(({id}) => id)).toEqual(['take-back', 'more', 'go-on']);
		const offScale = {top: 20, unit: 'percent'} as const;
		expect(shownAt(without)).not.toContain(rounds.offScale({...offScale, isBiasOn: true}));
		expect(shownAt(without)).toContain(rounds.offScale({...offScale, isBiasOn: false}));
	});
});

describe('The arm itself, probed again', () => {
	it('is so only with the bias off, in the same series', () => {
		const atVerdict = say(atResult, goTo('verdict', 'verdict'));
		const asked = respond(atVerdict, choose('more-inner'), clockOf(atVerdict)());
		expect(asked?.refusal?.id).toBe('bias-off-first');
		if (!asked) return;
		expect(stepOf(asked)).toBe('bias-off');
		const more = say(asked, [yes, choose('more-inner'), text('3 out'), text('8.5 out')]);
		expect(more.check.series).toHaveLength(1);
		expect(openSeries(more.check).inner).toHaveLength(4);
		expect(biasOf(more).document.bias?.readings).toHaveLength(2);
	});

	it('in a new series after a remedy: the bias goes off first, and the earlier series keeps its bias figures', () => {
		const before = biasOf(atResult).figures.bias;
		const remedied = say(atResult, [...goTo('verdict', 'verdict'), choose('other-way'), choose('try:leads')]);
		expect(stepOf(remedied)).toBe('bias-off');
		const [first] = remedied.check.series;
		const found = documentOfCheck(remedied.check, first);
		expect(found.ok && compute(found.document).bias).toEqual(before);
	});
});
