import {isDeepStrictEqual} from 'node:util';
import type {Remark, StoredProfiles} from '../desk/stored-forms.js';
import {nameSteps} from '../results/profiles.js';

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

/** An arm, a cartridge or a set of tools that both sides know. */
type Pair = {readonly theirs: ImportedProfile; readonly ours: ImportedProfile};

/** As it is here, and as it will be. */
type NamedAnew = Pair & {
	readonly next: ImportedProfile;
	/** Each side gave it a name that the other does not know: ours stays. */
	readonly isTwofold: boolean;
};

export type MergedProfiles = {
	/** What is to be saved; undefined where nothing changes. */
	readonly next?: StoredProfiles;
	readonly added: readonly ImportedProfile[];
	/** Those that were here, to which something was noted as done there. */
	readonly noted: readonly ImportedProfile[];
	/** How many are here already. */
	readonly same: number;
	/** Those whose names come together. */
	readonly named: readonly NamedAnew[];
	/** Those whose other content is left out, because one of the same name or origin is here with another. */
	readonly clashes: readonly Pair[];
};

/**
 * Profiles of both sides. Names of both come together: checks are told apart by the name of their arm, so with a name left
 * out its history would fall in two. A name given later there is the name of today here too; where both sides gave one,
 * ours stays and theirs leads to it. Where they have not the same otherwise, ours stays; and a filed check keeps its own
 * answers in any case. Of two times of use the later one counts.
 */
export function mergedProfiles(ours: StoredProfiles | undefined, theirs: StoredProfiles | undefined): MergedProfiles {
	const all = [...(ours?.profiles ?? [])];
	const added: ImportedProfile[] = [];
	const named: NamedAnew[] = [];
	const clashes: Pair[] = [];
	let same = 0;
	const noted: ImportedProfile[] = [];
	let isChanged = false;
	for (const one of theirs?.profiles ?? []) {
		const known = all.filter((other) => isSameThing(one, other));
		const [first] = known;
		if (!first) {
			all.push(one);
			added.push(one);
			continue;
		}
		// Two that are told apart here are never made one.
		const next = known.length === 1 ? withEventsOf(joined(first, one), one) : first;
		if (next.name !== first.name || names(next).length > names(first).length)
			named.push({theirs: one, ours: first, next, isTwofold: ![next.name, ...names(first)].includes(one.name)});
		if (known.some((other) => isSameContent(one, other))) same++;
		else clashes.push({theirs: one, ours: next});
		if (!isDeepStrictEqual(next.events, first.events)) noted.push(next);
		isChanged ||= !isDeepStrictEqual(next, first);
		all[all.indexOf(first)] = next;
	}
	const isNew = added.length > 0 || isChanged;
	return {...(isNew && {next: {...theirs, ...ours, profiles: all}}), added, same, named, noted, clashes};
}

/** The same arm, cartridge or set of tools: by its origin, or by any name that it has or had. */
const isSameThing = (one: ImportedProfile, other: ImportedProfile): boolean =>
	one.id === other.id || (one.kind === other.kind && names(one).some((name) => names(other).includes(name)));

const names = ({name, formerNames = []}: ImportedProfile): readonly string[] => [name, ...formerNames];

/** Ours with all names of theirs. */
function joined(ours: ImportedProfile, theirs: ImportedProfile): ImportedProfile {
	const {usedAt} = isLater(theirs.usedAt, ours.usedAt) ? theirs : ours;
	if (hasNamesOf(ours, theirs) && !isRenamedTo(theirs, ours)) return {...ours, usedAt};
	if (!isRenamedTo(theirs, ours)) {
		const former = new Set([...(ours.formerNames ?? []), ...(theirs.formerNames ?? []), theirs.name]);
		return {...ours, usedAt, formerNames: [...former].filter((name) => name !== ours.name)};
	}
	const nameStep = nameSteps[ours.kind];
	const answer = theirs.answers[nameStep];
	const answers = {...ours.answers, ...(answer && {[nameStep]: answer})};
	const {name, formerNames} = theirs;
	const {correctedAt} = isLater(theirs.correctedAt, ours.correctedAt) ? theirs : ours;
	return {...ours, usedAt, name, formerNames, answers, ...(correctedAt !== undefined && {correctedAt})};
}

const isLater = (one: string | undefined, other: string | undefined): boolean =>
	one !== undefined && (other === undefined || Date.parse(one) > Date.parse(other));

const hasNamesOf = (one: ImportedProfile, other: ImportedProfile): boolean =>
	names(other).every((name) => names(one).includes(name));

/** Whether a profile is another one with a name that was given later. */
const isRenamedTo = (one: ImportedProfile, other: ImportedProfile): boolean =>
	one.name !== other.name &&
	hasNamesOf(one, other) &&
	(!hasNamesOf(other, one) || isLater(one.correctedAt, other.correctedAt));

/** Whether both have the same in them; where one was renamed, apart from that. */
function isSameContent(one: ImportedProfile, other: ImportedProfile): boolean {
	const isSameName = one.name === other.name && hasNamesOf(one, other) && hasNamesOf(other, one);
	return isSameName
		? isDeepStrictEqual(content(one), content(other))
		: isDeepStrictEqual(content(unnamed(one)), content(unnamed(other)));
}

/** Apart from its names, and from the time at which it was given the last one. */
function unnamed({name: _name, formerNames: _names, correctedAt: _at, ...rest}: ImportedProfile) {
	const {[nameSteps[rest.kind]]: _answer, ...answers} = rest.answers;
	return {...rest, answers};
}

/** What was noted on either side, once each, in the order in which it was noted; what one side struck out is struck out. */
function withEventsOf(ours: ImportedProfile, theirs: ImportedProfile): ImportedProfile {
	if (!theirs.events) return ours;
	return {...ours, events: mergedEvents(ours.events ?? [], theirs.events)};
}

type Events = NonNullable<ImportedProfile['events']>;

function mergedEvents(ours: Events, theirs: Events): Events {
	const isSame = (one: Events[number], other: Events[number]) =>
		isDeepStrictEqual({...one, struckAt: null}, {...other, struckAt: null});
	const own = ours.map((one) => {
		const struckAt = one.struckAt ?? theirs.find((other) => isSame(one, other))?.struckAt;
		return struckAt === undefined ? one : {...one, struckAt};
	});
	const others = theirs.filter((other) => !ours.some((one) => isSame(one, other)));
	return [...own, ...others].toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

/** Apart from when it was used last, and what was noted as done: of that both sides have a part. */
const content = ({usedAt: _usedAt, events: _events, ...rest}: Omit<ImportedProfile, 'name'>): unknown =>
	JSON.parse(JSON.stringify(rest));
