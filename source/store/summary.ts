import type {PastCheck} from '../check/past-check.js';

/** What the index of past checks keeps of each. */
export type Summary = PastCheck;
