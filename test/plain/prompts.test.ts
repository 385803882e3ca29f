import {expect, it} from 'vitest';
import {positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {entryOf, promptLines} from '../../source/plain/ask.js';
import {promptInWords, says} from '../../source/words/says.js';
import {words} from '../helpers/said.js';
import {biasAnswers, northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue, say} from '../helpers/script.js';

const {plain} = words.faces;
const [keeps, takes] = [plain.keeps({text: '88 mm'}), plain.takes({text: '88 mm'})];

it('A question that may have no answer says how to give none where an empty line takes what is offered', () => {
	const prompt = {key: 'middle', kind: 'field', initial: '88 mm', mayBeEmpty: true} as const;
	expect(promptLines(prompt)).toEqual([takes, plain.forNone]);
	expect(promptLines({...prompt, given: true})).toEqual([keeps, plain.forNone]);
	expect(promptLines({...prompt, mayBeEmpty: false})).toEqual([takes]);
	expect(promptLines({...prompt, initial: ''})).toEqual([]);
});

it('The middle radius that is suggested for the bias can be done without by a dash', () => {
	const atMiddle = follow(freshDialogue(), northDeckWith(biasAnswers), {until: 'bias-radius-middle'});
	const prompt = promptInWords(promptOf(atMiddle));
	// Where skating is least: √(233² − 215.4²) = 88.8 mm.
	expect(promptLines(prompt)).toContain(plain.takes({text: '89 mm'}));
	const none = entryOf(prompt, '-');
	if (typeof none === 'string') throw new Error(none);
	const after = say(atMiddle, [none]);
	expect(after.check.answers['bias-radius-middle']?.value).toBeNull();
	expect(positionOf(after).step?.id).toBe('bias-weight');
});

it('The number of a line, typed whole, is one answer; a reading on a list is none, and is told so', () => {
	const options = Array.from({length: 12}, (_, index) => ({id: `o${index}`, label: `arm ${index}.5`}));
	const prompt = {key: 'list', kind: 'choice', options} as const;
	expect(entryOf(prompt, '12')).toEqual({kind: 'choose', id: 'o11'});
	// A line may be called by its name too.
	expect(entryOf(prompt, 'arm 2.5')).toEqual({kind: 'choose', id: 'o2'});
	for (const typed of ['2.5', '-1.5', '+2', '2.1 out', '2 mm'])
		expect(entryOf(prompt, typed)).toBe(says.refusal({id: 'no-reading-here', values: {typed}}));
	for (const typed of ['13', '0', 'x', '']) expect(entryOf(prompt, typed)).toBe(plain.wanted.number({last: 12}));
});
