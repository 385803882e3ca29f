import type {GaugeAtRadius} from '../../../procedure/step-values.js';
import type {StepSentences} from '../../step-sentences.js';
import {placedAt} from '../at-radius.js';

const rounds = {
	ask: (at: GaugeAtRadius) => `${placedAt(at)}.`,
	why: 'Zwischen beiden Grenzen hält die Reibung den Arm. Die Mitte der Grenzen ist der Zug, ihr Abstand die Reibung.',
	mistake:
		'Zu weit gestupst. Oder abgelesen, bevor der Arm ruhig stand. Auch die innere Grenze darf nach außen zeigen.',
};

/** The pointer of a gauge that cannot be turned, read with nothing touching it. */
const freeZero = {
	why: 'Der Kraftmesser zeigt vielleicht nicht null, wenn ihn nichts berührt. Dieser Messwert sagt, wie weit er danebenliegt.',
	mistake: 'Nullschraube gedreht. Bis nach der letzten Runde nicht anfassen.',
};

export const probe = {
	'first-swing': {
		title: 'Einmal ganz schwenken',
		short: 'Geschwenkt und gestupst?',
		ask: ({isUnipivot}) =>
			`Arm am Fingergriff bis zum inneren Radius und zurück schwenken. Dann einmal nach innen stupsen, einmal nach außen${isUnipivot ? ', in Höhe des Drehpunkts' : ''}. Erledigt?`,
		why: 'Öl und Litzen setzen sich. Dieser Schwenk zählt nicht.',
		mistake: 'Nullschraube des Kraftmessers gedreht. Bis nach der letzten Runde nicht anfassen.',
	},
	'probe-end': {
		title: 'Arm wieder verriegelt',
		short: 'Arm verriegelt?',
		ask: 'Arm in die Stütze heben und verriegeln. Erledigt?',
		why: 'So ist die Nadel sicher, während das Urteil gelesen wird.',
		mistake: 'Kraftmesser unter dem Arm weggezogen.',
	},
	'zero-free-before': {
		title: 'Nullanzeige, vorher',
		ask: 'Arm in der Stütze. Nullanzeige mit Vorzeichen eintippen, oder „-“, wenn nicht lesbar.',
		...freeZero,
	},
	'probe-inner': {
		title: 'Messen, innen',
		...rounds,
		caution: 'Arm mit dem Lift absenken. Ihn nicht seitlich auf den Kraftmesser schwenken.',
	},
	'probe-outer': {title: 'Messen, außen', ...rounds},
	'probe-extra': {title: 'Messen, dritter Radius', ...rounds},
	'probe-closing': {
		title: 'Schlussrunde, innen',
		ask: (at) => `${placedAt(at)}. Eine letzte Runde.`,
		why: 'Sie zeigt, ob sich beim Messen etwas verschoben hat. Sie zählt wie jede Runde.',
		mistake: 'Weggelassen, weil die Werte gut aussehen.',
	},
	'zero-free-after': {
		title: 'Nullanzeige, nachher',
		ask: 'Arm in die Stütze heben. Nullanzeige mit Vorzeichen eintippen, oder „-“, wenn nicht lesbar.',
		...freeZero,
	},
	verdict: {
		title: 'Urteil',
		ask: '',
		why: 'Ein Urteil ist sicher, wenn es für das ganze ± einer Zahl gilt. Sonst steht beim Urteil, womit es sich klären lässt.',
		mistake: '„Unentschieden“ für „schlecht“ gehalten. Oft entscheiden es einige Runden mehr.',
	},
} satisfies Partial<StepSentences>;
