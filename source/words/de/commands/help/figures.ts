import limits from '../../../../../shared/limits.json' with {type: 'json'};
import {plainNumber} from '../../../numbers.js';
import {limitsOfMethod} from '../../reports/method.js';
import type {Topic} from '../topics.js';

/** A number and its sign stay on one line. */
const pct = (limit: {readonly value: number}): string => `${plainNumber(limit.value)}\u00A0%`;

/** What the figures of the probe and of the bias mean. */
export const onFigures: readonly Topic[] = [
	{
		name: 'figures',
		title: 'wie Zahlen und Urteil zu lesen sind, Grenzen des Verfahrens',
		blocks: [
			'Alle Zahlen sind Prozent der Abspielkraft, und jedes ± gilt für 95 %.',
			{
				rows: [
					[
						'Zug',
						`die Mitte beider Grenzen: was Litzen, Lager und Neigung bewirken; außen heißt zum Rand. Gut bis ${pct(limits.pullGoodPct)}, brauchbar bis ${pct(limits.pullUsablePct)}`,
					],
					[
						'Reibung',
						`der Abstand der Grenzen. Gut bis ${pct(limits.bandGoodPct)}, brauchbar bis ${pct(limits.bandUsablePct)}`,
					],
					['Losbrechkraft', 'die halbe Reibung: so viel bewegt den Arm gerade, in jede Richtung'],
					[
						'Anteil der Neigung',
						`was die Neigung des Laufwerks am Zug ausmacht. Er steht neben dem Zug und wird nie abgezogen: stattdessen das Laufwerk waagrecht stellen. Gut bis zu einem Viertel des guten Zugs (${pct({value: limits.pullGoodPct.value / 4})})`,
					],
				],
			},
			'Wie viel gut und wie viel brauchbar ist, gibt dieses Programm vor, aus der Erinnerung an die Praxis; veröffentlichte Werte wurden nicht gefunden. In den Einstellungen lassen sie sich ändern. Ein Urteil gibt es nur, wo das ganze ± einer Zahl dasselbe Urteil hat:',
			{
				rows: [
					['gut, brauchbar', 'lassen'],
					['zu viel', 'der Bildschirm nennt die Ursache, den nächsten Schritt und wer ihn tut'],
					[
						'unentschieden',
						'das ± reicht von einem Urteil ins nächste. Zuerst kommt, was sicher ist (brauchbar bis gut), dann, was entscheiden würde. Das sind mehr Runden oder ein feinerer Ableseschritt. Liegt die Zahl genau dazwischen, entscheidet nichts',
					],
				],
			},
			'Fünf verschiedene Dinge haben fünf Wörter:',
			{
				rows: [
					['nicht gemessen', 'es gibt keinen Messwert'],
					['Skalenende', 'der Messwert erreichte das Ende der Skala und ergibt keine Zahl'],
					['unentschieden', 'das ± reicht von einem Urteil ins nächste'],
					['unterbrochen', 'die Prüfung wurde vor dem Ende verlassen, und das Laufwerk wurde nicht spielbereit'],
					[
						'übergangen',
						'ein Schritt genügte nicht, und es ging trotzdem weiter; der Grund steht für immer neben dem Urteil',
					],
				],
			},
			'Grenzen des Verfahrens:',
			...limitsOfMethod,
		],
	},
	{
		name: 'bias',
		title: 'die Antiskating-Vorrichtung nach Messwerten einstellen',
		blocks: [
			'Beim Urteil beginnen: bei einem gesunden Arm sofort, sonst unter „ein anderer Weg“. Dann mit Antiskating messen. Ist die Reibung zu groß, zuerst sie beheben: feiner als die halbe Reibung lässt sich Antiskating nicht einstellen.',
			'Die Rille zieht an der Nadel. Der Drehpunkt liegt nicht in der Richtung der Rille, darum dreht der Zug der Rille den Arm auch zur Tellerachse. Das muss Antiskating aufheben. Als Teil der Auflagekraft ist es Rillenreibung × φ. φ ist der Sinus des Winkels zwischen der Rille und der Linie von der Nadel zum Drehpunkt. Er folgt allein aus effektiver Länge und Montageabstand. So hat jeder Radius einen Sollwert: 100 × Rillenreibung × φ Prozent, zum Rand hin. Eigener Zug und Antiskating zusammen müssen ihn ergeben.',
			'Zahlen und Kurve sind Prozent der Abspielkraft. Der Messwert zum Einstellen steht so da, wie der Kraftmesser ihn zeigen wird, auf seinen Schritt genau. Er ist Prozent der Kraft, die der Kraftmesser trägt (mit Nadelschutz), seine Nullanzeige eingerechnet.',
			{
				rows: [
					[
						'Rillenreibung',
						'Kraft längs der Rille, als Teil der Auflagekraft. Angenommen: 0,30; einstellbar von 0,15 bis 0,60. Ein veröffentlichter Wert war nicht zu finden, darum zeigt das Bild ± 0,05 daneben. Feiner nicht einstellen',
					],
					['eigener Zug', 'bei der Messung gefunden, ohne Antiskating'],
					['nur Antiskating', 'Messwert mit Antiskating, minus eigener Zug an diesem Radius'],
					['Rest', 'Messwert minus Sollwert: über null zu viel Antiskating, unter null zu wenig'],
					[
						'beste Einstellung',
						'das Wievielfache des jetzigen Antiskatings an allen Radien von 60 bis 146 mm am wenigsten Rest lässt. Zuerst steht der Messwert für jeden Radius, denn den kann eine Hand einstellen',
					],
					[
						'Reibung verdeckt',
						'die Hälfte der größten Reibung. Feiner ist keine Einstellung ablesbar, also darunter aufhören',
					],
					[
						'Rillenwand',
						'wie sich die Last beim Abspielen auf innere und äußere Rillenwand verteilt. Die Wände tragen den Rest, geteilt durch den Kosinus jenes Winkels: etwas mehr',
					],
				],
			},
			'Jede Einstellung behält ihre Messwerte. Die beste ist bezeichnet, und der Weg zurück zu ihr steht offen.',
			'Bei einem Hebel mit Gewicht und Rolle fragt das Programm an jedem Radius, wo der Hebel steht. Bei einem Faden durch eine Führung fragt es nach dem Winkel des Fadens. Das zeigt, wie gleichmäßig das Gewicht wirkt und was eine andere Fadenlänge oder ein anderer Ort der Rolle brächte. Das ist ein Anhaltspunkt; die nächsten Messwerte entscheiden.',
		],
	},
];
