import {listed} from '../../numbers.js';

const counted = (count: number): string => `${count} check${count === 1 ? '' : 's'}`;

/** What there is of an arm. */
type OfArm = {readonly name: string; readonly checks: number; readonly hasProfile: boolean};

const partsOf = ({checks, hasProfile}: OfArm): string =>
	listed([...(checks > 0 ? [counted(checks)] : []), ...(hasProfile ? ['its profile'] : [])]);

/** `armdrift delete`. */
export const deleting = {
	nameArm: 'Name the arm to delete: armdrift delete --arm NAME.',
	nobodyToAsk: 'Nothing was deleted: without a terminal to ask at, give the name of the arm once more with --name.',
	inputEnded: 'Nothing was deleted: the input ended.',
	otherName: ({given, name}: {readonly given: string; readonly name: string}) =>
		`Nothing was deleted: "${given}" is not the name of the arm, which is "${name}".`,
	isOpen: ({name}: {readonly name: string}) =>
		`Nothing was deleted: a check of "${name}" is open. Start armdrift and finish it, or start another one, which files it as interrupted; then delete again.`,
	unknownArm: ({arm, meant}: {readonly arm: string; readonly meant: string | undefined}) =>
		meant === undefined
			? `Nothing was deleted: there is no arm called "${arm}"; see "armdrift list" for the arms that have checks.`
			: `Nothing was deleted: there is no arm called "${arm}"; did you mean "${meant}"?`,
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
		const noted = remarks === 0 ? '' : `, with what is noted beside ${counted(remarks)}`;
		return `${arm.name}: ${partsOf(arm)}${days.length === 0 ? '' : ` (${days.join(' to ')})`}${noted}.`;
	},
	formerNames: ({names}: {readonly names: readonly string[]}) =>
		`Called ${listed(names.map((one) => `"${one}"`))} before.`,
	forGood: ({file}: {readonly file: string}) => `All of it goes for good, once a back-up is written to "${file}".`,
	typeName: 'Type the name of the arm to delete it: ',
	gone: (arm: OfArm) => `Deleted ${arm.name}: ${partsOf(arm)}.`,
	wayBack: ({file, command}: {readonly file: string; readonly command: string}) =>
		`Back-up: "${file}". To bring it back: ${command}`,
	nothingDeleted: 'Nothing was deleted.',
	stopped: ({file}: {readonly file: string}) =>
		`Stopped in the middle: all of it is in the back-up "${file}", and the same command again deletes the rest.`,
	backUpBroken: ({file}: {readonly file: string}) =>
		`The back-up in "${file}" is not what was written. Look after that disk, or name another file with --backup.`,
};
