import {describe, expect, it} from 'vitest';
import {profilesWith} from '../../source/results/profiles.js';
import {titleOf} from '../../source/words/step-text.js';
import {walkBeside} from '../helpers/conversation.js';
import {beginning, words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const draft = follow(freshDialogue(), northDeck, {until: 'probe-inner'}).check;
const profiles = profilesWith([], draft, '2026-03-02T12:00:00Z').toReversed();

/** Goes to the profiles from home and answers line by line. */
const visit = (given: readonly string[], memory: Parameters<typeof walkBeside>[1] = {}, piped = true) =>
	walkBeside([words.beside.home.profiles, ...given, '/leave'], {profiles, ...memory}, piped);
const say = words.beside.profiles;
const {refusals} = words;
const faces = words.faces;
const northInList = {kind: 'arm', name: 'north deck', isAside: false} as const;
const arm = '1';
const [rename, correct, aside] = ['1', '2', '3'];

describe('Profiles in plain lines', () => {
	it('are listed, and read out when chosen', async () => {
		const {said, end} = await visit([arm, '/back', '/back']);
		expect(said).toEqual(
			expect.arrayContaining([
				faces.plain.option({number: 1, label: say.inList(northInList)}),
				say.kept({on: '2026-03-02', changedOn: undefined}),
				say.answer({title: titleOf('arm-length'), text: '233 mm'}),
			]),
		);
		expect(end).toEqual({kind: 'leave'});
	});

	it('can be renamed, and say how they were called before', async () => {
		const {said, memory} = await visit([arm, rename, 'upper deck']);
		expect(said).toContain(faces.plain.keeps({text: 'north deck'}));
		expect(said).toContain(say.formerNames({names: ['north deck']}));
		expect(memory.profiles[0]).toMatchObject({name: 'upper deck', formerNames: ['north deck']});
	});

	it('keep their name at an empty line, and nothing is saved for it', async () => {
		const {memory} = await visit([arm, rename, '']);
		expect(memory.profiles).toEqual(profiles);
	});

	it('can be corrected, by number and by text, with what is wrong in a sentence', async () => {
		const {text, memory} = await visit([arm, correct, '1', '23.3', '233.5 mm', '7', '2', 'back'], {}, false);
		expect(text).toContain(
			refusals['not-believable']({
				typed: '23.3',
				least: 120,
				most: 420,
				unit: 'mm',
				meant: {entered: 23.3, unit: 'cm'},
			}),
		);
		expect(text).toContain(say.now({text: '233 mm'}));
		expect(memory.profiles[0]?.answers).toMatchObject({
			'arm-length': {typed: '233.5 mm', value: 233.5},
			'arm-gravity-centre': {value: 'far'},
		});
	});

	it('say at once what a correction leaves open', async () => {
		const {text} = await visit([arm, correct, '2', '-', '/back']);
		const title = titleOf('arm-pivot-way');
		expect(text).toContain(words.results.profileLacks({title}));
		expect(text).toContain(`. ${say.answer({title, text: say.text({typed: undefined})})}`);
	});

	it('say at once, as a check does, that corrected lengths are unusual, and what to do', async () => {
		const {text, said} = await visit([arm, correct, '2', '244', 'back', 'back', '/back']);
		const {unusual, lookAgain} = words.pages.geometry;
		const sentence = unusual({effectiveLengthMm: 233, pivotDistanceMm: 244});
		// After the correction, and on the page of the profile.
		expect(said.filter((line) => line === sentence)).toHaveLength(2);
		expect((await visit([arm, correct, '2', '216', '/back'])).text).not.toContain(beginning(lookAgain));
		expect(text).toContain(say.correcting);
	});

	it('refuse, as a check does, lengths with which the stylus never crosses a record', async () => {
		const {text} = await visit([arm, correct, '2', '350', '/back'], {}, false);
		expect(text).toContain(
			words.results.profileRefused['does-not-pass']({
				problem: {
					id: 'never-crosses-record',
					values: {leastMm: 117, mostMm: 583},
					ways: [
						{id: 'correct-length', do: 'ask-again', steps: []},
						{id: 'correct-pivot', do: 'ask-again', steps: []},
					],
				},
			}),
		);
	});

	it('can be set aside and taken back', async () => {
		const {text, memory} = await visit([arm, aside, '/back']);
		expect(text).toContain(say.aside);
		expect(text).toContain(faces.plain.option({number: 2, label: say.inList({...northInList, isAside: true})}));
		expect(memory.profiles[0]?.setAside).toBe(true);
		const back = await visit(['2', aside, '/back'], {profiles: memory.profiles});
		expect(back.memory.profiles).toEqual(profiles);
	});

	it('say that the open check keeps its answers', async () => {
		const {said} = await visit([arm, '/back', '/back'], {draft});
		expect(said).toContain(say.takenOver({kind: 'arm'}));
	});

	it('end a pipe at what is refused', async () => {
		const {end} = await visit([arm, rename, 'x'.repeat(81)]);
		const because = refusals['too-long']({characters: 81, most: 80});
		const sentence = faces.plain.refusedOn({title: say.rename({name: 'north deck'}), because});
		expect(end).toEqual({kind: 'refused', sentence});
	});

	it('that could not be saved say so, stay as they were, and can be tried again', async () => {
		const failures = ['The disk is full.'];
		const {text, memory} = await visit([arm, rename, 'upper deck', 'upper deck'], {failures}, false);
		const because = faces.notSaved({because: 'The disk is full.'});
		expect(text).toContain(because);
		expect(memory.profiles[0]?.name).toBe('upper deck');
		const piped = await visit([arm, rename, 'upper deck'], {failures: ['The disk is full.']});
		const sentence = faces.plain.refusedOn({title: say.rename({name: 'north deck'}), because});
		expect(piped.end).toEqual({kind: 'not-saved', sentence});
		expect(piped.memory.profiles).toEqual(profiles);
	});
});
