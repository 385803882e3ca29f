/** A word of the trade: what it means here, and the words that are not used for it. */
type Term = {readonly term: string; readonly meaning: string; readonly not: readonly string[]};

/** One word for one thing: what the screens and `armdrift help words` call it. */
export const glossary: readonly Term[] = [
	{
		term: 'Zug',
		meaning: 'seitliche Kraft des Arms selbst an der Nadel, Mitte beider Grenzen; in Prozent der Abspielkraft',
		not: ['Seitenzug', 'Seitenkraft', 'Querkraft'],
	},
	{
		term: 'Reibung',
		meaning: 'was den Arm hält, wo er ist: Abstand von der inneren zur äußeren Grenze',
		not: ['Halteband', 'Haftreibung', 'Reibkraft'],
	},
	{
		term: 'innere Grenze',
		meaning: 'letzter Messwert, bei dem der Arm hielt, nach innen angestupst',
		not: ['innere Haltegrenze', 'untere Grenze'],
	},
	{
		term: 'äußere Grenze',
		meaning: 'letzter Messwert, bei dem der Arm hielt, nach außen angestupst',
		not: ['äußere Haltegrenze', 'obere Grenze'],
	},
	{
		term: 'Messwert',
		meaning: 'Kraft des Arms auf den Kraftmesser; außen heißt zum Rand, innen zur Tellerachse',
		not: ['Ablesung', 'Messergebnis', 'Anzeigewert'],
	},
	{term: 'Stups', meaning: 'der kleinste Schub, der den Arm ein wenig bewegt', not: ['Schubs', 'Anstoß']},
	{
		term: 'Kraftmesser',
		meaning: 'zeigt die Kraft, mit der der Arm seitlich drückt',
		not: ['Messgerät', 'Kraftmessgerät', 'Dynamometer'],
	},
	{
		term: 'Nullanzeige',
		meaning: 'was der Kraftmesser zeigt, wenn ihn nichts berührt',
		not: ['Nullpunktfehler', 'Nullpunkt', 'Nullfehler'],
	},
	{term: 'Radius', meaning: 'Abstand von der Tellerachse', not: ['Messradius', 'Prüfradius']},
	{
		term: 'messen',
		meaning: 'den Arm an jedem Radius Runde für Runde an seine Grenzen stupsen',
		not: ['ausmessen', 'sondieren'],
	},
	{term: 'Runde', meaning: 'eine innere und eine äußere Grenze', not: ['Durchgang', 'Grenzenpaar']},
	{term: 'gedrehte Runde', meaning: 'Runde mit umgedrehtem Kraftmesser', not: ['umgekehrte Runde', 'Wenderunde']},
	{term: 'Schlussrunde', meaning: 'die letzte Runde, wieder am inneren Radius', not: ['Endrunde', 'Kontrollrunde']},
	{term: 'Messreihe', meaning: 'Runden, zwischen denen nichts geändert wurde', not: ['Serie', 'Messserie']},
	{term: 'Auflagekraft', meaning: 'Kraft der Nadel nach unten', not: ['Auflagedruck', 'Auflagegewicht', 'Nadeldruck']},
	{term: 'Abspielkraft', meaning: 'Auflagekraft auf der Platte, wie abgespielt', not: ['Nennkraft', 'Sollkraft']},
	{
		term: 'Litzen',
		meaning: 'führen das Signal aus dem Arm: dünn, aber sie können ihn drücken',
		not: ['Kabel', 'Drähte', 'Leitungen'],
	},
	{term: 'Nadelschutz', meaning: 'Kappe über der Nadel', not: ['Schutzkappe', 'Nadelkappe', 'Nadelabdeckung']},
	{term: 'Headshell', meaning: 'worin der Tonabnehmer sitzt', not: ['Tonkopf', 'Systemträger']},
	{term: 'Lift', meaning: 'Hebel, der den Arm senkt und hebt', not: ['Tonarmlift', 'Absenkhilfe']},
	{term: 'Stütze', meaning: 'worin der Arm verriegelt wird', not: ['Armhalter', 'Tonarmstütze', 'Armablage']},
	{term: 'Gegengewicht', meaning: 'Gewicht hinter dem Drehpunkt', not: ['Ausgleichsgewicht', 'Balancegewicht']},
	{term: 'Drehpunkt', meaning: 'worum der Arm schwenkt', not: ['Schwenkpunkt', 'Angelpunkt']},
	{term: 'Tonarmbasis', meaning: 'Brett, das den Drehpunkt trägt', not: ['Armbrett', 'Tonarmbrett']},
	{term: 'Teller', meaning: 'worauf die Matte liegt; auf der Matte liegt die Platte', not: ['Plattenteller']},
	{term: 'Matte', meaning: 'liegt zwischen Teller und Platte', not: ['Tellermatte', 'Plattenmatte']},
	{term: 'Neigung', meaning: 'was dem Laufwerk zur Waagrechten fehlt', not: ['Schräglage', 'Schiefstand', 'Gefälle']},
	{
		term: 'Dämpfung',
		meaning: 'Flüssigkeit, die den Arm bremst, mit Wanne und Paddel',
		not: ['Dämpfer', 'Dämpfungsvorrichtung'],
	},
	{
		term: 'Antiskating',
		meaning: 'Kraft nach außen gegen das Skating',
		not: ['Anti-Skating', 'Skatingausgleich', 'Skatingkompensation'],
	},
	{
		term: 'Antiskating-Vorrichtung',
		meaning: 'erzeugt das Antiskating: Gewicht, Hebel, Feder oder Magnet',
		not: ['Antiskating-Mechanik', 'Antiskating-Mechanismus'],
	},
	{
		term: 'Antiskating-Stab',
		meaning: 'Stab am Arm, an dem der Faden des Antiskatings zieht',
		not: ['Zapfen'],
	},
	{
		term: 'Einstellung',
		meaning: 'eine Stellung der Antiskating-Vorrichtung, mit ihren Messwerten',
		not: ['Justage', 'Justierung'],
	},
	{term: 'Skating', meaning: 'Kraft der Rille zur Tellerachse hin', not: ['Skatingkraft', 'Skating-Kraft']},
	{
		term: 'Rillenreibung',
		meaning: 'Kraft längs der Rille, als Teil der Auflagekraft',
		not: ['Reibwert', 'Abtastreibung'],
	},
	{term: 'Rest', meaning: 'Messwert minus Sollwert', not: ['Restwert', 'Restkraft', 'Überschuss']},
	{
		term: 'effektive Länge',
		meaning: 'vom Drehpunkt zur Nadel, von oben gesehen',
		not: ['Armlänge', 'wirksame Länge', 'effektive Armlänge'],
	},
	{
		term: 'Montageabstand',
		meaning: 'von der Tellerachse zum Drehpunkt, von oben gesehen',
		not: ['Einbauabstand', 'Achsabstand'],
	},
	{term: 'Nullradius', meaning: 'wo der Tonabnehmer tangential zur Rille steht', not: ['Nulldurchgang']},
	{
		term: 'Kröpfungswinkel',
		meaning: 'zwischen Tonabnehmer und der Linie vom Drehpunkt zur Nadel',
		not: ['Offsetwinkel', 'Kröpfung'],
	},
	{term: 'gut', meaning: 'mit dem ganzen ± so klein, dass nichts zu tun ist', not: ['ausgezeichnet', 'sehr gut']},
	{
		term: 'brauchbar',
		meaning: 'mit dem ganzen ± so klein, dass Platten spielen dürfen',
		not: ['annehmbar', 'akzeptabel'],
	},
	{
		term: 'zu viel',
		meaning: 'mit dem ganzen ± mehr als brauchbar',
		not: ['durchgefallen', 'außer Toleranz', 'außerhalb der Grenzen'],
	},
	{term: 'unentschieden', meaning: 'das ± reicht von einem Urteil ins nächste', not: ['unklar', 'ungewiss']},
	{term: 'Skalenende', meaning: 'der Messwert erreichte das Ende der Skala: keine Zahl', not: ['Überlast', 'Überlauf']},
	{term: 'übergangen', meaning: 'trotzdem weitergegangen, mit Grund', not: ['übersprungen', 'erzwungen']},
	{term: 'ungültig', meaning: 'abgelegt, zählt aber nicht', not: ['annulliert', 'nichtig']},
];
