import {listed} from '../../numbers.js';

const counted = (count: number): string => `${count} ${count === 1 ? 'Prüfung' : 'Prüfungen'}`;

/** What there is of an arm. */
type OfArm = {readonly name: string; readonly checks: number; readonly hasProfile: boolean};

const partsOf = ({checks, hasProfile}: OfArm): string =>
	listed([...(checks > 0 ? [counted(checks)] : []), ...(hasProfile ? ['sein Profil'] : [])]);

/** `armdrift delete`. */
export const deleting = {
	nameArm: 'Den Arm nennen, der gelöscht werden soll: armdrift delete --arm NAME.',
	nobodyToAsk:
		'Nichts gelöscht: ohne Terminal ist keine Rückfrage möglich. Den Namen des Arms mit --name noch einmal nennen.',
	inputEnded: 'Nichts gelöscht: die Eingabe war zu Ende.',
	otherName: ({given, name}: {readonly given: string; readonly name: string}) =>
		`Nichts gelöscht: „${given}“ ist nicht der Name des Arms; er heißt „${name}“.`,
	isOpen: ({name}: {readonly name: string}) =>
		`Nichts gelöscht: eine Prüfung von „${name}“ ist offen. armdrift starten und sie beenden, oder eine andere beginnen, die sie als unterbrochen ablegt; dann erneut löschen.`,
	unknownArm: ({arm, meant}: {readonly arm: string; readonly meant: string | undefined}) =>
		meant === undefined
			? `Nichts gelöscht: einen Arm „${arm}“ gibt es nicht; Arme mit Prüfungen zeigt „armdrift list“.`
			: `Nichts gelöscht: einen Arm „${arm}“ gibt es nicht; gemeint „${meant}“?`,
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
		const noted = remarks === 0 ? '' : `, mit Notizen zu ${counted(remarks)}`;
		return `${arm.name}: ${partsOf(arm)}${days.length === 0 ? '' : ` (${days.join(' bis ')})`}${noted}.`;
	},
	formerNames: ({names}: {readonly names: readonly string[]}) =>
		`Hieß früher ${listed(names.map((one) => `„${one}“`))}.`,
	forGood: ({file}: {readonly file: string}) =>
		`All das verschwindet endgültig, sobald eine Sicherung in „${file}“ liegt.`,
	typeName: 'Zum Löschen den Namen des Arms eintippen: ',
	gone: (arm: OfArm) => `Gelöscht: ${arm.name}, ${partsOf(arm)}.`,
	wayBack: ({file, command}: {readonly file: string; readonly command: string}) =>
		`Sicherung: „${file}“. So kommt alles zurück: ${command}`,
	nothingDeleted: 'Nichts gelöscht.',
	stopped: ({file}: {readonly file: string}) =>
		`Mittendrin abgebrochen: alles liegt in der Sicherung „${file}“; derselbe Befehl löscht das Übrige.`,
	backUpBroken: ({file}: {readonly file: string}) =>
		`Die Sicherung in „${file}“ ist nicht, was geschrieben wurde. Den Datenträger prüfen oder mit --backup eine andere Datei nennen.`,
};
