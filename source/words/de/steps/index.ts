import type {StepSentences} from '../../step-sentences.js';
import {arm} from './arm.js';
import {biasOn} from './bias-on.js';
import {cartridge} from './cartridge.js';
import {customer} from './customer.js';
import {level} from './level.js';
import {pivot} from './pivot.js';
import {probe} from './probe.js';
import {putBack} from './put-back.js';
import {radii} from './radii.js';
import {safe} from './safe.js';
import {setting} from './setting.js';
import {since} from './since.js';
import {still} from './still.js';
import {tools} from './tools.js';
import {weighing} from './weighing.js';

/** What each step says: its title, what to do, why, and the usual mistake. */
export const steps: StepSentences = {
	...since,
	...still,
	...safe,
	...arm,
	...pivot,
	...radii,
	...cartridge,
	...customer,
	...tools,
	...setting,
	...level,
	...weighing,
	...probe,
	...biasOn,
	...putBack,
};
