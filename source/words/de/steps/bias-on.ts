import type {AtRadius, GaugeAtRadius} from '../../../procedure/step-values.js';
import {rounded} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {atRadius, placedAt} from '../at-radius.js';
import {deviceWords} from '../bias-devices.js';

/** The rounds at one radius. */
const probe = {
	ask: (at: GaugeAtRadius) => `${placedAt(at)}.`,
	why: 'Die beiden Grenzen messen wie zuvor. Der Zug ohne Antiskating wird abgezogen; der Rest ist das Antiskating.',
	mistake: 'Nach einer Grenze geurteilt. Antiskating verschiebt beide; Reibung hält sie auseinander.',
};

/** How a lever stands at one radius. */
const lever = {
	ask: (at: AtRadius) =>
		`Arm${atRadius(at)} auf dem Kraftmesser lassen. Hebel als Stundenzeiger lesen: Welche Zeit zeigt er? Immer von derselben Seite ansehen. Nicht zu sehen: „-“ eintippen.`,
	why: 'Am waagrechten Hebel (3:00 oder 9:00) wirkt das ganze Gewicht. 30° neben der Senkrechten wirkt die Hälfte, senkrecht nichts. Die Messwerte entscheiden.',
	mistake: 'Abgelesen, während der Arm in der Stütze lag.',
};

/** How a thread stands at one radius. */
const thread = {
	ask: (at: AtRadius) =>
		`Arm${atRadius(at)} auf dem Kraftmesser lassen. Von oben sehen. Welchen Winkel bilden der Faden und der Stab, an dem er zieht? Nicht zu sehen: „-“ eintippen.`,
	why: 'Bei 90° wirkt das ganze Gewicht, bei 30° die Hälfte. Die Messwerte entscheiden.',
	mistake: 'Vom Armrohr aus gemessen, nicht vom Antiskating-Stab, an dem der Faden zieht.',
};

export const biasOn = {
	'bias-drag': {
		title: 'Rillenreibung',
		ask: ({usualDrag, hasDevice}) =>
			hasDevice
				? `Rillenreibung als Teil der Auflagekraft eintippen. Üblich: ${rounded(usualDrag, 2)}.`
				: `So viel Skating wirkt auf den Arm. Rillenreibung: ${rounded(usualDrag, 2)}, wie üblich. Weiter mit Enter.`,
		why: 'Die Rillenreibung dreht den Arm zur Tellerachse: das ist Skating. Antiskating hebt es auf. Kein veröffentlichter Wert war zu finden, also ist er angenommen.',
		mistake: 'Antiskating feiner eingestellt, als die Rillenreibung bekannt ist. Das Bild zeigt ± 0,05.',
	},
	'bias-radius-middle': {
		title: 'Dritter Radius, Antiskating',
		ask: 'Dritten Radius zum Messen mit Antiskating eintippen, oder „-“ für keinen.',
		why: 'Skating ist etwa mitten zwischen Rand und Etikett am kleinsten. Manche Vorrichtung zieht gerade dort am meisten.',
		mistake: 'Beim Hebel weggelassen. Ein Hebel kann außen und innen stimmen, dazwischen nicht.',
	},
	'bias-weight': {
		title: 'Antiskating-Gewicht',
		ask: 'Masse des angehängten Antiskating-Gewichts eintippen, oder „-“, wenn unbekannt.',
		why: 'Damit kommt der Rat in Gramm.',
		mistake: 'Hebel oder Haken mitgezählt. Es zählt nur, was angehängt wird.',
	},
	'bias-set': {
		title: 'Wie es eingestellt ist',
		ask: 'Antiskating wie sonst zum Abspielen einstellen. Kerbe oder Skalenzahl eintippen, oder „-“, wenn es keine hat.',
		why: 'Jede Einstellung behält ihre Messwerte. So geht es zurück zur besten.',
		mistake: 'Nur eingetippt, was sich geändert hat.',
		caution:
			'Arm verriegeln, Nadelschutz drauf, solange die Hände an der Vorrichtung sind. Gegengewicht nicht berühren.',
	},
	'bias-on': {
		title: 'Antiskating an',
		ask: ({device}) => `${deviceWords[device].on} Sonst nichts berühren. Erledigt?`,
		why: 'Ändert sich sonst nichts, ist der Unterschied der Messwerte das Antiskating.',
		mistake: 'Auf dem Weg zur Vorrichtung eine Litze bewegt.',
		caution:
			'Arm verriegeln, Nadelschutz drauf, solange die Hände an der Vorrichtung sind. Nur so weit gehen, wie der Hersteller erlaubt.',
	},
	'probe-bias-outer': {title: 'Messen, Antiskating, außen', ...probe},
	'bias-clock-outer': {title: 'Hebel, äußerer Radius', ...lever},
	'bias-angle-outer': {title: 'Faden, äußerer Radius', ...thread},
	'probe-bias-middle': {title: 'Messen, Antiskating, dritter', ...probe},
	'bias-clock-middle': {title: 'Hebel, dritter Radius', ...lever},
	'bias-angle-middle': {title: 'Faden, dritter Radius', ...thread},
	'probe-bias-inner': {title: 'Messen, Antiskating, innen', ...probe},
	'bias-clock-inner': {title: 'Hebel, innerer Radius', ...lever},
	'bias-angle-inner': {title: 'Faden, innerer Radius', ...thread},
	'bias-result': {
		title: 'Antiskating gegen Skating',
		ask: '',
		why: 'Reibung verdeckt alles, was kleiner ist als ihre Hälfte, und die Rillenreibung ist angenommen. Ist der Rest kleiner, aufhören.',
		mistake: 'Dem letzten Zehntel an einem Radius nachgejagt und es am anderen verloren.',
	},
} satisfies Partial<StepSentences>;
