import {describe, expect, it} from 'vitest';
import {mergedProfiles} from '../../source/exchange/merging.js';
import {inventedProfile} from '../helpers/data-folders.js';

describe('Profiles of both sides', () => {
	const of = (...profiles: ReturnType<typeof inventedProfile>[]) => ({profiles});

	it('that are new are added behind those that are here', () => {
		const {next, added, clashes} = mergedProfiles(
			of(inventedProfile('a')),
			of(inventedProfile('b'), inventedProfile('a')),
		);
		expect(next?.profiles.map(({name}) => name)).toEqual(['a', 'b']);
		expect([added.length, clashes]).toEqual([1, []]);
	});

	it('that were merely used at another time are the same, and the later time counts', () => {
		const [early, late] = [inventedProfile('a'), inventedProfile('a', {usedAt: '2026-02-02T00:00:00Z'})];
		const merged = mergedProfiles(of(early), of(late));
		expect(merged).toEqual({next: of(late), added: [], same: 1, named: [], noted: [], clashes: []});
		expect(mergedProfiles(of(late), of(early))).toEqual({added: [], same: 1, named: [], noted: [], clashes: []});
	});

	it.each([
		['with other answers', inventedProfile('a', {answers: {}})],
		['corrected there', inventedProfile('a', {correctedAt: '2026-03-01T00:00:00Z'})],
		['made anew under the same name', inventedProfile('a', {id: 'arm-other'})],
		['set aside there', inventedProfile('a', {setAside: true})],
	])('that are here otherwise stay as they are here: %s', (_, theirs) => {
		const ours = inventedProfile('a');
		expect(mergedProfiles(of(ours), of(theirs))).toEqual({
			added: [],
			same: 0,
			named: [],
			noted: [],
			clashes: [{theirs, ours}],
		});
	});

	it('of another kind may have the same name', () => {
		const tools = {...inventedProfile('a'), id: 'tools-a', kind: 'tools' as const};
		expect(mergedProfiles({profiles: [inventedProfile('a')]}, {profiles: [tools]}).added).toEqual([tools]);
	});

	it('to which something was noted on either side have all of it, once; what is struck out on one side is struck out', () => {
		const event = (kind: string, at: string, more = {}) => ({kind, on: '2026-02-01', at, ...more});
		const [leads, bearing, moved] = [
			event('leads', '2026-02-01T10:00:00+01:00'),
			event('bearing', '2026-02-02T10:00:00+01:00'),
			event('moved', '2026-02-03T10:00:00+01:00', {note: 'to the wall shelf'}),
		];
		const struckAt = '2026-02-04T10:00:00+01:00';
		const {next, added, noted, clashes} = mergedProfiles(
			of(inventedProfile('a', {events: [leads, moved]})),
			of(inventedProfile('a', {events: [{...leads, struckAt}, bearing]})),
		);
		expect(next?.profiles.map(({events}) => events)).toEqual([[{...leads, struckAt}, bearing, moved]]);
		expect([added, noted.length, clashes]).toEqual([[], 1, []]);
		// Nothing is added where all of it is here.
		const all = of(inventedProfile('a', {events: [leads, bearing]}));
		expect(mergedProfiles(all, of(inventedProfile('a', {events: [bearing]})))).toEqual({
			added: [],
			same: 1,
			named: [],
			noted: [],
			clashes: [],
		});
		expect(mergedProfiles(all, of(inventedProfile('a')))).toMatchObject({added: [], same: 1});
	});
});

describe('Names that were given on one side', () => {
	const of = (...profiles: ReturnType<typeof inventedProfile>[]) => ({profiles});
	const [march, may] = ['2026-03-01T00:00:00Z', '2026-05-01T00:00:00Z'];
	const answered = (name: string, more: object = {}) => ({
		...inventedProfile(name, {id: 'arm-a', ...more}),
		answers: {'arm-name': {typed: name, value: name}, 'arm-length': {typed: '230 mm', value: 230}},
	});
	const before = answered('a');
	const renamed = answered('b', {formerNames: ['a'], correctedAt: march});

	it('there become those of here, in full and without a clash', () => {
		const merged = mergedProfiles(of(before), of(renamed));
		expect(merged.next).toEqual(of(renamed));
		expect(merged).toMatchObject({added: [], same: 1, clashes: [], named: [{ours: before, isTwofold: false}]});
	});

	it('here stay, and there is nothing to tell', () => {
		expect(mergedProfiles(of(renamed), of(before))).toEqual({added: [], same: 1, named: [], noted: [], clashes: []});
	});

	it('stay the same when they come a second time', () => {
		const {next} = mergedProfiles(of(before), of(renamed));
		expect(mergedProfiles(next, of(renamed))).toEqual({added: [], same: 1, named: [], noted: [], clashes: []});
	});

	it('one after the other are all kept, the last one as that of today', () => {
		const again = answered('c', {formerNames: ['a', 'b'], correctedAt: may});
		expect(mergedProfiles(of(before), of(again)).next).toEqual(of(again));
		expect(mergedProfiles(of(renamed), of(again)).next).toEqual(of(again));
	});

	it('and taken back later are taken back, whichever way it comes', () => {
		const back = answered('a', {formerNames: ['b'], correctedAt: may});
		expect(mergedProfiles(of(renamed), of(back)).next).toEqual(of(back));
		expect(mergedProfiles(of(back), of(renamed)).next).toBeUndefined();
	});

	it('on both sides are told: ours stays, and all of them lead to it', () => {
		const other = answered('c', {formerNames: ['a'], correctedAt: may});
		const merged = mergedProfiles(of(renamed), of(other));
		expect(merged.next).toEqual({profiles: [{...renamed, formerNames: ['a', 'c']}]});
		expect(merged).toMatchObject({same: 1, clashes: [], named: [{theirs: other, ours: renamed, isTwofold: true}]});
	});

	it('come along where other answers are left out', () => {
		const theirs = inventedProfile('b', {id: 'arm-other', formerNames: ['a']});
		const next = {...before, name: 'b', formerNames: ['a'], answers: {...before.answers, ...theirs.answers}};
		const merged = mergedProfiles(of(before), of(theirs));
		expect(merged).toMatchObject({next: {profiles: [next]}, same: 0, clashes: [{theirs, ours: next}]});
	});

	it('never make one of two that are told apart here', () => {
		const two = [inventedProfile('a'), inventedProfile('b')];
		const theirs = inventedProfile('b', {id: 'arm-c', formerNames: ['a']});
		const merged = mergedProfiles(of(...two), of(theirs));
		expect(merged).toEqual({added: [], same: 0, named: [], noted: [], clashes: [{theirs, ours: two[0]}]});
	});
});
