import type {Check} from './check/check.js';
import type {Dialogue} from './check/dialogue.js';
import type {PastCheck} from './check/past-check.js';
import type {Notice} from './check/says.js';
import type {Shown} from './pages/shown-lines.js';
import type {Deck} from './procedure/deck.js';
import type {Profile} from './procedure/facts.js';
import type {Settings} from './procedure/settings.js';
import type {ProfilesChanged} from './results/profile-changes.js';
import type {FinishedCheck} from './results/record.js';
import type {Voids} from './results/voids.js';
import type {ArmState} from './results/years/arm-states.js';
import type {ArmsAtAGlance} from './results/years/at-a-glance.js';
import type {DueArm} from './results/years/due.js';
import type {DoneEvent} from './results/years/events.js';
import type {PastFilter} from './results/years/past-filter.js';

export type Saved =
	| {
			readonly ok: true;
			/** The check came to its end with this answer and is filed. */
			readonly finished?: FinishedCheck;
			/** As it was kept, where something was noted beside the answers. */
			readonly kept?: Check;
			/** What came of that, for the next question. */
			readonly notice?: Notice;
	  }
	/** Nothing counts as saved; the same call can be made again. */
	| {
			readonly ok: false;
			readonly sentence: string;
			/** The answer itself is on the disk; only the check could not be filed yet. */
			readonly answerSaved?: true;
	  };

export type Opened =
	| {readonly ok: true; readonly dialogue: Dialogue}
	/** `locked`: another copy of the program is writing. */
	| {readonly ok: false; readonly sentence: string; readonly locked: boolean};

/** The check that is not finished: whose, where it stands, in words, how long ago it was left, and how the deck stood then. */
export type Unfinished = {
	readonly arm: string;
	readonly step: string;
	readonly minutesAgo: number;
	readonly deck: Deck;
	/** Whether the deck may be played as it stands. */
	readonly isReady: boolean;
};

/** What is on file: past checks, by arm or one by one, what is noted beside them, and profiles. */
export type Archive = {
	/** Earlier checks of the same arm that count, newest first. */
	readonly history: (check: Check) => readonly PastCheck[];
	/** The checks of an arm that count, newest first. */
	readonly ofArm: (armName: string) => readonly PastCheck[];
	/** What was done to an arm: told at its checks that count or noted outside them, struck out or not, in order of the day. */
	readonly events: (armName: string) => readonly DoneEvent[];
	/** Arms with a date for their next check, the first one due first. */
	readonly due: () => readonly DueArm[];
	/** How many arms are on file and due, for a first look: it needs little of the disk. */
	readonly atAGlance: () => ArmsAtAGlance;
	/** Every arm on file and where it stands, the one due first first. */
	readonly arms: () => readonly ArmState[];
	/** A page of past checks, all or those that are wanted, newest first. */
	readonly past: (page: {readonly offset: number; readonly limit: number; readonly only?: PastFilter | undefined}) => {
		readonly total: number;
		readonly rows: readonly PastCheck[];
		readonly notices: readonly string[];
	};
	readonly record: (
		id: string,
	) =>
		| ({readonly ok: true; readonly record: FinishedCheck; readonly putBackAt?: string} & Voids)
		| {readonly ok: false; readonly sentence: string};
	/** Marks a past check void: it stays as it is, and does not count any more. */
	readonly markVoid: (id: string, reason: string) => Promise<Saved>;
	/** Takes that back; both stand beside the check for good. */
	readonly countAgain: (id: string) => Promise<Saved>;
	/** Names of arms that have a check on file or open, as they were typed. */
	readonly checkedArms: () => readonly string[];
	/** Whether the open check has taken its answers from a profile. */
	readonly isTakenOver: (profile: Profile) => boolean;
	/** Changes the list of profiles as it is on the disk by now. */
	readonly changeProfiles: (change: (profiles: readonly Profile[]) => ProfilesChanged) => Promise<Saved>;
};

/** A hand's nudge at an invented arm: which way, and whether to come near a limit or to find it. */
export type Nudge = {readonly way: 'in' | 'out'; readonly size: 'large' | 'fine'};

/** An invented bench that stands in for the real one. */
export type PracticeBench = {
	/** What there is to see and to do at a question. The gauge goes where the question wants it. */
	readonly shown: (dialogue: Dialogue) => readonly Shown[];
	/** Whether a reading is wanted, so that the arm lies on the gauge and time matters. */
	readonly isProbing: (dialogue: Dialogue) => boolean;
	readonly nudge: (nudge: Nudge) => void;
	/** So many ms go by. */
	readonly pass: (ms: number) => void;
	/** Whether the arm is on its way, has only just come to rest, or has settled. */
	readonly motion: () => 'moves' | 'rests' | 'settled';
	/** Does by hand what the question offers. @returns whether it offered anything */
	readonly doByHand: (dialogue: Dialogue) => boolean;
	/** The hidden truth stands at the verdict: another arm is next. */
	readonly isTruthShown: (dialogue: Dialogue) => boolean;
	/** The hidden truth beside what a check came to. */
	readonly truth: (record: FinishedCheck) => readonly Shown[];
};

export type PracticeOpened =
	| {readonly ok: true; readonly desk: PracticeDesk}
	| {readonly ok: false; readonly sentence: string};

/** The way from real checks to practice and back. */
export type PracticeDoor = {readonly open: () => Promise<PracticeOpened>; readonly close: () => void};

/**
 * How much of a check is practised: the probe with one round at each radius, the probe, or all of it. Before a probe the deck
 * was prepared by somebody else.
 */
export type PracticeExtent = 'once' | 'probe' | 'whole';

/** Where practice begins: an invented arm is chosen, and how much of its check is practised. */
export type PracticeDesk = Workbench & {
	readonly practice: PracticeBench;
	/** Invented arms by id and name, in the order in which they are best met. */
	readonly arms: readonly {readonly id: string; readonly name: string}[];
	/** The truth of the latest arm was shown, so another one is next. @returns its id */
	readonly truthSeenOf: () => string | undefined;
	/** @param arm id of an invented arm; without one, one of them that is not told */
	readonly begin: (arm: string | undefined, extent: PracticeExtent) => Promise<Opened>;
};

/** Reports of filed checks, written where they are found again. */
export type Reports = {
	/** Where that of a check is written: the whole path. */
	readonly fileOf: (id: string) => string;
	/** Writes it, in the place of an earlier one, and opens it where there is a desktop. */
	readonly write: (id: string) => Promise<Saved>;
	/** That of an arm, with all its checks, by the id of the newest one that counts. */
	readonly fileOfArm: (newestId: string) => string;
	/** @param arm its name */
	readonly writeArm: (arm: string) => Promise<Saved>;
};

/** All that a face may ask of the world outside: the disk and the clock. Faces know no other way to either. */
export type Workbench = {
	readonly version: string;
	/** Time now, with its offset. */
	readonly now: () => string;
	/** What has been found in the data folder so far: damaged files set aside, an older generation used. */
	readonly notices: () => readonly string[];
	readonly unfinished: () => Unfinished | undefined;
	/** Starts a check, of an arm by its name if one is given; an open one that holds answers is filed as interrupted first. */
	readonly start: (armName?: string) => Promise<Opened>;
	/** Repeats the last check of an arm; without a name, of the arm that is due first. An open one is put away as by `start`. */
	readonly recheck: (armName?: string) => Promise<Opened>;
	/** Takes the open check up again; one that had come to its end is filed instead, and that is said. */
	readonly resume: () => Promise<Opened>;
	/** Opens a filed check again whose deck was never put back. An open one is put away as by `start`. */
	readonly reopen: (id: string) => Promise<Opened>;
	/** Puts the answers of a dialogue on the disk, and files the check that came to its end; returns once that is read back. */
	readonly save: (dialogue: Dialogue) => Promise<Saved>;
	readonly archive: Archive;
	/** Of real checks only. */
	readonly reports?: Reports;
	readonly profiles: () => readonly Profile[];
	readonly settings: () => Settings;
	readonly saveSettings: (settings: Settings) => Promise<Saved>;
	/** Only where the arm is an invented one. */
	readonly practice?: PracticeBench;
};
