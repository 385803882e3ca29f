import type {NotedEvent} from './arm-event.js';
import type {Place, ProbeEnd} from './places.js';
import type {AnswerValue, IdOf, OptionOf, ProfileKind, StepId} from './step-ids.js';

/** One round: the readings at both hold limits, positive toward the rim; with the gauge turned, in the gauge's own sign. */
export type HoldLimits = {readonly innerLimit: number; readonly outerLimit: number; readonly gauge?: 'turned'};

/** A profile of an arm, a cartridge or a set of tools: the answers of its steps, used again with one key. */
export type Profile = {
	readonly id: string;
	readonly kind: ProfileKind;
	readonly name: string;
	readonly answers: Readonly<Record<string, {readonly typed: string; readonly value: AnswerValue}>>;
	readonly usedAt: string;
	/** Names that it had before; past checks are found under them too. */
	readonly formerNames?: readonly string[] | undefined;
	/** Not offered any more; its past checks stay. */
	readonly setAside?: true | undefined;
	/** When it was last renamed or corrected outside a check: what a check took over before does not undo that. */
	readonly correctedAt?: string | undefined;
	/** What was done to the arm, as it was noted outside checks; only added to. */
	readonly events?: readonly NotedEvent[] | undefined;
};

/** What steps may look at: the answers by step id, read by type, and the profiles on file. */
export type Facts = {
	/** A number in its base unit; undefined when not answered or not known. */
	readonly number: (step: IdOf<'number' | 'signed'>) => number | undefined;
	readonly text: (step: IdOf<'text' | 'clock' | 'choice' | 'profile'>) => string | undefined;
	/** True only when confirmed with yes. */
	readonly yes: (step: IdOf<'confirm'>) => boolean;
	readonly is: <Id extends IdOf<'choice' | 'verdict'>>(step: Id, ...values: readonly OptionOf<Id>[]) => boolean;
	readonly list: (step: IdOf<'ticks' | 'several' | 'bias-result'>) => readonly string[];
	readonly answered: (step: StepId) => boolean;
	/** Answered at some time, even if the step is hidden now. */
	readonly everAnswered: (step: StepId) => boolean;
	/** The value was answered, with 'not known'. */
	readonly unknown: (step: StepId) => boolean;
	/** Complete rounds of the present series that count, in base units. */
	readonly rounds: (place: Place) => readonly HoldLimits[];
	/** How many rounds are asked for at each radius. */
	readonly roundsEach: number;
	/** Where the present series only shows what a remedy did; undefined where the arm is judged by it. */
	readonly shownAt: readonly ProbeEnd[] | undefined;
	/** Arm and gauge are set up anew for each round. */
	readonly setAnew: boolean;
	/** An earlier check of the same arm is on file, whether or not its answers were filled in. */
	readonly isRecheck: boolean;
	/** A shop makes the check: customers are asked about. */
	readonly isShop: boolean;
	readonly profiles: readonly Profile[];
	/** The remedies that were tried, by id, oldest first. */
	readonly tried: readonly string[];
	/** What is asked again on return, by doubt id. */
	readonly doubts: readonly string[];
	readonly limits: VerdictLimits;
};

/** Limits of the verdict in percent of playing tracking force. */
export type VerdictLimits = {
	readonly pullGoodPct: number;
	readonly pullUsablePct: number;
	readonly bandGoodPct: number;
	readonly bandUsablePct: number;
};

/** Three rounds show how well they repeat; more is always possible. */
export const usualRounds = 3;
/** So many show what a remedy did (common practice, no source). */
export const roundsToSee = 2;

type Values = Readonly<Record<string, {readonly value: AnswerValue} | undefined>>;
type Sources = {
	/** Answers of visible steps. */
	readonly answers: Values;
	/** All answers on file, hidden ones included; the same when left out. */
	readonly onFile?: Values;
	readonly rounds?: (place: Place) => readonly HoldLimits[];
	readonly roundsEach?: number | undefined;
	readonly shownAt?: readonly ProbeEnd[] | undefined;
	readonly setAnew?: boolean;
	readonly isRecheck?: boolean;
	readonly isShop?: boolean;
	readonly profiles?: readonly Profile[];
	readonly tried?: readonly string[];
	readonly doubts?: readonly string[];
	readonly limits: VerdictLimits;
};

export function factsOf({
	answers,
	onFile = answers,
	rounds = () => [],
	roundsEach = usualRounds,
	shownAt,
	setAnew = true,
	isRecheck = false,
	isShop = false,
	profiles = [],
	tried = [],
	doubts = [],
	limits,
}: Sources): Facts {
	const value = (step: StepId): AnswerValue | undefined => answers[step]?.value;
	return {
		number: (step) => {
			const found = value(step);
			return typeof found === 'number' ? found : undefined;
		},
		text: (step) => {
			const found = value(step);
			return typeof found === 'string' && found !== '' ? found : undefined;
		},
		yes: (step) => value(step) === true,
		is: (step, ...values) => values.some((one) => one === value(step)),
		list: (step) => {
			const found = value(step);
			return Array.isArray(found) ? found : [];
		},
		answered: (step) => value(step) !== undefined,
		everAnswered: (step) => onFile[step] !== undefined,
		unknown: (step) => value(step) === null || value(step) === '',
		rounds,
		roundsEach,
		shownAt,
		setAnew,
		isRecheck,
		isShop,
		profiles,
		tried,
		doubts,
		limits,
	};
}
