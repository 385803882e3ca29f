import {words} from './index.js';
import {speaker} from './speaker.js';

/** Why the next check is due when it is. */
export const nextCheckText = speaker(words.results.nextCheck);
/** Why a profile was not changed. */
export const profileRefusalText = speaker(words.results.profileRefused);
export const obstacleText = speaker(words.results.obstacles);
export const noteText = speaker(words.results.notes);
