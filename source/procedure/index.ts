import type {ProfileKind, StageId, Step} from './step.js';
import {armSteps} from './steps-arm.js';
import {biasOnSteps} from './steps-bias-on.js';
import {cartridgeSteps} from './steps-cartridge.js';
import {probeSteps} from './steps-probe.js';
import {putBackSteps} from './steps-put-back.js';
import {safeSteps} from './steps-safe.js';
import {settingSteps} from './steps-setting.js';
import {sinceSteps} from './steps-since.js';
import {stillSteps} from './steps-still.js';
import {toolsSteps} from './steps-tools.js';
import {weighingSteps} from './steps-weighing.js';

/** The whole procedure, in the order in which it is asked. */
export const procedure: readonly Step[] = [
	...sinceSteps,
	...stillSteps,
	...safeSteps,
	...armSteps,
	...cartridgeSteps,
	...toolsSteps,
	...settingSteps,
	...weighingSteps,
	...probeSteps,
	...biasOnSteps,
	...putBackSteps,
];

const byId: ReadonlyMap<string, Step> = new Map(procedure.map((step) => [step.id, step]));

export const stepById = (id: string): Step | undefined => byId.get(id);

/** Stages that stay when the check is stopped early: the deck must be put back all the same. */
export const afterStop: readonly StageId[] = ['back', 'next'];

/** The steps whose answers a profile of this kind keeps. */
export const profileSteps = (kind: ProfileKind): string[] =>
	procedure.filter((step) => step.profile === kind).map((step) => step.id);
