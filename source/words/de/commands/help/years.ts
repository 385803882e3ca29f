import type {Topic} from '../topics.js';

/** The arm over the years. */
export const years: Topic = {
	name: 'years',
	title: 'die nächste Prüfung, Vergleich mit früheren, Arme und frühere Prüfungen',
	blocks: [
		'Eine Prüfung ist am meisten wert, wenn sie sich vergleichen lässt. „armdrift recheck“ (oder die Nachprüfung auf der Startseite) wiederholt die letzte Prüfung des Arms, der zuerst fällig ist. Arm und Werkzeug sind eingetragen; eine Frage klärt, ob sie noch stimmen. Alles, was Hände am Laufwerk tun, wird neu gefragt.',
		{lines: ['armdrift --arm "Laufwerk Nord"', 'armdrift recheck "Laufwerk Nord"', 'armdrift due', 'armdrift list']},
		'Zuerst fragt die Prüfung, was seither gemacht wurde; alles markieren, was zutrifft. Auch eine neue Prüfung eines bekannten Arms fragt danach. Mit dem Markierten beginnt ein neuer Abschnitt seines Verlaufs. Was an einem anderen Tag gemacht wurde, im Profil des Arms notieren, unter „was gemacht wurde“. Dort lässt es sich auch streichen. Beim Messen steht die Reibung vom letzten Mal neben der heutigen. Am Ende sagt die Prüfung für jeden Radius, was sich verändert hat:',
		{
			rows: [
				['nicht verändert', 'ein Unterschied von höchstens einem halben Prozent der Auflagekraft'],
				['verändert', 'mehr als das, und mehr, als beide ± erklären, mit 99 % Sicherheit'],
				['vielleicht verändert', 'dasselbe mit 95 %: noch einmal messen, am selben Tag'],
				['nicht vergleichbar', 'andere effektive Länge, Belastung oder anderer Radius: der Bildschirm sagt, was'],
			],
		},
		'Wo beide Male die Neigung gemessen wurde, wird der eigene Zug des Arms verglichen (Zug ohne Anteil der Neigung). Verglichen werden Kräfte, eine andere Auflagekraft ist also keine Veränderung. Das ± jeder Prüfung enthält ihr Aufstellen.',
		'Ab der fünften Prüfung eines Abschnitts sucht das Programm einen Trend über die Zeit und mit der Temperatur. Es nennt einen Trend nur, wenn sein 99-%-Bereich die Null nicht enthält. Begann der Abschnitt damit, dass etwas gemacht wurde, sagt es, wie weit der Zug dort sprang. Jahreszeit und Drift sehen gleich aus, bis die Tage in drei Vierteln des Jahres liegen. Bis dahin sagt das Programm es dazu.',
		'„armdrift due“ listet die Arme nach dem Tag ihrer nächsten Prüfung. Die ist nach sechs Monaten (übliche Praxis, keine Quelle). Sie ist nach drei, wenn die Litzen steif sind oder in freier Schleife hängen. Sie ist nach einem, wenn sich etwas verändert hat, unentschieden ist oder zu beheben ist. Der Befehl endet mit 10, wenn ein Arm fällig ist, sonst mit 0:',
		{lines: ['armdrift due --quiet; [ $? -eq 10 ] && echo "ein Arm ist fällig"']},
		'„Arme“ auf der Startseite listet alle Arme, den zuerst fälligen oben. Sind es viele, einen Teil des Namens tippen. Die Seite eines Arms zeigt sein letztes Urteil, den Tag der nächsten Prüfung und seinen Verlauf. Von dort geht es zu Nachprüfung, Zurückbauen, Bericht, früheren Prüfungen und Profil.',
		'Frühere Prüfungen lassen sich auf einen Arm, ein Jahr oder ein Urteil eingrenzen. Zwei Prüfungen eines Arms lassen sich nebeneinanderstellen. Abgelegtes ändert sich später nie. Eine Prüfung, die nicht zählen soll, für ungültig erklären, mit Grund. Sie zählt wieder, wenn das zurückgenommen wird. Profile lassen sich umbenennen, berichtigen und beiseitelegen; frühere Prüfungen behalten, womit sie gemacht wurden. Nur „armdrift delete“ entfernt einen Arm mit allen Prüfungen. Zuerst seinen Namen tippen; eine Sicherung wird geschrieben.',
		'In den Einstellungen den Namen der eigenen Werkstatt eintippen. Prüfungen fragen dann nach Kunde und Beanstandung, für das Blatt des Kunden. Ohne Werkstatt wird beides nicht gefragt; es steht in der Liste der Schritte.',
	],
};
