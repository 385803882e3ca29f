/** How a step is answered. */
export type AnswerKind =
	| 'text'
	| 'choice'
	/** One or more of a list. */
	| 'several'
	| 'confirm'
	| 'ticks'
	| 'number'
	| 'signed'
	| 'clock'
	| 'profile'
	| 'still'
	| 'rounds'
	| 'verdict'
	| 'bias-result';

export type AnswerValue = string | number | boolean | null | readonly string[];
export type ProfileKind = 'arm' | 'cartridge' | 'tools';

/**
 * Every step by its id, with the kind of its answer: of a choice the ids that it offers. From this table the compiler
 * knows which ids there are and what each may be asked for: an id that is none, or a text asked for a number, does not
 * compile, nor does a step of another kind than its row. It stands apart from the steps because their rules look at
 * answers by these very types, and no type can be worked out from itself.
 */
export const answerKinds = {
	'done-since': 'several',
	'done-since-note': 'text',
	'still-last-time': 'still',
	'still-conditions': 'still',
	'still-bias-on': 'still',
	'still-level': 'still',
	'still-force': 'still',
	'arm-profile': 'profile',
	'arm-name': 'text',
	'arm-length': 'number',
	'arm-pivot-distance': 'number',
	'arm-pivot-way': ['nulls', 'offset'],
	'arm-offset': 'number',
	'arm-null-radius': 'number',
	'arm-null-other': 'number',
	'cartridge-profile': 'profile',
	'playing-force': 'number',
	'arm-loading': ['gravity', 'spring'],
	'arm-bias-device': ['none', 'weight-on-thread', 'weighted-lever', 'spring', 'magnet', 'other'],
	'arm-serial': 'text',
	'arm-gravity-centre': ['near', 'far'],
	'arm-auto-stop': ['no', 'yes'],
	'radius-inner': 'number',
	'radius-outer': 'number',
	'radius-extra': 'number',
	'cartridge-name': 'text',
	'force-low': 'number',
	'force-high': 'number',
	'cartridge-compliance': 'number',
	'cartridge-cantilever': 'number',
	'customer-name': 'text',
	'customer-complaint': 'text',
	'tools-profile': 'profile',
	'tools-name': 'text',
	'gauge-mount': ['stands', 'hangs', 'clamped', 'hand'],
	'gauge-unit': ['percent', 'mN', 'gf'],
	'gauge-step': 'number',
	'gauge-top': 'number',
	'gauge-sign': ['arm-out', 'arm-in', 'hand-out', 'hand-in'],
	'gauge-turns': ['inner', 'outer', 'no'],
	'gauge-scale-uncertainty': 'number',
	'gauge-nudge': 'number',
	'scale-step': 'number',
	'scale-uncertainty': 'number',
	'level-step': 'number',
	safe: 'ticks',
	'guard-mass': 'number',
	'guard-on': ['on', 'no-guard'],
	'guard-depth': 'number',
	mat: ['on', 'on-steel', 'off'],
	'mat-thickness': 'number',
	'arm-pivot-place': ['right-rear', 'right', 'rear', 'left-rear', 'left', 'left-front', 'front', 'right-front'],
	'deck-sprung': ['no', 'yes'],
	'level-lr-1': 'signed',
	'level-lr-2': 'signed',
	'level-fb-1': 'signed',
	'level-fb-2': 'signed',
	'arm-damping': ['no', 'yes'],
	'damping-off': 'confirm',
	'bias-setting': 'text',
	'bias-off': 'confirm',
	'arm-bearing': ['gimbal', 'unipivot', 'multi-point', 'other'],
	'arm-wire-path': ['inside', 'free-loop'],
	'arm-wire-stiffness': ['limp', 'medium', 'stiff'],
	wires: 'ticks',
	weighed: ['with', 'without'],
	'guard-account': ['again', 'add'],
	'force-reading': 'number',
	'arm-afloat': 'confirm',
	'guard-gap': 'number',
	clearance: 'number',
	'force-at-height': 'number',
	'lifter-clear': 'confirm',
	'first-swing': 'confirm',
	'zero-free-before': 'signed',
	'probe-inner': 'rounds',
	'probe-outer': 'rounds',
	'probe-extra': 'rounds',
	'probe-closing': 'rounds',
	'zero-free-after': 'signed',
	'probe-end': 'confirm',
	verdict: 'verdict',
	'bias-drag': 'number',
	'bias-radius-middle': 'number',
	'bias-weight': 'number',
	'bias-set': 'text',
	'bias-on': 'confirm',
	'probe-bias-outer': 'rounds',
	'bias-clock-outer': 'clock',
	'bias-angle-outer': 'number',
	'probe-bias-middle': 'rounds',
	'bias-clock-middle': 'clock',
	'bias-angle-middle': 'number',
	'probe-bias-inner': 'rounds',
	'bias-clock-inner': 'clock',
	'bias-angle-inner': 'number',
	'bias-result': 'bias-result',
	'back-lock': 'confirm',
	'back-gauge': 'confirm',
	'back-mat': 'confirm',
	'back-damping': 'confirm',
	'back-blocks': 'confirm',
	'back-leads': 'confirm',
	'back-bias': 'confirm',
	'back-level': 'confirm',
	'back-height': 'confirm',
	'back-weight': 'confirm',
	'back-guard': 'confirm',
	'back-force': 'number',
	'back-upright': 'confirm',
	'back-covers': 'confirm',
	'room-temperature': 'number',
	'room-note': 'text',
	'next-check': 'confirm',
} as const satisfies Readonly<Record<string, AnswerKind | readonly string[]>>;

/** What may be done to an arm or its deck between two checks. */
export const doneKinds = ['levelled', 'leads', 'bearing', 'cartridge', 'moved', 'other'] as const;
export type DoneKind = (typeof doneKinds)[number];

/** What is offered where more than one may be chosen; the first stands alone. */
export const severalOptions = {
	'done-since': ['nothing', ...doneKinds],
} as const satisfies Readonly<Record<IdOf<'several'>, readonly string[]>>;

/** The lines of the lists that are ticked, in the order in which they are asked. */
export const tickLines = {
	safe: ['amplifier', 'mains', 'record', 'platter', 'lock', 'rest'],
	wires: ['upright', 'screws', 'leads', 'rest', 'air', 'lifter', 'static'],
} as const satisfies Readonly<Record<IdOf<'ticks'>, readonly string[]>>;

/** Lines that earlier checks were asked: what they stood for is asked otherwise now. Those that have them keep them. */
export const formerTickLines: readonly string[] = ['safe:rest', 'wires:lifter', 'wires:static'];
/** Lines that came in their place. */
export const newerTickLines: readonly string[] = ['safe:record', 'safe:lock'];

/** The id of a line of a list. */
export type TickLine<Id extends IdOf<'ticks'>> = (typeof tickLines)[Id][number];

type Kinds = typeof answerKinds;

/** The id of a step. */
export type StepId = keyof Kinds;

/** The kind of answer of a step. */
export type KindOf<Id extends StepId> = Kinds[Id] extends readonly string[] ? 'choice' : Kinds[Id];

/** The ids of the steps whose answers are of these kinds. */
export type IdOf<Kind extends AnswerKind> = {[Id in StepId]: KindOf<Id> extends Kind ? Id : never}[StepId];

/** The ids that a choice offers; at the verdict one may go on to the bias. */
export type OptionOf<Id extends IdOf<'choice' | 'several' | 'verdict'>> = Id extends keyof typeof severalOptions
	? (typeof severalOptions)[Id][number]
	: Kinds[Id] extends readonly (infer Option extends string)[]
		? Option
		: 'bias';

/** What is asked again on return: the step of a doubt is called after it. */
export type DoubtId = IdOf<'still'> extends `still-${infer Doubt}` ? Doubt : never;

/** The ids of a set of answers, without what this procedure does not know. */
export const stepIdsOf = (answers: object): StepId[] => Object.keys(answers).filter(isStepId);

/** Whether a text is the id of a step: what is stored may be older than the procedure, or edited by hand. */
export const isStepId = (id: string): id is StepId => Object.hasOwn(answerKinds, id);
