import type {Topic} from './topics.js';

/** What `--as json` prints, by its key: the unit stands at the end of the key. A key that holds more is told as a whole. */
export const jsonKeys = {
	/** `list`, one object a check. */
	list: {
		id: 'der Prüfung, wie andere Befehle sie nehmen',
		date: 'Kalendertag am Ort der Prüfung',
		startedAt: 'Zeit des Beginns, mit Zeitverschiebung',
		arm: 'damaliger Name des Arms',
		armToday: 'sein heutiger Name',
		outcome: 'complete, stopped, interrupted oder put back',
		voidBecause: 'warum sie nicht zählt; null, wo sie zählt',
		isVoidUnknown: 'ob die Notiz, die das sagen würde, nicht lesbar ist',
		verdict: 'good, usable, beyond, undecided oder off-scale; null, wo es keines gab',
		atWorst: 'das schlechteste Urteil, das das ± offenlässt',
		'probe[].place': 'inner, outer oder other',
		'probe[].radiusMm': 'Abstand von der Tellerachse',
		'probe[].pullPct': 'Zug, + zum Rand, Prozent der Abspielkraft; null am Skalenende',
		'probe[].pullUncertaintyPct': 'sein ± für 95 %',
		'probe[].bandPct': 'Reibung',
		'probe[].bandUncertaintyPct': 'ihr ± für 95 %',
		'probe[].tiltPct': 'Anteil der Neigung am Zug; null, wo keine Neigung gemessen wurde',
		'probe[].tiltUncertaintyPct': 'sein ± für 95 %',
		'measuredWith.playingMn': 'Abspielkraft in Millinewton',
		'measuredWith.effectiveLengthMm': 'effektive Länge des Arms',
		'measuredWith.loading': 'gravity oder spring',
		'measuredWith.guard': 'Nadelschutz beim Wiegen: included, left-out oder none',
		'measuredWith.tools': 'Name des Werkzeugsatzes',
		'measuredWith.temperatureC': 'Raum in Grad Celsius; null, wo unbekannt',
		'measuredWith.withoutSettingUp': 'ob das ± das Aufstellen auslässt, wie in frühen Versionen',
		doneSince: 'was seit der Prüfung davor am Arm gemacht wurde: Kennungen',
		doneNote: 'was gemacht wurde, in Worten, wo es etwas anderes war',
		tookMinutes: 'Minuten Arbeit an der Werkbank',
		nextDate: 'Tag der nächsten Prüfung; null, wo keine gewünscht war',
		'overrides[].step': 'Kennung eines übergangenen Schritts',
		'overrides[].reason': 'Kennung des Grunds',
		'overrides[].typed': 'der Grund, wie eingetippt; null, wo aus der Liste gewählt',
		'overrides[].at': 'Zeit des Übergehens',
	},
	/** `due`, one object an arm. */
	due: {
		arm: 'sein heutiger Name',
		nextDate: 'Tag seiner nächsten Prüfung',
		inDays: 'Tage ab heute; fällig bei 0 und darunter',
		because: 'warum er dann fällig ist',
		lastId: 'Kennung seiner letzten Prüfung',
		lastDate: 'Tag dieser Prüfung',
	},
	/** `report` of a check: these beside those of the list. */
	report: {
		isPractice: 'ob der Arm erfunden ist',
		finishedAt: 'Zeit ihres Endes',
		putBackAt: 'Zeit, zu der das Laufwerk später spielbereit gemacht wurde; null, wo nicht',
		nextBecause: 'warum die nächste Prüfung dann fällig ist',
		figures: 'wie am Tag ausgegeben, mit den Schlüsseln von „compute“; null, wo es keine gibt',
		findings: 'wie am Tag ausgegeben, der erste zuerst',
		document: 'die Messwerte als Dokument für „compute“; null, wo sie nicht reichen',
		record: 'die ganze Prüfung wie in einem Export, ohne Kunde und Werkstatt; Werte in den Einheiten von „compute“',
	},
	/** `paths`: full paths, whether anything lies there yet or not. */
	paths: {
		data: 'Ordner aller Daten: offene Prüfung, Profile und Einstellungen',
		checks: 'darin der Ordner der abgelegten Prüfungen, eine Datei je Prüfung',
		index: 'darin der Ordner des Index; fehlt er, legt ihn das Programm neu an',
		reports: 'darin der Ordner der Berichte, mit einer Taste am Bildschirm geschrieben',
		backups: 'darin der Ordner der Sicherungen gelöschter Arme',
		practice: 'darin der Ordner der Übungsdaten',
	},
	/** `report --arm`. */
	arm: {
		arm: 'sein heutiger Name',
		formerNames: 'frühere Namen, der älteste zuerst',
		checks: 'alle seine Prüfungen, die neueste zuerst, mit den Schlüsseln der Liste',
	},
};

/** The help topic on scripts. */
export const scripts: Topic = {
	name: 'scripts',
	title: 'was --as json enthält, Tabellen und Filter',
	blocks: [
		'„list“, „due“, „report“ und „paths“ geben mit --as json JSON aus. Es ist UTF-8, mit ungerundeten Zahlen. Ein Schlüssel endet mit seiner Einheit, null steht für Unbekanntes. Unsichtbare Zeichen sind maskiert. Eine Liste hat ein Objekt je Zeile. Neue Schlüssel können dazukommen; die heutigen bleiben und behalten ihre Bedeutung.',
		{
			lines: [
				'armdrift list --verdict beyond --since 2026 --as json',
				'armdrift due --arm nord --as json',
				'armdrift report --all --as json --out ORDNER',
				'armdrift compute check.json',
				'armdrift compute --schema',
			],
		},
		'„compute“ berechnet nur die Zahlen: ein JSON-Dokument hinein, eines heraus. --schema gibt das JSON-Schema dieses Dokuments aus. --id ID nimmt eine abgelegte Prüfung.',
		'Ein Teil des Namens eines Arms genügt, groß oder klein und ohne Akzente: o findet Öland. Passt ein Arm, wird er genommen und genannt. Passen mehrere, werden alle genannt, und der Befehl endet mit 2. Nur „delete“ will den ganzen Namen.',
		'„list“, ein Objekt je Prüfung:',
		{rows: Object.entries(jsonKeys.list)},
		'„due“, ein Objekt je Arm:',
		{rows: Object.entries(jsonKeys.due)},
		'„report“ einer Prüfung, neben den Schlüsseln der Liste:',
		{rows: Object.entries(jsonKeys.report)},
		'„report --arm“:',
		{rows: Object.entries(jsonKeys.arm)},
		'„paths“:',
		{rows: Object.entries(jsonKeys.paths)},
		'„export --as csv“ ist eine Tabelle der Zahlen, eine Zeile je Radius. Mit --table bias ist es eine Tabelle der Messwerte mit Antiskating, in der Einheit des Kraftmessers. Ein Import fügt hinzu, was er kann. Er endet mit 5, wo er ausließ, was hier anders ist.',
	],
};
