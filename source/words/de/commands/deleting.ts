import {listed, plural} from '../../numbers.js';

const counted = (count: number): string => plural(count, {one: `${count} Prüfung`, other: `${count} Prüfungen`});

/** What there is of an arm. */
type OfArm = {readonly name: string; readonly checks: number; readonly hasProfile: boolean};

/** Days of the first check and the last; one where both are the same. */
const span = ([first, last]: readonly string[]): string => {
	if (first === undefined) return '';
	return last === undefined ? ` (${first})` : ` (${first} bis ${last})`;
};

const partsOf = ({checks, hasProfile}: OfArm): string =>
	listed([...(checks > 0 ? [counted(checks)] : []), ...(hasProfile ? ['sein Profil'] : [])]);

/** `armdrift delete`. */
export const deleting = {
	nameArm: 'Den Arm nennen, der gelöscht werden soll: armdrift delete --arm NAME.',
	nobodyToAsk:
		'Nichts gelöscht: ohne Terminal ist keine Rückfrage möglich. Den Namen des Arms mit --name noch einmal nennen.',
	inputEnded: 'Nichts gelöscht: die Eingabe war zu Ende.',
	otherName: ({given, name}: {readonly given: string; readonly name: string}) =>
		`Nichts gelöscht: der Arm heißt „${name}“, nicht „${given}“.`,
	isOpen: ({name}: {readonly name: string}) =>
		`Nichts gelöscht: eine Prüfung von „${name}“ ist offen. armdrift starten und sie beenden, dann erneut löschen.`,
	unknownArm: ({arm, meant}: {readonly arm: string; readonly meant: string | undefined}) =>
		meant === undefined
			? `Nichts gelöscht: einen Arm „${arm}“ gibt es nicht. „armdrift list“ zeigt die Arme mit Prüfungen.`
			: `Nichts gelöscht: einen Arm „${arm}“ gibt es nicht. Gemeint „${meant}“?`,
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
		const noted = remarks === 0 ? '' : `, mit späteren Notizen zu ${counted(remarks)}`;
		return `${arm.name}: ${partsOf(arm)}${span(days)}${noted}.`;
	},
	formerNames: ({names}: {readonly names: readonly string[]}) =>
		`Hieß früher ${listed(names.map((one) => `„${one}“`))}.`,
	forGood: ({file}: {readonly file: string}) =>
		`All das verschwindet endgültig. Zuvor kommt eine Sicherung in „${file}“.`,
	typeName: 'Zum Löschen den Namen des Arms eintippen: ',
	gone: (arm: OfArm) => `Gelöscht: ${arm.name}, ${partsOf(arm)}.`,
	wayBack: ({file, command}: {readonly file: string; readonly command: string}) =>
		`Sicherung: „${file}“. So kommt alles zurück: ${command}`,
	nothingDeleted: 'Nichts gelöscht.',
	stopped: ({file}: {readonly file: string}) =>
		`Mittendrin abgebrochen: die Sicherung „${file}“ enthält alles. Derselbe Befehl löscht das Übrige.`,
	backUpBroken: ({file}: {readonly file: string}) =>
		`Die Sicherung in „${file}“ ist nicht, was geschrieben wurde. Mit --backup eine Datei auf einem anderen Datenträger nennen.`,
};
