import * as z from 'zod/mini';
import {type Check, checkSchema} from '../check/check.js';
import type {MeasuredWith, PastCheck} from '../check/past-check.js';
import {factsOfSeries, isReadyToPlay, progressOf} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import type {Finding} from './diagnose.js';
import {documentOfCheck} from './document-of-check.js';
import type {Figures} from './figures.js';
import {issuedOf} from './issued.js';
import {nextCheckOf} from './next-check.js';

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
		z.looseObject({figures: z.custom<Figures>(isFigures), findings: z.custom<readonly Finding[]>(Array.isArray)}),
	),
});
export type FinishedCheck = z.infer<typeof recordSchema>;

/** The record of a check that ends now; pure, the time comes in. */
export function finishedCheck(check: Check, finishedAt: string): FinishedCheck {
	const progress = progressOf(check);
	const isWhole = !progress.current && isReadyToPlay(progress);
	const outcome: Outcome = isWhole ? (check.stopped ? 'stopped' : 'complete') : 'interrupted';
	const issued = issuedOf(check);
	const wantsDate = progress.facts.yes('next-check');
	return {
		check,
		finishedAt,
		outcome,
		...(wantsDate ? {nextCheck: nextCheckOf(check)} : {}),
		issued,
	};
}

/** One line of the list of past checks. */
export function summaryOf({check, outcome, finishedAt, nextCheck, issued}: FinishedCheck) {
	const facts = factsOfSeries(check, openSeries(check));
	return {
		id: check.id,
		date: check.startedAt.slice(0, 10),
		startedAt: check.startedAt,
		finishedAt,
		arm: facts.text('arm-name') ?? 'unnamed arm',
		outcome,
		verdict: issued?.figures.verdict ?? null,
		atWorst: issued?.figures.atWorst ?? null,
		probe: (issued?.figures.probe ?? []).map(
			({
				place,
				radiusMm,
				pullPct,
				pullUncertaintyPct,
				bandPct,
				bandUncertaintyPct,
				tiltShareUncertaintyPct: tiltUncertaintyPct,
			}) => ({
				place,
				radiusMm,
				pullPct,
				pullUncertaintyPct,
				bandPct,
				bandUncertaintyPct,
				tiltUncertaintyPct,
			}),
		),
		measuredWith: measuredWith(check),
		nextDate: nextCheck?.date ?? null,
	} satisfies PastCheck & {finishedAt: string};
}

/** Under what the series that counts was measured. */
function measuredWith(check: Check): MeasuredWith | null {
	const found = documentOfCheck(check);
	if (!found.ok) return null;
	const {arm, trackingForce} = found.document;
	const facts = factsOfSeries(check, openSeries(check));
	return {
		playingMn: trackingForce.playingMn,
		effectiveLengthMm: arm.effectiveLengthMm,
		loading: arm.loading,
		guard: trackingForce.guard,
		tools: facts.text('tools-name') ?? '',
		temperatureC: facts.number('room-temperature') ?? null,
	};
}
