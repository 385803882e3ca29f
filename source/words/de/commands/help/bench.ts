import {cautions} from '../../reports/method.js';
import type {Topic} from '../topics.js';

/** What hands do and type at the bench. */
export const atTheBench: readonly Topic[] = [
	{
		name: 'bench',
		title: 'was bereitliegen muss, und worauf zu achten ist',
		blocks: [
			'Nötig sind ein Kraftmesser, der die seitliche Kraft des Arms zeigt (in Prozent der Auflagekraft, Millinewton oder Gramm), eine Tonarmwaage, eine Wasserwaage und ein Lineal oder Messklötze. Den Arm eine Stunde im Raum stehen lassen. Die erste Prüfung dauert etwa eine halbe Stunde.',
			'Arm und Werkzeug bleiben als Profile gespeichert, so gehen spätere Prüfungen schneller. Was an der Werkbank nichts entscheidet, wird nicht gefragt: die Radien, die Seriennummer, wie genau Kraftmesser, Tonarmwaage und Wasserwaage anzeigen. Das Programm nimmt übliche Werte; ein Profil kann andere nennen.',
			...cautions,
			'Den Teller anhalten und am Kriechen hindern. Mit Nadelschutz wiegen, denn seine Masse zählt; die Tonarmwaage nicht mit ihm auf null stellen.',
			'So misslingt eine Prüfung meistens:',
			{
				rows: [
					['Antiskating noch an', 'aushängen; null auf der Skala heißt nicht immer Kraft null'],
					['Dämpfung noch drin', 'die Wanne leeren oder das Paddel herausheben'],
					['eine Litze streift', 'Litzen liegen wie immer, nichts am Arm, Lift unten'],
					['Luftzug', 'Haube, Lüfter und Heizung aus dem Spiel lassen'],
					['ohne Nadelschutz', 'gewogen: dann sind die Messwerte Prozent der falschen Kraft'],
				],
			},
			'Beenden geht jederzeit mit Strg+C: was ein Bildschirm als bestätigt zeigte, ist gespeichert.',
		],
	},
	{
		name: 'readings',
		title: 'wie man Messwerte tippt, und was ihr Vorzeichen heißt',
		blocks: [
			'Einen Messwert tippen, wie man ihn schreibt, dann Enter. Komma und Punkt gelten gleich; eine Einheit darf folgen.',
			{
				rows: [
					['2  2,5  2.5', 'nur die Zahl: dann sagt eine Taste, auf welcher Seite von null der Zeiger steht'],
					['+2,5  -1,5', 'mit dem Vorzeichen des Kraftmessers'],
					['2,5 außen  1,5 innen', 'der Arm drückt zum Rand, zur Achse'],
					['2,1 g  21 mN  3 mm  0,7 in', 'in einer anderen Einheit als der gefragten'],
				],
			},
			'Ohne Wort und ohne Vorzeichen sagt eine Taste die Seite und übernimmt die Antwort. Geraten wird nichts.',
			'Ein Messwert ist die Kraft, mit der der Arm auf den Kraftmesser drückt, positiv zum Rand hin. Mancher Kraftmesser hat sein Plus auf der anderen Seite oder zeigt die Kraft der Hand, die den Arm in Gang setzt. Das einmal angeben, wenn der Kraftmesser beschrieben wird. Seine Messwerte werden dann beim Eintippen gewendet: mit umgekehrtem Vorzeichen, und bei der Kraft der Hand mit vertauschten Grenzen.',
			'Innere und äußere Grenze heißen nach dem Ort des Arms, nicht nach dem Vorzeichen: eine innere Grenze, die nach außen zeigt, ist ganz normal. Den Arm in kleinen Schritten anstupsen; der letzte Ort, an dem er noch hält, ist die Grenze. Beide Grenzen bilden eine Runde; drei Runden an jedem Radius sind üblich. Vor jeder Runde den Arm anheben und den Kraftmesser neu aufstellen.',
			'Die zweite Runde mit umgedrehtem Kraftmesser messen und im Vorzeichen des Kraftmessers tippen: so zeigt sich seine Nullanzeige. Lässt er sich nicht drehen, ihn frei vom Arm ablesen, vor der ersten Runde und nach der letzten.',
		],
	},
	{
		name: 'keys',
		title: 'Tasten, Ziffernblock allein, einfache Zeilen',
		blocks: [
			'Jeder Bildschirm ist gleich aufgebaut: eine Leiste (Arm, Ort in der Prüfung, Minuten bis zum Ende), das Laufwerk, wie die Hände es verließen, eine Aufgabe, ein Bild, die Antwort, die Tasten.',
			{
				rows: [
					['Enter', 'nimmt das Getippte oder die markierte Zeile einer Liste; zweimal in Eile zählt einmal'],
					['1 … 9', 'markiert eine Zeile einer Liste; Enter nimmt sie'],
					['j, n', 'beantwortet eine Frage; Enter allein tut das nie'],
					[
						'a i, r l, h v, + -',
						'außen innen, rechts links, hinten vorn, Vorzeichen des Kraftmessers: sofort die Seite des Getippten',
					],
					['Enter, Leertaste', 'startet den Countdown, solange das Feld eines Messwerts leer ist'],
					['→, Bild↓', 'blättert weiter, etwa zu den Zahlen hinter einem Urteil'],
					['Esc', 'geht zum zuletzt beantworteten Bildschirm zurück, auch mitten in einer Antwort'],
					[
						'Tab',
						'zeigt alle Schritte und ihren Stand; bricht die Prüfung ab, nimmt einen Messwert zurück, streicht eine Runde',
					],
					['? oder F1', 'sagt, wozu ein Schritt da ist und was meistens misslingt; ? nur bei leerem Feld'],
					['Strg+U', 'leert das Feld'],
					['Strg+C', 'beendet; Bestätigtes ist gespeichert, und der nächste Start bietet die Fortsetzung an'],
				],
			},
			'In der Liste der Schritte führt die Nummer aus der Leiste zu ihrem Abschnitt, 0 zum Zurückbauen. Eine angefangene Runde beginnt von vorn, wenn die Prüfung verlassen oder ein anderer Schritt besucht wurde.',
			'Ein Schritt, der nicht genügt, sagt, was zu tun ist. Weiter geht es trotzdem, aber nur mit Grund; der steht für immer neben dem Urteil.',
			'Der Ziffernblock allein reicht für eine ganze Messung: die Größe tippen, + oder - davor oder dahinter, dann Enter. Bei leerem Feld geht / zurück wie Esc, und * sagt warum wie ?. Auch ein Buchstabe darf der Zahl folgen: 2,5a, 0,15r.',
			'Mit --plain ist eine Antwort eine Zeile mit Enter: die Nummer einer Zeile der Liste, oder was im Feld stünde. /, /back, * und /why sind auch Zeilen. Antworten können aus einer Datei kommen:',
			{lines: ['armdrift --plain', 'armdrift --plain < answers.txt']},
			'In einfachen Zeilen ist eine Liste, etwa die zum Absichern, eine einzige Frage und eine Zeile einer Datei. Mit j antworten, wenn alles stimmt, sonst mit den Nummern dessen, was nicht stimmt (2 4): das wird noch einmal gefragt. Was gesagt ist und noch gilt, wird nicht wiederholt; /again wiederholt die Frage mit allem, was dazugehört.',
		],
	},
];
