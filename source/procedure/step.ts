import type {UnitId} from '../units.js';
import type {Deck, Finds} from './deck.js';
import type {Facts} from './facts.js';
import type {Place} from './places.js';
import type {Problem} from './problem.js';
import type {OverrideReason} from './reasons.js';
import {
	type AnswerKind,
	type AnswerValue,
	answerKinds,
	type IdOf,
	type KindOf,
	type OptionOf,
	type ProfileKind,
	type StepId,
	severalOptions,
} from './step-ids.js';
import type {StepValues} from './step-values.js';

/** The stages of a check, in the order in which they come; the head line counts them. */
export const stages = [
	'resume',
	'arm',
	'tools',
	'safe',
	'mat',
	'level',
	'damping',
	'bias',
	'wires',
	'force',
	'clearance',
	'probe',
	'verdict',
	'bias-on',
	'back',
	'next',
] as const;
export type StageId = (typeof stages)[number];

/** Stages whose questions stand on one page, line under line: what is known before the hands do anything. */
export const sheetStages: readonly StageId[] = ['arm', 'tools', 'level', 'bias', 'clearance'];

/** What can be chosen, with what it is called. */
export type Option = {readonly id: string; readonly label: string; readonly number?: number};

/** Two directions with a word each; the first is the positive one. */
export type Sides = {
	readonly plus: Side;
	readonly minus: Side;
	/** What a typed + or − means: the sign of the gauge, or nothing at all (then a word is asked for). */
	readonly sign: 'of-gauge' | 'means-nothing';
	/** What the words mean: the direction itself, or the sign that the gauge shows. */
	readonly words: 'direction' | 'sign-of-gauge';
};
export type SideWord = 'out' | 'in' | 'right' | 'left' | 'back' | 'front' | 'plus' | 'minus';
/** A side by its word, with all that may be typed for it. */
export type Side = {readonly word: SideWord; readonly spelled: readonly string[]};

type ChoiceInput<Id extends string> = {readonly kind: 'choice'; readonly options: readonly Id[]};

/** What kind of answer is asked. A face has one component per kind, none per step. */
export type Input =
	| {readonly kind: 'text'; readonly optional?: boolean}
	| ChoiceInput<string>
	/** One or more of these; the first stands alone. */
	| {readonly kind: 'several'; readonly options: readonly string[]}
	| {readonly kind: 'confirm'}
	| {readonly kind: 'ticks'; readonly lines: readonly string[] | ((facts: Facts) => readonly string[])}
	| {
			readonly kind: 'number';
			readonly unit: UnitId | ((facts: Facts) => UnitId);
			/** Smallest and largest believable value in the base unit; outside it the entry is refused with both. */
			readonly between: readonly [number, number] | ((facts: Facts) => readonly [number, number]);
			/** An empty answer means 'not known'. */
			readonly optional?: boolean;
	  }
	| {
			readonly kind: 'signed';
			readonly unit: UnitId | ((facts: Facts) => UnitId);
			readonly sides: Sides;
			readonly between: readonly [number, number] | ((facts: Facts) => readonly [number, number]);
			readonly optional?: boolean;
	  }
	/** A time of the clock face, kept as 'h:mm'. */
	| {readonly kind: 'clock'; readonly optional?: boolean}
	| {readonly kind: 'profile'; readonly of: ProfileKind}
	| {readonly kind: 'still'}
	| {readonly kind: 'rounds'; readonly place: Place}
	| {readonly kind: 'verdict'}
	| {readonly kind: 'bias-result'};

/**
 * One question of the procedure, as data. Adding a step is adding one of these to its stage's list:
 * screen, plain line, progress, back, resume and the stored answer follow by themselves.
 */
export type Step = {
	/** Never shown, stored with the answer. */
	readonly id: StepId;
	readonly stage: StageId;
	readonly input: Input;
	/** What its words depend on; the sentences themselves stand in `words/`. */
	readonly values?: (facts: Facts) => StepValues[keyof StepValues];
	/** Shown and asked only when this holds. */
	readonly when?: (facts: Facts) => boolean;
	/**
	 * Not asked: what is taken where no profile and no earlier answer says otherwise, null for 'not known'. Where it gives
	 * undefined there is nothing usual, and the step is asked.
	 */
	readonly usual?: (facts: Facts) => AnswerValue | undefined;
	/** Not asked, and yet in the list of steps: what is usual can be changed there. */
	readonly listed?: true;
	/** How the deck must stand when this is asked. */
	readonly finds?: Finds | ((facts: Facts) => Finds);
	/** How the deck stands once this is done. */
	readonly leaves?: (facts: Facts) => Partial<Deck>;
	/** Says what is wrong with an accepted answer and the ways out; undefined when it passes. */
	readonly verify?: (facts: Facts) => Problem | undefined;
	/** What is offered in the empty field; Enter takes it. */
	readonly suggest?: (facts: Facts) => string | undefined;
	/** Asked again because it was to be changed: what it was is told, not offered, lest an Enter keep it unseen. */
	readonly typedAnew?: true;
	/** After this time the answer is asked again on return. */
	readonly staysTrueMinutes?: number;
	/** Answers to be confirmed again when this one changes; 'rounds' closes the series, 'trial' the bias setting. */
	readonly touches?: readonly (StepId | 'rounds' | 'trial')[];
	/** Belongs to the profile that is kept and used again. */
	readonly profile?: ProfileKind;
	/** Of a customer: told on the customer's sheet, in no other report, and in no export but a back-up. */
	readonly isPrivate?: true;
	/** Reasons offered when someone goes on although it does not pass. */
	readonly reasons?: readonly OverrideReason[];
};

type InputOf<Id extends StepId> =
	Id extends IdOf<'choice'> ? ChoiceInput<OptionOf<Id>> : Extract<Input, {kind: KindOf<Id>}>;

/** What is said of an answer besides its kind, which the table of ids says; what a choice offers is its row there. */
type PartsOf<Id extends StepId> = Omit<InputOf<Id>, 'kind' | 'options'>;

/** What a step is besides its id and its stage. */
type Rest<Id extends StepId> = Omit<Step, 'id' | 'stage' | 'input' | 'values'> &
	(Partial<PartsOf<Id>> extends PartsOf<Id> ? {readonly input?: PartsOf<Id>} : {readonly input: PartsOf<Id>}) &
	(Id extends keyof StepValues ? {readonly values: (facts: Facts) => StepValues[Id]} : {readonly values?: never});

/** A maker of the steps of one stage, each by its id. */
export const stepsOf =
	(stage: StageId) =>
	<Id extends StepId>(id: Id, rest: Rest<Id>): Step & {readonly id: Id; readonly input: InputOf<Id>} => {
		const kind: AnswerKind | readonly string[] = answerKinds[id];
		const answer = typeof kind === 'string' ? {kind, ...offeredAt(id)} : {kind: 'choice', options: kind};
		// The rows of the table and the parts of an input are held together by `Rest`; the compiler cannot see it here.
		return {...rest, id, stage, input: {...answer, ...rest.input} as unknown as InputOf<Id>};
	};

const offeredAt = (id: StepId): {readonly options?: readonly string[]} =>
	id in severalOptions ? {options: severalOptions[id as IdOf<'several'>]} : {};

/** A step that is answered in this way. */
export type StepOf<Kind extends AnswerKind> = Step & {
	readonly id: IdOf<Kind>;
	readonly input: Extract<Input, {kind: Kind}>;
};

export const takes = <Kind extends AnswerKind>(asked: Step, kind: Kind): asked is StepOf<Kind> =>
	asked.input.kind === kind;

/**
 * Puts a 'pick or enter' question before the questions of a profile. The picker is asked while there is something
 * to pick from and the first question is still open; the questions come when one was picked, or there is none.
 */
export function withProfile(picker: StepOf<'profile'>, asked: readonly Step[]): readonly Step[] {
	const kind = picker.input.of;
	const started = (facts: Facts) => asked.some((step) => !step.usual && facts.everAnswered(step.id));
	const onFile = (facts: Facts) => facts.profiles.some((one) => one.kind === kind && !one.setAside);
	return [
		{...picker, when: (facts) => facts.everAnswered(picker.id) || (onFile(facts) && !started(facts))},
		...asked.map(
			(step): Step => ({
				...step,
				profile: kind,
				when: (facts) =>
					(facts.everAnswered(picker.id) || started(facts) || !onFile(facts)) && (step.when?.(facts) ?? true),
			}),
		),
	];
}
