import type {StepSentences} from '../../step-sentences.js';

export const cartridge = {
	'cartridge-name': {
		title: 'Name des Tonabnehmers',
		ask: 'Wie heißt dieser Tonabnehmer?',
		why: 'So bleiben Prüfungen mit verschiedenen Tonabnehmern auseinander.',
		mistake: 'Nach dem Nadeltausch den alten Namen behalten. Den Tausch im Namen nennen.',
	},
	'playing-force': {
		title: 'Abspielkraft',
		short: 'Abspielkraft?',
		ask: 'Auflagekraft beim Abspielen eintippen.',
		why: 'Sie heißt hier Abspielkraft. Alle Werte sind Prozent davon.',
		mistake: 'Gramm als Millinewton eingetippt. 1,8 g sind 17,7 mN.',
	},
	'force-low': {
		title: 'Kleinste Auflagekraft',
		ask: 'Kleinste Auflagekraft laut Hersteller eintippen, oder „-“, wenn unbekannt.',
		why: 'Die Kraft auf dem Kraftmesser muss in diesem Bereich bleiben.',
		mistake: 'Die empfohlene Kraft eingetippt.',
	},
	'force-high': {
		title: 'Größte Auflagekraft',
		ask: 'Größte Auflagekraft laut Hersteller eintippen, oder „-“, wenn unbekannt.',
		why: 'Zu viel Kraft kann die Aufhängung der Nadel verbiegen.',
		mistake: 'Vergessen, dass der Nadelschutz Kraft dazugibt.',
	},
	'cartridge-compliance': {
		title: 'Statische Quernachgiebigkeit',
		ask: 'Statische Quernachgiebigkeit eintippen, oder „-“, wenn unbekannt.',
		why: 'Sie sagt, wie weit sich die Nadel zur Seite legt.',
		mistake: 'Den dynamischen Wert bei 10 oder 100 Hz eingetippt. Er ist viel kleiner als der statische.',
	},
	'cartridge-cantilever': {
		title: 'Länge des Nadelträgers',
		ask: 'Länge des Nadelträgers eintippen, oder „-“, wenn unbekannt.',
		why: 'Sie macht aus der Auslenkung der Nadel einen Winkel.',
		mistake: 'Gemessen. Nachschlagen oder „-“ eintippen: Ein Nadelträger bricht bei einer Berührung.',
	},
	'guard-mass': {
		title: 'Masse des Nadelschutzes',
		short: 'Nadelschutz allein auf der Waage? Unbekannt: „-“ eintippen.',
		ask: 'Nadelschutz allein auf die Tonarmwaage legen. Was zeigt sie? Unbekannt: „-“ eintippen.',
		why: 'Der Nadelschutz bleibt beim Messen drauf, also zählt seine Masse.',
		mistake: 'Mit dem Arm gewogen.',
	},
	'guard-depth': {
		title: 'Nadelschutz unter der Nadel',
		short: 'Nadelschutz wie weit unter der Nadel? Unbekannt: „-“ eintippen.',
		ask: 'Wie weit reicht der Nadelschutz unter die Nadel? Unbekannt: „-“ eintippen.',
		why: 'Der Nadelschutz berührt zuerst. Von seiner Tiefe hängen Matte und Höhe ab.',
		mistake: 'Vom Gehäuse des Tonabnehmers aus gemessen, nicht von der Nadel.',
	},
	'cartridge-profile': {
		title: 'Welcher Tonabnehmer?',
		ask: 'Tonabnehmer wählen oder neu eingeben.',
		why: 'Seine Antworten sind eingetragen. Tab zeigt sie: dort berichtigen, was nicht stimmt.',
		mistake: 'Gewählt, obwohl die Abspielkraft jetzt anders ist. Erst sie berichtigen.',
	},
} satisfies Partial<StepSentences>;
