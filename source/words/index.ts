import {sentences} from '#language/index';

/** What a language says: every sentence by its id, those with values as functions of them. */
export type Words = typeof sentences;

/** The sentences of the language in use. */
export const words: Words = sentences;
