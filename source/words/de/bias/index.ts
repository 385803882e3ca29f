import {advice} from './advice.js';
import {curve} from './curve.js';
import {groove} from './groove.js';
import {lever} from './lever.js';
import {setting} from './setting.js';

/** The bias setting. */
export const bias = {advice, curve, groove, lever, setting};
