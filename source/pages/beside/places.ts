import type {settingItems, TextId} from '../../procedure/settings.js';
import type {DoneKind} from '../../procedure/step-ids.js';
import type {PastFilter} from '../../results/years/past-filter.js';
import type {Unfinished} from '../../workbench.js';
import {type Filed, go} from './page.js';

/** Another check than the open one: a new one or a repeated one, also of an arm by its name, or the put-back list of an old one, by its id. */
export type OtherCheck =
	| 'start'
	| 'recheck'
	| {readonly reopen: string}
	| {readonly start: string}
	| {readonly recheck: string};

export type HomePlace =
	| {readonly at: 'home'; readonly notice?: string}
	/** Another check would put this one aside. */
	| {readonly at: 'check-open'; readonly unfinished: Unfinished; readonly other: OtherCheck}
	| {readonly at: 'filed'; readonly record: Filed; readonly isReported?: true};

/** Arms: a list of them, how one is found, and one by its name of today. */
export type ArmPlace =
	| {readonly at: 'find-arm'}
	/** Those with this part in their name, from the one at `offset` on. */
	| {readonly at: 'arms'; readonly offset: number; readonly part?: string}
	| {readonly at: 'arm'; readonly arm: string; readonly isReported?: true};

/** Where the list of past checks was left: which of them, newest first, from the one at `offset` on. */
export type InPastList = {readonly offset: number; readonly only?: PastFilter};

export type PastListPlace = InPastList & {
	readonly at: 'past' | 'past-filter' | 'filter-arm' | 'filter-year' | 'filter-verdict';
};

/** A past check, another one beside it, and why it does not count; the list stands where it was left. */
export type PastCheckPlace = InPastList & {readonly id: string} & (
		| {readonly at: 'past-check'; readonly isReported?: true}
		/** The arm's other checks, from the one at `from` on. */
		| {readonly at: 'compare-with'; readonly from: number}
		| {readonly at: 'compared'; readonly other: string; readonly from: number}
		| {readonly at: 'void-reason' | 'void-typed'}
		/** A reason that was typed, to be confirmed. */
		| {readonly at: 'void-confirm'; readonly reason: string}
	);

export type ProfilePlace =
	| {readonly at: 'profiles'}
	| {readonly at: 'profile' | 'rename' | 'answers'; readonly id: string}
	| {readonly at: 'answer'; readonly id: string; readonly step: string}
	| EventPlace;

/** What was done to the arm of a profile. */
export type EventPlace = {readonly id: string} & (
	| {readonly at: 'events' | 'event-kind' | 'event-note'}
	| {readonly at: 'event-day'; readonly kind: DoneKind; readonly note?: string}
	/** By its place among what was noted. */
	| {readonly at: 'event-strike'; readonly index: number}
);

export type SettingPlace =
	| {readonly at: 'settings'}
	| {readonly at: 'setting-text'; readonly id: TextId}
	| {readonly at: 'setting'; readonly item: (typeof settingItems)[number]};

/** Which page beside a check is shown. */
export type BesidePlace = HomePlace | ArmPlace | PastListPlace | PastCheckPlace | ProfilePlace | SettingPlace;

export const toHome = go({at: 'home'} as const);
