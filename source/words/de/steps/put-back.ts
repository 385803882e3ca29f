import {scaleText} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {deviceWords} from '../bias-devices.js';

export const putBack = {
	'back-lock': {
		title: 'Arm verriegeln',
		short: 'Arm verriegelt?',
		ask: 'Arm in die Stütze heben und verriegeln. Erledigt?',
		why: 'Die Hände arbeiten jetzt neben der Nadel. Verriegelt und geschützt ist sie sicher.',
		mistake: 'Kraftmesser weggenommen, während der Arm darauf lag.',
	},
	'back-gauge': {
		title: 'Kraftmesser weg',
		short: 'Kraftmesser weg?',
		ask: 'Kraftmesser vom Teller nehmen. Erledigt?',
		why: 'Matte und Platte brauchen seinen Platz.',
		mistake: 'Mit dem Kraftmesser den Arm berührt.',
	},
	'back-blocks': {
		title: 'Klötze und Bänder',
		short: 'Klötze und Bänder weg?',
		ask: 'Klötze, Keile, Unterlagen, Bänder wegnehmen. Das Band an der Stütze bleibt. Erledigt?',
		why: 'Was bleibt, hält den Teller oder den Arm fest.',
		mistake: 'Unterlage der Tonarmwaage vergessen.',
	},
	'back-weight': {
		title: 'Gegengewicht fürs Abspielen',
		ask: ({playingMn, guardMn}) =>
			`Nadelschutz drauf. Gegengewicht stellen, bis Arm und Nadelschutz ${scaleText((playingMn ?? 0) + guardMn)} wiegen. Erledigt?`,
		why: ({playingMn, guardMn}) =>
			`Der Nadelschutz wiegt ${scaleText(guardMn)} und kommt später ab. Dann bleibt die Abspielkraft, ${scaleText(playingMn ?? 0)}. Bis dahin ist die Nadel geschützt.`,
		mistake: 'Gegengewicht gedreht, während der Arm auf der Waage lag. Erst den Arm in die Stütze.',
	},
	'back-leads': {
		title: 'Litzen und Tonabnehmer',
		short: 'Litzen dran?',
		ask: 'Tonabnehmer einbauen. Jede Litze nach Farbe auf ihren Stift schieben. Erledigt?',
		why: 'Zwei vertauschte Litzen drehen einen Kanal um. Die erste Platte mono hören: Dünner Bass verrät es.',
		mistake: 'Kabelschuh ohne Nadelschutz aufgeschoben, oder an der Litze gefasst statt am Kabelschuh.',
		caution:
			'Arm verriegelt, Nadelschutz drauf, Verstärker aus. Ist ein Stift gelötet oder gebrochen, eine Elektrofachkraft holen.',
	},
	'back-upright': {
		title: 'Headshell gerade',
		short: 'Headshell gerade?',
		ask: 'Von vorn ansehen. Ist das Headshell parallel zur Platte?',
		why: 'Wer das Gegengewicht dreht, kann ein Einpunktlager kippen.',
		mistake: 'Von der Seite gesehen.',
	},
	'back-mat': {
		title: 'Matte',
		short: 'Matte drauf?',
		ask: 'Matte wieder auf den Teller legen. Erledigt?',
		why: 'Ohne sie liegt die Platte zu tief für den Arm.',
		mistake: 'Verkehrt herum aufgelegt.',
	},
	'back-damping': {
		title: 'Dämpfung',
		short: 'Dämpfung wieder da?',
		ask: 'Öl wieder einfüllen, Paddel so tief wie vorher. Erledigt?',
		why: 'Der Arm spielt damit.',
		mistake: 'Zu voll gefüllt. Öl kriecht ins Lager.',
	},
	'back-bias': {
		title: 'Antiskating',
		ask: ({device, chosen, setting}) =>
			chosen
				? `Antiskating lassen, wie gewählt: Einstellung ${chosen.number}${chosen.setting === '' ? '' : ` (${chosen.setting})`}. Erledigt?`
				: `${deviceWords[device].restore}${setting === undefined ? '' : ` Es stand auf: ${setting}.`} Erledigt?`,
		why: 'Ohne Antiskating drückt die Nadel auf die innere Flanke der Rille.',
		mistake: 'Faden neben seiner Führung gelassen.',
	},
	'back-height': {
		title: 'Armhöhe',
		short: 'Höhe wie abgespielt?',
		ask: 'Arm auf seine Abspielhöhe stellen. Erledigt?',
		why: 'Die Höhe ändert den Winkel der Nadel, bei manchen Armen auch die Auflagekraft.',
		mistake: 'Höhe für den Nadelschutz so gelassen.',
	},
	'back-guard': {
		title: 'Nadelschutz ab',
		ask: ({isUnipivot}) =>
			`Arm verriegelt. Nadelschutz gerade abziehen.${isUnipivot ? ' Einpunktlager nie nach unten drücken.' : ''} Erledigt?`,
		why: 'Seine Masse darf nicht in der Auflagekraft bleiben.',
		mistake: 'Zur Seite abgezogen.',
		caution: 'Ab hier liegt die Nadel frei. Sie ist spitz, ihr Nadelträger bricht bei einer Berührung.',
	},
	'back-force': {
		title: 'Wiegen wie abgespielt',
		ask: ({setToMn}) =>
			setToMn === undefined
				? 'Auf Höhe der Platte wiegen. Was zeigt die Waage? Nicht gewogen: „-“ eintippen.'
				: `Auf Höhe der Platte wiegen, Gegengewicht auf ${scaleText(setToMn)} stellen. Was zeigt die Waage? Nicht gewogen: „-“ eintippen.`,
		why: 'Eine falsche Kraft fällt sonst nirgends auf. Richtig ist die Abspielkraft auf 2 %.',
		mistake: 'Mit Nadelschutz gewogen.',
		caution: 'Die Nadel liegt frei. Mit dem Lift absenken. Danach den Arm wieder verriegeln.',
	},
	'back-level': {
		title: 'Noch waagrecht',
		short: 'Waagrecht wie vorher?',
		ask: 'Wasserwaage wie am Anfang auf die Tonarmbasis legen. Zeigt sie dasselbe?',
		why: 'Hände am Laufwerk können es verstellt haben.',
		mistake: 'Jetzt waagrecht gestellt und nicht neu gemessen.',
	},
	'back-covers': {
		title: 'Abdeckung, erste Platte',
		ask: 'Riemen, Abdeckungen und Netzstecker dran, Haltebänder ab, Lautstärke herunterdrehen. Erledigt?',
		why: 'Eine Nadel, die bei voller Lautstärke falsch aufsetzt, zerstört Lautsprecher. Netz nur an ein geschlossenes Laufwerk. Örtliche Vorschriften können eine Elektrofachkraft verlangen.',
		mistake: 'Bei offener Lautstärke probiert.',
	},
	'next-check': {
		title: 'Nächste Prüfung',
		ask: 'Dieses Datum für die nächste Prüfung behalten? n: kein Datum.',
		why: 'Sechs Monate sind üblich (ohne Beleg). Litzen, die steif sind oder in freier Schlaufe hängen, verziehen sich früher. Unentschiedenes soll nicht warten.',
		mistake: 'Gewartet, bis etwas zu hören ist.',
	},
} satisfies Partial<StepSentences>;
