import {expect, it} from 'vitest';
import {issuedOf} from '../../source/pages/issued.js';
import {inWords} from '../../source/pages/shown-lines.js';
import {verdictLines} from '../../source/pages/verdict-lines.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, say, yes} from '../helpers/script.js';

it('A check stopped after a remedy was begun keeps the verdict that it had, and says so', () => {
	const verdict = follow(freshDialogue(), northDeck, {until: 'verdict'});
	const before = issuedOf(verdict.check);
	const {check} = say(verdict, [choose('other-way'), choose('try:leads'), {kind: 'stop'}, yes]);
	expect(check.series).toHaveLength(2);
	expect(documentOfCheck(check)).toEqual(documentOfCheck(verdict.check));
	expect(issuedOf(check)).toEqual(before);
	expect(verdictLines(check).map(inWords)).toContain(words.pages.verdict.lastNotMeasured);
});
