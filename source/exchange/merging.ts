import {isDeepStrictEqual} from 'node:util';
import type {Remark, StoredProfiles} from '../desk/stored-forms.js';

type ImportedProfile = StoredProfiles['profiles'][number];

export type MergedRemark = {
	readonly remark: Remark;
	/** Something is noted otherwise here; ours was kept. */
	readonly clashes: boolean;
};

type Part = Readonly<Record<string, unknown>>;

/** Facts that belong together, and whether what one side has of them is an earlier state of what the other has. */
type Group = {readonly keys: readonly string[]; readonly isEarlier: (one: Remark, other: Remark) => boolean};

const isUnfinished = ({putBack, putBackAt}: Remark): boolean => putBack !== undefined && putBackAt === undefined;

/** All marks of being void, oldest first; the last one may still hold. */
const marksOf = ({formerVoids = [], void: mark}: Remark) => [...formerVoids, ...(mark ? [mark] : [])];

const groups: readonly Group[] = [
	{
		keys: ['putBack', 'overrides', 'putBackAt'],
		isEarlier: (one, other) =>
			(one.putBack === undefined && one.putBackAt === undefined) || (isUnfinished(one) && !isUnfinished(other)),
	},
	{
		keys: ['void', 'formerVoids'],
		isEarlier: (one, other) => {
			const later = marksOf(other);
			return marksOf(one).every((mark, index) => {
				const same = later[index];
				if (mark.takenBackAt !== undefined) return isDeepStrictEqual(mark, same);
				return mark.at === same?.at && mark.reason === same.reason;
			});
		},
	},
];

/**
 * What is noted beside a check here, with what is noted beside it there. Of two states of one thing the later one is
 * taken; where neither is the later one, ours stays.
 */
export function mergedRemark(ours: Remark, theirs: Remark): MergedRemark {
	const known = groups.flatMap(({keys}) => keys);
	const others = [...new Set([...Object.keys(ours), ...Object.keys(theirs)])].filter((key) => !known.includes(key));
	const parts = [
		...groups,
		...others.map((key): Group => ({keys: [key], isEarlier: (one) => one[key] === undefined})),
	].map(({keys, isEarlier}) => {
		const [own, other] = [pick(ours, keys), pick(theirs, keys)];
		if (isDeepStrictEqual(own, other)) return {part: own, clashes: false};
		if (isEarlier(ours, theirs)) return {part: other, clashes: false};
		return {part: own, clashes: !isEarlier(theirs, ours)};
	});
	return {remark: Object.assign({}, ...parts.map(({part}) => part)), clashes: parts.some(({clashes}) => clashes)};
}

const pick = (remark: Remark, keys: readonly string[]): Part =>
	Object.fromEntries(Object.entries(remark).filter(([key]) => keys.includes(key)));

export type MergedProfiles = {
	/** What is to be saved; undefined where nothing is added. Those to which something was noted there count as added. */
	readonly next?: StoredProfiles;
	readonly added: readonly ImportedProfile[];
	/** How many are here already. */
	readonly same: number;
	/** Those that are left out, because one of the same name or origin is here with other content. */
	readonly clashes: readonly {readonly theirs: ImportedProfile; readonly ours: ImportedProfile}[];
};

/**
 * Profiles of both sides. Where both know one and have not the same in it, ours stays: checks are told apart by the name of
 * their arm, so under a second name its history would fall in two; and a filed check keeps its own answers in any case.
 */
export function mergedProfiles(ours: StoredProfiles | undefined, theirs: StoredProfiles | undefined): MergedProfiles {
	const all = [...(ours?.profiles ?? [])];
	const added: ImportedProfile[] = [];
	const clashes: {theirs: ImportedProfile; ours: ImportedProfile}[] = [];
	let same = 0;
	for (const one of theirs?.profiles ?? []) {
		const known = all.filter((other) => isSameThing(one, other));
		const [first] = known;
		const alike = known.find((other) => isDeepStrictEqual(content(one), content(other)));
		const events = alike && mergedEvents(alike.events, one.events);
		if (alike && isDeepStrictEqual(events ?? [], alike.events ?? [])) same++;
		else if (alike) {
			const noted = {...alike, events};
			all[all.indexOf(alike)] = noted;
			added.push(noted);
		} else if (first) clashes.push({theirs: one, ours: first});
		else {
			all.push(one);
			added.push(one);
		}
	}
	return {...(added.length > 0 && {next: {...theirs, ...ours, profiles: all}}), added, same, clashes};
}

/** The same arm, cartridge or set of tools: by its origin, or by any name that it has or had. */
const isSameThing = (one: ImportedProfile, other: ImportedProfile): boolean =>
	one.id === other.id || (one.kind === other.kind && names(one).some((name) => names(other).includes(name)));

const names = ({name, formerNames = []}: ImportedProfile): readonly string[] => [name, ...formerNames];

/** What was noted on either side, once each, in the order in which it was noted; what one side struck out is struck out. */
function mergedEvents(ours: ImportedProfile['events'] = [], theirs: ImportedProfile['events'] = []) {
	const isSame = (one: (typeof ours)[number], other: (typeof ours)[number]) =>
		isDeepStrictEqual({...one, struckAt: null}, {...other, struckAt: null});
	const own = ours.map((one) => {
		const struckAt = one.struckAt ?? theirs.find((other) => isSame(one, other))?.struckAt;
		return struckAt === undefined ? one : {...one, struckAt};
	});
	const others = theirs.filter((other) => !ours.some((one) => isSame(one, other)));
	return [...own, ...others].toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

/** Apart from when it was used last, and what was noted as done: of that both sides have a part. */
const content = ({usedAt: _usedAt, events: _events, ...rest}: ImportedProfile): unknown =>
	JSON.parse(JSON.stringify(rest));
