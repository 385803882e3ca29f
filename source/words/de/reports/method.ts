import {type UnitId, units} from '../../../units.js';
import {plainNumber} from '../../numbers.js';

type UpTo = {goodPct: number; usablePct: number};

/** How it was measured and how sure it is, in plain words. */
export const method = {
	gauge:
		'Der Kraftmesser trägt den Arm dort, wo sonst die Nadel steht, und zeigt, wie stark der Arm zur Seite drückt. Der Techniker stupst den Arm in kleinen Schritten an, erst zur Tellerachse, dann zum Rand. Die Reibung hält ihn, bis sie ihn loslässt. Der letzte Messwert, der auf einer Seite noch hielt, ist eine Grenze. Beide Grenzen sind eine Runde.',
	readings: ({isOfHand}: {isOfHand: boolean}) =>
		`${isOfHand ? 'Der Kraftmesser zeigt die Kraft der Hand, die den Arm eben in Bewegung setzt. Darum wurde bei jedem Messwert das Vorzeichen umgekehrt, und die beiden Grenzen wurden vertauscht.' : 'Jeder Messwert ist die Kraft, mit der der Arm auf den Kraftmesser drückt.'} Plus, „nach außen“, heißt zum Rand; minus, „nach innen“, heißt zur Tellerachse. Beim Messen ist das Antiskating aus, und die Dämpfung berührt den Arm nicht. Wo das nicht so war, steht es bei den übergangenen Schritten. Der Nadelschutz bleibt drauf und schützt den Nadelträger; seine Masse zählt zur Auflagekraft.`,
	series:
		'Runden, zwischen denen nichts geändert wurde, sind eine Messreihe. Zahlen mischen nie zwei Messreihen; das Urteil gilt für die letzte gemessene. Eine Runde mit gedrehtem Kraftmesser trennt seine Nullanzeige vom Zug des Arms. Die Schlussrunde, wieder am ersten Radius, zählt wie jede andere. Sie zeigt, ob sich seit der ersten etwas verschoben hat.',
	sidePull: ({goodPct, usablePct}: UpTo) =>
		`Zug: die Mitte beider Grenzen. Er kommt von Litzen, Lagern und Neigung. Gut bis ${plainNumber(goodPct)} %, brauchbar bis ${plainNumber(usablePct)} %.`,
	holdBand: ({goodPct, usablePct}: UpTo) =>
		`Reibung: der Abstand der Grenzen. Gut bis ${plainNumber(goodPct)} %, brauchbar bis ${plainNumber(usablePct)} %. Die Hälfte davon, die Losbrechkraft, bewegt den Arm gerade eben nach jeder Seite.`,
	tiltShare:
		'Anteil der Neigung: so viel vom Zug macht die Neigung des Laufwerks. Er steht neben dem Zug und wird nie abgezogen.',
	percent:
		'Alle sind Prozent der Abspielkraft. Wie viel gut und wie viel brauchbar ist, steht in den Einstellungen. Die Voreinstellungen folgen der Werkstattpraxis, aus dem Gedächtnis; veröffentlichte Grenzen wurden nicht gefunden.',
	intervals:
		'Jedes ± gilt für 95 %: Von hundert solchen Intervallen enthalten etwa fünfundneunzig den wahren Wert. Es zählt nur, was hier aufgezählt ist. Ein Urteil gibt es nur, wo die Zahl mit ihrem ganzen ± auf einer Seite einer Grenze liegt. Sonst ist es unentschieden, und der Bericht sagt, was entscheiden würde.',
	/** Of figures that an earlier version issued: they stay as they are. */
	issuedBefore:
		'Diese Zahlen hat eine frühere Version des Programms ausgegeben. In ihrem ± fehlt, was das Aufstellen von Arm und Kraftmesser am Zug ausmacht (0,3 %). Es fehlt auch, wie wenig einzelne Runden über die Nullanzeige sagen.',
	squares:
		'Diese Teile werden als Quadrate addiert (JCGM 100:2008). Bei wenigen Runden macht der Student-Faktor für ihre Anzahl das ± breiter.',
	/** What went into the ±, as it was stated or found. */
	budget: {
		step: 'Ableseschritt des Kraftmessers',
		nudge: 'Stups',
		inGauge: ({value, unit}: {value: number; unit: UnitId}) => `${plainNumber(value)} ${units[unit].label}`,
		zero: 'Nullanzeige des Kraftmessers',
		zeroTurned: 'durch Drehen des Kraftmessers gefunden; ihr ± kommt aus denselben Runden',
		zeroStated: ({value, unit}: {value: number; unit: UnitId}) =>
			`ohne Arm abgelesen; Standardunsicherheit ${plainNumber(value)} ${units[unit].label}`,
		zeroUnchecked: 'nicht geprüft: ± ein halbes Prozent oder ein Ableseschritt zählt mit',
		scale: 'Skala des Kraftmessers',
		force: 'Auflagekraft',
		ofFigure: ({pct}: {pct: number}) => `Standardunsicherheit ${plainNumber(pct)} % der Zahl`,
		repeats: 'wie gut sich Runden wiederholen',
		repeatsPooled: 'aus den Runden aller Radien zusammen',
		repeatsAssumed: 'angenommen: 0,3 % für eine Mitte, 0,6 % für die Reibung',
		settingUp: 'Aufstellen',
		setAnew: 'der Kraftmesser wurde für jede Runde neu aufgestellt, also zeigen es die Runden',
		notSetAnew: '0,3 % der Abspielkraft',
	},
};

/** What stands in every report, the same as in the manual. */
export const cautions: readonly string[] = [
	'Menschen und Verstärker. Den Verstärker stumm oder ausschalten, dann erst die Nadel berühren. Die Lautstärke unten lassen, wenn die Nadel wieder auf die erste Platte trifft. Netzstecker ziehen, dann erst etwas öffnen.',
	'Arbeit für Fachkräfte. armdrift sieht nur die Mechanik. Verdrahten, Erden und Reparieren zugelassenen oder befugten Fachkräften überlassen, nach den örtlichen Vorschriften. Die Anleitung des Herstellers befolgen: Die Garantie kann verbieten, ein Lager anzufassen. Kein Lager ohne das Verfahren des Herstellers verstellen.',
	'Nadel und Nadelträger. Die Nadel ist spitz, und ihr Nadelträger bricht schon bei einer Berührung. Den Nadelschutz bis zum allerletzten Schritt drauflassen. Bei einem Arm mit Einpunktlager nie auf den Nadelschutz drücken.',
	'Das Laufwerk. Bis alles hergerichtet ist, sagt jeder Bildschirm, dass das Laufwerk nicht spielbereit ist. Die Masse des Nadelschutzes darf nicht in der Auflagekraft bleiben.',
];

/** What the method cannot do, the same as in the manual. */
export const limitsOfMethod: readonly string[] = [
	'Die Messung sieht Zug und Reibung im Stillstand. Sie sieht keine Resonanz, kein Lagerspiel und nicht, was eine verwellte Platte macht.',
	'Messwerte in Prozent sind nur so gut wie die Auflagekraft, die der Kraftmesser trägt. Der Nadelschutz zählt darin mit.',
	'Eine Grenze wird beim letzten Stups abgelesen, der noch hielt; im Mittel fehlt ihr also ein halber Stups. Die Reibung ist dafür berichtigt.',
	'Wo niemand die Nullanzeige des Kraftmessers geprüft hat, zählt im ± ein halbes Prozent (oder ein Ableseschritt) nach jeder Seite mit. Ein Kraftmesser, der weiter daneben liegt, täuscht.',
	'Der Raum zählt: Litzen und Öl werden in der Kälte steifer. Neigung wirkt voll auf einen Arm mit Gewicht, kaum auf einen mit Feder.',
	'Ein Vergleich nimmt die ± zweier Prüfungen als unabhängig. Haben beide denselben Fehler des Kraftmessers, zeigt er sich nicht als Änderung.',
	'Die Rillenreibung hinter dem Sollwert ist angenommen. Sie ändert sich mit Platte, Nadel und Musik. Mit Antiskating wird meist nur eine Runde je Radius gemessen; diese Messwerte haben kein eigenes ±.',
	'Bei einer Runde je Radius ist die Streuung nur angenommen. Das ± kann dann den wahren Wert in weit weniger als 95 von 100 Fällen enthalten.',
	'Das ± umfasst Ableseschritt, Stups, Streuung, Aufstellen, Nullanzeige und Skala. Es umfasst keinen Schritt, der bestätigt, aber nicht getan wurde. Es umfasst auch keine Kraft, die beim Suchen der Grenzen wandert (Luftzug, wackelnder Tisch). Wandert sie um 0,2 %, fehlen der Reibung 0,2 bis 0,3 % (simuliert, nicht gemessen).',
];
