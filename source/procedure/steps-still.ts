import type {Facts} from './facts.js';
import {type Step, step} from './step.js';
import {forceSteps, guardSteps, levelSteps} from './step-groups.js';
import type {DoubtId, StepId} from './step-ids.js';
import {armSteps} from './steps-arm.js';
import {cartridgeSteps} from './steps-cartridge.js';
import {toolsSteps} from './steps-tools.js';

type DoubtItem = {
	readonly label: string;
	readonly steps: readonly StepId[];
	/** The answers that stand beside the question; all of them when left out. */
	readonly shows?: readonly StepId[];
	/** Not asked once this step was answered. */
	readonly unless?: StepId;
};

/** What may have changed while the check was left, asked again with one key each. */
export type Doubt = {
	readonly id: DoubtId;
	readonly title: string;
	readonly ask: string;
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
		title: 'As last time?',
		ask: 'This was filled in from the last check and from the profiles. Is all of it still so?',
		items: [
			{
				label: 'arm: lengths, wires, bias device, probe radii',
				steps: profileStepsOf(armSteps),
				shows: [
					'arm-name',
					'arm-length',
					'arm-pivot-distance',
					'arm-wire-stiffness',
					'arm-bias-device',
					'radius-inner',
					'radius-outer',
				],
			},
			{
				label: 'cartridge, its guard and tracking force',
				steps: profileStepsOf(cartridgeSteps),
				shows: ['cartridge-name', 'playing-force', 'guard-mass', 'guard-depth'],
			},
			{
				label: 'gauge, scale and level',
				steps: profileStepsOf(toolsSteps),
				shows: ['tools-name', 'gauge-step'],
			},
			{label: 'mat as before', steps: ['mat', 'mat-thickness']},
		],
		offered: true,
	},
	{
		id: 'conditions',
		newSeries: true,
		title: 'All still so?',
		ask: 'Some of this may have changed since. Is all of it still so?',
		items: [
			{label: 'guard as before', steps: guardSteps},
			{label: 'damper free of the arm', steps: ['damping-off']},
			{label: 'bias off', steps: ['bias-off'], unless: 'bias-on'},
			{label: 'wires free, nothing touches', steps: ['wires']},
			{label: 'height unchanged', steps: ['clearance']},
		],
	},
	{
		id: 'bias-on',
		newSeries: false,
		title: 'Bias still as set?',
		ask: 'The bias device was set some time ago. Has it been left alone?',
		items: [{label: 'bias device as set', steps: ['bias-weight', 'bias-on']}],
	},
	{
		id: 'level',
		newSeries: true,
		title: 'Level still so?',
		ask: 'The level was read some time ago. Has the deck stood untouched?',
		items: [{label: 'level', steps: levelSteps}],
	},
	{
		id: 'force',
		newSeries: true,
		title: 'Tracking force still so?',
		ask: 'The tracking force was weighed some time ago. Is it still the same?',
		items: [{label: 'tracking force', steps: forceSteps}],
	},
	{
		id: 'room',
		newSeries: false,
		title: 'Room still so?',
		ask: 'Is the room still about as warm?',
		items: [{label: 'room temperature', steps: ['room-temperature']}],
	},
];

/** The doubt that a step asks about. */
export const doubtAskedBy = ({id}: Step): Doubt | undefined => doubts.find((doubt) => stepOfDoubt(doubt.id) === id);

/** Asked first on return, one screen a doubt. */
export const stillSteps: readonly Step[] = doubts.map(({id, title, ask}) =>
	step(stepOfDoubt(id), {
		stage: 'resume',
		title,
		ask,
		why: 'Readings taken under changed conditions must not be mixed with the earlier ones. What has changed is asked anew, and a new series begins.',
		mistake: 'Saying yes from memory: look.',
		input: {kind: 'still'},
		// Once the verdict was read nothing hangs on it, unless the probe is taken up again.
		when: (facts) => facts.doubts.includes(id) && (!facts.everAnswered('verdict') || isSettingBias(facts)),
	}),
);

/** The bias is being set: readings hang on the conditions once more. */
const isSettingBias = (facts: Facts): boolean => facts.everAnswered('bias-on') && !facts.everAnswered('bias-result');
