import {describe, expect, it} from 'vitest';
import {home} from '../../source/plain/home.js';
import {profilesWith} from '../../source/results/profiles.js';
import {linesOf} from '../helpers/lines.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const draft = follow(freshDialogue(), northDeck, {until: 'room-temperature'}).check;
const profiles = profilesWith([], draft, '2026-03-02T12:00:00Z').toReversed();

/** Goes to the profiles from home and answers line by line. */
const visit = async (given: readonly string[], memory: Parameters<typeof memoryWorkbench>[0] = {}, piped = true) => {
	const workbench = memoryWorkbench({profiles, ...memory});
	const lines = linesOf(['profiles of arms, cartridges and tools', ...given, '/leave'], piped);
	const end = await home(workbench, lines);
	return {end, said: lines.said, text: lines.said.join('\n'), memory: workbench.memory};
};
const arm = '1';
const [rename, correct, aside] = ['1', '2', '3'];

describe('Profiles in plain lines', () => {
	it('are listed, and read out when chosen', async () => {
		const {said, end} = await visit([arm, '/back', '/back']);
		expect(said).toEqual(
			expect.arrayContaining(['  1. arm: north deck', 'Kept on 2026-03-02.', 'Effective length: 233 mm']),
		);
		expect(end).toEqual({kind: 'left'});
	});

	it('can be renamed, and say how they were called before', async () => {
		const {text, memory} = await visit([arm, rename, 'upper deck']);
		expect(text).toContain('Empty line keeps: north deck');
		expect(text).toContain('Called "north deck" before.');
		expect(memory.profiles[0]).toMatchObject({name: 'upper deck', formerNames: ['north deck']});
	});

	it('keep their name at an empty line, and nothing is saved for it', async () => {
		const {memory} = await visit([arm, rename, '']);
		expect(memory.profiles).toEqual(profiles);
	});

	it('can be corrected, by number and by text, with what is wrong in a sentence', async () => {
		const {text, memory} = await visit([arm, correct, '2', '23.3', '233.5 mm', '7', '2', 'back'], {}, false);
		expect(text).toContain("'23.3' cannot be right: 120 mm to 420 mm is believable here; did you mean 23.3 cm?");
		expect(text).toContain('Now: 233 mm');
		expect(memory.profiles[0]?.answers).toMatchObject({
			'arm-length': {typed: '233.5 mm', value: 233.5},
			'arm-gravity-centre': {value: 'far'},
		});
	});

	it('say at once what a correction leaves open', async () => {
		const {text} = await visit([arm, correct, '3', '-', '/back']);
		expect(text).toContain('Pivot distance, worked out: no answer yet; a check will ask for it.');
		expect(text).toMatch(/\d+\. Pivot distance, worked out: no answer yet/);
	});

	it('say at once, as a check does, that corrected lengths are unusual, and what to do', async () => {
		const {text, said} = await visit([arm, correct, '3', '244', 'back', 'back', '/back']);
		const sentence =
			'With an effective length of 233 mm and a pivot distance of 244 mm the stylus ends 11.0 mm short of the spindle. Most arms overhang by some 13 to 20 mm (common practice): look at both lengths, and correct what is wrong.';
		// After the correction, and on the page of the profile.
		expect(said.filter((line) => line === sentence)).toHaveLength(2);
		expect((await visit([arm, correct, '3', '216', '/back'])).text).not.toContain('Most arms overhang');
		expect(text).toContain('Past checks keep the answers');
	});

	it('refuse, as a check does, lengths with which the stylus never crosses a record', async () => {
		const {text} = await visit([arm, correct, '3', '350', '/back'], {}, false);
		expect(text).toMatch(
			/With these lengths the stylus reaches only radii from 117\.0 to 583\.0 mm: it never crosses the record\. What helps: correct the effective length, or correct the pivot distance\./,
		);
	});

	it('can be set aside and taken back', async () => {
		const {text, memory} = await visit([arm, aside, '/back']);
		expect(text).toContain('Set aside: checks do not offer it.');
		expect(text).toMatch(/3\. arm: north deck \(set aside\)/);
		expect(memory.profiles[0]?.setAside).toBe(true);
		const back = await visit(['3', aside, '/back'], {profiles: memory.profiles});
		expect(back.memory.profiles).toEqual(profiles);
	});

	it('say that the open check keeps its answers', async () => {
		const {said} = await visit([arm, '/back', '/back'], {draft});
		expect(said).toContain(
			'The open check has taken this arm over and keeps its answers: a change here holds for checks that start from now on.',
		);
	});

	it('end a pipe at what is refused', async () => {
		const {end} = await visit([arm, rename, 'x'.repeat(81)]);
		expect(end).toEqual({kind: 'refused', sentence: 'Rename north deck: That is 81 characters; at most 80 are kept.'});
	});

	it('that could not be saved say so, stay as they were, and can be tried again', async () => {
		const failures = ['The disk is full.'];
		const {text, memory} = await visit([arm, rename, 'upper deck', 'upper deck'], {failures}, false);
		expect(text).toContain('NOT SAVED: The disk is full.');
		expect(memory.profiles[0]?.name).toBe('upper deck');
		const piped = await visit([arm, rename, 'upper deck'], {failures: ['The disk is full.']});
		expect(piped.end).toEqual({kind: 'not-saved', sentence: 'Rename north deck: NOT SAVED: The disk is full.'});
		expect(piped.memory.profiles).toEqual(profiles);
	});
});
