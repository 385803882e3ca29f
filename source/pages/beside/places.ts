import type {settingItems, TextId} from '../../procedure/settings.js';
import type {DoneKind} from '../../procedure/step-ids.js';
import type {Unfinished} from '../../workbench.js';
import {type Filed, go} from './page.js';

/** Another check than the open one: a new one, a repeated one, or the put-back list of an old one, by its id. */
export type OtherCheck = 'start' | 'recheck' | {readonly reopen: string};

export type HomePlace =
	| {readonly at: 'home'; readonly notice?: string}
	/** Another check would put this one aside. */
	| {readonly at: 'check-open'; readonly unfinished: Unfinished; readonly other: OtherCheck}
	| {readonly at: 'filed'; readonly record: Filed; readonly isReported?: true};

/** The list of past checks, newest first, from the one at `offset` on. */
export type PastListPlace = {readonly at: 'past'; readonly offset: number};

/** A past check, and why it does not count; the list stands where it was left. */
export type PastCheckPlace = {readonly id: string; readonly offset: number} & (
	| {readonly at: 'past-check'; readonly isReported?: true}
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
export type BesidePlace = HomePlace | PastListPlace | PastCheckPlace | ProfilePlace | SettingPlace;

export const toHome = go({at: 'home'} as const);
