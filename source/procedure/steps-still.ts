import type {Facts} from './facts.js';
import {type Step, stepsOf} from './step.js';
import {forceSteps, guardSteps, heightSteps, levelSteps} from './step-groups.js';
import type {DoubtId, StepId} from './step-ids.js';
import {armSteps} from './steps-arm.js';
import {toolsSteps} from './steps-tools.js';

export type DoubtItemId =
	| 'arm'
	| 'cartridge'
	| 'tools'
	| 'mat'
	| 'guard'
	| 'damping'
	| 'bias-off'
	| 'wires'
	| 'height'
	| 'bias-set'
	| 'level'
	| 'force'
	| 'room';

type DoubtItem = {
	readonly id: DoubtItemId;
	readonly steps: readonly StepId[];
	/** The answers that stand beside the question; all of them when left out. */
	readonly shows?: readonly StepId[];
	/** Not asked once this step was answered. */
	readonly unless?: StepId;
};

/** What may have changed while the check was left, asked again with one key each. */
export type Doubt = {
	readonly id: DoubtId;
	/** What can have changed: shown as a numbered list, with the steps that are asked anew then. */
	readonly items: readonly DoubtItem[];
	/** What was answered stays as an offer; and it is asked only where it was said to be in doubt. */
	readonly offered?: true;
	/** Readings from before and after such a change are kept apart. */
	readonly newSeries: boolean;
};

/** The step that asks about a doubt. */
export const stepOfDoubt = (doubt: DoubtId): `still-${DoubtId}` => `still-${doubt}`;

/** The questions of a profile, without the one that picks it. */
const profileStepsOf = (list: readonly Step[]): StepId[] =>
	list.filter(({input}) => input.kind !== 'profile').map(({id}) => id);

export const doubts: readonly Doubt[] = [
	{
		id: 'last-time',
		newSeries: true,
		items: [
			{
				id: 'arm',
				steps: profileStepsOf(armSteps),
				shows: [
					'arm-name',
					'arm-length',
					'arm-pivot-distance',
					'playing-force',
					'arm-loading',
					'arm-bias-device',
					'radius-inner',
					'radius-outer',
				],
			},
			{
				id: 'guard',
				steps: ['guard-mass', 'guard-depth'],
			},
			{
				id: 'tools',
				steps: profileStepsOf(toolsSteps),
				shows: ['tools-name', 'gauge-mount', 'gauge-unit', 'gauge-step', 'gauge-top'],
			},
		],
		offered: true,
	},
	{
		id: 'conditions',
		newSeries: true,
		items: [
			{id: 'guard', steps: guardSteps},
			{id: 'damping', steps: ['damping-off']},
			{id: 'bias-off', steps: ['bias-off'], unless: 'bias-on'},
			{id: 'wires', steps: ['wires']},
			{id: 'height', steps: heightSteps},
		],
	},
	{
		id: 'bias-on',
		newSeries: false,
		items: [{id: 'bias-set', steps: ['bias-weight', 'bias-on']}],
	},
	{
		id: 'level',
		newSeries: true,
		items: [{id: 'level', steps: levelSteps}],
	},
	{
		id: 'force',
		newSeries: true,
		items: [{id: 'force', steps: forceSteps}],
	},
];

/** The doubt that a step asks about. */
export const doubtAskedBy = ({id}: Step): Doubt | undefined => doubts.find((doubt) => stepOfDoubt(doubt.id) === id);

/** The bias is being set: readings hang on the conditions once more. */
const isSettingBias = (facts: Facts): boolean => facts.everAnswered('bias-on') && !facts.everAnswered('bias-result');

const resume = stepsOf('resume');

/** What comes before the arm: what was done since where a check is repeated, one screen a doubt on return. */
export const firstSteps: readonly Step[] = [
	resume('done-since', {when: (facts) => facts.isRecheck}),
	resume('done-since-note', {when: (facts) => facts.list('done-since').includes('other')}),
	...doubts.map(({id}) =>
		resume(stepOfDoubt(id), {
			// Once the verdict was read nothing hangs on it, unless the probe is taken up again.
			when: (facts) => facts.doubts.includes(id) && (!facts.everAnswered('verdict') || isSettingBias(facts)),
		}),
	),
];
