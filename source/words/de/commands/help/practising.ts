import type {Topic} from '../topics.js';

/** Practice without a turntable, and the proof of the figures. */
export const practising: Topic = {
	name: 'practising',
	title: 'üben an einem erfundenen Arm, Nachweis der Zahlen',
	blocks: [
		'„armdrift practice“ führt durch dieselbe Prüfung an einem Arm, den es nur im Programm gibt. Nichts kann zerbrechen, und am Ende steht die Wahrheit neben dem Gefundenen, mit dem, was besser ginge. Der Arm verhält sich wie ein echter: er klebt, löst sich, schwingt, kriecht, und der Kraftmesser zittert innerhalb seines Schritts. Übungsdaten liegen in einem eigenen Ordner, getrennt von echten Prüfungen, und jeder Bildschirm und Bericht davon sagt ÜBUNG.',
		{
			rows: [
				[
					'erster Versuch',
					'eine Runde an jedem Radius, zusammen vier Grenzen, an einem Laufwerk, das jemand anders vorbereitet hat; ob richtig, zeigen die Messwerte',
				],
				[
					'ganze Messung',
					'drei Runden an jedem Radius, wie an der Werkbank: sie zeigen, wie gut Runden sich wiederholen, und das ± sinkt',
				],
				['ganze Prüfung', 'beginnt bei der ersten Zeile: der Bildschirm sagt, was an der Werkbank zu sehen ist'],
			],
		},
		{
			rows: [
				[
					'←, →',
					'den Arm um etwa 1 % der Auflagekraft nach innen und nach außen anstupsen, um einer Grenze nahe zu kommen',
				],
				[', .', 'dasselbe in feinen Schritten von etwa einem halben Prozent, um sie zu finden'],
				['!', 'von Hand tun, was die Frage anbietet: Füße drehen, Antiskating-Gewicht abnehmen, Paddel herausheben'],
				['! beim Urteil', 'die Wahrheit über den Arm zeigen, ob das ± sie enthielt, und was besser ginge'],
				['< > , .', 'dieselben Stupse mit --plain: jedes Zeichen der Zeile ist einer, jeder bis der Arm still steht'],
			],
		},
		'Anstupsen, warten, bis der Arm still steht, hinsehen. Kommt er von selbst zurück, war der Ort davor die Grenze. Noch einmal in feinen Schritten hin, fünf Sekunden warten und tippen, was der Kraftmesser zeigte, mit Vorzeichen. Kommt jeder Stups zurück, liegt der Arm schon an der Grenze: zuerst in die andere Richtung anstupsen, dann wiederkommen. Hält er bei großen Stupsen zweimal nicht, nennt der Bildschirm die Taste für feinere: die Reibung ist vielleicht klein. Bei leerem Feld stupst ein Komma oder ein Punkt: 0,5 tippen, nicht ,5.',
		'Es gibt zehn Arme, jeder mit einer Lehre; einer lässt sich auch verdeckt üben. Derselbe --seed gibt demselben Arm denselben Luftzug und dasselbe Zittern, solange dasselbe mit ihm geschieht.',
		{
			lines: [
				'armdrift practice --arms',
				'armdrift practice --on sticky-bearing --extent probe --seed 7',
				'armdrift report --practice --as html --out practice.html',
				'armdrift practice --prove 500',
			],
		},
		'Mit --prove misst eine programmierte Hand simulierte Arme, deren Wahrheit bekannt ist; eine Tabelle zeigt, wie oft die Zahlen sie enthalten (etwa eine Minute für 500 Arme). Das geschieht auf 64 Arten: Ableseschritt, Streuung, Runden, Kraftmesser neu aufgestellt oder nicht. Eine Kraft, die während der Suche nach den Grenzen wandert, steht für sich: 0,2 % davon nehmen etwa ein Zehntelprozent von der Reibung, das kein ± enthält.',
	],
};
