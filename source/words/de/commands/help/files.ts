import {exitStatusRows} from '../command-line.js';
import type {Topic} from '../topics.js';

/** What the program writes, and where its data lie. */
export const onFiles: readonly Topic[] = [
	{
		name: 'files',
		title: 'Berichte, Export, Import, Kalender',
		blocks: [
			'Ein Bericht zeigt eine Prüfung, einen Arm über die Jahre oder jede Prüfung. Er ist eine Seite zum Lesen und Drucken, markdown für eine E-Mail, oder eine Seite für den Hersteller.',
			{
				lines: [
					'armdrift report --as html --out check.html',
					'armdrift report --arm "Laufwerk Nord" --as html --out arm.html',
					'armdrift report --all --as html --out ORDNER',
				],
			},
			'Mit --all bekommt jede Prüfung eine eigene Datei; mit --arm dazu nur die Prüfungen eines Arms. Ein Bericht ist eine Datei: kein Skript, nichts von außen. Der Bericht einer Prüfung beginnt mit einer Seite für den Besitzer des Arms. Das Übrige ist für den, der den Arm einstellt. Auf der Seite einer früheren Prüfung schreibt eine Taste den Bericht nach reports/ im Datenordner. Wo es einen Desktop gibt, öffnet er sich. Auf Papier nennt jede Seite Arm und Tag, in Chromium ab 131; andere Browser lassen das womöglich weg.',
			'Ein Export enthält alles außer der offenen Prüfung, eine Prüfung je Zeile (JSON Lines). Gleiche Daten ergeben den gleichen Export, woher sie auch kamen.',
			{
				lines: [
					'armdrift export --as json --out all.jsonl',
					'armdrift export --as csv --out figures.csv',
					'armdrift export --as csv --table bias --out bias.csv',
					'armdrift import all.jsonl',
				],
			},
			'Ein Import zeigt zuerst, was neu ist. Er überschreibt nichts, und ein zweiter Import derselben Datei fügt nichts hinzu. Ein Arm, der auf einer Seite umbenannt wurde, behält alle seine Namen. Benannten ihn beide Seiten um, bleibt der hiesige Name, und der Import sagt es. Frühere Versionen schrieben ein einziges JSON-Dokument: es lässt sich weiter importieren, bis 512 MB.',
			'Das CSV hat eine Zeile je Radius, in Prozent der Abspielkraft, + zum Rand, ± für 95 %. Mit --table bias hat es eine Zeile je Runde mit Antiskating, in der Einheit des Kraftmessers. done_since, done_on und done_note sagen, was vor dieser Prüfung am Arm gemacht wurde. Darin stehen die Arten (levelled, leads, bearing, cartridge, moved, other), ihre Tage und die getippten Worte.',
			'Kunden stehen in keinem CSV und in keinem Bericht für den Hersteller. Sie stehen nur auf dem Blatt ihrer Prüfung und im JSON-Export, der die Sicherung ist.',
			{lines: ['armdrift due --calendar checks.ics']},
			'Der Kalender hat einen Termin je Arm, mit Erinnerung eine Woche davor. Nach der nächsten Prüfung neu schreiben und einlesen: der Termin wandert auf seinen neuen Tag. Eine überfällige Prüfung kommt auf morgen. Ein beiseitegelegter Arm verliert seinen Termin.',
		],
	},
	{
		name: 'data',
		title: 'wo die Daten liegen, was die Umgebung ändert, Exit-Status',
		blocks: [
			'Jede Antwort ist gespeichert, bevor die nächste Frage kommt. Jede fertige Prüfung hat eine eigene Datei im Datenordner, mit ihrem Ergebnis von jenem Tag. Den Ordner mit --data oder ARMDRIFT_DATA nennen; --data geht vor. Sonst heißt er armdrift und liegt am üblichen Ort für Einstellungen von Programmen. „armdrift paths“ zeigt, wo Daten, Index, Berichte und Sicherungen liegen. Wird das Programm entfernt, bleiben sie dort.',
			{
				rows: [
					['ARMDRIFT_DATA', 'Datenordner'],
					['NO_COLOR, FORCE_COLOR', 'ohne Farben, mit Farben'],
					['ACCESSIBLE=1, TERM=dumb', 'einfache Zeilen statt ganzer Bildschirme, wie mit --plain'],
					['INK_SCREEN_READER=1', 'Bildschirme in der Reihenfolge zum Vorlesen'],
				],
			},
			'Wie das Programm endet; ein Urteil ändert das nie:',
			{rows: exitStatusRows},
			'Tab kann Befehle, Optionen, Arme und Kennungen von Prüfungen ergänzen. Eine dieser Zeilen in die Startdatei schreiben: ~/.bashrc, ~/.zshrc (nach compinit) oder config.fish. Dieselben Skripte liegen im Paket in dist/completions/.',
			{
				lines: [
					'eval "$(armdrift completion bash)"',
					'source <(armdrift completion zsh)',
					'armdrift completion fish | source',
				],
			},
			'„man armdrift“ zeigt die Handbuchseite, wo der Befehl man im Ordner von npm sucht. Das hier zeigt sie immer:',
			{lines: ['armdrift --man | man -l -']},
		],
	},
];
