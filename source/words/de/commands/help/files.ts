import {exitStatusRows} from '../command-line.js';
import type {Topic} from '../topics.js';

/** What the program writes, and where its data lie. */
export const onFiles: readonly Topic[] = [
	{
		name: 'files',
		title: 'Berichte, Export, Import, Kalender',
		blocks: [
			'Ein Bericht einer Prüfung, eines Arms über die Jahre oder jeder Prüfung: eine Seite zum Lesen und Drucken, markdown für eine E-Mail, oder eine Seite für den Hersteller des Arms.',
			{
				lines: [
					'armdrift report --as html --out check.html',
					'armdrift report --arm "Laufwerk Nord" --as html --out arm.html',
					'armdrift report --all --as html --out ORDNER',
				],
			},
			'Mit --all bekommt jede Prüfung eine eigene Datei; zusammen mit --arm nur die eines Arms. Ein Bericht ist eine Datei: kein Skript, nichts von außen. Der einer Prüfung beginnt mit einer Seite für den Besitzer des Arms; das Übrige ist für den, der ihn einstellt. Auf der Seite einer früheren Prüfung schreibt ihn eine Taste: er liegt dann in reports/ im Datenordner, unter der Kennung der Prüfung, und öffnet sich, wo es einen Desktop gibt. Auf Papier nennt jede Seite Arm und Tag, in Chromium ab 131; andere Browser lassen das womöglich weg.',
			'Ein Export enthält alles außer der laufenden Prüfung, eine Prüfung je Zeile (JSON Lines). Gleiche Daten ergeben den gleichen Export, woher sie auch kamen.',
			{
				lines: [
					'armdrift export --as json --out all.jsonl',
					'armdrift export --as csv --out figures.csv',
					'armdrift export --as csv --table bias --out bias.csv',
					'armdrift import all.jsonl',
				],
			},
			'Ein Import zeigt zuerst, was neu ist. Er überschreibt nichts, und derselbe Import fügt beim zweiten Mal nichts hinzu. Ein Arm, der auf einer Seite umbenannt wurde, ist danach ein Arm mit allen seinen Namen. Benannten ihn beide Seiten um, bleibt der hiesige Name, und das wird gesagt. Exporte früherer Versionen, ein einziges JSON-Dokument, lassen sich weiter importieren, bis 512 MB.',
			'Das CSV hat eine Zeile je Radius, in Prozent der Abspielkraft, + zum Rand, ± für 95 %. Mit --table bias hat es eine Zeile je Runde mit Antiskating, in der Einheit des Kraftmessers. done_since, done_on und done_note sagen, was vor dieser Prüfung am Arm gemacht wurde: die Arten (levelled, leads, bearing, cartridge, moved, other), ihre Tage und die getippten Worte.',
			'Kunden stehen in keinem CSV und in keinem Bericht für den Hersteller. Sie stehen nur auf dem Blatt ihrer Prüfung und im JSON, das die Sicherung ist.',
			{lines: ['armdrift due --calendar checks.ics']},
			'Der Kalender hat einen Termin je Arm und eine Erinnerung eine Woche davor. Die Datei nach der nächsten Prüfung wieder einlesen: der Termin wandert und verdoppelt sich nicht. Eine überfällige Prüfung kommt auf morgen; ein beiseitegelegter Arm verliert seinen Termin.',
		],
	},
	{
		name: 'data',
		title: 'wo die Daten liegen, was die Umgebung ändert, Exit-Status',
		blocks: [
			'Jede Antwort ist gespeichert, bevor die nächste Frage kommt. Jede fertige Prüfung ist eine eigene Datei im Datenordner, mit dem Ergebnis, wie es an jenem Tag ausgegeben wurde. Es gilt der Ordner, den --data nennt, sonst der aus ARMDRIFT_DATA, sonst einer namens armdrift am üblichen Ort für Einstellungen von Programmen. „armdrift paths“ zeigt, wo Daten, Index, Berichte und Sicherungen liegen. Wird das Programm entfernt, bleiben sie dort.',
			{
				rows: [
					['ARMDRIFT_DATA', 'Datenordner'],
					['NO_COLOR, FORCE_COLOR', 'ohne Farben, mit Farben'],
					['ACCESSIBLE=1, TERM=dumb', 'einfache nummerierte Fragen statt ganzer Bildschirme, wie mit --plain'],
					['INK_SCREEN_READER=1', 'Bildschirme in einer Reihenfolge zum Vorlesen'],
				],
			},
			'Wie das Programm endet; ein Urteil ändert das nie:',
			{rows: exitStatusRows},
			'Damit Tab Befehle, Optionen, Arme und Kennungen von Prüfungen ergänzt, die Zeile der eigenen Shell in ihre Startdatei schreiben: ~/.bashrc, ~/.zshrc nach compinit, config.fish. Dieselben Skripte liegen im Paket in dist/completions/.',
			{
				lines: [
					'eval "$(armdrift completion bash)"',
					'source <(armdrift completion zsh)',
					'armdrift completion fish | source',
				],
			},
			'„man armdrift“ zeigt die Handbuchseite, wo der Ordner von npm im Pfad der Handbücher liegt. Das hier geht immer:',
			{lines: ['armdrift --man | man -l -']},
		],
	},
];
