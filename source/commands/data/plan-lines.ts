import type {ImportFile} from './import-file.js';
import {addsNothing, type ImportPlan} from './import-plan.js';

const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

const kinds = {arm: 'arm', cartridge: 'cartridge', tools: 'set of tools'} as const;

/** What an import would add, what is here already, and what is left out and why. */
export function planLines(name: string, file: ImportFile, plan: ImportPlan): string[] {
	const {profiles, same, settings} = plan;
	const here = [
		...(same > 0 ? [counted(same, 'check')] : []),
		...(profiles.same > 0 ? [counted(profiles.same, 'profile')] : []),
		...(settings === 'same' ? ['the settings'] : []),
	];
	return [
		`${name}: ${counted(file.count, 'check')}, exported ${file.exportedAt} by armdrift ${file.program}.`,
		addsNothing(plan) ? 'Nothing in it is new.' : `New: ${addedParts(plan).join(', ')}.`,
		...(here.length > 0 ? [`Here already: ${here.join(', ')}.`] : []),
		...leftOut(file, plan),
	];
}

/** What was added, in the end. */
export const addedLine = (plan: ImportPlan): string => `Added: ${addedParts(plan).join(', ')}.`;

const addedParts = ({newChecks, newRemarks, profiles, settings}: ImportPlan): string[] => [
	...(newChecks.length > 0 ? [counted(newChecks.length, 'check')] : []),
	...(newRemarks.length > 0 ? [`later notes on ${counted(newRemarks.length, 'check')}`] : []),
	...(profiles.added.length > 0 ? [counted(profiles.added.length, 'profile')] : []),
	...(settings === 'new' ? ['the settings'] : []),
];

function leftOut({unknownKeys}: ImportFile, plan: ImportPlan): string[] {
	return [
		...plan.clashes.map((id) => `Left out: ${id} is here with other content, and a filed check never changes.`),
		...(plan.openHere === undefined
			? []
			: [`Left out: ${plan.openHere} is the check in progress here. File it first.`]),
		...plan.remarkClashes.map((id) => `Left out: what is noted later on ${id}, because something else is noted here.`),
		...plan.profiles.clashes.map(({theirs, ours}) => profileLine(theirs, ours)),
		...(plan.settings === 'own' ? ['Left out: the settings, because there are settings here already.'] : []),
		...[...unknownKeys].map((key) => `Left out: "${key}", which this version has no place for.`),
	];
}

type Profile = ImportPlan['profiles']['added'][number];

function profileLine(theirs: Profile, ours: Profile): string {
	const thing = `the ${kinds[theirs.kind]} "${theirs.name}"`;
	return theirs.name === ours.name
		? `Left out: ${thing}, because one of that name is here with other answers.`
		: `Left out: ${thing}, because it is here as "${ours.name}".`;
}
