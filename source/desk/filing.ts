import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {isReadyToPlay, progressOf} from '../check/progress.js';
import {reduce} from '../check/reduce.js';
import type {Notice} from '../check/says.js';
import {issuedOf} from '../pages/issued.js';
import {isPutBack} from '../procedure/index.js';
import {stepIdsOf} from '../procedure/step-ids.js';
import {nextCheckOf} from '../results/next-check.js';
import {type FinishedCheck, outcomeOf} from '../results/record.js';
import {isSameJson} from '../store/json.js';
import {orThrow, StoreError} from '../store/store-error.js';
import {words} from '../words/index.js';
import {nextCheckText} from '../words/results-text.js';
import {storeText} from '../words/store-text.js';
import type {Shelf} from './shelf.js';
import type {CheckStore, Remark} from './stored-forms.js';

export const isEmpty = (check: Check): boolean => Object.keys(check.answers).length === 0;

/** Nothing would be lost with it: a check without answers, or practice in which no reading was taken. */
export const holdsNothing = (check: Check): boolean => isEmpty(check) || check.practice?.readings.length === 0;

/** The record of a check that ends now, after the earlier ones of its arm; its words are those of the day. */
export function finishedCheck(check: Check, finishedAt: string, history: readonly PastCheck[] = []): FinishedCheck {
	const wantsDate = progressOf(check).facts.yes('next-check');
	const next = wantsDate ? nextCheckOf(check, history) : undefined;
	return {
		check,
		finishedAt,
		outcome: outcomeOf(check),
		...(next ? {nextCheck: {date: next.date, because: nextCheckText(next.because)}} : {}),
		issued: issuedOf(check),
	};
}

/**
 * The check under an id of its own where somebody else, past the lock, has filed it meanwhile with other answers: a filed
 * check never changes, and what is not filed would pass for filed.
 */
export function apartFromFiled({store, notice}: Shelf, check: Check, newId: () => string): Check {
	const filed = check.reopened ? undefined : store.record(check.id);
	// One that is damaged was put aside by looking at it, which is to be said; any other trouble is told by filing.
	if (filed instanceof StoreError && filed.code === 'damaged') notice(storeText(filed.fault));
	if (!filed || filed instanceof StoreError || isSameJson(filed.check, check)) return check;
	const own = newId();
	notice(words.commands.desk.filedElsewhere({filed: check.id, own}));
	return {...check, id: own};
}

/** What came up in a save, to be said with the next question. */
export function newsIn(notices: readonly string[], known: readonly string[]): {readonly notice?: Notice} {
	const sentence = notices.filter((one) => !known.includes(one)).join(' ');
	return sentence === '' ? {} : {notice: {id: 'as-told', values: {sentence}}};
}

/**
 * Puts a check away. The file of a filed check never changes: what was put back later stands beside it, with the
 * answers and the overrides that were given then, whether or not the list came to its end.
 */
export async function fileCheck(
	store: CheckStore,
	check: Check,
	at: string,
	history: readonly PastCheck[],
): Promise<FinishedCheck> {
	const record = finishedCheck(check, at, history);
	if (check.reopened) {
		// A new one in the place of one that cannot be read would take its void mark with it.
		const noted = orThrow(store.remark(check.id));
		await store.finishAgain(check.id, {...noted, ...remarkOf(check, at)});
		return record;
	}
	await store.finish(check.id, record);
	// What is told is what the file holds: it may have been there already.
	return orThrow(store.record(check.id));
}

function remarkOf(check: Check, at: string): Remark {
	const putBack = Object.fromEntries(Object.entries(check.answers).filter(([step]) => isPutBack(step)));
	const overrides = check.overrides.filter(({step}) => isPutBack(step));
	return {putBack, overrides, ...(isReadyToPlay(progressOf(check)) ? {putBackAt: at} : {})};
}

/** A filed check with what was put back later. */
export function withRemark(filed: Check, remark: Remark | undefined): Check {
	if (!remark) return filed;
	const others = filed.overrides.filter(({step}) => !isPutBack(step));
	return {
		...filed,
		answers: {...filed.answers, ...remark.putBack},
		overrides: [...others, ...(remark.overrides ?? filed.overrides.filter(({step}) => isPutBack(step)))],
	};
}

/** A filed check opened again for its put-back list: what was left to somebody else is asked anew. */
export function reopened(filed: Check, at: string): Check {
	const undone = stepIdsOf(filed.answers).filter((id) => isPutBack(id) && filed.answers[id]?.override);
	const check: Check = {...filed, reopened: true, stopped: {at}, doubts: []};
	return reduce(check, {type: 'ask-again', steps: undone, at});
}

export type Marked = {readonly ok: true; readonly remark: Remark} | {readonly ok: false; readonly sentence: string};

/** What is noted beside a check once it is void; what was noted before stays. */
export function markedVoid(remark: Remark | undefined, reason: string, at: string): Marked {
	if (remark?.void) return {ok: false, sentence: words.commands.desk.voidAlready(remark.void)};
	return {ok: true, remark: {...remark, void: {reason, at}}};
}

/** What is noted beside a check that counts again: the mark and its end stay on record. */
export function countingAgain(remark: Remark | undefined, at: string): Marked {
	if (!remark?.void) return {ok: false, sentence: words.commands.desk.notVoid};
	const {void: mark, formerVoids = [], ...rest} = remark;
	return {ok: true, remark: {...rest, formerVoids: [...formerVoids, {...mark, takenBackAt: at}]}};
}
