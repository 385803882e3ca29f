import {describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {profileLines} from '../../source/pages/beside/profile-lines.js';
import type {Profile} from '../../source/procedure/facts.js';
import {profilesSchema, profilesWith} from '../../source/results/profiles.js';
import {titleOf} from '../../source/words/step-text.js';
import {words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, refusalOf, say, text} from '../helpers/script.js';

const day = '2026-03-02T12:00:00Z';
const whole = follow(freshDialogue(), northDeck).check;
const kept = profilesWith([], whole, day);
const idOf = (kind: string) => kept.find((one) => one.kind === kind)?.id ?? '';
const picking = {
	...northDeck,
	answers: {
		...northDeck.answers,
		'arm-profile': idOf('arm'),
		'tools-profile': idOf('tools'),
	},
};
const withoutTimes = (check: typeof whole) =>
	Object.fromEntries(Object.entries(check.answers).map(([id, {typed, value}]) => [id, {typed, value}]));

describe('Profiles', () => {
	it('are kept of arm and tools, under their names, the cartridge with its arm', () => {
		expect(kept.map(({kind, name}) => [kind, name]).sort()).toEqual([
			['arm', 'north deck'],
			['tools', 'bench set'],
		]);
		expect(kept.find(({kind}) => kind === 'arm')?.answers).toMatchObject({
			'cartridge-name': {value: 'blue one'},
			'playing-force': {value: 21},
			'guard-mass': {value: 0.4},
		});
		expect(z.safeParse(profilesSchema, JSON.parse(JSON.stringify(kept)))).toMatchObject({success: true, data: kept});
	});

	it('are kept as soon as their last question is answered, not before', () => {
		const keptAt = (until: string) =>
			profilesWith([], follow(freshDialogue(), northDeck, {until}).check, day).map(({kind}) => kind);
		expect(keptAt('gauge-turns')).toEqual([]);
		expect(keptAt('safe')).toEqual(['tools']);
		expect(keptAt('arm-wire-path')).toEqual(['tools']);
		expect(keptAt('wires')).toEqual(['tools', 'arm']);
	});

	it('come back as the very same list when nothing changed', () => {
		expect(profilesWith(kept, whole, '2026-09-02T12:00:00Z')).toBe(kept);
	});

	it('are offered by name, and a new one beside them', () => {
		const here = follow(freshDialogue(kept, 'sample-2'), picking, {until: 'arm-profile'});
		expect(promptOf(here)).toMatchObject({
			kind: 'choice',
			options: [{label: {values: {name: 'north deck'}}}, {id: 'new', label: {id: 'new-profile'}}],
		});
	});

	it('fill in everything with one key each, and the check is the same', () => {
		let asked = 0;
		const again = follow(freshDialogue(kept, 'sample-2'), picking, {seen: () => asked++});
		const {'arm-profile': _arm, 'tools-profile': _tools, ...rest} = withoutTimes(again.check);
		expect(rest).toEqual(withoutTimes(whole));
		let first = 0;
		follow(freshDialogue(), northDeck, {seen: () => first++});
		// 13 questions of an arm and 7 of a set of tools are two now.
		expect(asked).toBe(first - 18);
	});

	it('ask every question where a new one is entered', () => {
		const fresh = {...picking, answers: {...picking.answers, 'arm-profile': 'new', 'arm-name': 'south deck'}};
		const here = follow(freshDialogue(kept, 'sample-2'), fresh, {until: 'arm-length'});
		expect(positionOf(here).step?.id).toBe('arm-length');
		const names = profilesWith(kept, follow(here, fresh).check, day).map(({name}) => name);
		expect(names).toEqual(expect.arrayContaining(['north deck', 'south deck']));
	});

	it('take on what is corrected in a check, under the same name', () => {
		const at = follow(freshDialogue(kept, 'sample-2'), picking, {until: 'first-swing'});
		const corrected = say(at, [...goTo('arm', 'arm-pivot-distance'), text('216')]);
		const next = profilesWith(kept, corrected.check, '2026-09-02T12:00:00Z');
		expect(next.filter(({kind}) => kind === 'arm')).toMatchObject([
			{id: idOf('arm'), usedAt: '2026-09-02T12:00:00Z', answers: {'arm-pivot-distance': {typed: '216 mm', value: 216}}},
		]);
		expect(next[0]?.kind).toBe('arm');
		expect(next).toHaveLength(2);
	});

	it('can be changed for another one in mid-check: what was filled in before goes', () => {
		const other: Profile = {
			id: 'arm-other',
			kind: 'arm',
			name: 'south deck',
			usedAt: day,
			answers: {
				...kept.find(({kind}) => kind === 'arm')?.answers,
				'arm-name': {typed: 'south deck', value: 'south deck'},
			},
		};
		const at = follow(freshDialogue([...kept, other]), picking, {until: 'first-swing'});
		const changed = say(at, [...goTo('arm', 'arm-profile'), choose('arm-other')]);
		expect(changed.check.answers['arm-name']?.value).toBe('south deck');
		expect(positionOf(changed).step?.id).toBe('first-swing');
	});

	it('refuse one that is not in the list', () => {
		const here = follow(freshDialogue(kept, 'sample-2'), picking, {until: 'arm-profile'});
		expect(refusalOf(here, choose('arm-nobody'))?.id).toBe('choose-by-number');
	});

	it('are read out in the order of the questions', () => {
		const arm = kept.find(({kind}) => kind === 'arm');
		const {answer, kept: keptOn, text: typedText} = words.beside.profiles;
		const answerOf = (step: string, typed: string) => answer({title: titleOf(step), text: typedText({typed})});
		const lines = arm ? profileLines(arm).map((one) => (one.kind === 'line' ? one.text : '')) : [];
		expect(lines.slice(0, 4)).toEqual([
			keptOn({on: '2026-03-02', changedOn: undefined}),
			answerOf('arm-name', 'north deck'),
			answerOf('arm-length', '233 mm'),
			answerOf('arm-pivot-distance', '215.4 mm'),
		]);
	});
});

describe('A check of an unknown name', () => {
	it('with profiles on file asks for the arm by its first question', () => {
		const named = follow(
			freshDialogue(kept, 'sample-2'),
			{...picking, answers: {...picking.answers, 'arm-profile': 'new'}},
			{
				until: 'arm-name',
			},
		);
		expect(positionOf(named).step?.id).toBe('arm-name');
	});

	it('is kept apart from the profile when it is renamed', () => {
		const renamed = follow(freshDialogue([], 'sample-2'), northDeckWith({'arm-name': 'north deck, rewired'}));
		expect(profilesWith(kept, renamed.check, day).filter(({kind}) => kind === 'arm')).toHaveLength(2);
	});
});
