import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {viewOf} from '../../source/pages/view.js';
import {procedure} from '../../source/procedure/index.js';
import {titleOf, words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue, no, say, yes} from '../helpers/script.js';

const brisk = (): Dialogue => ({...freshDialogue(), isBrisk: true});
const atSafe = (): Dialogue => follow(brisk(), northDeck, {until: 'safe'});

describe('For those who know the way', () => {
	it('a whole list is ticked with one key, and stands in the record line by line', () => {
		const after = say(atSafe(), [yes]);
		const marks = after.check.answers.safe?.value;
		expect(positionOf(after).step?.id).not.toBe('safe');
		const slow = follow(freshDialogue(), northDeck, {until: 'guard-mass'});
		expect(marks).toEqual(slow.check.answers.safe?.value);
	});

	it('n asks the list line by line', () => {
		const asked = say(atSafe(), [no]);
		expect(positionOf(asked).step?.id).toBe('safe');
		const prompt = promptOf(asked);
		expect(prompt.kind === 'yes-no' && prompt.question).toMatchObject({id: 'tick', values: {line: 'amplifier'}});
	});

	it('the same steps come, in the same order', () => {
		const steps = (from: Dialogue): string[] => {
			const seen: string[] = [];
			follow(from, northDeck, {seen: (here) => seen.push(positionOf(here).step?.id ?? '')});
			return [...new Set(seen)];
		};
		expect(steps(brisk())).toEqual(steps(freshDialogue()));
	});

	it('a step asks in short words where it has some, under the same title', () => {
		const here = follow(brisk(), northDeck, {until: 'level-lr-1'});
		expect(viewOf(here).title).toBe(titleOf('level-lr-1'));
		expect(viewOf(here).ask).toContain(words.steps['level-lr-1'].short ?? 'none');
		for (const {id} of procedure) expect((words.steps[id].short ?? '').length).toBeLessThanOrEqual(50);
	});
});
