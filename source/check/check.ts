import * as z from 'zod/mini';
import {isStepId, type StepId} from '../procedure/step-ids.js';
import {practiceNotes} from './practice-notes.js';

const instant = z.iso.datetime({offset: true, error: 'instant'});
const finite = z.number({error: 'finite-number'});
/** What an answer may be, in checks and profiles alike. */
export const answerValue = z.union([z.string(), finite, z.boolean(), z.null(), z.readonly(z.array(z.string()))]);

/** Something that is told by its id, with its values. */
const told = z.looseObject({id: z.string(), values: z.record(z.string(), z.unknown())});
/** One of the reasons that were offered, by its id; `typed` where it is another one, in words of its own. */
const reason = z.looseObject({id: z.string(), typed: z.optional(z.string())});
/** Why someone went on although a step did not pass: what did not pass, since it holds only for that. */
const override = z.looseObject({
	problem: told,
	/** The sentence of then, from before a problem was kept by its id. */
	said: z.optional(z.string()),
	reason,
	at: instant,
});
const excuse = z.looseObject({reason, at: instant});

const answer = z.looseObject({
	/** As it was typed, with its unit. */
	typed: z.string(),
	/** In the base unit of `units.ts`. */
	value: answerValue,
	at: instant,
	/** Last time it was confirmed to be still so. */
	confirmedAt: z.optional(instant),
	override: z.optional(override),
	/** An earlier answer changed under it: it must be confirmed again. */
	again: z.optional(z.literal(true)),
});

export type Answer = z.infer<typeof answer>;

/** Answers by step. A step that this procedure does not know stays on file, and is not looked at. */
const answers = z.record(z.string(), answer) as unknown as z.ZodMiniType<Readonly<Partial<Record<StepId, Answer>>>>;

const reading = z.looseObject({typed: z.string(), value: finite, at: instant});

const round = z.looseObject({
	/** The gauge stands end for end: the limits are in its own sign. */
	gauge: z.optional(z.literal('turned')),
	innerLimit: reading,
	outerLimit: z.optional(reading),
	struck: z.optional(excuse),
});

const rounds = z.array(round);

/** Rounds with the bias on; a check on file from before there were any has none. */
const onRounds = z._default(rounds, () => []);

/** A setting of the bias device that was tried: how it was set, and what was read. */
const trial = z.looseObject({
	closedAt: instant,
	answers,
	'bias-outer': rounds,
	'bias-middle': rounds,
	'bias-inner': rounds,
});

const series = z.looseObject({
	openedAt: instant,
	inner: rounds,
	outer: rounds,
	extra: rounds,
	closing: rounds,
	'bias-outer': onRounds,
	'bias-middle': onRounds,
	'bias-inner': onRounds,
	/** Settings of the bias device that were tried before the present one. */
	trials: z._default(z.array(trial), () => []),
	/** Readings taken back, kept for the record. */
	withdrawn: z.array(z.looseObject({place: z.string(), limit: z.string(), reading})),
	closed: z.optional(z.looseObject({at: instant, because: told})),
	/** Answers that have changed since: as they were when this series was taken. */
	was: answers,
});

const limit = z.number().check(z.positive());

export const checkSchema = z.looseObject({
	id: z.string().check(z.regex(/^[\w-]{1,64}$/)),
	startedAt: instant,
	program: z.string(),
	limits: z.looseObject({pullGoodPct: limit, pullUsablePct: limit, bandGoodPct: limit, bandUsablePct: limit}),
	/** Arm and gauge are set up anew for each round. */
	setAnew: z.boolean(),
	/** Name of the shop that makes the check; customers are asked about then. */
	shop: z.optional(z.string()),
	answers,
	series: z.array(series).check(z.minLength(1)),
	/** What is asked again after an interruption. */
	doubts: z.array(z.string()),
	resumedAt: z.array(instant),
	/** Everything that was ever gone past, in order; only added to. */
	overrides: z.array(z.extend(override, {step: z.string(), series: z.number()})),
	/** Time of the latest action: a long silence counts as having left. */
	touchedAt: z.optional(instant),
	stopped: z.optional(z.looseObject({at: instant})),
	/** The filed check that this one repeats, with its answers filled in. */
	recheckOf: z.optional(z.string()),
	/** The last check of the same arm that counts, where another one is on file: what was done since is asked. */
	follows: z.optional(z.string()),
	/** What was changed in a profile since that check: by step, what had been typed in it. */
	changedSince: z.optional(z.record(z.string(), z.string())),
	/** A check that had been closed with its put-back undone, opened again for that. */
	reopened: z.optional(z.literal(true)),
	/** The arm is an invented one: nothing of this check is a real reading. */
	practice: z.optional(practiceNotes),
});

/** Whether two values are the same as they would be stored. */
export const isSameValue = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** An answer by an id as it is stored. */
export const answerOf = ({answers: known}: Pick<Check, 'answers'>, id: string): Answer | undefined =>
	isStepId(id) ? known[id] : undefined;

export type Reading = z.infer<typeof reading>;
export type Round = z.infer<typeof round>;
export type Trial = z.infer<typeof trial>;
export type Series = z.infer<typeof series>;
export type Check = z.infer<typeof checkSchema>;
