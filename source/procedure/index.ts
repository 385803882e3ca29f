import type {Place} from './places.js';
import {type StageId, type Step, takes} from './step.js';
import type {ProfileKind, StepId} from './step-ids.js';
import {armSteps, customerSteps} from './steps-arm.js';
import {biasOnSteps} from './steps-bias-on.js';
import {probeSteps} from './steps-probe.js';
import {putBackSteps} from './steps-put-back.js';
import {safeSteps} from './steps-safe.js';
import {settingSteps} from './steps-setting.js';
import {firstSteps} from './steps-still.js';
import {toolsSteps} from './steps-tools.js';
import {weighingSteps} from './steps-weighing.js';

/** The whole procedure, in the order in which it is asked. */
export const procedure: readonly Step[] = [
	...firstSteps,
	...armSteps,
	...customerSteps,
	...toolsSteps,
	...safeSteps,
	...settingSteps,
	...weighingSteps,
	...probeSteps,
	...biasOnSteps,
	...putBackSteps,
];

const byId: ReadonlyMap<string, Step> = new Map(procedure.map((step) => [step.id, step]));

/** The step of an id as it is stored; undefined for one that this procedure does not know. */
export const stepById = (id: string): Step | undefined => byId.get(id);

/** The stage of a step. */
export const stageOf = (id: string): StageId | undefined => stepById(id)?.stage;

/** Where the rounds of a step are taken; undefined where the step takes none. */
export function placeOfRounds(id: string): Place | undefined {
	const step = stepById(id);
	return step && takes(step, 'rounds') ? step.input.place : undefined;
}

/** Whether a step is a line of the put-back list. */
export const isPutBack = (id: string): boolean => stageOf(id) === 'back';

/** Stages that stay when the check is stopped early: the deck must be put back all the same. */
export const afterStop: readonly StageId[] = ['back', 'next'];

/** The steps whose answers a profile of this kind keeps. */
export const profileSteps = (kind: ProfileKind): StepId[] =>
	procedure.filter((step) => step.profile === kind).map((step) => step.id);
