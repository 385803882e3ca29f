import {plural} from '../../numbers.js';

const counted = (count: number): string => plural(count, {one: `${count} Prüfung`, other: `${count} Prüfungen`});

/** Each of them is masculine. */
const kinds = {arm: 'Arm', cartridge: 'Tonabnehmer', tools: 'Werkzeugsatz'} as const;

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
		...(remarks > 0 ? [`spätere Notizen zu ${counted(remarks)}`] : []),
		...(profiles > 0 ? [plural(profiles, {one: '1 Profil', other: `${profiles} Profile`})] : []),
		...(named > 0 ? [plural(named, {one: 'Namen von 1 Profil', other: `Namen von ${named} Profilen`})] : []),
		...(noted > 0 ? [plural(noted, {one: 'Arbeiten an 1 Arm', other: `Arbeiten an ${noted} Armen`})] : []),
		...(settings ? ['die Einstellungen'] : []),
	].join(', ');

/** Exports, and what comes of them when they are imported. */
export const exchange = {
	tableOfCsv: '--table gilt nur mit --as csv.',
	nothingFiled: ({dataDir}: {readonly dataDir: string}) =>
		`In „${dataDir}“ ist keine Prüfung abgelegt; der Export enthält keine.`,
	openLeftOut: 'Die offene Prüfung fehlt im Export: sie ist noch nicht abgelegt.',
	otherInside: ({id, holds}: {readonly id: string; readonly holds: string}) =>
		`Ausgelassen: die Prüfung ${id}, denn in ihrer Datei steht die Prüfung ${holds}.`,

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
	}) => `${name}: ${counted(checks)}, exportiert ${exportedAt} mit armdrift ${program}.`,
	nothingNew: 'Nichts darin ist neu.',
	newParts: (parts: NewParts) => `Neu: ${listedParts(parts)}.`,
	hereAlready: (parts: Parts) => `Schon hier: ${listedParts(parts)}.`,
	added: (parts: NewParts) => `Hinzugefügt: ${listedParts(parts)}.`,
	checkClash: ({id}: {readonly id: string}) =>
		`Ausgelassen: die Prüfung ${id}, denn hier ist eine andere mit dieser Kennung abgelegt.`,
	openHere: ({id}: {readonly id: string}) =>
		`Ausgelassen: die Prüfung ${id}, denn sie ist hier noch offen. Sie beenden, dann erneut importieren.`,
	remarkClash: ({id}: {readonly id: string}) =>
		`Ausgelassen: spätere Notizen zur Prüfung ${id}, denn hier sind andere Notizen.`,
	profileClash: ({theirs, ours}: {readonly theirs: NamedProfile; readonly ours: NamedProfile}) =>
		theirs.name === ours.name
			? `Ausgelassen: der ${kinds[theirs.kind]} „${theirs.name}“, denn der hier hat andere Antworten.`
			: `Ausgelassen: der ${kinds[theirs.kind]} „${theirs.name}“, denn hier heißt er „${ours.name}“.`,
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
		if (name !== here) return `Umbenannt: der ${kinds[kind]} „${here}“ heißt jetzt „${name}“; beide Namen finden ihn.`;
		return isTwofold
			? `Zwei Namen: der ${kinds[kind]} „${name}“ heißt dort „${there}“. Er bleibt „${name}“; beide Namen finden ihn.`
			: `Namen: auch frühere Namen finden jetzt den ${kinds[kind]} „${name}“.`;
	},
	ownSettings: 'Ausgelassen: die Einstellungen, denn hier gibt es schon welche.',
	unknownKey: ({key}: {readonly key: string}) => `Ausgelassen: „${key}“, denn diese Version kennt es nicht.`,
	addIt: 'Neues hinzufügen? j / n ',
	nobodyToAsk: 'Nichts hinzugefügt: ohne Terminal ist keine Rückfrage möglich. --yes angeben.',
	nothingChanged: 'Nichts geändert.',
	stopped: ({done, all}: {readonly done: number; readonly all: number}) =>
		`Abgebrochen: ${done} von ${all} Prüfungen sind hinzugefügt. Erneut importieren fügt das Übrige hinzu.`,

	/** Why an export cannot be used, behind `notUsed`. */
	notUsed: ({file, because}: {readonly file: string; readonly because: string}) =>
		`Der Export in „${file}“ ist nicht verwendbar: ${because}`,
	notOurs: ({kind}: {readonly kind: string}) => `kein Export dieses Programms (es fehlt "kind": "${kind}").`,
	changedMeanwhile: 'die Datei änderte sich beim Import. Erneut importieren.',
	cutShort: 'das Ende fehlt. Erneut exportieren.',
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
			check: 'eine Prüfung',
			checks: 'eine Liste von Prüfungen',
			id: 'die Kennung der Prüfung wie in „record“',
			text: 'ein Text',
			version: 'eine ganze Zahl ab 1',
		};
		return `${where}: gefunden ${found}. Nötig: ${wants[wanted]}.`;
	},
	checkInLine: ({line}: {readonly line: number}) => `Zeile ${line}: check`,
	twice: ({key}: {readonly key: string}) => `der Schlüssel „${key}“ steht zweimal darin.`,
	checkTwice: ({where, id}: {readonly where: string; readonly id: string}) =>
		`${where}.id: die Prüfung ${id} steht zweimal darin.`,
	practice: ({where, id}: {readonly where: string; readonly id: string}) =>
		`${where}: die Prüfung ${id} ist eine Übung an einem erfundenen Arm. Sie aus der Datei nehmen.`,
	notIssued: ({where}: {readonly where: string}) => `${where}.record.issued ist falsch.`,
	/** @param sentence what is wrong with what is noted here */
	remarkUnread: ({id, sentence}: {readonly id: string; readonly sentence: string}) =>
		`Ausgelassen: spätere Notizen zu ${id}, denn die Notiz hier ist nicht lesbar. ${sentence}`,
};
