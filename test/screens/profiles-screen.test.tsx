import {expect, test} from 'vitest';
import {profilesWith} from '../../source/results/profiles.js';
import {optionLabel, titleOf} from '../../source/words/step-text.js';
import {showBeside} from '../helpers/beside.js';
import type {InkOptions} from '../helpers/ink.js';
import {broken, words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const say = words.beside.profiles;
const centre = 'arm-gravity-centre';
const northDeckInList = `1 ${say.inList({kind: 'arm', name: 'north deck', isAside: false})}`;
const keepsNorthDeck = words.faces.field.keeps({text: 'north deck', mayBeEmpty: false});
const draft = follow(freshDialogue(), northDeck, {until: 'probe-inner'}).check;
const profiles = profilesWith([], draft, '2026-03-02T12:00:00Z').toReversed();

const show = (memory: Parameters<typeof showBeside>[1] = {}, options: InkOptions = {}) =>
	showBeside({at: 'profiles'}, {profiles, ...memory}, options);

/** As many words as surely stand on one line. */
const beginning = (sentence: string, count = 5): string => sentence.split(' ').slice(0, count).join(' ');

test('A profile is renamed with a few keys, and shows its new name at once', async () => {
	const {waitFor, type, memory} = show();
	await waitFor(northDeckInList);
	await type('1\r');
	await waitFor(`1 ${say.actions.rename}`);
	await type('1\r');
	await waitFor(keepsNorthDeck);
	await type('upper deck\r');
	await waitFor(/^ upper deck *$/m);
	await waitFor(say.formerNames({names: ['north deck']}));
	expect(memory.profiles[0]).toMatchObject({name: 'upper deck', formerNames: ['north deck']});
});

test('A name that another arm has is refused in a sentence, and what was typed can be mended', async () => {
	const south = {...profiles[0], id: 'arm-south', kind: 'arm' as const, name: 'south deck', usedAt: '', answers: {}};
	const {waitFor, type, press, memory} = show({profiles: [...profiles, south]});
	await waitFor(northDeckInList);
	await type('1\r');
	await waitFor(`1 ${say.actions.rename}`);
	await type('1\r');
	await waitFor(keepsNorthDeck);
	await type('south deck\r');
	await waitFor(broken(words.results.profileRefused['name-taken']({kind: 'arm', name: 'south deck'})));
	await waitFor('> south deck');
	await press('backspace', 'enter');
	await waitFor(/^ south dec *$/m);
	expect(memory.profiles[0]?.name).toBe('south dec');
});

test('An answer is corrected by typing, and what does not fit is said', async () => {
	const {waitFor, type, press, memory} = show();
	await waitFor(northDeckInList);
	await type('1\r');
	await waitFor(`2 ${say.actions.answers}`);
	await type('2\r');
	await waitFor(`1 ${say.answer({title: titleOf('arm-length'), text: '233 mm'})}`);
	await type('1\r');
	await waitFor(say.now({text: '233 mm'}));
	await type('23.3\r');
	await waitFor(
		broken(
			words.refusals['not-believable']({
				typed: '23.3',
				least: 120,
				most: 420,
				unit: 'mm',
				meant: {entered: 23.3, unit: 'cm'},
			}),
		),
	);
	await press('ctrl+u');
	await type('234\r');
	await waitFor(`1 ${say.answer({title: titleOf('arm-length'), text: '234 mm'})}`);
	expect(memory.profiles[0]?.answers['arm-length']).toEqual({typed: '234 mm', value: 234});
});

test('An answer is corrected by choosing, and set aside and taken back are one key each', async () => {
	const {waitFor, type, press, memory} = show();
	await waitFor(northDeckInList);
	await type('1\r');
	await waitFor(`3 ${say.actions['set-aside']}`);
	await type('3\r');
	await waitFor(say.aside);
	await waitFor(`3 ${say.actions['take-back']}`);
	await type('3\r');
	await waitFor(`3 ${say.actions['set-aside']}`);
	expect(memory.profiles[0]?.setAside).toBeUndefined();
	await type('2\r');
	await waitFor(`7 ${say.answer({title: titleOf(centre), text: optionLabel(centre, 'near')})}`);
	await type('7\r');
	await waitFor(say.now({text: optionLabel(centre, 'near')}));
	await type('2\r');
	await waitFor(`7 ${say.answer({title: titleOf(centre), text: optionLabel(centre, 'far')})}`);
	await press('esc');
	await waitFor(`1 ${say.actions.rename}`);
	expect(memory.profiles[0]?.answers['arm-gravity-centre']?.value).toBe('far');
});

test('Esc goes back page by page, also from a half-typed name, and changes nothing', async () => {
	const {waitFor, type, press, memory} = show();
	await waitFor(northDeckInList);
	await type('1\r');
	await waitFor(`1 ${say.actions.rename}`);
	await type('1\r');
	await waitFor(keepsNorthDeck);
	await type('nor');
	await press('esc');
	await waitFor(`1 ${say.actions.rename}`);
	await press('esc');
	await waitFor(northDeckInList);
	await press('esc');
	await waitFor(words.beside.home.title({version: '0.0.0'}));
	expect(memory.profiles).toEqual(profiles);
});

test('What cannot be saved stays in the field, with the reason, and can be tried again', async () => {
	const {waitFor, type, press, memory} = show({failures: ['The disk is full.']});
	await waitFor(northDeckInList);
	await type('1\r');
	await waitFor(`1 ${say.actions.rename}`);
	await type('1\r');
	await waitFor(keepsNorthDeck);
	await type('upper deck\r');
	await waitFor(words.faces.notSaved({because: 'The disk is full.'}));
	await waitFor('> upper deck');
	await press('enter');
	await waitFor(say.formerNames({names: ['north deck']}));
	expect(memory.profiles[0]?.name).toBe('upper deck');
});

test('The open check keeps its answers, and the field stays in sight on the smallest screen', async () => {
	const long = 'north deck '.repeat(7).trim();
	const renamed = profiles.map((one, index) => (index === 0 ? {...one, name: long} : one));
	const {waitFor, type, lines} = show({draft, profiles: renamed}, {columns: 40, rows: 20});
	await waitFor(northDeckInList);
	await type('1\r');
	await waitFor(say.actions.rename);
	await waitFor(beginning(say.takenOver({kind: 'arm'})));
	await type('1\r');
	await waitFor(`> ${beginning(keepsNorthDeck, 2)}`);
	await type(`${'x'.repeat(240)}\r`);
	await waitFor(broken(words.refusals['too-long']({characters: 200, most: 80})));
	expect(lines().length).toBeLessThanOrEqual(19);
	expect(lines().some((line) => line.startsWith('>xxx'))).toBe(true);
});
