import {scaleAndMn} from '../../numbers.js';

type Titled = {arm: string; isPractice: boolean};

const ifPractice = (isPractice: boolean): string => (isPractice ? 'ÜBUNG: ' : '');

/** Titles, headings and captions, and what stands at the head and the foot. */
export const frame = {
	/** What a report is called; one of practice says so first of all. */
	titles: {
		check: ({arm, isPractice}: Titled) => `${ifPractice(isPractice)}Tonarm-Prüfung: ${arm}`,
		maker: ({arm, isPractice}: Titled) => `${ifPractice(isPractice)}Gemessen an einem Tonarm: ${arm}`,
		arm: ({arm, isPractice}: Titled) => `${ifPractice(isPractice)}Verlauf eines Tonarms: ${arm}`,
	},

	/** What a report is about and where it comes from: names at its head, a line at its foot. */
	about: {
		unnamedArm: 'Arm ohne Namen',
		checksThatCount: 'Prüfungen, die zählen',
		practice: 'Übung',
		invented: 'ein erfundener Arm: nichts hier ist echt',
		arm: 'Arm',
		date: 'Datum',
		force: scaleAndMn,
		answers: {
			'arm-serial': 'Seriennummer',
			'cartridge-name': 'Tonabnehmer',
			'playing-force': 'Abspielkraft',
			'tools-name': 'Kraftmesser, Werkzeug',
			'room-temperature': 'Raum',
			'room-note': 'Notiz',
		},
		foot: ({id, program, day, version}: {id: string; program: string; day: string; version: string}) =>
			`Prüfung ${id}, gemacht mit armdrift ${program}; Bericht vom ${day}, armdrift ${version}.`,
		armFoot: ({id, program, day, version}: {id: string; program: string; day: string; version: string}) =>
			`Prüfung ${id}, gemacht mit armdrift ${program}; Bericht vom ${day}, armdrift ${version}. Jede Prüfung hat ihre Messwerte in ihrem eigenen Bericht: armdrift report mit ihrer Kennung.`,
	},

	sections: {
		beforeAndAfter: 'Vorher und nachher',
		bias: 'Antiskating',
		cautions: 'Vorsicht',
		conditions: 'Bedingungen',
		deck: 'Laufwerk',
		details: 'Weitere Zahlen',
		figures: 'Was die Zahlen bedeuten',
		findings: 'Was es bedeutet',
		hidden: 'Was verborgen war',
		howMeasured: 'Wie gemessen wurde',
		howSure: 'Wie sicher es ist',
		limitsOfMethod: 'Grenzen des Verfahrens',
		measured: 'Was gemessen wurde',
		method: 'Anhang: Verfahren und Unsicherheit',
		notCounted: 'Prüfungen, die nicht zählen',
		overridden: 'Früher übergangen',
		readings: 'Messwerte, wie abgelesen',
		ruledOut: 'Was ausgeschlossen ist',
		stands: ({day}: {day: string}) => `Stand: Prüfung vom ${day}`,
		verdict: 'Urteil',
		years: 'Über die Jahre',
	},

	/** Captions of tables and titles of pictures. */
	captions: {
		about: 'Arm, Tonabnehmer, Kraftmesser und Raum',
		bands: 'Zug und Reibung',
		beforeAndNow: 'Vorher und jetzt',
		bias: 'Antiskating je Radius, in % der Abspielkraft',
		biasToBeSet: ({column}: {column: string}) =>
			`Antiskating je Radius, in % der Abspielkraft. „${column}“: was dieser Kraftmesser in der Mitte beider Grenzen zeigt`,
		budget: 'Woraus das ± besteht',
		checks: 'Alle Prüfungen, die zählen, neueste zuerst',
		curve: 'Sollwert über die Platte, in % der Abspielkraft',
		done: 'Zwischen Prüfungen gemacht; was bei einer Prüfung gesagt wurde, steht an deren Tag',
		figures: 'Zahlen, je mit ± für 95 %; Prozent der Abspielkraft',
		figuresAt: ({place}: {place: string}) => `Radius ${place}: Zahlen in % der Abspielkraft, je mit ± für 95 %`,
		hidden: 'Gefunden und verborgen, in Prozent',
		lever: 'Der Hebel auf dem Zifferblatt',
		notCounted: 'Abgelegt, aber in keiner Zahl oben enthalten',
		overridden: 'Übergangen: Schritte, nach denen es trotzdem weiterging',
		overriddenEarlier: 'Schritte, nach denen es trotzdem weiterging',
		putBack: 'Spielbereit machen',
		radii: 'Zug und Reibung, in % der Abspielkraft, je mit ± für 95 %',
		ruledOut: 'Ursachen außerhalb des Arms, wie der Techniker sie bestätigt oder gemessen hat',
		series: ({number}: {number: number}) => `Messreihe ${number}`,
		seriesClosed: ({number, because}: {number: number; because: string}) => `Messreihe ${number}, beendet (${because})`,
		seriesTakenBack: ({number}: {number: number}) => `Messreihe ${number}: zurückgenommen, in keiner Zahl enthalten`,
	},

	/** Headings of the columns of tables. */
	columns: {
		by: 'belegt durch',
		cause: 'Ursache',
		date: 'Datum',
		done: 'was gemacht wurde',
		failed: 'was nicht bestand',
		holdBand: 'Reibung',
		id: 'Kennung',
		innerLimit: 'innere Grenze',
		limit: 'Grenze',
		note: 'Notiz',
		outerLimit: 'äußere Grenze',
		place: 'Ort',
		playingForce: 'Abspielkraft',
		radius: 'Radius',
		reading: 'Messwert',
		reason: 'Grund',
		room: 'Raum',
		round: 'Runde',
		sidePull: 'Zug',
		state: 'Stand',
		step: 'Schritt',
		tools: 'Kraftmesser, Werkzeug',
		verdict: 'Urteil',
		why: 'warum',
	},
};
