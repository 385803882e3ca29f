import {describe, expect, it} from 'vitest';
import {mergedProfiles} from '../../../source/commands/data/merge-profiles.js';

describe('Profiles of both sides', () => {
	const profile = (name: string, more: object = {}) => ({
		id: `arm-${name}`,
		kind: 'arm' as const,
		name,
		usedAt: '2026-01-01T00:00:00Z',
		answers: {'arm-name': {typed: name, value: name}},
		...more,
	});
	const of = (...profiles: ReturnType<typeof profile>[]) => ({profiles});

	it('that are new are added behind those that are here', () => {
		const {next, added, clashes} = mergedProfiles(of(profile('a')), of(profile('b'), profile('a')));
		expect(next?.profiles.map(({name}) => name)).toEqual(['a', 'b']);
		expect([added.length, clashes]).toEqual([1, []]);
	});

	it('that were merely used at another time are the same', () => {
		const merged = mergedProfiles(of(profile('a')), of(profile('a', {usedAt: '2026-02-02T00:00:00Z'})));
		expect(merged).toEqual({added: [], same: 1, clashes: []});
	});

	it.each([
		['with other answers', profile('a', {answers: {}})],
		['corrected there', profile('a', {correctedAt: '2026-03-01T00:00:00Z'})],
		['made anew under the same name', profile('a', {id: 'arm-other'})],
		['renamed there', profile('b', {id: 'arm-a', formerNames: ['a']})],
		['made anew there under a name that it had before', profile('c', {formerNames: ['a']})],
		['set aside there', profile('a', {setAside: true})],
	])('that are here otherwise stay as they are here: %s', (_, theirs) => {
		const ours = profile('a');
		expect(mergedProfiles(of(ours), of(theirs))).toEqual({added: [], same: 0, clashes: [{theirs, ours}]});
	});

	it('of another kind may have the same name', () => {
		const tools = {...profile('a'), id: 'tools-a', kind: 'tools' as const};
		expect(mergedProfiles({profiles: [profile('a')]}, {profiles: [tools]}).added).toEqual([tools]);
	});
});
