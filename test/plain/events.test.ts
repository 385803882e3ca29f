import {describe, expect, it} from 'vitest';
import {profilesWith} from '../../source/results/profiles.js';
import {eventText} from '../../source/words/step-text.js';
import {walkBeside} from '../helpers/conversation.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const profiles = profilesWith(
	[],
	follow(freshDialogue(), northDeck, {until: 'probe-inner'}).check,
	'2026-03-02T12:00:00Z',
);
const known = profiles.toSorted((one, other) => (one.kind < other.kind ? -1 : 1));
const say = words.beside.events;
const labels = words.options['done-since'];
const {events: toEvents} = words.beside.profiles.actions;

/** From the page of the arm's profile to what was done to it; then line by line. */
const visit = (given: readonly string[], memory: Parameters<typeof walkBeside>[1] = {}) =>
	walkBeside([words.beside.home.profiles, '1', toEvents, ...given, '/leave'], {profiles: known, ...memory}, false);
const eventsOf = ({memory}: Awaited<ReturnType<typeof visit>>) => memory.profiles[0]?.events;

describe('What was done to an arm, in plain lines', () => {
	it('is nothing at first, and offered of no tools', async () => {
		expect((await visit([])).said).toContain(say.none);
		const tools = await walkBeside([words.beside.home.profiles, '2', '/leave'], {profiles: known}, false);
		expect(tools.text).not.toContain(toEvents);
	});

	it('is noted by its kind and its day; an empty line takes today', async () => {
		const done = await visit([say.add, labels.bearing, '2026-3-1', say.add, labels.leads, '']);
		const [first, second] = eventsOf(done) ?? [];
		expect(first).toMatchObject({kind: 'bearing', on: '2026-03-01'});
		expect(second).toMatchObject({kind: 'leads', on: second?.at.slice(0, 10)});
		const told = {on: '2026-03-01', what: labels.bearing, struckOn: undefined, isNoted: true};
		expect(done.said).toContain(say.inList(told));
	});

	it('is asked for in words where it is something else, and refused where there are none', async () => {
		const done = await visit([say.add, labels.other, '', 'a new belt', 'tomorrow', '2026-03-01']);
		expect(eventsOf(done)).toMatchObject([{kind: 'other', on: '2026-03-01', note: 'a new belt'}]);
		expect(done.said.join('\n')).toContain(words.results.profileRefused['no-day']({typed: 'tomorrow'}));
		expect(done.said).toContain(say.day({what: eventText({kind: 'other', note: 'a new belt'})}));
	});

	it('is struck out with one key, and stays in sight as that', async () => {
		const event = {on: '2026-03-01', what: labels.moved, struckOn: undefined};
		const kept = await visit([say.add, labels.moved, '2026-03-01', say.strike(event), 'n']);
		expect(eventsOf(kept)?.[0]?.struckAt).toBeUndefined();
		const done = await visit([say.add, labels.moved, '2026-03-01', say.strike(event), 'y']);
		const [struck] = eventsOf(done) ?? [];
		const struckOn = struck?.struckAt?.slice(0, 10);
		expect(struckOn).toBeDefined();
		expect(done.said).toContain(say.inList({...event, struckOn, isNoted: true}));
	});
});
