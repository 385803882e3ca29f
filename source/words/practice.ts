import {practice} from './en/practice/index.js';

/** What practice says: apart from the other words, so that the first screen need not wait for it. */
export const practiceWords = practice;
