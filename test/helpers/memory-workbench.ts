import * as z from 'zod/mini';
import type {Check} from '../../source/check/check.js';
import {deckOf} from '../../source/check/deck-state.js';
import {type Dialogue, startDialogue} from '../../source/check/dialogue.js';
import {takenUp} from '../../source/check/entry.js';
import type {PastCheck} from '../../source/check/past-check.js';
import {isReadyToPlay, progressOf} from '../../source/check/progress.js';
import {reduce} from '../../source/check/reduce.js';
import type {Notice} from '../../source/check/says.js';
import {countingAgain, finishedCheck, type Marked, markedVoid} from '../../source/desk/filing.js';
import {recheckAction} from '../../source/desk/starting-answers.js';
import {type Remark, remarkSchema} from '../../source/desk/stored-forms.js';
import type {Profile} from '../../source/procedure/facts.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {isTakenBy, profilesSchema, profilesWith} from '../../source/results/profiles.js';
import {type FinishedCheck, summaryOf} from '../../source/results/record.js';
import {armStates} from '../../source/results/years/arm-states.js';
import {checksOfArm, historyOf, notedOf} from '../../source/results/years/arms.js';
import {armsAtAGlance} from '../../source/results/years/at-a-glance.js';
import {dueArms} from '../../source/results/years/due.js';
import {eventsOf} from '../../source/results/years/events.js';
import {filtered} from '../../source/results/years/past-filter.js';
import {profileRefusalText} from '../../source/words/results-text.js';
import {titleOf} from '../../source/words/step-text.js';
import type {Saved, Workbench} from '../../source/workbench.js';
import {clockFrom, freshDialogue} from './script.js';
import {stored} from './wandering.js';

type Memory = {
	draft?: Check;
	records: FinishedCheck[];
	profiles: readonly Profile[];
	/** Later facts beside the records, by the id of the check. */
	remarks: Record<string, Remark>;
	/** Saves that fail before one works, and why. */
	failures: string[];
	/** The same for filing alone, once the answer itself is there. */
	filingFailures: string[];
	/** What is told of a check once it is filed. */
	afterFiling?: Notice;
};

/** A workbench whose disk is the memory of the test: what is saved goes through JSON and its schema. */
export function memoryWorkbench(
	memory: Partial<Memory> = {},
	now = clockFrom('2026-03-02T09:00:00Z'),
): Workbench & {readonly memory: Memory} {
	const kept: Memory = {records: [], profiles: [], remarks: {}, failures: [], filingFailures: [], ...memory};
	let settings = usualSettings;
	let started = 0;
	const opened = (dialogue: Dialogue) => ({ok: true, dialogue}) as const;
	const failure = () => {
		const sentence = kept.failures.shift();
		return sentence === undefined ? undefined : ({ok: false, sentence} as const);
	};
	const rowOf = (record: FinishedCheck): PastCheck => {
		const voided = kept.remarks[record.check.id]?.void;
		return {...summaryOf(record), ...(voided ? {voidBecause: voided.reason} : {})};
	};
	const all = () => kept.records.map(rowOf).reverse();
	const note = async (id: string, change: (remark: Remark | undefined) => Marked): Promise<Saved> => {
		const marked = failure() ?? change(kept.remarks[id]);
		if (!('remark' in marked)) return marked;
		kept.remarks[id] = z.parse(remarkSchema, JSON.parse(JSON.stringify(marked.remark)));
		return {ok: true};
	};
	return {
		memory: kept,
		version: '0.0.0',
		now,
		notices: () => [],
		unfinished: () =>
			kept.draft && {
				arm: String(kept.draft.answers['arm-name']?.value ?? 'a new arm'),
				step: titleOf(progressOf(kept.draft, kept.profiles).current?.id ?? 'the end'),
				minutesAgo: 5,
				deck: deckOf(kept.draft, progressOf(kept.draft, kept.profiles)),
				isReady: isReadyToPlay(progressOf(kept.draft, kept.profiles)),
			},
		start: async () => {
			delete kept.draft;
			started++;
			return opened(freshDialogue(kept.profiles, `sample-${started}`));
		},
		recheck: async (armName) => {
			const last = kept.records.filter((one) => armName === undefined || rowOf(one).arm === armName).at(-1)?.check;
			if (!last) return {ok: false, sentence: 'There is no past check.', locked: false};
			started++;
			const {check} = freshDialogue(kept.profiles, `sample-${started}`);
			const repeated = reduce(check, recheckAction(last, kept.profiles, now()));
			return opened(startDialogue(repeated, kept.profiles, historyOf(repeated, all(), kept.profiles)));
		},
		resume: async () =>
			kept.draft
				? opened(takenUp(startDialogue(kept.draft, kept.profiles), now()))
				: {ok: false, sentence: 'There is no unfinished check.', locked: false},
		reopen: async (id) => {
			const check = kept.records.find((one) => one.check.id === id)?.check;
			if (!check) return {ok: false, sentence: 'There is no such check.', locked: false};
			return opened(startDialogue({...check, reopened: true, stopped: {at: now()}, doubts: []}, kept.profiles));
		},
		save: async ({check}) => {
			const failed = failure();
			if (failed) return failed;
			kept.draft = stored(check);
			kept.profiles = profilesWith(kept.profiles, kept.draft, now());
			if (progressOf(kept.draft, kept.profiles).current) return {ok: true};
			const unfiled = kept.filingFailures.shift();
			if (unfiled !== undefined) return {ok: false, sentence: unfiled, answerSaved: true};
			const finished = finishedCheck(kept.draft, now());
			kept.records.push(finished);
			delete kept.draft;
			return {ok: true, finished, ...(kept.afterFiling && {notice: kept.afterFiling})};
		},
		archive: {
			history: (check) => historyOf(check, all(), kept.profiles),
			ofArm: (armName) => checksOfArm(all(), armName, kept.profiles),
			events: (armName) => eventsOf(checksOfArm(all(), armName, kept.profiles), notedOf(armName, kept.profiles)),
			due: () => dueArms(all(), kept.profiles, now()),
			atAGlance: () => armsAtAGlance(all(), kept.profiles, now()),
			arms: () => armStates(all(), kept.profiles, now()),
			past: ({offset, limit, only}) => {
				const wanted = only ? filtered(kept.records.map(rowOf), only) : kept.records.map(rowOf);
				return {total: wanted.length, rows: wanted.slice(offset, offset + limit), notices: []};
			},
			record: (id) => {
				const record = kept.records.find((one) => one.check.id === id);
				const {void: voided, formerVoids} = kept.remarks[id] ?? {};
				return record ? {ok: true, record, voided, formerVoids} : {ok: false, sentence: 'There is no such check.'};
			},
			markVoid: (id, reason) => note(id, (remark) => markedVoid(remark, reason, now())),
			countAgain: (id) => note(id, (remark) => countingAgain(remark, now())),
			checkedArms: () => all().map(({arm}) => arm),
			isTakenOver: (profile) => kept.draft !== undefined && isTakenBy(kept.draft, profile),
			changeProfiles: async (change) => {
				const failed = failure();
				if (failed) return failed;
				const changed = change(kept.profiles);
				if (!changed.ok) return {ok: false, sentence: profileRefusalText(changed.refusal)};
				kept.profiles = z.parse(profilesSchema, JSON.parse(JSON.stringify(changed.profiles)));
				return {ok: true};
			},
		},
		profiles: () => kept.profiles,
		settings: () => settings,
		saveSettings: async (next) => {
			const failed = failure();
			if (failed) return failed;
			settings = next;
			return {ok: true};
		},
	};
}
