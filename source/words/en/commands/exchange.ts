import {plural} from '../../numbers.js';

const counted = (count: number): string => plural(count, {one: `${count} check`, other: `${count} checks`});

const kinds = {arm: 'arm', cartridge: 'cartridge', tools: 'set of tools'} as const;

type NamedProfile = {readonly kind: keyof typeof kinds; readonly name: string};

/** Parts of an export; of what is left out of a list, the count is 0. */
type Parts = {readonly checks: number; readonly profiles: number; readonly settings: boolean};
type NewParts = Parts & {
	/** On how many checks that are here something is noted later. */
	readonly remarks: number;
	/** How many profiles that are here get further names. */
	readonly named?: number;
	/** To how many of them something was noted as done. */
	readonly noted?: number;
};

const listedParts = ({
	checks,
	remarks = 0,
	profiles,
	named = 0,
	noted = 0,
	settings,
}: Parts & Partial<NewParts>): string =>
	[
		...(checks > 0 ? [counted(checks)] : []),
		...(remarks > 0 ? [`later notes on ${counted(remarks)}`] : []),
		...(profiles > 0 ? [plural(profiles, {one: '1 profile', other: `${profiles} profiles`})] : []),
		...(named > 0 ? [plural(named, {one: 'names of 1 profile', other: `names of ${named} profiles`})] : []),
		...(noted > 0 ? [plural(noted, {one: 'what was done to 1 arm', other: `what was done to ${noted} arms`})] : []),
		...(settings ? ['the settings'] : []),
	].join(', ');

/** Exports, and what comes of them when they are imported. */
export const exchange = {
	tableOfCsv: '--table goes only with --as csv.',
	nothingFiled: ({dataDir}: {readonly dataDir: string}) =>
		`No check is on file in "${dataDir}", so the export holds none.`,
	openLeftOut: 'The open check is not in the export: it is not filed yet.',
	otherInside: ({id, holds}: {readonly id: string; readonly holds: string}) =>
		`Left out: the check ${id}, because its file holds the check ${holds}.`,

	head: ({
		name,
		checks,
		exportedAt,
		program,
	}: {
		readonly name: string;
		readonly checks: number;
		readonly exportedAt: string;
		readonly program: string;
	}) => `${name}: ${counted(checks)}, exported ${exportedAt} by armdrift ${program}.`,
	nothingNew: 'Nothing in it is new.',
	newParts: (parts: NewParts) => `New: ${listedParts(parts)}.`,
	hereAlready: (parts: Parts) => `Here already: ${listedParts(parts)}.`,
	added: (parts: NewParts) => `Added: ${listedParts(parts)}.`,
	checkClash: ({id}: {readonly id: string}) =>
		`Left out: the check ${id}, because another one of that id is on file here.`,
	openHere: ({id}: {readonly id: string}) =>
		`Left out: the check ${id}, because it is still open here. Finish it, then import again.`,
	remarkClash: ({id}: {readonly id: string}) =>
		`Left out: the later notes on the check ${id}, because there are other notes here.`,
	profileClash: ({theirs, ours}: {readonly theirs: NamedProfile; readonly ours: NamedProfile}) =>
		theirs.name === ours.name
			? `Left out: the ${kinds[theirs.kind]} "${theirs.name}", because the one here has other answers.`
			: `Left out: the ${kinds[theirs.kind]} "${theirs.name}", because it is here as "${ours.name}".`,
	profileNamed: ({
		kind,
		name,
		here,
		there,
		isTwofold,
	}: {
		readonly kind: NamedProfile['kind'];
		/** What it will be called here, is called here now, and is called there. */
		readonly name: string;
		readonly here: string;
		readonly there: string;
		/** Each side gave it a name that the other does not know. */
		readonly isTwofold: boolean;
	}) => {
		if (name !== here) return `Renamed: the ${kinds[kind]} "${here}" is called "${name}" now; both names find it.`;
		return isTwofold
			? `Two names: the ${kinds[kind]} "${name}" is called "${there}" there. It stays "${name}"; both names find it.`
			: `Names: the ${kinds[kind]} "${name}" is now found under its former names too.`;
	},
	ownSettings: 'Left out: the settings, because there are settings here.',
	unknownKey: ({key}: {readonly key: string}) => `Left out: "${key}", because this version does not know it.`,
	addIt: 'Add what is new? y / n ',
	nobodyToAsk: 'Nothing was added: there is no terminal to ask at. Add --yes.',
	nothingChanged: 'Nothing was changed.',
	stopped: ({done, all}: {readonly done: number; readonly all: number}) =>
		`Stopped: ${done} of ${all} checks were added. Import again to add the rest.`,

	/** Why an export cannot be used, behind `notUsed`. */
	notUsed: ({file, because}: {readonly file: string; readonly because: string}) =>
		`The export in "${file}" cannot be used: ${because}`,
	notOurs: ({kind}: {readonly kind: string}) => `it is no export of this program (it has no "kind": "${kind}").`,
	changedMeanwhile: 'it changed during the import. Import it again.',
	cutShort: 'its end is missing. Export it again.',
	wanted: ({
		where,
		found,
		wanted,
	}: {
		readonly where: string;
		readonly found: string;
		readonly wanted: 'check' | 'checks' | 'id' | 'text' | 'version';
	}) => {
		const wants = {
			check: 'a check',
			checks: 'a list of checks',
			id: 'the id that its record has',
			text: 'a text',
			version: 'a whole number from 1',
		};
		return `${where}: found ${found}. Wanted: ${wants[wanted]}.`;
	},
	checkInLine: ({line}: {readonly line: number}) => `line ${line}: check`,
	twice: ({key}: {readonly key: string}) => `the key "${key}" stands in it twice.`,
	checkTwice: ({where, id}: {readonly where: string; readonly id: string}) =>
		`${where}.id: the check ${id} stands in it twice.`,
	practice: ({where, id}: {readonly where: string; readonly id: string}) =>
		`${where}: the check ${id} is practice on an invented arm. Take it out of the file.`,
	notIssued: ({where}: {readonly where: string}) => `${where}.record.issued is wrong.`,
	/** @param sentence what is wrong with what is noted here */
	remarkUnread: ({id, sentence}: {readonly id: string; readonly sentence: string}) =>
		`Left out: what is noted later on ${id}, because what is noted here cannot be read. ${sentence}`,
};
