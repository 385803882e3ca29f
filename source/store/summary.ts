import type {PastCheck} from '../findings/past-check.js';

/** What the index of past checks keeps of each. */
export type Summary = PastCheck;
