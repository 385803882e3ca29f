import * as z from 'zod/mini';
import {type Check, checkSchema} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {isReadyToPlay, progressOf} from '../check/progress.js';
import type {Figures} from './figures.js';
import type {IssuedFinding} from './issued.js';
import {rowOf} from './past-row.js';

const isFigures = (value: unknown): boolean =>
	typeof value === 'object' && value !== null && 'probe' in value && 'verdict' in value;

/** How a check ended: to its end, stopped early but put back, or closed by another one with the deck in pieces. */
export const outcomes = ['complete', 'stopped', 'interrupted'] as const;
export type Outcome = (typeof outcomes)[number];

/**
 * A finished check as it is kept for good: all answers, and the result as it was issued on the day. Two records of
 * one check on purpose: the issued result is history and never worked out again; comparisons start from the answers.
 */
export const recordSchema = z.looseObject({
	check: checkSchema,
	finishedAt: z.string(),
	outcome: z.enum(outcomes),
	nextCheck: z.optional(z.looseObject({date: z.string(), because: z.string()})),
	issued: z.nullable(
		z.looseObject({
			figures: z.custom<Figures>(isFigures),
			findings: z.custom<readonly IssuedFinding[]>(Array.isArray),
			form: z.optional(z.literal(1)),
		}),
	),
});
export type FinishedCheck = z.infer<typeof recordSchema>;

/** How a check ended, or would end now. */
export function outcomeOf(check: Check): Outcome {
	const progress = progressOf(check);
	if (progress.current || !isReadyToPlay(progress)) return 'interrupted';
	return check.stopped ? 'stopped' : 'complete';
}

/** One line of the list of past checks. */
export const summaryOf = ({check, outcome, nextCheck, issued}: FinishedCheck): PastCheck => ({
	...rowOf(check, issued),
	outcome,
	nextDate: nextCheck?.date ?? null,
});
