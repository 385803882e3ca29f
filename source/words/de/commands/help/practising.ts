import type {Topic} from '../topics.js';

/** Practice without a turntable, and the proof of the figures. */
export const practising: Topic = {
	name: 'practising',
	title: 'üben an einem erfundenen Arm, Nachweis der Zahlen',
	blocks: [
		'„armdrift practice“ führt durch dieselbe Prüfung an einem erfundenen Arm. Nichts kann zerbrechen. Am Ende steht die Wahrheit neben dem Gefundenen, mit dem, was besser ginge. Der Arm verhält sich wie ein echter: er klebt, löst sich, schwingt und kriecht. Der Kraftmesser zittert innerhalb seines Schritts. Übungsdaten haben einen eigenen Ordner und vermischen sich nie mit echten Prüfungen. Jeder Bildschirm und Bericht davon sagt ÜBUNG.',
		{
			rows: [
				[
					'erster Versuch',
					'eine Runde an jedem Radius, zusammen vier Grenzen. Das Laufwerk hat jemand anders vorbereitet: ob richtig, zeigen die Messwerte',
				],
				[
					'ganze Messung',
					'drei Runden an jedem Radius, wie an der Werkbank. Sie zeigen, wie gut Runden sich wiederholen, und das ± wird kleiner',
				],
				['ganze Prüfung', 'beginnt beim ersten Schritt: der Bildschirm sagt, was an der Werkbank zu sehen ist'],
			],
		},
		{
			rows: [
				[
					'←, →',
					'den Arm um etwa 1 % der Auflagekraft nach innen und nach außen anstupsen, um einer Grenze nahe zu kommen',
				],
				[', .', 'dasselbe in feinen Schritten von etwa einem halben Prozent, um sie zu finden'],
				[
					'!',
					'mit den Händen tun, was die Frage anbietet: Füße drehen, Antiskating-Gewicht abnehmen, Paddel herausheben',
				],
				['! beim Urteil', 'die Wahrheit über den Arm zeigen, ob das ± sie enthielt, und was besser ginge'],
				['< > , .', 'dieselben Stupse mit --plain: jedes Zeichen einer Zeile ist ein Stups, bis der Arm still steht'],
			],
		},
		'Anstupsen, warten, bis der Arm still steht, dann hinsehen. Kommt er von selbst zurück, war der Ort davor die Grenze. Noch einmal in feinen Schritten hin und fünf Sekunden warten. Tippen, was der Kraftmesser zeigte, mit Vorzeichen. Kommt der Arm bei jedem Stups zurück, liegt er schon an der Grenze. Zuerst in die andere Richtung anstupsen, dann wiederkommen. Hält er bei großen Stupsen zweimal nicht, ist die Reibung vielleicht klein: der Bildschirm nennt die Taste für feine. Bei leerem Feld stupst ein Komma oder ein Punkt: 0,5 tippen, nicht ,5.',
		'Es gibt zehn Arme, jeder mit einer Lektion; einer lässt sich auch verdeckt üben. Mit demselben --seed bekommt derselbe Arm denselben Luftzug und dasselbe Zittern, wenn dasselbe mit ihm geschieht.',
		{
			lines: [
				'armdrift practice --arms',
				'armdrift practice --on sticky-bearing --extent probe --seed 7',
				'armdrift report --practice --as html --out practice.html',
				'armdrift practice --prove 500',
			],
		},
		'Mit --prove misst das Programm simulierte Arme, deren Wahrheit bekannt ist (etwa eine Minute für 500 Arme). Eine Tabelle zeigt, wie oft das ± diese Wahrheit enthält. Das geschieht auf 64 Arten: Ableseschritt, Streuung, Runden, Kraftmesser neu aufgestellt oder nicht. Eine Kraft, die während der Suche nach den Grenzen wandert, hat eine eigene Tabelle. Wandert sie um 0,2 %, nimmt das etwa ein Zehntelprozent von der Reibung, das kein ± enthält.',
	],
};
