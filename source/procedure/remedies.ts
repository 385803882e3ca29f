import type {Facts} from './facts.js';
import {isPushedByHand} from './readings.js';
import {forceSteps, guardSteps, heightSteps, levelSteps} from './step-groups.js';
import type {StepId} from './step-ids.js';

/** One suspect: what is looked at or changed at the bench before the arm is probed again. */
type Remedy = {
	/** Steps that are asked again before the new series. */
	readonly steps: readonly StepId[];
	/** Roughly how long it takes, without the rounds after it; defaults of this project. */
	readonly minutes: number;
	readonly who: 'owner' | 'technician';
	/** The figure that tells whether it was the cause. */
	readonly shows: 'pull' | 'band';
	/** Where {@link roundsToSee} rounds suffice to see it: at one radius or at both; 'closing': only a whole series shows it. */
	readonly seenAt: 'one' | 'both' | 'closing';
	/** Hands go to wires, linkage, pulley or bearing, guard on, amplifier off, the arm locked, or free where it must be moved. */
	readonly delicateWith?: 'locked' | 'free';
	/** The deck is not as it is used afterwards: what puts it back, asked again with whatever comes next. */
	readonly undoneBy?: 'force' | 'leads';
	readonly when?: (facts: Facts) => boolean;
};

const looked = {steps: [], minutes: 2, who: 'technician', shows: 'pull', seenAt: 'both'} as const;
const delicate = {...looked, minutes: 10, delicateWith: 'locked', steps: ['wires']} as const;

/** The gauge stands, hangs or is clamped under the arm; a floating arm has neither force nor height. */
const carriesArm = (facts: Facts): boolean => !isPushedByHand(facts);

const byId = {
	bias: {...delicate, minutes: 3, steps: ['bias-off'], when: (facts) => facts.answered('bias-off')},
	level: {...looked, steps: levelSteps, minutes: 10, who: 'owner'},
	leads: delicate,
	damping: {
		...looked,
		minutes: 5,
		steps: ['damping-off'],
		shows: 'band',
		when: (facts) => facts.answered('damping-off'),
	},
	force: {...looked, steps: [...guardSteps, ...forceSteps], minutes: 5, when: carriesArm},
	height: {...looked, steps: heightSteps, minutes: 3, when: carriesArm},
	again: {...looked, seenAt: 'closing'},
	'gauge-foot': {...looked, seenAt: 'closing', when: carriesArm},
	platter: {...looked, minutes: 1, seenAt: 'closing', when: carriesArm},
	'still-deck': {...looked, minutes: 1, seenAt: 'closing'},
	'gauge-zero': {...looked, steps: ['gauge-turns'], minutes: 3},
	'half-force': {...looked, steps: forceSteps, minutes: 5, seenAt: 'one', undoneBy: 'force', when: carriesArm},
	'lead-loop': {...delicate, delicateWith: 'free'},
	'leads-off': {...delicate, minutes: 15, undoneBy: 'leads'},
	magnet: looked,
	'cartridge-weight': {...looked, steps: [...guardSteps, ...forceSteps], minutes: 20, undoneBy: 'force'},
	lifter: {...looked, steps: ['lifter-clear'], shows: 'band'},
	'gauge-friction': {...looked, shows: 'band', seenAt: 'one'},
	touching: {...delicate, steps: ['wires', ...guardSteps, ...heightSteps], shows: 'band'},
	'along-swing': {...delicate, minutes: 5, shows: 'band'},
	repeat: {...delicate, steps: ['wires', ...heightSteps], seenAt: 'one'},
} as const satisfies Readonly<Record<string, Remedy>>;

export type RemedyId = keyof typeof byId;

export const remedyById: Readonly<Record<RemedyId, Remedy>> = byId;

/** What can be tried at the bench at once; each closes the series and opens a new one. */
export const remedies: readonly (Remedy & {readonly id: RemedyId})[] = (Object.keys(byId) as RemedyId[]).map((id) => ({
	...remedyById[id],
	id,
}));

/** Steps that are asked again with a remedy; where the one before left the deck otherwise than it is used, that too. */
export const stepsOfRemedy = (id: RemedyId, before: RemedyId | undefined): readonly StepId[] => {
	const {undoneBy} = before ? remedyById[before] : {};
	return [...new Set([...(undoneBy ? remedyById[undoneBy].steps : []), ...remedyById[id].steps])];
};

/** Whether a text is the id of a remedy: what is stored may come from a later version. */
export const isRemedyId = (id: unknown): id is RemedyId => typeof id === 'string' && Object.hasOwn(byId, id);

/** Remedies that make sense whatever was found, beside the suspects of a finding. */
export const usualRemedies = [
	'level',
	'leads',
	'bias',
	'damping',
	'force',
	'height',
	'again',
] as const satisfies readonly RemedyId[];
