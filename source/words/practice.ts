import {practice} from '#language/practice/index';

/** What practice says: apart from the other words, so that the first screen need not wait for it. */
export const practiceWords = practice;
