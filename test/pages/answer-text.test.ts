import {describe, expect, it} from 'vitest';
import {answerInWords} from '../../source/pages/answer-text.js';
import {factsOf} from '../../source/procedure/facts.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import type {AnswerValue, StepId} from '../../source/procedure/step-ids.js';
import {names} from '../../source/words/step-text.js';
import {optionLabel, tickText, words} from '../helpers/said.js';

const {answered} = words.pages.consequences;
const limits = limitsOf(usualSettings);

/** An answer as it is read, whatever stands on file as typed. */
function shown(id: StepId, value: AnswerValue, typed = 'as typed'): string {
	const answer = {typed, value};
	return answerInWords(id, answer, factsOf({answers: {[id]: answer}, limits}));
}

describe('An answer on file', () => {
	it('that was chosen is named by its value in the words in use, also where its id or other words are kept', () => {
		for (const typed of ['gravity', 'das Gegengewicht'])
			expect(shown('arm-loading', 'gravity', typed)).toBe(optionLabel('arm-loading', 'gravity'));
		const both = shown('done-since', ['levelled', 'leads']);
		for (const one of ['levelled', 'leads']) expect(both).toContain(optionLabel('done-since', one));
		expect(shown('bias-off', true)).toBe(names.yes);
		expect(shown('bias-off', false)).toBe(names.no);
	});

	it('line by line tells what is not done, by its name', () => {
		const lines = ['amplifier', 'mains', 'record', 'platter', 'lock'] as const;
		const marks = (not: readonly string[]) => lines.map((line) => `${line}=${not.includes(line) ? 'no' : 'yes'}`);
		expect(shown('safe', marks([]))).toBe(answered.allDone);
		expect(shown('safe', marks(['mains', 'lock']))).toBe(
			answered.left({lines: [tickText('safe', 'mains'), tickText('safe', 'lock')]}),
		);
	});

	it('that is a number stands in the unit in which it was typed, with three decimals at most', () => {
		expect(shown('gauge-scale-uncertainty', 1.732_050_8, '1.7320508 %')).toBe('1.732 %');
		// 2.1 g × 9.80665 mN/g (NIST SP 811 app. B.8).
		expect(shown('playing-force', 20.593_965, '2,1 g')).toBe('2.1 g');
		expect(shown('arm-length', 233, '233 mm')).toBe('233 mm');
	});

	it('that is a text, or not known, stays as it is', () => {
		expect(shown('arm-name', 'north deck', 'north deck')).toBe('north deck');
		expect(shown('guard-mass', null, '')).toBe('');
	});
});
