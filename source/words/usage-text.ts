import {type UsageFaultValues, usage} from '#language/commands/usage';
import type {Said} from '../said.js';
import {speaker} from './speaker.js';

export type UsageFaultSaid = Said<UsageFaultValues>;

/** What is wrong with a command line. */
export const usageText: (fault: UsageFaultSaid) => string = speaker(usage);
