import {words} from '../words/index.js';

/** How characters beyond ASCII are written where the terminal has no more. */
const spellings: Readonly<Record<string, string>> = words.faces.spellings;

const beyond = new RegExp(Object.keys(spellings).join('|'), 'gu');

/** A text without the characters that the program itself uses beyond ASCII. */
export const ascii = (text: string): string => text.replace(beyond, (one) => spellings[one] ?? one);
