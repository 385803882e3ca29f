import {mm} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {deviceWords} from '../bias-devices.js';

export const setting = {
	'room-temperature': {
		title: 'Raumtemperatur',
		ask: 'Wie warm ist der Raum? Unbekannt: „-“ eintippen.',
		why: 'Öl und Litzen werden in der Kälte steif. So gilt ein kalter Raum nicht als Drift.',
		mistake: 'Arm direkt aus dem kalten Auto geprüft.',
	},
	'room-note': {
		title: 'Notiz',
		ask: 'Notiz zu dieser Prüfung eintippen, oder „-“ für keine.',
		why: 'In einem Jahr zählt, was heute besonders war.',
		mistake: 'Nicht notiert, dass der Arm versetzt oder neu verkabelt wurde.',
	},
	mat: {
		title: 'Matte',
		short: 'Matte?',
		ask: ({deepGuardMm}) =>
			deepGuardMm === undefined
				? 'Bleibt die Matte drauf? Der Kraftmesser muss fest stehen.'
				: `Matte abnehmen: Der Nadelschutz hängt mehr als ${mm(deepGuardMm)} herunter.`,
		why: 'Ein tiefer Nadelschutz berührt die Matte. Auf einem Stahlteller die Matte lassen: Der Magnet des Tonabnehmers zieht.',
		mistake: 'Matte bei freier Nadel abgenommen.',
	},
	'mat-thickness': {
		title: 'Dicke der Matte',
		ask: 'Wie dick ist die abgenommene Matte?',
		why: 'So viel höher muss die Nadel über dem blanken Teller hängen.',
		mistake: 'Filzmatte platt gedrückt.',
		caution:
			'Ohne Matte kann die Nadel auf den Teller schlagen. Lift nur absenken, wenn der Kraftmesser unter dem Arm steht.',
	},
	'damping-off': {
		title: 'Dämpfung',
		short: 'Frei von Dämpfung?',
		ask: 'Paddel ganz herausheben oder Wanne leeren. Erledigt?',
		why: 'Dämpfungsöl verdeckt die Reibung der Lager.',
		mistake: 'Paddel zu wenig gehoben. Es zieht einen Ölfaden nach.',
		caution: 'Das Öl kriecht. In einem geschlossenen Gefäß aufheben, weg vom Lager.',
	},
	'bias-setting': {
		title: 'Stand des Antiskatings',
		short: 'Antiskating steht auf? Unbekannt: „-“ eintippen.',
		ask: 'Stand des Antiskatings eintippen: Kerbe, Zahl oder Gramm. Unbekannt: „-“ eintippen.',
		why: 'Am Ende kommt es wieder auf diesen Stand.',
		mistake: 'Auf das Gedächtnis verlassen.',
	},
	'bias-off': {
		title: 'Antiskating aus',
		ask: ({device}) => deviceWords[device].off,
		why: 'Gemessen wird, was der Arm selbst tut. Vergessenes Antiskating sieht aus wie verdrillte Litzen.',
		mistake: ({device}) => deviceWords[device].mistake,
	},
	wires: {
		title: 'Am Arm entlangsehen',
		short: 'Jede Zeile ansehen. Mit n geht es Zeile für Zeile.',
		ask: 'Arm verriegelt. Jede Zeile abhaken.',
		why: 'Jedes davon kann den Arm stärker drücken als seine Lager.',
		mistake: 'Litzen nur für die Prüfung neu gelegt. So messen, wie sie sonst liegen.',
	},
} satisfies Partial<StepSentences>;
