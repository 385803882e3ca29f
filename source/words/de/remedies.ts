import type {RemedyId} from '../../procedure/remedies.js';

/** What is said of a remedy. */
type RemedyWords = {
	/** What is to be done, in the middle of a sentence. */
	readonly name: string;
	/** How, in a sentence; empty where the name says it. */
	readonly how: string;
	/** What was done, at the head of a sentence, before a colon. */
	readonly doing: string;
	/** What is left on the deck afterwards, and must be undone. */
	readonly left?: string;
};

const weighAgain = 'Auflagekraft neu einstellen, Nadelschutz drauf.';

/** What can be tried at the bench, by id. */
export const remedies: Readonly<Record<RemedyId, RemedyWords>> = {
	level: {
		name: 'Tonarmbasis waagrecht stellen',
		how: 'Hohe Seite an den Füßen senken. Wasserwaage neu ablesen.',
		doing: 'Waagrecht gestellt',
	},
	leads: {
		name: 'Litzen neu legen',
		how: 'Sie hängen frei, berühren nichts und sind am Arm nicht verdrillt.',
		doing: 'Litzen neu gelegt',
	},
	bias: {
		name: 'nachsehen, ob das Antiskating aus ist',
		how: 'Schnelle Probe: Faden, Gewicht und Hebel dürfen den Arm nicht berühren.',
		doing: 'Antiskating nachgesehen',
	},
	damping: {
		name: 'Dämpfung noch einmal ansehen',
		how: 'Das Paddel darf das Öl nicht berühren.',
		doing: 'Dämpfung angesehen',
	},
	force: {
		name: 'Auflagekraft neu einstellen und wiegen',
		how: 'Arm in die Stütze legen, bevor das Gegengewicht gedreht wird.',
		doing: 'Auflagekraft eingestellt',
	},
	height: {name: 'Höhe neu einstellen', how: '', doing: 'Höhe eingestellt'},
	again: {name: 'nichts berühren, neu messen', how: '', doing: 'Neu gemessen'},
	'gauge-foot': {
		name: 'Fuß und Nullschraube des Kraftmessers ansehen',
		how: 'Der Fuß steht fest an seinem Radius. Niemand hat die Schraube gedreht.',
		doing: 'Kraftmesser fest aufgestellt',
	},
	platter: {
		name: 'Teller blockieren',
		how: 'Er darf sich unter dem Kraftmesser nicht drehen.',
		doing: 'Teller blockiert',
	},
	'still-deck': {
		name: 'Hände weg vom Laufwerk',
		how: 'Gefedertes Laufwerk blockieren, so weit der Hersteller erlaubt.',
		doing: 'Laufwerk ruhig gehalten',
	},
	'gauge-zero': {
		name: 'Nullanzeige des Kraftmessers suchen',
		how: 'Eine gedrehte Runde messen, oder den Kraftmesser ohne Arm ablesen.',
		doing: 'Nullanzeige gefunden',
	},
	'half-force': {
		name: 'mit halber Kraft messen',
		how: 'Arm in der Stütze, Gegengewicht drehen. Zug aus der Neigung halbiert sich. Zug von Litzen, Antiskating oder Magnet bleibt.',
		doing: 'Kraft halbiert',
		left: 'Die Kraft ist noch halbiert. Vor dem Abspielen zurückstellen.',
	},
	'lead-loop': {
		name: 'Schlaufe der Litzen mittig legen',
		how: 'Arm entriegeln und am Fingergriff mitten zwischen beiden Radien halten. Schlaufe so legen, dass sie dort locker hängt. Arm wieder verriegeln.',
		doing: 'Schlaufe der Litzen mittig gelegt',
	},
	'leads-off': {
		name: 'Litzen an den Kabelschuhen abziehen',
		how: 'Nur gesteckte Litzen. Farben notieren. Erst den Teller abnehmen. Laufwerk nie kippen, wenn Teller oder Arm lose sind.',
		doing: 'Litzen abgezogen',
		left: 'Die Litzen sind noch ab. Nach Farben aufschieben. Dann die Phase prüfen.',
	},
	magnet: {
		name: 'Magnet oder Stahl nahe am Tonabnehmer suchen',
		how: 'Werkzeug, Klammern, der Teller, der Kraftmesser selbst.',
		doing: 'Stahl und Magnete weggenommen',
	},
	'cartridge-weight': {
		name: 'ein Gewicht statt des Tonabnehmers einbauen',
		how: `So schwer wie der Tonabnehmer, kein Magnet. ${weighAgain}`,
		doing: 'Tonabnehmer ausgebaut',
		left: 'Das Gewicht sitzt noch im Headshell. Tonabnehmer einbauen. Dann die Kraft einstellen.',
	},
	lifter: {
		name: 'nachsehen, ob der Lift den Arm berührt',
		how: 'Schnelle Probe: an jedem Radius den Lift absenken. Papier muss zwischen Lift und Arm durchgehen.',
		doing: 'Lift freigestellt',
	},
	'gauge-friction': {
		name: 'Reibung des Kraftmessers selbst ansehen',
		how: 'Mit der kleinsten Reibung vergleichen, die er je gezeigt hat.',
		doing: 'Kraftmesser gängig gemacht',
	},
	touching: {
		name: 'nachsehen, ob Nadelschutz oder Litzen etwas berühren',
		how: 'Papier muss unter dem Nadelschutz durchgehen. Nichts darf am Schwenkweg schleifen.',
		doing: 'Nadelschutz und Litzen freigelegt',
	},
	'along-swing': {
		name: 'am Schwenkweg suchen, was den Arm berührt',
		how: 'Litzen, Lift, Stütze und Gestänge ansehen, am schlechten Ende zuerst.',
		doing: 'Freigelegt, was an einem Ende berührt',
	},
	repeat: {
		name: 'zur Sicherheit einen Radius neu messen',
		how: 'Litzen neu legen. Nadelschutz frei, Hände weg vom Laufwerk.',
		doing: 'Litzen noch einmal neu gelegt',
	},
};
