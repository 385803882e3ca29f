/** How the program ends. */
export const exitStatusRows = [
	['0', 'erledigt'],
	['1', 'Lesen oder Schreiben ging nicht'],
	['2', 'Aufruf oder Eingabe falsch, oder kein Terminal'],
	['3', 'Eingabe zu Ende, oder beendet mit offener Prüfung (gespeichert)'],
	['4', 'ein anderes armdrift schreibt'],
	['5', 'ein Import ließ aus, was hier anders ist'],
	['10', 'etwas ist fällig'],
	['70', 'interner Fehler'],
	['129', 'SIGHUP: das Terminal ist weg'],
	['130', 'Strg+C'],
	['131', 'SIGQUIT'],
	['143', 'SIGTERM'],
] as const;

/** The lines of the examples, without their heading. */
const examples = `  armdrift                         beginnen oder weitermachen
  armdrift --arm "Laufwerk Nord"   diesen Arm gleich prüfen
  armdrift recheck                 was zuerst fällig ist, schneller nachprüfen
  armdrift practice                üben am erfundenen Arm, ohne Laufwerk
  armdrift due                     welche Arme wann fällig sind
  armdrift --plain < answers       Zeile für Zeile oder aus einer Datei
  armdrift compute check.json      nur die Zahlen
  armdrift help readings           wie man Messwerte tippt; allein: alle Themen
`;

const exitStatuses = `Exit-Status: ${exitStatusRows.map(([status, meaning]) => `${status} ${meaning}`).join('; ')}.`;

/** What `--help` prints, and what is said of a command line that cannot be used. */
export const commandLine = {
	about: 'Führt an der Werkbank durch die Tonarm-Prüfung: Zug und Reibung am inneren und äußeren Radius.',
	examples,
	/** Stands before the usage: most people want one of these. */
	before: `Beispiele:\n${examples}`,
	/** Stands behind the options. */
	after: `\n${exitStatuses.replace(/(.{1,79})(?: |$)/g, '$1\n')}Ein Urteil ändert den Status nie.`,
	arm: 'diesen Arm prüfen, mit ganzem Namen oder einem Teil davon',
	data: 'Datenordner (sonst ARMDRIFT_DATA, sonst der übliche Ort)',
	language: 'Sprache der Texte (sonst laut Einstellungen, sonst wie im System)',
	plain: 'einfache Zeilen: für Vorleseprogramme, Pipes und einfache Terminals',
	noColor: 'keine Farben (wie NO_COLOR)',
	helpOption: 'diese Hilfe ausgeben',
	version: 'Version ausgeben',
	/** Headings of the help, by those of the library that prints it. */
	titles: {
		'Usage:': 'Aufruf:',
		'Arguments:': 'Argumente:',
		'Options:': 'Optionen:',
		'Commands:': 'Befehle:',
	} as Readonly<Record<string, string>>,
	/** What an option may be, behind what it is for. */
	choices: ({choices, usual}: {readonly choices: readonly string[]; readonly usual: string | undefined}) =>
		usual === undefined ? `(${choices.join(', ')})` : `(${choices.join(', ')}; üblich: ${usual})`,
	notUtf8:
		'Ein Name in der Befehlszeile oder in ARMDRIFT_DATA ist kein UTF-8. Datei oder Ordner umbenennen, dann erneut versuchen.',
	man: 'Handbuchseite ausgeben: armdrift --man | man -l -',
	unknownCommand: ({
		command,
		meant,
		known,
	}: {
		readonly command: string;
		readonly meant: string | undefined;
		readonly known: readonly string[];
	}) =>
		meant === undefined
			? `Einen Befehl „${command}“ gibt es nicht. Die Befehle sind: ${known.join(', ')}.`
			: `Einen Befehl „${command}“ gibt es nicht. Gemeint „${meant}“?`,
	unknownOption: ({
		option,
		meant,
		command,
	}: {
		readonly option: string;
		readonly meant: string | undefined;
		/** The command that was named; undefined for the program itself. */
		readonly command: string | undefined;
	}) => {
		if (meant !== undefined) return `Eine Option ${option} gibt es hier nicht. Gemeint ${meant}?`;
		return command === undefined
			? `Eine Option ${option} gibt es hier nicht. „armdrift --help“ zeigt die Optionen.`
			: `Eine Option ${option} gibt es hier nicht. „armdrift help ${command}“ zeigt die Optionen.`;
	},
	missingArgument: ({command, argument}: {readonly command: string; readonly argument: string}) =>
		`Ein Wort fehlt. So eintippen: armdrift ${command} <${argument}>.`,
	missingValue: ({flags}: {readonly flags: string}) => `Einer Option fehlt ihr Wert. So eintippen: ${flags}.`,
	missingOption: ({option, choices}: {readonly option: string; readonly choices: readonly string[]}) =>
		`${option} mit einem davon angeben: ${choices.join(', ')}.`,
	tooManyWords: ({word}: {readonly word: string}) =>
		`„${word}“ ist ein Wort zu viel. Einen Namen aus mehreren Wörtern in Anführungszeichen setzen.`,
	notTaken: ({name, typed, because}: {readonly name: string; readonly typed: string; readonly because: string}) =>
		`${name} nimmt „${typed}“ nicht. ${because}`,
	choiceWanted: ({choices}: {readonly choices: readonly string[]}) => `Eines davon eintippen: ${choices.join(', ')}.`,
	wholeNumber: ({least}: {readonly least: number}) => `Eine ganze Zahl ab ${least} eintippen.`,
	dayWanted: 'Einen Tag wie 2026-11-25, einen Monat wie 2026-11 oder ein Jahr eintippen.',
	recheck: {
		about: 'die letzte Prüfung eines Arms wiederholen; ohne Namen die des zuerst fälligen',
		arm: 'Name des Arms oder ein Teil davon',
	},
	compute: {
		about: 'die Zahlen eines JSON-Dokuments berechnen, als JSON',
		file: 'das Dokument; ohne oder mit -: Standardeingabe',
		schema: 'das JSON-Schema des Dokuments ausgeben',
		id: 'eine abgelegte Prüfung statt einer Datei nehmen',
	},
	export: {
		about: 'alle abgelegten Prüfungen, Profile und Einstellungen als JSON schreiben, oder die Zahlen als CSV',
		as: 'json: alles, eine Prüfung je Zeile; csv: eine Tabelle',
		table: 'bei csv: Zahlen je Radius (üblich) oder Messwerte mit Antiskating',
		out: 'Datei, die geschrieben wird; ohne oder mit -: Standardausgabe',
		force: 'die Datei überschreiben, wenn es sie schon gibt',
	},
	import: {
		about: 'Neues aus einem Export (JSON) zeigen, dann hinzufügen; endet mit 5, wenn etwas ausgelassen wurde',
		file: 'der Export',
		yes: 'ohne Rückfrage hinzufügen',
	},
	list: {
		about: 'frühere Prüfungen, die neueste zuerst, eine je Zeile',
		arm: 'nur die dieses Arms: heutiger oder früherer Name oder ein Teil davon',
		verdict: 'nur die mit diesem Urteil oder ohne Urteil; ungültige fehlen',
		since: 'nur die ab diesem Tag; Monat oder Jahr genügt',
		until: 'nur die bis zu diesem Tag; Monat oder Jahr genügt',
		limit: 'höchstens so viele',
		as: 'Form der Liste; was json enthält, sagt „armdrift help scripts“',
	},
	due: {
		about: 'Arme nach dem Tag ihrer nächsten Prüfung; endet mit 10, wenn einer fällig ist, sonst mit 0',
		arm: 'nur dieser Arm: sein Name oder ein Teil davon',
		as: 'Form der Liste; was json enthält, sagt „armdrift help scripts“',
		within: 'nur die, die binnen so vieler Tage fällig sind',
		quiet: 'nichts ausgeben: der Exit-Status zählt',
		calendar: 'alle Termine als Kalender schreiben (RFC 5545); - für die Standardausgabe',
		force: 'die Datei überschreiben, auch wenn sie kein Kalender dieses Programms ist',
	},
	delete: {
		about: 'einen Arm mit allen Prüfungen sichern, dann löschen',
		arm: 'der Arm, der gelöscht wird, mit ganzem Namen',
		name: 'sein Name noch einmal, damit keine Rückfrage kommt',
		backup: 'Datei der Sicherung (üblich: im Datenordner, unter „backups“)',
	},
	report: {
		about: 'Bericht einer Prüfung oder eines Arms über die Jahre schreiben',
		id: 'Kennung der Prüfung, siehe „armdrift list“',
		arm: 'Arm, um dessen Verlauf es geht: sein Name oder ein Teil davon',
		as: 'html zum Lesen und Drucken, markdown für eine E-Mail, maker für eine Reparatur, json für Skripte',
		all: 'einen Bericht jeder Prüfung, jeden in eigener Datei; mit --arm jeder Prüfung dieses Arms',
		out: 'Datei, die geschrieben wird; ohne oder mit -: Standardausgabe; mit --all der Ordner',
		practice: 'eine Übung statt einer echten Prüfung',
		force: 'die Datei überschreiben, wenn es sie schon gibt',
		after: `
Ohne ID und --arm: die neueste gültige Prüfung. Mit --arm: der Arm über alle Prüfungen;
bei maker seine neueste Prüfung. Eine Seite braucht nur einen Browser: kein Netz, kein Skript.`,
	},
	practice: {
		about: 'die Prüfung an einem erfundenen Arm üben, ohne Laufwerk',
		on: 'gleich mit diesem erfundenen Arm beginnen, siehe --arms',
		extent: 'gleich beginnen: eine Runde an jedem Radius, die ganze Messung oder die ganze Prüfung',
		seed: 'Zahl für den Zufall: gleiche Zahl, gleicher Zufall',
		arms: 'die erfundenen Arme auflisten',
		prove: 'so viele zufällige Arme messen und ausgeben, wie oft die Zahlen stimmen',
		after: `
Übungsdaten bleiben in einem eigenen Ordner, als Übung bezeichnet, getrennt von echten Prüfungen.`,
	},
	paths: {
		about: 'zeigen, wo Daten, Index, Berichte und Sicherungen liegen',
		as: 'Form der Liste; was json enthält, sagt „armdrift help scripts“',
	},
	help: {
		about: 'ein Thema oder einen Befehl erklären; ohne: Themen und Befehle auflisten',
		topic: 'Thema oder Befehl',
		man: 'Handbuchseite ausgeben, wie armdrift --man',
	},
	completion: {
		about: 'ein Skript ausgeben, das Befehlszeilen mit der Tab-Taste ergänzt',
		shell: 'bash, zsh oder fish',
		after: `
bash  eval "$(armdrift completion bash)"     in ~/.bashrc
zsh   source <(armdrift completion zsh)      in ~/.zshrc, nach compinit
fish  armdrift completion fish | source      in config.fish`,
	},
};
