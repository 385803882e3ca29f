import type {Trouble} from '../procedure/problem.js';
import {words} from './index.js';
import {speaker} from './speaker.js';

const say = speaker(words.problems);

/** What a person reads of a problem: one sentence, or one for each line left; nothing where nothing is wrong. */
export const problemText = (trouble: Trouble | undefined): string => (trouble ? say(trouble) : '');
