import type {Profile} from '../../procedure/facts.js';
import {readText} from '../../procedure/read-answer.js';
import {doneKinds} from '../../procedure/step-ids.js';
import {eventAdded, eventStruck} from '../../results/event-changes.js';
import type {DoneEvent} from '../../results/years/events.js';
import {words} from '../../words/index.js';
import {eventText, optionLabel, refusalText} from '../../words/step-text.js';
import type {Workbench} from '../../workbench.js';
import {line, type Shown} from '../shown-lines.js';
import {backOffer, fieldStop, go, listStop, type Offer, type Stop} from './page.js';
import type {BesidePlace, EventPlace} from './places.js';
import {saving} from './saving.js';

const say = words.beside.events;

/** What was done to an arm: all of it by day, something to add, something noted wrongly to strike out. */
export function eventsAt(workbench: Workbench, place: EventPlace, profile: Profile): Stop<BesidePlace> {
	const {id} = place;
	const toEvents = go({at: 'events', id} as const);
	const title = say.title(profile);
	switch (place.at) {
		case 'events': {
			const events = workbench.archive.events(profile.name);
			const back = go({at: 'arm', arm: profile.name} as const);
			return listStop<BesidePlace>({title, shown: eventLines(events)}, back, [
				['add', say.add, () => go({at: 'event-kind', id})],
				...(profile.events ?? []).flatMap((event, index): Offer<BesidePlace>[] =>
					event.struckAt === undefined
						? [[`strike-${index}`, say.strike(told(event)), () => go({at: 'event-strike', id, index})]]
						: [],
				),
				backOffer(back),
			]);
		}
		case 'event-kind':
			return listStop<BesidePlace>({title, shown: [line(say.kind)]}, toEvents, [
				...doneKinds.map((kind): Offer<BesidePlace> => {
					const label = optionLabel('done-since', kind);
					return [kind, label, () => go(kind === 'other' ? {at: 'event-note', id} : {at: 'event-day', id, kind})];
				}),
				backOffer(toEvents),
			]);
		case 'event-note':
			return fieldStop<BesidePlace>({title, shown: [line(say.note)]}, go({at: 'event-kind', id}), (typed) => {
				const read = readText(typed.trim());
				if (read.kind === 'refused') return {kind: 'refused', sentence: refusalText(read.refusal)};
				return go({at: 'event-day', id, kind: 'other', note: typed});
			});
		case 'event-day': {
			const {kind, note = ''} = place;
			const today = workbench.now().slice(0, 10);
			const shown = [line(say.day({what: eventText({kind, note: note === '' ? undefined : note})}))];
			const add = (day: string) => {
				const event = {id, kind, day, note, at: workbench.now()};
				return saving(workbench, toEvents.to, (all) => eventAdded(all, event));
			};
			return fieldStop({title, shown}, go({at: 'event-kind', id}), add, {initial: today});
		}
		case 'event-strike': {
			const {index} = place;
			const event = profile.events?.[index];
			const strike = () => saving(workbench, toEvents.to, (all) => eventStruck(all, {id, index, at: workbench.now()}));
			return {
				page: {
					title,
					shown: [...(event ? [line(say.event(told(event)), 'strong')] : []), line(say.whatStrikingMeans)],
					prompt: {kind: 'yes-no', question: say.question},
				},
				turn: (entry) => (entry === 'yes' ? strike() : toEvents),
				back: toEvents,
			};
		}
	}
}

const told = (event: DoneEvent) => ({
	on: event.on,
	what: eventText(event),
	struckOn: event.noted?.struckAt?.slice(0, 10),
});

/** Everything that was done to an arm, a line each. */
const eventLines = (events: readonly DoneEvent[]): Shown[] =>
	events.length === 0
		? [line(say.none)]
		: events.map((event) => {
				const isStruck = event.noted?.struckAt !== undefined;
				return line(say.inList({...told(event), isNoted: event.noted !== undefined}), isStruck ? 'aside' : 'plain');
			});
