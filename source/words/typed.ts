/**
 * A number that was typed, perhaps under another language, as the language in use writes it. What is kept stays as it was
 * typed; what was typed is read alike in all languages, so nothing changes but how it looks.
 */

import {entries} from '#language/entries';
import {locale} from '#language/locale';
import type {SideWord} from '../procedure/step.js';
import {spellings} from '../spellings.js';

const NUMBER = /^([-+\u2212]?\s*\d*)[.,](?=\d)/;
const LAST_WORD = /(?<=\d.*)\p{L}+$/u;

/** With the decimal mark of the language: '2,5 g' is '2.5 g'. */
export const numberTyped = (typed: string): string => typed.replace(NUMBER, `$1${locale.decimalMark}`);

/** With its side as well: '2,5 % außen' is '2.5 % out'. */
export const signedTyped = (typed: string): string => {
	const sides = Object.entries(entries.written.sides) as [SideWord, string][];
	const written = (word: string): string =>
		sides.find(([side]) => spellings[side].some((one) => one === word.toLowerCase()))?.[1] ?? word;
	return numberTyped(typed).replace(LAST_WORD, written);
};
