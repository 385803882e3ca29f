import {dayText} from '../../dates.js';
import {inUnit, listed, mm, percent, plainNumber} from '../../numbers.js';

type Clearance = {readonly lowMm: number; readonly highMm: number; readonly nowMm: number | undefined};

const window = (name: string, {lowMm, highMm, nowMm}: Clearance): string =>
	`${name}: ${plainNumber(lowMm)} bis ${mm(highMm)}${nowMm === undefined ? '' : `, jetzt ${mm(nowMm)}`}.`;

const known = (typed: string): string => (typed === '' ? 'unbekannt' : typed);

/** What an answer brings about, beside its question. */
export const consequences = {
	bothForces: ({forceMn}: {forceMn: number}) => `= ${inUnit(forceMn, 'gf')} = ${inUnit(forceMn, 'mN')}`,
	carried: ({carriedMn, playingMn}: {carriedMn: number; playingMn: number}) =>
		`Der Kraftmesser trägt ${inUnit(carriedMn, 'gf')} = ${inUnit(carriedMn, 'mN')} (${percent((100 * carriedMn) / playingMn, 1)} der Abspielkraft).`,
	guardUnseen: ({guardMn}: {guardMn: number}) =>
		`${inUnit(guardMn, 'gf')} für den Nadelschutz sind dazugezählt, denn er wurde nicht mitgewogen.`,
	guardAlone: ({guardMn}: {guardMn: number}) => `Davon wiegt der Nadelschutz ${inUnit(guardMn, 'gf')}.`,
	guardHangs: ({depthMm}: {depthMm: number}) => `Der Nadelschutz hängt ${mm(depthMm)} unter der Nadel.`,
	guardClear: ({gapMm}: {gapMm: number}) => `Unter dem Nadelschutz mehr als ${mm(gapMm)} frei lassen.`,
	stylus: (clearance: Clearance) => window('Nadel', clearance),
	guard: (clearance: Clearance) => window('Schutz', clearance),
	putBackForce: ({offPct, playingMn, allowedPct}: {offPct: number; playingMn: number; allowedPct: number}) =>
		`${percent(offPct, 1)} neben der Abspielkraft von ${inUnit(playingMn, 'gf')} (erlaubt ± ${plainNumber(allowedPct)} %)`,
	deck: 'Das Laufwerk von oben. Der Techniker steht vorn.',
	/** The mark before a line that is done, or is not so, stands with its tone. */
	ticked: ({text, mark, isAsked}: {text: string; mark: 'yes' | 'no' | undefined; isAsked: boolean}) =>
		mark === undefined ? `${isAsked ? '❯' : '·'} ${text}` : text,
	wasItNotSo: 'War es schon während der Runden falsch? Erst n tippen: Eine neue Messreihe beginnt.',
	nextCheck: ({date}: {date: string}) => `Nächste Prüfung: ${dayText(date)}`,
	/** What was answered with y and n, and line by line. */
	answered: {
		allDone: 'alle Zeilen erledigt',
		left: ({lines}: {lines: readonly string[]}) => `nicht erledigt: ${listed(lines)}`,
	},
	answer: ({title, typed}: {title: string; typed: string}) => `${title}: ${typed}`,
	/** Several together; a line does not break within one that is short. */
	answers: ({answers}: {answers: readonly string[]}) =>
		answers.map((one) => (one.length > 30 ? one : one.replaceAll(' ', '\u00a0'))).join(' · '),
	corrected: ({title, typed, since}: {title: string; typed: string; since: string}) =>
		`${title}: ${known(typed)} (seit der letzten Prüfung berichtigt, damals ${known(since)})`,
};
