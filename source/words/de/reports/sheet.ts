import type {RemedyId} from '../../../procedure/remedies.js';
import type {AtWorst, Figures} from '../../../results/figures-types.js';
import type {Who} from '../../../results/finding-row.js';
import {listed, plainNumber} from '../../numbers.js';
import {verdictWord} from '../figures.js';

type At = 'inner' | 'outer' | 'other';

/** What is more than usable: the push to one side, the friction, or both. */
export type Beyond = 'pull' | 'band' | 'both';

const beyond: Readonly<Record<Beyond, string>> = {
	pull: 'Die Nadel lehnt an einer Wand der Rille: Nadel und Platten können schneller verschleißen.',
	band: 'Der Arm klemmt: Die Nadel kann aus der Rille springen, Platten können schneller verschleißen.',
	both: 'Der Arm klemmt und drückt zur Seite: Nadel und Platten können schneller verschleißen.',
};

/** What was tried at the bench, in words for somebody who owns the deck and does not set it up. */
const tried: Readonly<Record<RemedyId, string>> = {
	level: 'Laufwerk waagrecht gestellt',
	leads: 'dünne Litzen des Arms neu gelegt',
	bias: 'Antiskating ganz ausgehängt',
	damping: 'Dämpfung des Arms nachgesehen',
	force: 'Auflagekraft neu eingestellt',
	height: 'Höhe neu eingestellt',
	again: 'Arm noch einmal gemessen',
	'gauge-foot': 'Kraftmesser fest aufgestellt',
	platter: 'Teller festgehalten',
	'still-deck': 'Laufwerk ruhig gehalten',
	'gauge-zero': 'Kraftmesser geprüft',
	'half-force': 'Arm mit weniger Kraft gemessen',
	'lead-loop': 'dünne Litzen des Arms locker gehängt',
	'leads-off': 'dünne Litzen des Arms kurz abgenommen',
	magnet: 'Stahl und Magnete weggeräumt',
	'cartridge-weight': 'Tonabnehmer kurz ausgebaut',
	lifter: 'Lift vom Arm freigestellt',
	'gauge-friction': 'Kraftmesser geprüft',
	touching: 'freigelegt, was den Arm berührte',
	'along-swing': 'den ganzen Schwenkweg abgesucht',
	repeat: 'Litzen neu gelegt und Arm noch einmal gemessen',
};

/** The customer's sheet: no word of the trade that an owner of a deck does not know, and no ±. */
export const sheet = {
	about: {shop: 'Werkstatt', customer: 'Kunde', complaint: 'Beanstandung'},
	headings: {
		result: 'So steht es um den Tonarm',
		done: 'Was gemacht wurde',
		next: 'Wie es weitergeht',
		care: 'Vorsicht',
	},
	/** The verdict in one word, and what is sure where it is not decided. */
	word: ({verdict, atWorst}: Pick<Figures, 'verdict' | 'atWorst'>) => {
		if (verdict !== 'undecided' || atWorst === 'off-scale') return verdictWord[verdict];
		return atWorst === 'beyond'
			? `${verdictWord.undecided}: vielleicht zu viel`
			: `${verdictWord[atWorst]}, vielleicht besser`;
	},
	noWord: 'NICHT FERTIG GEMESSEN',
	/** What it means for records and stylus. */
	means: ({atWorst, of, isDecided}: {atWorst: AtWorst; of: Beyond; isDecided: boolean}) => {
		switch (atWorst) {
			case 'good':
				return 'Der Arm bewegt sich frei: Er schont Platten und Nadel.';
			case 'usable':
				return 'Platten spielen ist erlaubt: Der Arm ist etwas weniger frei, als er sein könnte.';
			case 'beyond':
				return isDecided ? beyond[of] : `Erst weitere Messwerte zeigen es. Wenn ja: ${beyond[of]}`;
			case 'off-scale':
				return 'Der Arm drückt stärker, als der Kraftmesser zeigt: keine Platte spielen, bis die Ursache gefunden ist.';
		}
	},
	meansNothing: 'Über Platten und Nadel lässt sich noch nichts sagen.',
	notReady: 'Noch keine Platten spielen: Das Laufwerk ist nicht fertig.',
	picture: {
		title: 'Wie der Arm gedrückt wird',
		caption: ({goodPct, usablePct}: {goodPct: number; usablePct: number}) =>
			`Der Punkt ist der Druck auf den Arm: gut bis ${plainNumber(goodPct)} %, brauchbar bis ${plainNumber(usablePct)} %. Der Balken ist die Reibung: je kürzer, desto besser.`,
		band: 'Reibung: kürzer ist besser',
		pull: 'Druck auf den Arm',
		/** Names of the bars. */
		at: {inner: 'innen', outer: 'außen', other: 'dazwischen'} satisfies Record<At, string>,
	},
	done: {
		measured: ({day}: {day: string}) =>
			`Am ${day} hat der Techniker gemessen, wie der Arm zur Seite gedrückt wird und wie frei er sich bewegt.`,
		level: ({passes}: {passes: boolean}) =>
			passes ? 'Das Laufwerk steht waagrecht.' : 'Das Laufwerk stand nicht waagrecht.',
		tried: ({remedies}: {remedies: readonly RemedyId[]}) => `Dazwischen: ${listed(remedies.map((one) => tried[one]))}.`,
		bias: ({setting}: {setting: string}) =>
			`Das Antiskating ist gegen den Zug der Rille nach innen eingestellt: ${setting}.`,
		force: ({force}: {force: string}) => `Die Nadel liegt jetzt mit ${force} auf.`,
		ready: 'Das Laufwerk ist wieder spielbereit.',
		overridden: 'Einige Schritte waren nicht in Ordnung: Welche und warum, sagen die nächsten Seiten.',
	},
	next: {
		nothing: 'Es ist nichts zu tun.',
		settle: 'Weitere Messwerte klären, was noch offen ist.',
		finish: 'Die Prüfung muss noch fertig werden.',
		by: {
			owner: 'Das Laufwerk waagrecht stellen lassen, dann den Arm neu messen lassen.',
			technician: 'Der Techniker sucht die Ursache und misst dann neu.',
			maker: 'Der Arm geht zum Hersteller, mit den Zahlen der nächsten Seiten.',
		} satisfies Record<Who, string>,
		check: ({day}: {day: string}) => `Nächste Prüfung: ${day}.`,
	},
	care: [
		'Erst die Lautstärke herunterdrehen, dann die Nadel auf die Platte setzen.',
		'Eine Nadel bricht bei der leisesten Berührung: Finger und Tücher fernhalten.',
		'Netzstecker ziehen, bevor etwas geöffnet wird. Die Anleitung des Herstellers geht vor.',
	],
	/** Over the pages after the sheet. */
	rest: 'Für den Techniker: die Prüfung',
};
