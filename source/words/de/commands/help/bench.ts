import {cautions} from '../../reports/method.js';
import type {Topic} from '../topics.js';

/** What hands do and type at the bench. */
export const atTheBench: readonly Topic[] = [
	{
		name: 'bench',
		title: 'was bereitliegen muss, und worauf zu achten ist',
		blocks: [
			'Nötig ist ein Kraftmesser, der zeigt, wie stark der Arm seitlich drückt: in Prozent der Auflagekraft, Millinewton oder Gramm. Dazu eine Tonarmwaage, eine Wasserwaage und ein Lineal oder Messklötze. Den Arm eine Stunde im Raum stehen lassen. Die erste Prüfung dauert etwa eine halbe Stunde.',
			'Arm und Werkzeug bleiben als Profile gespeichert, so gehen spätere Prüfungen schneller. Das Programm fragt nicht, was an der Werkbank nichts entscheidet: die Radien, die Seriennummer, das ± der Werkzeuge. Es nimmt übliche Werte; andere ins Profil eintippen.',
			...cautions,
			'Den Teller anhalten und am Kriechen hindern. Mit Nadelschutz wiegen, denn seine Masse zählt. Die Tonarmwaage nicht mit ihm auf null stellen.',
			'So misslingt eine Prüfung meistens:',
			{
				rows: [
					['Antiskating noch an', 'aushängen: null auf der Skala heißt nicht immer Kraft null'],
					['Dämpfung noch drin', 'die Wanne leeren oder das Paddel herausheben'],
					['eine Litze streift', 'Litzen legen wie immer, den Arm frei halten, Lift senken'],
					['Luftzug', 'Haube abnehmen, Lüfter und Heizung ausschalten'],
					['ohne Nadelschutz', 'mit ihm wiegen, sonst sind die Messwerte Prozent der falschen Kraft'],
				],
			},
			'Beenden geht jederzeit mit Strg+C. Was ein Bildschirm als bestätigt zeigte, ist gespeichert.',
		],
	},
	{
		name: 'readings',
		title: 'wie man Messwerte tippt, und was ihr Vorzeichen heißt',
		blocks: [
			'Einen Messwert tippen, wie man ihn schreibt, dann Enter. Komma und Punkt gelten gleich; eine Einheit darf folgen.',
			{
				rows: [
					['2  2,5  2.5', 'die Zahl allein: dann sagt eine Taste, auf welcher Seite von null sie liegt'],
					['+2,5  -1,5', 'mit dem Vorzeichen des Kraftmessers'],
					['2,5 außen  1,5 innen', 'der Arm drückt zum Rand, zur Tellerachse'],
					['2,1 g  21 mN  3 mm  0,7 in', 'in einer anderen Einheit als der gefragten'],
				],
			},
			'Ohne Wort und Vorzeichen eine Taste für die Seite drücken: sie übernimmt auch die Antwort. Geraten wird nichts.',
			'Ein Messwert ist die Kraft des Arms auf den Kraftmesser, positiv zum Rand hin. Mancher Kraftmesser hat sein Plus auf der anderen Seite oder zeigt die Kraft der Hand, die den Arm in Gang setzt. Das einmal angeben, wenn der Kraftmesser beschrieben wird. Das Programm kehrt dann beim Tippen das Vorzeichen um; bei der Kraft der Hand vertauscht es auch die Grenzen.',
			'Innere und äußere Grenze heißen nach dem Ort des Arms, nicht nach dem Vorzeichen. Eine innere Grenze darf nach außen zeigen. Den Arm in kleinen Schritten anstupsen. Der letzte Messwert, der hielt, ist die Grenze. Beide Grenzen bilden eine Runde; drei Runden an jedem Radius sind üblich. Vor jeder Runde den Arm anheben und den Kraftmesser neu aufstellen.',
			'Die zweite Runde mit umgedrehtem Kraftmesser messen und das Vorzeichen tippen, das er zeigt. Das ergibt seine Nullanzeige. Lässt er sich nicht drehen, ihn frei vom Arm ablesen, vor der ersten Runde und nach der letzten.',
		],
	},
	{
		name: 'keys',
		title: 'Tasten, Ziffernblock allein, einfache Zeilen',
		blocks: [
			'Jeder Bildschirm ist gleich aufgebaut. Oben stehen der Arm, der Ort in der Prüfung und die Minuten bis zum Ende. Darunter steht das Laufwerk, wie die Hände es verließen. Dann kommen eine Aufgabe, ein Bild, die Antwort und die Tasten.',
			{
				rows: [
					['Enter', 'nimmt das Getippte oder die markierte Zeile einer Liste; zweimal rasch gedrückt, zählt es einmal'],
					['1 … 9', 'markiert eine Zeile einer Liste; Enter nimmt sie'],
					['j, n', 'beantwortet eine Frage; Enter allein tut das nie'],
					[
						'a i, r l, h v, + -',
						'außen innen, rechts links, hinten vorn, Vorzeichen des Kraftmessers: gibt dem Getippten sofort seine Seite',
					],
					['Enter, Leertaste', 'startet den Countdown, solange das Feld eines Messwerts leer ist'],
					['→, Bild↓', 'blättert weiter, etwa zu den Zahlen hinter einem Urteil'],
					['Esc', 'geht zum zuletzt beantworteten Bildschirm zurück, auch aus einer halben Antwort'],
					[
						'Tab',
						'zeigt alle Schritte; dort die Prüfung abbrechen, einen Messwert zurücknehmen oder eine Runde streichen',
					],
					['? oder F1', 'sagt, wozu ein Schritt da ist und was meistens misslingt; ? bei leerem Feld tippen'],
					['Strg+U', 'leert das Feld'],
					['Strg+C', 'beendet; Bestätigtes ist gespeichert, und der nächste Start bietet die Fortsetzung an'],
				],
			},
			'In der Liste der Schritte die Nummer eines Abschnitts tippen, um dorthin zu gehen, oder 0, um das Laufwerk spielbereit zu machen. Wer eine halbe Runde verlässt oder einen anderen Schritt besucht, beginnt diese Runde von vorn.',
			'Ein Schritt, der nicht genügt, sagt, was zu tun ist. Weiter geht es trotzdem, aber nur mit Grund. Der Grund steht für immer neben dem Urteil.',
			'Der Ziffernblock allein reicht für eine ganze Messung. Die Zahl tippen, + oder - davor oder dahinter, dann Enter. Bei leerem Feld geht / zurück wie Esc, und * sagt warum wie ?. Ein Buchstabe für die Seite darf der Zahl folgen: 2,5a, 0,15r.',
			'Mit --plain die Nummer einer Zeile der Liste tippen, oder was ins Feld käme, dann Enter. /, /back, * und /why sind auch Antworten. Antworten können aus einer Datei kommen:',
			{lines: ['armdrift --plain', 'armdrift --plain < answers.txt']},
			'In einfachen Zeilen ist eine Liste zum Abhaken eine einzige Frage und eine Zeile einer Datei. Mit j antworten, wenn alles stimmt, sonst mit den Nummern dessen, was nicht stimmt (2 4). Das wird noch einmal gefragt. Was gesagt ist und noch gilt, wird nicht wiederholt; /again sagt alles noch einmal.',
		],
	},
];
