import {isValid} from 'date-fns/isValid';
import {parseISO} from 'date-fns/parseISO';
import type {NotedEvent} from '../procedure/arm-event.js';
import type {Profile} from '../procedure/facts.js';
import {readText} from '../procedure/read-answer.js';
import type {DoneKind} from '../procedure/step-ids.js';
import {changed, type ProfilesChanged} from './profile-changes.js';

type NewEvent = {
	/** Id of the profile of the arm. */
	readonly id: string;
	readonly kind: DoneKind;
	/** The day, as typed. */
	readonly day: string;
	/** A few words, as typed; empty for none. */
	readonly note?: string;
	/** Time now, with its offset. */
	readonly at: string;
};

/** The profiles with something noted as done to an arm; what was noted before stays as it is. */
export const eventAdded = (profiles: readonly Profile[], {id, kind, day, note = '', at}: NewEvent): ProfilesChanged =>
	changed(profiles, id, (old) => {
		const on = readDay(day);
		if (on === undefined) return {id: 'no-day', values: {typed: day.trim()}};
		if (on > at.slice(0, 10)) return {id: 'day-ahead', values: {on}};
		const said = readText(note.trim());
		if (note.trim() !== '' && said.kind === 'refused') return {id: 'not-read', values: {refusal: said.refusal}};
		const event: NotedEvent = {kind, on, ...(said.kind === 'value' ? {note: said.typed} : {}), at};
		return {...old, events: [...(old.events ?? []), event]};
	});

/** The profiles with something noted struck out: it stays, and holds no more. @param index its place among what was noted */
export const eventStruck = (
	profiles: readonly Profile[],
	{id, index, at}: {readonly id: string; readonly index: number; readonly at: string},
): ProfilesChanged =>
	changed(profiles, id, (old) => {
		const event = old.events?.[index];
		if (!event || event.struckAt !== undefined) return old;
		return {...old, events: old.events?.with(index, {...event, struckAt: at})};
	});

/** A day as yyyy-mm-dd, leading zeros or not; undefined for what is none. */
function readDay(typed: string): string | undefined {
	const [, year = '', month = '', day = ''] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(typed.trim()) ?? [];
	const on = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
	return isValid(parseISO(on)) ? on : undefined;
}
