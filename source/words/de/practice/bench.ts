import {inUnit, mm, plainNumber, readingText} from '../../numbers.js';

type Way = {readonly way: 'in' | 'out'};

const wayWord = {in: 'nach innen', out: 'nach außen'};

type GaugeShows = {readonly readingPct: number; readonly stepPct: number};

type Force = {readonly forceMn: number};

/** What the invented bench says beside a question. */
export const bench = {
	nothingBreaks: 'Hier geht nichts kaputt: alles ist erfunden. Am echten Laufwerk zählt jede Zeile.',
	seen: ({seen}: {readonly seen: string}) => `Auf der Werkbank: ${seen}`,
	reveal: '„!“ drücken: Das zeigt, was verborgen war und wie es besser geht.',
	gauge: ({readingPct, stepPct, isTurned, state}: GaugeShows & {readonly isTurned: boolean; readonly state: string}) =>
		`Der Kraftmesser${isTurned ? ', gedreht,' : ''} zeigt ${readingText(readingPct, stepPct)} %; der Arm: ${state}.`,
	/** The name of an arm that is not told. */
	hiddenArm: ({seed}: {readonly seed: number}) => `Geheimer Arm ${seed}`,
};

const still = (ms: number | null): string => (ms === null ? 'ruhig' : `ruhig seit ${Math.floor(ms / 1000)} s`);

type Rest = {
	/** For how long it has been at rest; null where nobody needs to wait any longer. */
	readonly ms: number | null;
};

/** What the arm on the gauge does, in a few words. */
export const motion = {
	pushed: ({way}: Way) => `der Finger schiebt ihn ${wayWord[way]}`,
	swings: ({way}: Way) => `schwingt von selbst ${wayWord[way]}`,
	letsGo: 'hält nicht mehr',
	rests: ({ms}: Rest) => still(ms),
	wentBack: ({ms}: Rest) => `hielt nicht, ging zurück; ${still(ms)}`,
	/** With the key of the finer nudge that way, by its name: at the end of a sentence its sign would be lost. */
	nudgeFiner: ({way}: Way) => `hielt zweimal nicht: feiner stupsen (${way === 'in' ? 'Komma' : 'Punkt'})`,
	holds: ({ms}: Rest) => `hält, ${still(ms)}`,
};

const highSide = {right: 'rechts', left: 'links', back: 'hinten', front: 'vorn'};

/** What the instruments of the bench show. */
export const seen = {
	temperature: ({celsius}: {readonly celsius: number}) => `Das Thermometer zeigt ${plainNumber(celsius)} °C.`,
	matLies: ({lengthMm}: {readonly lengthMm: number}) =>
		`Eine Matte von ${mm(lengthMm)} liegt auf dem Teller, er ist aus Glas.`,
	mat: ({lengthMm}: {readonly lengthMm: number}) => `Die Matte ist ${mm(lengthMm)} dick.`,
	level: ({deg, high}: {readonly deg: number; readonly high: 'right' | 'left' | 'back' | 'front'}) =>
		deg === 0
			? 'Die Blase steht in der Mitte: 0°.'
			: `Die Wasserwaage zeigt ${plainNumber(deg)}°, ${highSide[high]} höher.`,
	guardOn: 'Der Nadelschutz sitzt jetzt auf der Nadel.',
	scaleReady: 'Die Tonarmwaage steht bereit.',
	scale: ({forceMn}: Force) => `Die Tonarmwaage zeigt ${inUnit(forceMn, 'gf')}.`,
	scaleAtHeight: ({forceMn}: Force) => `Auf Messhöhe zeigt die Tonarmwaage ${inUnit(forceMn, 'gf')}.`,
	scaleUnguarded: ({forceMn}: Force) => `Ohne Nadelschutz zeigt die Tonarmwaage ${inUnit(forceMn, 'gf', 2)}.`,
	clearance: ({lengthMm}: {readonly lengthMm: number}) => `Das Lineal zeigt ${mm(lengthMm)} von der Fläche zur Nadel.`,
	guardGap: ({lengthMm}: {readonly lengthMm: number}) => `Die Fühlerlehre zeigt ${mm(lengthMm)} unter dem Nadelschutz.`,
	lifter: 'Papier geht zwischen Lift und Arm durch, an beiden Radien.',
	swing: 'Der Arm schwenkt über die Platte und berührt nichts.',
	freeZero: ({readingPct, stepPct}: GaugeShows) =>
		`Ohne Arm zeigt der Kraftmesser ${readingText(readingPct, stepPct)} %.`,
	biasWeight: ({g}: {readonly g: number}) =>
		`Auf dem Gewicht zum Arm steht ${plainNumber(g)} g. Ein anderes eintippen hängt es an.`,
	lever: ({clock}: {readonly clock: string}) => `Der Hebel zeigt auf ${clock}.`,
	thread: ({deg}: {readonly deg: number}) => `Der Winkel zwischen Faden und Antiskating-Stab ist ${plainNumber(deg)}°.`,
};

type Did = {
	/** The deck stood level before the feet were turned. */
	readonly wasLevel: boolean;
};

/** What a hand can do to the deck, and what is said once it is done. */
export const hands = {
	levelled: {
		offer: 'Mit ! die Füße drehen, bis die Tonarmbasis waagrecht ist.',
		did: ({wasLevel}: Did) =>
			wasLevel
				? 'Das Laufwerk war schon waagrecht. Wasserwaage umdrehen: Das zeigt ihren eigenen Fehler.'
				: 'Füße gedreht. Wasserwaage neu ablesen, quer und längs.',
	},
	'damping-out': {offer: 'Mit ! das Paddel aus dem Öl heben.', did: () => 'Paddel gehoben.'},
	'bias-off': {
		offer: 'Mit ! das Antiskating-Gewicht abnehmen und den Faden freilegen.',
		did: () => 'Gewicht abgenommen.',
	},
	'bias-on': {
		offer: 'Mit ! das Antiskating-Gewicht einhängen, Faden über die Führung.',
		did: () => 'Gewicht eingehängt.',
	},
	'pulley-moved': {
		offer: 'Mit ! die Rolle versetzen: Der Faden läuft dann näher am Drehpunkt.',
		did: () => 'Rolle versetzt. Der Hebel bewegt sich jetzt nur noch ein Viertel so weit.',
	},
	'leads-dressed': {offer: 'Mit ! die Litzen neu legen, in weitem, lockerem Bogen.', did: () => 'Litzen neu gelegt.'},
};

/** What invented things are called. */
export const known = {tools: 'erfundene Werkbank'};
