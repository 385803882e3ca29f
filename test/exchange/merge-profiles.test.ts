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

	it('that were merely used at another time are the same', () => {
		const merged = mergedProfiles(of(inventedProfile('a')), of(inventedProfile('a', {usedAt: '2026-02-02T00:00:00Z'})));
		expect(merged).toEqual({added: [], same: 1, clashes: []});
	});

	it.each([
		['with other answers', inventedProfile('a', {answers: {}})],
		['corrected there', inventedProfile('a', {correctedAt: '2026-03-01T00:00:00Z'})],
		['made anew under the same name', inventedProfile('a', {id: 'arm-other'})],
		['renamed there', inventedProfile('b', {id: 'arm-a', formerNames: ['a']})],
		['made anew there under a name that it had before', inventedProfile('c', {formerNames: ['a']})],
		['set aside there', inventedProfile('a', {setAside: true})],
	])('that are here otherwise stay as they are here: %s', (_, theirs) => {
		const ours = inventedProfile('a');
		expect(mergedProfiles(of(ours), of(theirs))).toEqual({added: [], same: 0, clashes: [{theirs, ours}]});
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
		const {next, added, clashes} = mergedProfiles(
			of(inventedProfile('a', {events: [leads, moved]})),
			of(inventedProfile('a', {events: [{...leads, struckAt}, bearing]})),
		);
		expect(next?.profiles.map(({events}) => events)).toEqual([[{...leads, struckAt}, bearing, moved]]);
		expect([added.length, clashes]).toEqual([1, []]);
		// Nothing is added where all of it is here.
		const all = of(inventedProfile('a', {events: [leads, bearing]}));
		expect(mergedProfiles(all, of(inventedProfile('a', {events: [bearing]})))).toEqual({
			added: [],
			same: 1,
			clashes: [],
		});
		expect(mergedProfiles(all, of(inventedProfile('a')))).toMatchObject({added: [], same: 1});
	});
});
