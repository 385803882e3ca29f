import {describe, expect, it} from 'vitest';
import type {Check} from '../../source/check/check.js';
import {type Dialogue, startDialogue} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {reduce} from '../../source/check/reduce.js';
import {plainly} from '../../source/check/says.js';
import {northDeck} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, refusalOf, say, text} from '../helpers/script.js';

const at = '2026-03-02T18:00:00Z';
const verdict = follow(freshDialogue(), northDeck, {until: 'verdict'});
const filed: Check = verdict.check;
const reopened: Check = {...filed, reopened: true, stopped: {at}, doubts: []};

describe('A filed check that is opened again for its put-back list', () => {
	it('takes answers to that list, and nothing else of it changes', () => {
		const confirmed = reduce(reopened, {type: 'answer', step: 'back-lock', value: true, typed: 'yes', at});
		expect(confirmed.answers['back-lock']?.value).toBe(true);
		for (const action of [
			{type: 'answer', step: 'level-lr-1', value: 3, typed: '3 right', at},
			{type: 'limit', place: 'inner', index: 0, which: 'innerLimit', value: 1, typed: '1 out', at},
			{type: 'carry-on', at},
			{type: 'take-back', at},
			{type: 'new-series', because: plainly('asked-anew'), steps: ['wires'], at},
		] as const) {
			expect(reduce(reopened, action)).toEqual(reopened);
		}
	});

	it('offers no way back into the measuring', () => {
		const list = say(startDialogue(reopened, []), [{kind: 'steps'}]);
		const prompt = promptOf(list);
		expect(prompt.kind === 'choice' && prompt.options.map(({id}) => id)).toEqual(['stage:back', 'stage:next']);
	});
});

/** The same check with what a long pause leaves in doubt, the verdict read already. */
const doubtful = (dialogue: Dialogue): Dialogue => ({...dialogue, check: {...dialogue.check, doubts: ['conditions']}});

describe('Readings taken up again after the verdict was read', () => {
	const read = say(verdict, [choose('go-on')]);

	it('wait until what may have changed meanwhile was asked', () => {
		const back = say(doubtful(read), goTo('verdict', 'verdict'));
		const prompt = promptOf(back);
		expect(prompt.kind).toBe('choice');
		const wanted = {
			...back,
			visiting: {step: 'probe-inner', slot: {place: 'inner', index: 3, which: 'innerLimit'}},
		} as const;
		expect(refusalOf(wanted, text('3 out'))?.id).toBe('doubts-first');
	});
});

describe('Another set of tools', () => {
	it('begins a new series, and the earlier one keeps the gauge that it was taken with', () => {
		const picked = {...filed, answers: {...filed.answers, 'tools-profile': {typed: 'bench set', value: 'tools-1', at}}};
		const other = {'tools-profile': {typed: 'fine set', value: 'tools-2'}, 'gauge-step': {typed: '0.1 %', value: 0.1}};
		const next = reduce(picked, {type: 'fill', answers: other, clears: ['gauge-step'], at});
		expect(next.series).toHaveLength(2);
		expect(next.series[0]?.was['gauge-step']?.value).toBe(filed.answers['gauge-step']?.value);
		expect(next.answers['gauge-step']?.value).toBe(0.1);
	});
});
