import {describe, expect, it} from 'vitest';
import {viewOf} from '../../source/pages/view.js';
import {plainTexts} from '../../source/plain/ask.js';
import {rowsOf} from '../../source/screens/arrange.js';
import {layoutOf} from '../../source/screens/layout.js';
import type {Look} from '../../source/screens/look.js';
import {flat, titleOf, words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';
import {stations} from '../helpers/wandering.js';

const spoken: Look = {color: false, unicode: true, screenReader: true};
const {spokenMarks} = words.faces;

const textOf = (rows: readonly {readonly text: string}[]): string => flat(rows.map(({text}) => text).join(' '));
/** What is read of the body of a screen that is as tall as it likes. */
const readOf = (until: string, isBrisk = false): string => {
	const view = viewOf({...follow(freshDialogue(), northDeck, {until}), isBrisk});
	return textOf(layoutOf({view, width: 80, height: 200, page: 0, isWhy: false, notice: '', look: spoken}).body);
};

describe('A screen that is read aloud', () => {
	it('says beside each question of a whole check what plain lines say, and marks how it is meant', () => {
		const withoutMarks = (text: string): string =>
			Object.values(spokenMarks).reduce((said, mark) => said.replaceAll(mark, ''), text);
		for (const {shown} of stations.map((station) => viewOf(station))) {
			const read = textOf(rowsOf(shown, 80, spoken));
			expect(withoutMarks(read)).toBe(withoutMarks(flat(plainTexts(shown).join(' '))));
		}
	});

	it('says of the list by which a deck is put back what is done', () => {
		expect(readOf('back-weight')).toContain(`${spokenMarks.good}${titleOf('back-lock')}`);
		expect(readOf('back-weight')).not.toContain(`${spokenMarks.good}${titleOf('back-weight')}`);
	});

	it('names each line of a list that one key answers, and else none that the question names', () => {
		const lines = ['amplifier', 'mains', 'record', 'platter', 'lock'] as const;
		for (const one of lines) {
			const {length} = readOf('safe', true).split(words.ticks.safe[one]);
			expect(length).toBe(2);
			expect(readOf('safe')).not.toContain(words.ticks.safe[one]);
		}
	});
});
