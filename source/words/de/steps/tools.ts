import type {StepSentences} from '../../step-sentences.js';

export const tools = {
	'tools-name': {
		title: 'Name des Werkzeugs',
		ask: 'Wie heißt dieser Werkzeugsatz aus Kraftmesser, Tonarmwaage und Wasserwaage?',
		why: 'Prüfungen mit anderem Kraftmesser werden vorsichtiger verglichen.',
		mistake: 'Nach einer Reparatur des Kraftmessers den Namen behalten.',
	},
	'gauge-mount': {
		title: 'Halterung des Kraftmessers',
		ask: 'Wie wird der Kraftmesser gehalten?',
		why: 'Ein Kraftmesser in der Hand trägt nichts. Dann schwebt der Arm und wird nicht gewogen.',
		mistake: '„geklemmt“ gewählt, obwohl er auf eigenem Fuß steht. Dann steht er.',
	},
	'gauge-unit': {
		title: 'Einheit des Kraftmessers',
		ask: 'Welche Einheit zeigt der Kraftmesser?',
		why: 'Prozent meint die Kraft auf dem Kraftmesser. Millinewton und Gramm sind reine Kräfte.',
		mistake: 'Später geändert. Messwerte behalten ihre Einheit.',
	},
	'gauge-step': {
		title: 'Schritt des Kraftmessers',
		ask: 'Feinsten ablesbaren Schritt des Kraftmessers eintippen.',
		why: 'Ein grober Schritt macht jedes ± größer. Ein halbes Prozent oder feiner ist gut.',
		mistake: 'Strichabstand eingetippt, obwohl halbe Striche lesbar sind.',
	},
	'gauge-top': {
		title: 'Skalenende',
		ask: 'Letzten Strich der Skala des Kraftmessers eintippen.',
		why: 'Am Skalenende misst der Zeiger nicht mehr.',
		mistake: 'Abgelesen, während der Zeiger am Anschlag lag.',
	},
	'gauge-sign': {
		title: 'Vorzeichen',
		ask: 'Welche Kraft zeigt der Kraftmesser? Wohin zeigt sein Plus?',
		why: 'Ein Messwert ist hier der Druck des Arms auf den Kraftmesser, plus zum Rand. Danach wird die Anzeige umgerechnet.',
		mistake: 'Geraten. Zeiger sacht zum Rand drücken und sehen, wohin er geht.',
	},
	'gauge-turns': {
		title: 'Kraftmesser drehen',
		ask: ({isInHand}) => `Lässt sich der Kraftmesser ${isInHand ? 'in der Hand' : 'unter dem Arm'} um 180° drehen?`,
		why: 'Um 180° gedreht zeigt der Kraftmesser den Zug mit anderem Vorzeichen, aber seine Nullanzeige mit demselben. Eine gedrehte Runde trennt beide.',
		mistake: 'Der Null in freier Luft vertraut. Unter dem Arm kann sie sich verschieben.',
	},
	'gauge-scale-uncertainty': {
		title: '± des Kraftmessers',
		ask: '± des Kraftmessers eintippen, in Prozent des Messwerts.',
		why: 'Es begrenzt, wie gut ein großer Zug bekannt ist. Mehr Runden helfen nicht.',
		mistake: 'Feinsten Schritt eingetippt. Sagt der Hersteller nichts, ist 2 vorsichtig geschätzt.',
	},
	'gauge-nudge': {
		title: 'Größe eines Stupses',
		ask: 'Um wie viel ändert ein Stups den Messwert?',
		why: 'Die letzte Stelle, die hielt, liegt im Mittel einen halben Stups vor der Grenze. Die Reibung wird darum berichtigt.',
		mistake: 'In Sprüngen gestupst: Der Arm geht zu früh los. Wer das Losgehen selbst abliest, tippt 0.',
	},
	'scale-step': {
		title: 'Schritt der Tonarmwaage',
		ask: 'Feinsten Schritt der Tonarmwaage eintippen.',
		why: 'Genauer als dieser Schritt ist die Auflagekraft nicht bekannt.',
		mistake: 'Einer feinen Anzeige vertraut. Sie muss nicht stimmen.',
	},
	'scale-uncertainty': {
		title: '± der Tonarmwaage',
		ask: '± der Tonarmwaage eintippen.',
		why: 'Es sagt, wie gut die Auflagekraft bekannt ist.',
		mistake: 'Ihren feinsten Schritt eingetippt. Ihr ± ist meist größer.',
	},
	'level-step': {
		title: 'Schritt der Wasserwaage',
		ask: 'Kleinste ablesbare Neigung der Wasserwaage eintippen.',
		why: '0,1° Neigung macht 0,17 % Zug. Grad oder mm/m, beides geht.',
		mistake: 'Weniger als 0,2° eingetippt bei einer Libelle ohne Striche.',
	},
	'tools-profile': {
		title: 'Welches Werkzeug?',
		ask: 'Werkzeugsatz wählen oder neu eingeben.',
		why: 'Die Antworten sind eingetragen. Tab zeigt sie: dort berichtigen, was nicht stimmt.',
		mistake: 'Alten Werkzeugsatz mit anderem Kraftmesser gewählt.',
	},
} satisfies Partial<StepSentences>;
