import type {Place} from '../procedure/places.js';
import type {WayId} from '../procedure/problem.js';
import type {ReasonId} from '../procedure/reasons.js';
import type {TypedRefusalValues} from '../procedure/refusal.js';
import type {RemedyId} from '../procedure/remedies.js';
import type {SideWord, StageId} from '../procedure/step.js';
import type {IdOf, StepId} from '../procedure/step-ids.js';
import type {DoubtItemId} from '../procedure/steps-still.js';
import type {Nothing, Said} from '../said.js';
import type {StepState} from './progress.js';

/** Why an entry was not taken. */
export type RefusalValues = TypedRefusalValues & {
	/** What somebody else than the check has to say, in words. */
	'as-told': {readonly sentence: string};
	'time-passed': Nothing;
	'doubts-first': Nothing;
	'bias-off-first': Nothing;
	'bias-on-first': Nothing;
	'was-being-put-back': Nothing;
	'off-the-scale': {readonly typed: string; readonly top: string};
	'crossed-turned': {readonly other: string};
	'crossed-pushes': {readonly other: string};
	'crossed-limits': {readonly other: string};
	'signs-swapped': {readonly other: string};
	'press-side': {readonly plus: SideWord; readonly minus: SideWord};
	'one-round-at-least': Nothing;
	'outer-limit-lacks': Nothing;
	'press-yes-or-no': Nothing;
	'no-reading-here': {readonly typed: string};
	'choose-by-number': Nothing;
	'press-still': Nothing;
	'few-words': Nothing;
	'no-reading-yet': Nothing;
	'comes-first': {readonly step: StepId; readonly first: StepId | undefined};
};
export type Refusal = Said<RefusalValues>;

/** Why a series was closed, or answers are asked anew. It is stored with the series. */
export type BecauseValues = {
	/** As an earlier form of the file has it. */
	'as-said': {readonly sentence: string};
	'answer-changed': {readonly step: StepId};
	'other-profile': Nothing;
	'asked-anew': Nothing;
	'put-back-between': Nothing;
	'left-overnight': Nothing;
	'changed-while-left': {readonly item: DoubtItemId};
	remedy: {readonly remedy: RemedyId};
	'closing-off': Nothing;
	'put-right-by-hand': Nothing;
};
export type Because = Said<BecauseValues>;

/** What happened with an entry and is not to be seen otherwise. */
export type NoticeValues = {
	/** What somebody else than the check has to say, in words. */
	'as-told': {readonly sentence: string};
	'does-not-pass-any-more': {readonly step: StepId};
	'round-anew': Nothing;
	'setting-kept': {readonly number: number};
	'series-kept': {readonly number: number; readonly because: Because};
};
export type Notice = Said<NoticeValues>;

/** What can be chosen. */
export type LabelValues = {
	/** A name of somebody's own. */
	named: {readonly name: string};
	way: {readonly way: WayId};
	regardless: Nothing;
	reason: {readonly reason: ReasonId};
	'other-reason': Nothing;
	'take-back': Nothing;
	'one-more-round': Nothing;
	strike: Nothing;
	'probe-again': Nothing;
	'less-bias': Nothing;
	'without-figures': Nothing;
	'to-verdict': Nothing;
	enough: Nothing;
	'put-back': Nothing;
	leave: Nothing;
	'to-maker': Nothing;
	'other-way': Nothing;
	'radius-between': Nothing;
	'look-at-bias': Nothing;
	'set-bias': Nothing;
	'see-skating': Nothing;
	'more-rounds': {readonly place: 'inner' | 'outer' | 'extra'};
	'back-to-setting': {readonly setting: string};
	'adjust-bias': Nothing;
	'keep-setting': Nothing;
	'other-drag': Nothing;
	'round-or-correction': Nothing;
	round: {
		readonly place: Place;
		readonly number: number;
		readonly innerLimit: string;
		readonly outerLimit: string | undefined;
	};
	'carry-on': Nothing;
	stop: Nothing;
	'fewer-rounds': Nothing;
	judge: Nothing;
	option: {readonly step: StepId; readonly option: string};
	side: {readonly side: SideWord};
	remedy: {readonly remedy: RemedyId};
	'in-doubt': {readonly item: DoubtItemId};
	/** A stage or a step of the list, with how far it is. */
	stage: {readonly stage: StageId; readonly state: StepState};
	step: {readonly step: StepId; readonly state: StepState};
	'new-profile': Nothing;
};
export type Label = Said<LabelValues>;
/** One of several that can be chosen: its id, and what it is called. */
export type PromptOption<L = Label> = {
	readonly id: string;
	readonly label: L;
	/** By which it is marked, also from another page of the list; else its place on the page. */
	readonly number?: number;
};

/** A question that is answered by yes or no, where it is another one than the step's own. */
export type QuestionValues = {
	tick: {readonly list: IdOf<'ticks'>; readonly line: string};
	'all-still-so': Nothing;
	/** Every line of a list at once. */
	'all-lines-so': Nothing;
};
export type Question = Said<QuestionValues>;

export const named = (name: string) => ({id: 'named', values: {name}}) as const;
/** Something to be told that has no values. */
export const plainly = <Id extends string>(id: Id): {readonly id: Id; readonly values: Nothing} => ({id, values: {}});
