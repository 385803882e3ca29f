import {percent, plainNumber, scaleAndMn} from '../../numbers.js';
import {sideForce} from '../figures.js';

type Share = {readonly place: string; readonly pct: number; readonly uncertaintyPct: number};

/** Causes outside the arm, whether each can still be behind the readings, and by what that is known. */
export const ruledOut = {
	// Kept on one line each.
	out: 'ausgeschlossen',
	open: 'nicht\u00A0ausgeschlossen',
	notFitted: 'nicht\u00A0vorhanden',
	causes: {
		tilt: 'Neigung des Laufwerks',
		bias: 'Antiskating-Vorrichtung',
		damping: 'Dämpfung',
		zero: 'Nullanzeige des Kraftmessers',
		lifter: 'Lift berührt den Arm',
		force: 'falsche Auflagekraft',
		clearance: 'ein Nadelschutz, der anstößt',
		moved: 'etwas, das sich beim Messen verschob',
	},
	/** What each line of the look along the arm rules out; a line without a name here stands by its own words. */
	lines: {
		upright: 'Seitenneigung am Einpunktlager',
		leads: 'Litzen, die ziehen oder scheuern',
		lifter: 'Lift berührt den Arm',
		rest: 'Stütze oder Bügel im Weg',
		screws: 'lose Schrauben',
		air: 'Luftzug oder statische Ladung',
		static: 'Ladung auf Matte oder Händen',
	} as Readonly<Record<string, string>>,
	lineYes: ({line}: {line: string}) => `${line}: bestätigt`,
	lineNo: ({line}: {line: string}) => `${line}: mit Nein beantwortet`,
	lineOpen: ({line}: {line: string}) => `${line}: nicht beantwortet`,
	levelNotRead: 'die Neigung wurde nicht gemessen',
	levelShares: ({shares, isPaired}: {shares: readonly Share[]; isPaired: boolean}) =>
		`ihr Anteil am Zug: ${shares
			.map(({place, pct, uncertaintyPct}) => `${place} ${sideForce(pct, uncertaintyPct)}`)
			.join(', ')}${isPaired ? '' : '; nur einmal gelesen, also mit dem Fehler der Wasserwaage'}`,
	noBias: 'der Arm hat keine',
	biasOff: ({device, mistake}: {device: string; mistake: string}) =>
		`als ausgehängt bestätigt (${device}). Üblicher Fehler: ${mistake}`,
	biasOn: ({device}: {device: string}) => `${device}: wirkt noch, oder nicht bestätigt`,
	noDamper: 'der Arm hat keine Dämpfung',
	damperOff: 'als frei vom Arm bestätigt',
	damperOn: 'nicht als frei vom Arm bestätigt',
	weighed: ({carriedMn, playingMn}: {carriedMn: number; playingMn: number | undefined}) =>
		carriedMn === 0
			? 'der Arm schwebte: der Kraftmesser trug nichts'
			: `gewogen: der Kraftmesser trug ${scaleAndMn(carriedMn)}${playingMn === undefined ? '' : `, ${percent((100 * carriedMn) / playingMn, 1)} der Abspielkraft`}`,
	clearanceNotMeasured: 'der Abstand wurde nicht gemessen',
	clearance: ({stylusMm, lowMm, highMm}: {stylusMm: number; lowMm: number; highMm: number}) =>
		`Nadel ${plainNumber(stylusMm)} mm über der Fläche (erlaubt ${plainNumber(lowMm)} bis ${plainNumber(highMm)} mm)`,
	noClosing: 'keine Schlussrunde mit Zahlen',
	closing: ({movedPct, allowedPct, tells}: {movedPct: number; allowedPct: number; tells: boolean}) =>
		`die Schlussrunde lag ${percent(Math.abs(movedPct), 2)} neben den inneren Runden (erlaubt ${percent(allowedPct, 2)})${tells ? '' : ': die Runden streuen zu stark, um es zu sagen'}`,
	tried: ({number, because, did}: {number: number; because: string; did: string}) =>
		`Messreihe ${number} beendet (${because}). Dann wurde der Arm neu gemessen.${did === '' ? '' : ` ${did}`}`,
	nothingTried: 'In dieser Prüfung wurde zwischen den Messreihen keine Abhilfe versucht.',
};
