import type {StepSentences} from '../../step-sentences.js';

export const arm = {
	'arm-name': {
		title: 'Name des Arms',
		short: 'Name?',
		ask: 'Wie heißt dieser Arm?',
		why: 'Unter diesem Namen stehen seine Prüfungen. Über die Jahre beibehalten.',
		mistake: 'Namen des Laufwerks eingetippt. Zwei Arme auf einem Laufwerk brauchen zwei Namen.',
	},
	'arm-serial': {
		title: 'Seriennummer',
		ask: 'Seriennummer des Arms eintippen, oder „-“ für keine.',
		why: 'Der Hersteller fragt danach.',
		mistake: 'Nummer des Laufwerks eingetippt.',
	},
	'arm-length': {
		title: 'Effektive Länge',
		short: 'Drehpunkt bis Nadel?',
		ask: 'Von oben messen: Drehpunkt bis Nadel.',
		why: 'Sie macht aus der Kraft an der Nadel ein Drehmoment.',
		mistake: 'Bis zum Headshell gemessen, nicht bis zur Nadel.',
	},
	'arm-pivot-distance': {
		title: 'Montageabstand',
		short: 'Tellerachse bis Drehpunkt? Unbekannt: „-“ eintippen.',
		ask: 'Von oben messen: Tellerachse bis Drehpunkt. Unbekannt: „-“ eintippen.',
		why: 'Mit der effektiven Länge sagt er, wo die Nadel an jedem Radius steht. Bei „-“ wird er aus den Nullradien berechnet.',
		mistake: 'Bis zum Rand des Lagergehäuses gemessen, nicht bis zu seiner Mitte.',
	},
	'arm-offset': {
		title: 'Kröpfungswinkel',
		ask: 'Kröpfungswinkel eintippen, oder „-“, wenn unbekannt.',
		why: ({isWorkedOut}) =>
			isWorkedOut
				? 'Mit ihm genügt ein Nullradius für den Montageabstand.'
				: 'Aus ihm folgen Überhang und Nullradien, zur Information. Kein Wert dieser Prüfung braucht ihn.',
		mistake: 'Geraten. Besser „-“ eintippen.',
	},
	'arm-pivot-place': {
		title: 'Wo der Drehpunkt steht',
		short: 'Drehpunkt wo?',
		ask: 'Vor das Laufwerk stellen. Auf welcher Seite der Tellerachse liegt der Drehpunkt?',
		why: 'Davon hängt ab, wohin eine Neigung die Nadel drückt.',
		mistake: 'Für die Stütze geantwortet, nicht für den Drehpunkt.',
	},
	'arm-bearing': {
		title: 'Lager',
		short: 'Lager?',
		ask: 'Auf welchem Lager schwenkt der Arm?',
		why: 'Ein Einpunktlager wackelt. In Höhe des Drehpunkts anstupsen, danach senkrecht stellen.',
		mistake: 'Einpunktlager nach unten gedrückt. Nie tun, auch nicht am Nadelschutz.',
	},
	'arm-gravity-centre': {
		title: 'Höhe des Gegengewichts',
		ask: 'Von der Seite sehen. Wie hoch liegt das Gegengewicht zum Drehpunkt?',
		why: 'Liegt es weit darüber oder darunter, ändert sich die Auflagekraft mit der Höhe des Arms.',
		mistake: 'Von oben beurteilt.',
	},
	'arm-loading': {
		title: 'Auflagekraft durch',
		short: 'Auflagekraft durch?',
		ask: 'Woher kommt die Auflagekraft?',
		why: 'Auf einem geneigten Laufwerk treibt die Schwerkraft den Arm bergab. Eine Feder nicht.',
		mistake: 'Viele Arme mit Feder haben auch ein Gegengewicht. Es zählt, woran die Kraft eingestellt wird.',
	},
	'arm-auto-stop': {
		title: 'Automatischer Stopp',
		ask: 'Löst der Arm einen Stopp oder eine Rückführung aus?',
		why: 'Ihr Gestänge kann den Arm nahe am Etikett halten. Darum bleibt der innere Radius bei 75 mm oder mehr.',
		mistake: 'Lift vergessen, den der Arm auslöst.',
	},
	'arm-wire-path': {
		title: 'Wo die Litzen austreten',
		short: 'Litzen?',
		ask: 'Wo verlassen die Litzen den Arm?',
		why: 'Ändert sich der Zug über die Platte, sind es meist die Litzen.',
		mistake: 'Nur außen nachgesehen. Auch verdrillte Litzen in der Säule ziehen.',
	},
	'arm-wire-stiffness': {
		title: 'Steifheit der Litzen',
		ask: 'Wie steif sind die Litzen?',
		why: 'Steife Litzen federn und verziehen sich mit den Monaten. Ein solcher Arm ist früher fällig.',
		mistake: 'Nach der Dicke der Isolierung beurteilt.',
	},
	'arm-bias-device': {
		title: 'Antiskating',
		short: 'Antiskating?',
		ask: 'Welche Antiskating-Vorrichtung hat der Arm?',
		why: 'Jede Art wird anders abgenommen und wieder angebracht.',
		mistake: '„keine“ gewählt, obwohl sie nur auf null steht. Die Art wählen.',
	},
	'arm-damping': {
		title: 'Dämpfung',
		short: 'Dämpfung?',
		ask: 'Hat der Arm eine Wanne mit Paddel?',
		why: 'Dämpfungsöl verdeckt die Reibung des Lagers.',
		mistake: 'Trockene Wanne vergessen: Streift das Paddel ihre Wand, dämpft es auch. Öl im Lager zählt nicht.',
	},
	'deck-sprung': {
		title: 'Federung',
		short: 'Gefedert?',
		ask: 'Hängt das Laufwerk an Federn?',
		why: 'Ein gefedertes Laufwerk neigt sich bei allem, was darauf kommt.',
		mistake: 'Bei weichen Gummifüßen mit Ja geantwortet.',
	},
	'arm-profile': {
		title: 'Welcher Arm?',
		ask: 'Arm wählen oder neu eingeben.',
		why: 'Seine Antworten sind eingetragen. Tab zeigt sie: dort berichtigen, was nicht stimmt.',
		mistake: 'Neu verkabelten Arm gewählt, ohne seine Antworten anzusehen.',
	},
} satisfies Partial<StepSentences>;
