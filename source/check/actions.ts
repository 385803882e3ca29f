import type {Place} from '../procedure/places.js';
import type {Trouble} from '../procedure/problem.js';
import type {ReasonId} from '../procedure/reasons.js';
import type {AnswerValue, DoubtId, StepId} from '../procedure/step-ids.js';
import type {DoubtItemId} from '../procedure/steps-still.js';
import type {Because} from './says.js';

/** One of the reasons that are offered, or another one as it was typed. */
export type Reason = {readonly id: ReasonId} | {readonly id: 'other'; readonly typed: string};

/** Everything that can happen to a check. Time comes in with the action, as an instant with its offset. */
export type Action = {readonly at: string} & (
	| {readonly type: 'answer'; readonly step: StepId; readonly value: AnswerValue; readonly typed: string}
	/** Answers of a picked profile, filled in at once. */
	| {
			readonly type: 'fill';
			readonly answers: Readonly<Record<string, {readonly value: AnswerValue; readonly typed: string}>>;
			/** Answers of another profile that this one does not have. */
			readonly clears?: readonly StepId[];
	  }
	/** A check that repeats an earlier one: what cannot have changed unseen is filled in, and asked about in one question. */
	| {
			readonly type: 'recheck';
			readonly of: string;
			readonly answers: Readonly<Record<string, {readonly value: AnswerValue; readonly typed: string}>>;
			/** By step: what had been typed in the earlier check, where its profile has another answer by now. */
			readonly changedSince?: Readonly<Record<string, string>>;
	  }
	| {readonly type: 'override'; readonly step: StepId; readonly reason: Reason; readonly problem: Trouble}
	| {readonly type: 'ask-again'; readonly steps: readonly StepId[]}
	| {
			readonly type: 'limit';
			readonly place: Place;
			readonly index: number;
			readonly which: LimitName;
			/** The gauge stands end for end for this round. */
			readonly gauge?: 'turned';
			readonly value: number;
			readonly typed: string;
	  }
	/** Somebody comes back to a round that lacks its outer limit: the gauge may have been moved meanwhile. */
	| {readonly type: 'begin-anew'}
	/** The latest reading of a place, or of the series. */
	| {readonly type: 'take-back'; readonly place?: Place}
	| {readonly type: 'strike'; readonly place: Place; readonly index: number; readonly reason: Reason}
	| {readonly type: 'new-series'; readonly because: Because; readonly steps: readonly StepId[]}
	/** The readings with the present bias setting are kept; another setting is tried. */
	| {readonly type: 'next-trial'}
	/** The arm itself is probed again while the bias is on. */
	| {readonly type: 'bias-off-again'}
	| {readonly type: 'stop'}
	| {readonly type: 'carry-on'}
	/** The probe is taken up again while something is in doubt. */
	| {readonly type: 'doubt'}
	/** The deck was being put back, and is probed again. */
	| {readonly type: 'work-again'}
	| {readonly type: 'resume'}
	| {readonly type: 'still-so'; readonly doubt: DoubtId}
	| {readonly type: 'changed'; readonly doubt: DoubtId; readonly steps: readonly StepId[]; readonly item: DoubtItemId}
);
export type LimitName = 'innerLimit' | 'outerLimit';
