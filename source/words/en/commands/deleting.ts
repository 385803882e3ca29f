import {listed, plural} from '../../numbers.js';

const counted = (count: number): string => plural(count, {one: `${count} check`, other: `${count} checks`});

/** What there is of an arm. */
type OfArm = {readonly name: string; readonly checks: number; readonly hasProfile: boolean};

/** Days of the first check and the last; one where both are the same. */
const span = ([first, last]: readonly string[]): string => {
	if (first === undefined) return '';
	return last === undefined ? ` (${first})` : ` (${first} to ${last})`;
};

const partsOf = ({checks, hasProfile}: OfArm): string =>
	listed([...(checks > 0 ? [counted(checks)] : []), ...(hasProfile ? ['its profile'] : [])]);

/** `armdrift delete`. */
export const deleting = {
	nameArm: 'Name the arm to delete: armdrift delete --arm NAME.',
	nobodyToAsk: 'Nothing was deleted: there is no terminal to ask at. Give the name of the arm once more with --name.',
	inputEnded: 'Nothing was deleted: the input ended.',
	otherName: ({given, name}: {readonly given: string; readonly name: string}) =>
		`Nothing was deleted: the arm is called "${name}", not "${given}".`,
	isOpen: ({name}: {readonly name: string}) =>
		`Nothing was deleted: a check of "${name}" is open. Start armdrift and finish it, then delete again.`,
	unknownArm: ({arm, meant}: {readonly arm: string; readonly meant: string | undefined}) =>
		meant === undefined
			? `Nothing was deleted: there is no arm called "${arm}". "armdrift list" shows the arms with checks.`
			: `Nothing was deleted: there is no arm called "${arm}". Did you mean "${meant}"?`,
	/** What is about to go, and where it is kept. */
	going: ({
		days,
		remarks,
		...arm
	}: OfArm & {
		/** Days of the first check and the last. */
		readonly days: readonly string[];
		/** How many of the checks have something noted beside them. */
		readonly remarks: number;
	}) => {
		const noted = remarks === 0 ? '' : `, with the later notes on ${counted(remarks)}`;
		return `${arm.name}: ${partsOf(arm)}${span(days)}${noted}.`;
	},
	formerNames: ({names}: {readonly names: readonly string[]}) =>
		`Called ${listed(names.map((one) => `"${one}"`))} before.`,
	forGood: ({file}: {readonly file: string}) => `All of it goes for good. First a back-up is written to "${file}".`,
	typeName: 'Type the name of the arm to delete it: ',
	gone: (arm: OfArm) => `Deleted ${arm.name}: ${partsOf(arm)}.`,
	wayBack: ({file, command}: {readonly file: string; readonly command: string}) =>
		`Back-up: "${file}". To bring it back: ${command}`,
	nothingDeleted: 'Nothing was deleted.',
	stopped: ({file}: {readonly file: string}) =>
		`Stopped in the middle: the back-up "${file}" has all of it. Type the same command again to delete the rest.`,
	backUpBroken: ({file}: {readonly file: string}) =>
		`The back-up in "${file}" is not what was written. Name a file on another disk with --backup.`,
};
