import type {ProblemValues, SpanMm, UnconfirmedStep, WayId} from '../../procedure/problem.js';
import type {Sentences} from '../../said.js';
import {decimalsApart} from '../../units.js';
import {inDegrees, inUnit, mm, percent, plainNumber, rounded} from '../numbers.js';

/** What is left to do where a line of a list is answered with no. */
const lineLeft = {
	safe: {
		amplifier: 'Verstärker ausschalten oder stumm schalten.',
		platter: 'Teller blockieren.',
		mains: 'Netzstecker ziehen: Ein bewegter Arm kann das Laufwerk starten.',
		rest: 'Arm in die Stütze legen. Nadelschutz bereitlegen.',
		record: 'Platte, Klemme und Gewicht vom Teller nehmen.',
		lock: 'Arm in der Stütze verriegeln. Keine Verriegelung: weich anbinden.',
	},
	wires: {
		upright: 'Arm aufrecht stellen, wie der Hersteller sagt. Nie nach unten drücken.',
		leads: 'Litzen legen wie vorher, frei vom Arm.',
		lifter: 'Lift senken, bis Licht unter dem Rohr zu sehen ist.',
		rest: 'Bügel der Stütze wegdrehen.',
		screws: 'Arm verriegeln, Nadelschutz drauf. Headshell halten und von Hand festziehen.',
		air: 'Haube abnehmen. Lüfter und Heizung ausschalten. Ruhige Luft abwarten.',
		static: 'Blankes geerdetes Metall berühren und Matte abbürsten.',
	},
} as const satisfies Record<ProblemValues['lines-left']['list'], Readonly<Record<string, string>>>;

const notConfirmed: Readonly<Record<UnconfirmedStep, string>> = {
	'damping-off': 'Mit Dämpfung misst man das Öl, nicht den Arm.',
	'bias-off': 'Mit Antiskating misst man Antiskating und Arm zusammen.',
	'bias-on': 'Erst das Antiskating anlegen: Dieser Schritt misst es.',
	'arm-afloat': 'Ein Arm, der sinkt oder steigt, schwebt nicht. Sein Gewicht verdirbt den Messwert.',
	'lifter-clear': 'Berührt der Lift den Arm, sieht das aus wie Reibung.',
	'first-swing': 'Erst den Arm schwenken und anstupsen.',
	'probe-end': 'Erst den Arm in der Stütze verriegeln.',
	'back-lock': 'Arm verriegeln, bevor die Hände anderes berühren.',
	'back-gauge': 'Der Kraftmesser steht noch unter dem Arm.',
	'back-mat': 'Die Matte liegt noch nicht auf.',
	'back-damping': 'Die Dämpfung fehlt noch.',
	'back-blocks': 'Ein Klotz oder Band hält noch Teller oder Arm.',
	'back-leads': 'Ohne seine Litzen spielt der Tonabnehmer nicht.',
	'back-bias': 'Das Antiskating ist noch aus.',
	'back-height': 'Der Arm steht noch nicht auf Abspielhöhe.',
	'back-weight': 'Das Gegengewicht ist noch nicht fürs Abspielen gestellt.',
	'back-guard': 'Der Nadelschutz ist noch drauf: So spielt das Laufwerk nicht.',
	'back-level': 'Laufwerk wieder waagrecht stellen.',
	'back-upright': 'Ein schiefer Arm spielt einen Kanal lauter.',
	'back-covers': 'Das Laufwerk ist noch nicht spielbereit.',
};

const reach = ({leastMm, mostMm}: SpanMm): string => `von ${rounded(leastMm, 1)} bis ${rounded(mostMm, 1)} mm`;

const belowOrAbove = {below: 'unter', above: 'über'};
const lowOrHigh = {low: 'tief', high: 'hoch'};
const lowOrMuch = {low: 'wenig', high: 'viel'};

/** What a person reads of each problem. */
export const problems: Sentences<ProblemValues> = {
	'lines-left': ({list, lines}) => {
		const left: Readonly<Record<string, string>> = lineLeft[list];
		return lines.map((id) => left[id] ?? id).join(' ');
	},
	'not-confirmed': ({step}) => notConfirmed[step],
	'never-crosses-record': (reached) =>
		`Mit diesen Längen kreuzt die Nadel nie die Platte: Sie erreicht Radien ${reach(reached)}.`,
	'no-such-arm': () => 'Kein Arm dieser effektiven Länge hat diese beiden Nullradien.',
	'pivot-not-believable': ({pivotMm, leastMm, mostMm}) =>
		`Das ergibt ${inUnit(pivotMm, 'mm')} Montageabstand. Erlaubt: ${plainNumber(leastMm)} bis ${mm(mostMm)}.`,
	'offset-not-known': () => 'Ein Nullradius genügt nicht: Der Kröpfungswinkel ist unbekannt.',
	'radius-out-of-reach': ({radiusMm, ...reached}) =>
		`Die Nadel erreicht ${inUnit(radiusMm, 'mm')} nicht. Sie erreicht Radien ${reach(reached)}.`,
	'outer-not-larger': ({outerMm, innerMm}) =>
		`Der äußere Radius (${inUnit(outerMm, 'mm')}) muss größer sein als der innere (${inUnit(innerMm, 'mm')}).`,
	'radius-taken': ({radiusMm}) => `Bei ${inUnit(radiusMm, 'mm')} wird schon gemessen. Anderen Radius wählen.`,
	'stop-takes-hold': ({leastMm}) =>
		`Unter ${mm(leastMm)} hält der automatische Stopp den Arm. ${mm(leastMm)} oder mehr wählen.`,
	'middle-not-between': ({innerMm, outerMm}) =>
		`Der dritte Radius muss zwischen dem inneren (${inUnit(innerMm, 'mm')}) und dem äußeren (${inUnit(outerMm, 'mm')}) liegen.`,
	'percent-of-nothing': () =>
		'Ein schwebender Arm hat keine Auflagekraft, also auch keine Prozent. mN oder Gramm wählen.',
	'low-force-too-high': () => 'Die kleinste Kraft des Bereichs ist größer als die Abspielkraft.',
	'high-force-too-low': () => 'Die größte Kraft des Bereichs ist kleiner als die Abspielkraft.',
	'mat-meets-guard': () => 'Ein so tiefer Nadelschutz berührt die Matte.',
	'level-read-once': () => 'Ein Messwert genügt nicht: Der Fehler der Wasserwaage kann größer sein als die Neigung.',
	'leans-at-once': ({readDeg, allowedDeg}) =>
		`${inDegrees(readDeg, 2)} sind zu viel (erlaubt ${plainNumber(allowedDeg)}°). Das ist kein Fehler der Wasserwaage.`,
	'tilt-too-much': ({sharePct, allowedPct}) =>
		`Die Neigung allein macht ${percent(sharePct, decimalsApart(sharePct, allowedPct, 2))} Zug (erlaubt ${plainNumber(allowedPct)} %).`,
	'deck-leans': ({leanDeg, allowedDeg}) =>
		`Das Laufwerk ist um ${inDegrees(leanDeg, decimalsApart(leanDeg, allowedDeg, 2))} geneigt (erlaubt ${plainNumber(allowedDeg)}°).`,
	'guard-mass-not-known': () =>
		'Der Nadelschutz fehlte und seine Masse ist unbekannt. Also ist die Kraft auf dem Kraftmesser unbekannt.',
	'weigh-with-guard': () => 'Leere Waage auf null stellen, Nadelschutz aufschieben, neu wiegen.',
	'force-range-not-known': ({carriedMn}) =>
		`Verträgt der Tonabnehmer ${inUnit(carriedMn, 'gf')}? Sein Bereich ist unbekannt.`,
	'force-outside-range': ({carriedMn, side, lowMn, highMn}) =>
		`Die Kraft auf dem Kraftmesser wäre ${inUnit(carriedMn, 'gf')}, ${belowOrAbove[side]} dem Bereich des Tonabnehmers von ${inUnit(lowMn, 'gf')} bis ${inUnit(highMn, 'gf')}.`,
	'force-off-target': ({carriedMn, playingMn, offPct, allowedPct}) =>
		`${inUnit(carriedMn, 'gf')} weichen um ${percent(Math.abs(offPct), decimalsApart(offPct, allowedPct, 0))} von der Abspielkraft ${inUnit(playingMn, 'gf')} ab (erlaubt ${plainNumber(allowedPct)} %). Nadelschutz drauf? Waage leer auf null gestellt?`,
	'stylus-height': ({stylusMm, side, lowMm, highMm}) =>
		`Die Nadel steht zu ${lowOrHigh[side]}, ${mm(stylusMm)} über der Auflage. Soll: ${plainNumber(lowMm)} bis ${mm(highMm)}.`,
	'guard-gap-off': ({guardMm, side, lowMm, highMm}) =>
		`Unter dem Nadelschutz sind ${inUnit(guardMm, 'mm', 1)} Abstand: zu ${lowOrMuch[side]}. Soll: ${plainNumber(lowMm, 1)} bis ${inUnit(highMm, 'mm', 1)}.`,
	'guard-too-near': ({guardMm}) =>
		`Unter dem Nadelschutz sind ${inUnit(guardMm, 'mm', 1)} Abstand: zu wenig. Soll: mehr als 0,5 mm.`,
	'closing-off-scale': () =>
		'Etwas hat sich verschoben: Die Schlussrunde lief ans Skalenende, die inneren Runden nicht. Neu messen.',
	'closing-moved': ({movedPct}) =>
		`Etwas hat sich verschoben: Die Schlussrunde weicht ${percent(Math.abs(movedPct), 2)} von den inneren Runden ab. Neu messen.`,
	'not-weighed': () => 'Der Arm wurde nicht wie abgespielt gewogen.',
	'playing-force-off': ({weighedMn, playingMn, offPct, allowedPct}) => {
		const size = percent(Math.abs(offPct), decimalsApart(Math.abs(offPct), allowedPct, 1));
		return `${inUnit(weighedMn, 'gf')} sind ${size} ${offPct > 0 ? 'mehr' : 'weniger'} als die Abspielkraft ${inUnit(playingMn, 'gf')} (erlaubt ${plainNumber(allowedPct)} %).`;
	},
};

/** What a way out of a problem is called. */
export const ways: Readonly<Record<WayId, string>> = {
	'correct-length': 'effektive Länge berichtigen',
	'correct-pivot': 'Montageabstand berichtigen',
	'correct-null': 'ersten Nullradius berichtigen',
	'correct-other-null': 'anderen Nullradius berichtigen',
	'correct-inner': 'inneren Radius berichtigen',
	'correct-outer': 'äußeren Radius berichtigen',
	'correct-third': 'dritten Radius berichtigen',
	'correct-stop': 'automatischen Stopp berichtigen',
	'correct-middle': 'dritten Radius berichtigen',
	'correct-lowest': 'kleinste Kraft berichtigen',
	'correct-highest': 'größte Kraft berichtigen',
	'correct-playing': 'Abspielkraft berichtigen',
	'correct-mount': 'Halterung des Kraftmessers berichtigen',
	'reads-mn': 'Kraftmesser zeigt Millinewton (mN)',
	'reads-grams': 'Kraftmesser zeigt Gramm (Gramm-Kraft)',
	'measure-pivot': 'Montageabstand messen',
	'type-offset': 'Kröpfungswinkel eintippen',
	'from-both-nulls': 'aus beiden Nullradien berechnen',
	'set-height': 'Höhe einstellen, dann neu messen',
	'take-mat-off': 'Matte abnehmen',
	'level-again': 'Basis waagrecht stellen, neu ablesen',
	'turn-level': 'Wasserwaage um 180° drehen, neu ablesen',
	'weigh-now': 'jetzt wiegen',
	'set-force': 'Auflagekraft einstellen, neu wiegen',
	'set-force-guarded': 'Auflagekraft mit Nadelschutz einstellen, neu wiegen',
	'type-range': 'Bereich des Herstellers eintippen',
	'weigh-guarded': 'mit Nadelschutz neu wiegen',
	'type-guard-mass': 'Masse des Nadelschutzes eintippen',
	'weighed-guarded': 'erledigt: Nadelschutz drauf, Waage leer auf null',
	'weighed-without': 'ohne Nadelschutz, oder Waage mit ihm auf null',
	'add-guard-mass': 'bekannte Masse des Nadelschutzes dazuzählen',
	'tick-again': 'jetzt erledigt: neu ansehen',
	'probe-anew': 'von vorn messen: eine neue Messreihe',
	'do-now': 'jetzt tun',
	'switch-on': 'Antiskating jetzt anlegen',
};
