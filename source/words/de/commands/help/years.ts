import type {Topic} from '../topics.js';

/** The arm over the years. */
export const years: Topic = {
	name: 'years',
	title: 'die nächste Prüfung, Vergleich mit früheren, Arme und frühere Prüfungen',
	blocks: [
		'Eine Prüfung ist am meisten wert, wenn sie sich vergleichen lässt. „armdrift recheck“ (oder die Nachprüfung auf der Startseite) wiederholt die letzte Prüfung des Arms, der zuerst fällig ist. Arm und Werkzeug sind eingetragen und werden mit einer Frage bestätigt. Alles, was Hände am Laufwerk tun, wird neu gefragt.',
		{lines: ['armdrift --arm "Laufwerk Nord"', 'armdrift recheck "Laufwerk Nord"', 'armdrift due', 'armdrift list']},
		'Zuerst fragt die Prüfung, was seither gemacht wurde, auch eine neue an einem bekannten Arm; mehrere Antworten sind möglich. Damit beginnt ein neuer Abschnitt seines Verlaufs. Was an einem anderen Tag gemacht wurde, im Profil des Arms notieren („was gemacht wurde“); dort lässt es sich auch streichen. Die Reibung vom letzten Mal steht beim Messen neben der heutigen. Am Ende sagt die Prüfung für jeden Radius, was sich verändert hat:',
		{
			rows: [
				['nicht verändert', 'ein Unterschied von höchstens einem halben Prozent der Auflagekraft'],
				['verändert', 'mehr als das, und beide ± erklären es nicht, mit 99 % Sicherheit'],
				['vielleicht verändert', 'dasselbe mit 95 %: noch einmal messen, am selben Tag'],
				['nicht vergleichbar', 'andere effektive Länge, Belastung oder anderer Radius; welches, steht dabei'],
			],
		},
		'Verglichen wird der eigene Zug des Arms (Zug ohne Anteil der Neigung), wo beide Male die Neigung gemessen wurde. Verglichen werden Kräfte, eine andere Auflagekraft ist also keine Veränderung. Das ± jeder Prüfung enthält ihr Aufstellen.',
		'Ab fünf Prüfungen eines Abschnitts sucht das Programm einen Trend, über die Zeit und mit der Temperatur. Es nennt ihn nur, wenn sein 99-%-Bereich die Null nicht enthält. Begann der Abschnitt damit, dass etwas gemacht wurde, nennt es dort den Sprung des Zugs. Solange die Tage nicht in drei Vierteln des Jahres liegen, ist die Jahreszeit nicht von einer Drift zu trennen, und das sagt es.',
		'„armdrift due“ listet die Arme nach dem Tag ihrer nächsten Prüfung: nach sechs Monaten (übliche Praxis, keine Quelle); nach drei, wenn die Litzen steif sind oder in freier Schleife hängen; nach einem, wenn sich etwas verändert hat, mehr Runden es entscheiden können oder etwas zu beheben war. Der Befehl endet mit 10, wenn ein Arm fällig ist, sonst mit 0:',
		{lines: ['armdrift due --quiet; [ $? -eq 10 ] && echo "ein Arm ist fällig"']},
		'„Arme“ auf der Startseite listet alle Arme, den zuerst fälligen oben; sind es viele, einen Teil des Namens tippen. Die Seite eines Arms zeigt sein letztes Urteil, den Tag der nächsten Prüfung und seinen Verlauf. Sie führt zu Nachprüfung, Zurückbauen, Bericht, früheren Prüfungen, Profil und dem, was an ihm gemacht wurde.',
		'Frühere Prüfungen lassen sich auf einen Arm, ein Jahr oder ein Urteil eingrenzen und zwei eines Arms nebeneinanderstellen. Abgelegtes ändert sich später nie. Eine Prüfung, die nicht zählen soll, wird für ungültig erklärt, mit Grund, und zählt wieder, wenn das zurückgenommen wird. Profile lassen sich umbenennen, berichtigen und beiseitelegen; frühere Prüfungen behalten, womit sie gemacht wurden. Nur „armdrift delete“ entfernt einen Arm mit allen Prüfungen, nachdem sein Name getippt und eine Sicherung geschrieben ist.',
		'In den Einstellungen den Namen einer Werkstatt eintippen: Prüfungen fragen dann nach Kunde und Beanstandung, für das Blatt des Kunden. Ohne Werkstatt wird nichts gefragt; beides steht in der Liste der Schritte.',
	],
};
