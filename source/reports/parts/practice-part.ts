import type {Check} from '../../check/check.js';
import {truthLines} from '../../teaching/truth-lines.js';
import {words} from '../../words/index.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import {type Block, notice, type Section, type Words} from '../report.js';

/** A title that says first of all when the check is none of a real arm. */
export const titleOf = ({practice}: Check, ...words: readonly Extract<Words, readonly unknown[]>[number][]): Words =>
	practice ? ['PRACTICE: ', ...words] : words;

/** A practice check says so before anything else. */
export const practiceNotices = ({record}: CheckSource): Block[] =>
	record.check.practice ? [notice(words.beside.practice.notice, 'bad')] : [];

/** The hidden truth of an invented arm beside what was found. */
export const practicePart = ({record: {check, issued}}: CheckSource): Section[] =>
	check.practice
		? [
				{
					title: 'What was hidden',
					blocks: blocksOfShown(truthLines(check, issued), {table: 'Found, and hidden, in percent', picture: ''}),
				},
			]
		: [];
