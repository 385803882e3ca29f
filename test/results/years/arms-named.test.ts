import {describe, expect, it} from 'vitest';
import {armMeant, knownArms} from '../../../source/results/years/arms-named.js';
import {armProfile} from '../../helpers/filed-checks.js';

const known = knownArms(
	['north deck', 'old name', 'Öland', 'Zoë', 'south'],
	[
		armProfile('bench two', {formerNames: ['old name']}),
		armProfile('south deck'),
		{...armProfile('gauge set'), kind: 'tools'},
	],
);
const one = (arm: string, isExact = false) => ({found: 'one', arm, isExact});
const meant = (typed: string) => armMeant(typed, known);

describe('The arms that are known', () => {
	it('are those with a profile, and those that only have checks, each by its name of today', () => {
		expect(known.map(({name}) => name)).toEqual(['bench two', 'south deck', 'north deck', 'Öland', 'Zoë', 'south']);
		expect(known[0]?.formerNames).toEqual(['old name']);
	});
});

describe('An arm that is named', () => {
	it.each([
		['in full', 'north deck', 'north deck'],
		['in full, though other names hold that name', 'south', 'south'],
		['by a name that it had', 'old name', 'bench two'],
		['with blanks around it', ' north deck ', 'north deck'],
	])('%s is that one: %j', (_, typed, arm) => {
		expect(meant(typed)).toEqual(one(arm, true));
	});

	it.each([
		['a part', 'nor', 'north deck'],
		['a part of a name that it had', 'old', 'bench two'],
		['another case', 'NORTH DECK', 'north deck'],
		['another case, though parts of others fit', 'SOUTH', 'south'],
		['a letter without its accent', 'oland', 'Öland'],
		['the accent as a character of its own', 'O\u0308land', 'Öland'],
		['an accent that it has not', 'nörth', 'north deck'],
		['the end, in capitals', 'OË', 'Zoë'],
		// Unicode Standard Annex 15: both spellings of one letter are canonically equivalent.
		['a part with the accent apart', 'zoe\u0308', 'Zoë'],
	])('by %s is taken, and that is to be said: %j', (_, typed, arm) => {
		expect(meant(typed)).toEqual(one(arm));
	});

	it('by a part of several is none of them', () => {
		expect(meant('deck')).toEqual({found: 'several', arms: ['south deck', 'north deck']});
	});

	it.each(['', '  ', 'xyz', '\u0308', 'gauge set'])('by nothing that fits is not found: %j', (typed) => {
		expect(meant(typed)).toEqual({found: 'none'});
	});

	it('by a name of today comes before one that had it before', () => {
		const two = knownArms([], [armProfile('a', {formerNames: ['b']}), armProfile('b')]);
		expect(armMeant('b', two)).toEqual(one('b', true));
	});

	// The Turkish dotless i: a fold that follows the locale would not find it.
	it('is found in the same way in every locale', () => {
		expect(armMeant('iris', knownArms(['IRIS'], []))).toEqual(one('IRIS'));
		expect(armMeant('istanbul', knownArms(['İstanbul'], []))).toEqual(one('İstanbul'));
	});
});
