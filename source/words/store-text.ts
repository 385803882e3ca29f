import type {StoreFault} from '../store/store-fault.js';
import {words} from './index.js';
import {speaker} from './speaker.js';

/** What a person reads of trouble on the disk. */
export const storeText: (fault: StoreFault) => string = speaker(words.store);
