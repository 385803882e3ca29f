import {isDeepStrictEqual} from 'node:util';
import type {Profiles} from './import-file.js';

type Profile = Profiles['profiles'][number];

export type MergedProfiles = {
	/** What is to be saved; undefined where nothing is added. */
	readonly next?: Profiles;
	readonly added: readonly Profile[];
	/** How many are here already. */
	readonly same: number;
	/** Those that are left out, because one of the same name or origin is here with other content. */
	readonly clashes: readonly {readonly theirs: Profile; readonly ours: Profile}[];
};

/**
 * Profiles of both sides. Where both know one and have not the same in it, ours stays: checks are told apart by the name of
 * their arm, so under a second name its history would fall in two; and a filed check keeps its own answers in any case.
 */
export function mergedProfiles(ours: Profiles | undefined, theirs: Profiles | undefined): MergedProfiles {
	const all = [...(ours?.profiles ?? [])];
	const added: Profile[] = [];
	const clashes: {theirs: Profile; ours: Profile}[] = [];
	let same = 0;
	for (const one of theirs?.profiles ?? []) {
		const known = all.filter((other) => isSameThing(one, other));
		const [first] = known;
		if (known.some((other) => isDeepStrictEqual(content(one), content(other)))) same++;
		else if (first) clashes.push({theirs: one, ours: first});
		else {
			all.push(one);
			added.push(one);
		}
	}
	return {...(added.length > 0 && {next: {...theirs, ...ours, profiles: all}}), added, same, clashes};
}

/** The same arm, cartridge or set of tools: by its origin, or by any name that it has or had. */
const isSameThing = (one: Profile, other: Profile): boolean =>
	one.id === other.id || (one.kind === other.kind && names(one).some((name) => names(other).includes(name)));

const names = ({name, formerNames = []}: Profile): readonly string[] => [name, ...formerNames];

/** Apart from when it was used last. */
const content = ({usedAt: _usedAt, ...rest}: Profile): unknown => JSON.parse(JSON.stringify(rest));
