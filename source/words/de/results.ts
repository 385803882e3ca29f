import type {MissingPart} from '../../results/document-of-check.js';
import type {NextCheckValues} from '../../results/next-check.js';
import type {ProfileRefusals} from '../../results/profile-changes.js';
import type {RadiusApart} from '../../results/rounds-agree.js';
import type {VoidReason} from '../../results/voids.js';
import type {NoteValues, ObstacleValues} from '../../results/years/comparison.js';
import type {DueArm} from '../../results/years/due.js';
import type {Sentences} from '../../said.js';
import {decimalsApart, units} from '../../units.js';
import {dayText} from '../dates.js';
import {inUnit, listed, mm, percent, plainNumber, plural, rounded, stepDecimals} from '../numbers.js';
import {speaker} from '../speaker.js';
import {entries} from './entries.js';
import {problems, ways} from './problems.js';
import {inQuotes, refusals} from './refusals.js';

const nextCheck: Sentences<NextCheckValues> = {
	'to-put-right': () => 'Nach der Abhilfe noch einmal prüfen, spätestens in einem Monat (Voreinstellung).',
	soon: ({isUndecided, change}) =>
		`In einem Monat: ${listed([
			...(isUndecided ? ['etwas ist unentschieden'] : []),
			...(change === 'changed' ? ['etwas hat sich seit der letzten Prüfung verändert'] : []),
			...(change === 'perhaps' ? ['etwas hat sich seit der letzten Prüfung vielleicht verändert'] : []),
		])} (Voreinstellung).`,
	'wire-creeps': () =>
		'In drei Monaten: Litzen, die steif sind oder in freier Schlaufe hängen, verziehen sich früher (Voreinstellung).',
	usual: () => 'In sechs Monaten (übliche Praxis, ohne Beleg).',
};

/** Why a check has no figures yet. */
const missing: Readonly<Record<MissingPart, string>> = {
	description: 'Noch keine Zahlen: erst den Arm beschreiben und wiegen.',
	inner: 'Noch keine Zahlen: am inneren Radius eine ganze Runde messen.',
	outer: 'Noch keine Zahlen: am äußeren Radius eine ganze Runde messen.',
};

const kinds = {arm: 'Arm', cartridge: 'Tonabnehmer', tools: 'Werkzeugsatz'};

const sides: Readonly<Record<string, string>> = entries.written.sides;

const profileRefused: Sentences<ProfileRefusals> = {
	gone: () => 'Dieses Profil gibt es nicht mehr. Liste noch einmal ansehen.',
	'no-name': () => 'Namen eintippen.',
	'not-read': ({refusal}) => speaker(refusals)(refusal),
	'name-taken': ({kind, name}) => `Ein anderer ${kinds[kind]} heißt schon „${name}“. Anderen Namen wählen.`,
	'name-was-taken': ({kind, name, today}) =>
		`Der ${kinds[kind]} „${today}“ hieß früher „${name}“. Anderen Namen wählen.`,
	'name-has-checks': ({name}) => `Ein anderer Arm „${name}“ hat schon Prüfungen. Anderen Namen wählen.`,
	'no-day': ({typed}) => `${inQuotes(typed)} ist kein Tag. So tippen: 2026-11-25.`,
	'day-ahead': ({on}) => `Der ${dayText(on)} kommt erst noch. Den Tag tippen, an dem es geschah.`,
	'does-not-apply': () => 'Diese Antwort hat das Profil nicht. Liste noch einmal ansehen.',
	'side-wanted': ({plus, minus}) => `Mit Seite tippen: ${sides[plus] ?? plus} oder ${sides[minus] ?? minus}.`,
	'does-not-pass': ({problem}) =>
		`${speaker(problems)(problem)} Was hilft: ${problem.ways.map(({id}) => ways[id]).join(', oder ')}.`,
};

/** Printed in the gauge's own unit, so that it can be checked against the readings as they were typed. */
const differ = ({apart, usual, step, unit}: RadiusApart): string => {
	const {label} = units[unit];
	const size = rounded(apart, decimalsApart(apart, usual, Math.max(1, stepDecimals(step))));
	return `Ihre Mitten liegen ${size} ${label} auseinander (bei diesem Schritt und Stups üblich: bis ${plainNumber(usual)} ${label})`;
};

const loading = (id: string): string => (id === 'spring' ? 'eine Feder' : 'die Schwerkraft');

/** Why a check cannot be compared with an earlier one, as a whole or at a radius. */
const obstacles: Sentences<ObstacleValues> = {
	'no-figures': ({date}) => `Nicht vergleichbar mit ${dayText(date)}: Eine der beiden Prüfungen hat keine Zahlen.`,
	'other-loading': ({date, before, today}) =>
		`Nicht vergleichbar mit ${dayText(date)}: Damals machte ${loading(before)} die Auflagekraft, jetzt ${loading(today)}.`,
	'other-length': ({date, thenMm, nowMm}) =>
		`Nicht vergleichbar mit ${dayText(date)}: Die effektive Länge war damals ${inUnit(thenMm, 'mm')}, jetzt ${inUnit(nowMm, 'mm')}.`,
	'radius-missing': ({date, radiusMm}) =>
		`Nicht vergleichbar mit ${dayText(date)}: Bei ${mm(radiusMm)} haben nicht beide Zahlen.`,
};

const weighed: Readonly<Record<string, string>> = {
	included: 'mit Nadelschutz gewogen',
	'left-out': 'ohne den Nadelschutz gewogen',
	none: 'kein Nadelschutz',
};

/** What was otherwise in an earlier check, though the two can be compared. */
const notes: Sentences<NoteValues> = {
	'level-not-read': () => 'Die Neigung wurde nicht beide Male gemessen. Darum steckt sie im Zug.',
	'other-force': ({thenMn, nowMn}) =>
		`Die Abspielkraft war damals ${inUnit(thenMn, 'gf')}, jetzt ${inUnit(nowMn, 'gf')}. Darum zählen Kräfte im Vergleich, nicht Prozente.`,
	'other-tools': ({before, today}) => `Damals mit „${before}“ gemessen, jetzt mit „${today}“.`,
	'other-guard': ({before, today}) => `Damals ${weighed[before] ?? before}, jetzt ${weighed[today] ?? today}.`,
};

const voidReasons: Readonly<Record<VoidReason, string>> = {
	forgotten: 'ein Schritt vor der Messung wurde vergessen',
	disturbed: 'jemand stieß ans Laufwerk',
	'other-meant': 'falscher Arm oder falsches Profil',
	tried: 'nur ausprobiert',
	typed: 'anderer Grund (eintippen)',
};

/** What is said of results beside the findings. */
export const results = {
	nextCheck,
	/** Why a profile was not changed. */
	profileRefused,
	/** What a kind of profile is called. */
	kinds,
	missing,
	profileLacks: ({title}: {title: string}): string => `${title}: noch keine Antwort. Die nächste Prüfung fragt danach.`,
	/** No radius has two rounds alike. */
	repeatabilityAssumed: 'Bei weniger als drei Runden ist die Streuung nur angenommen: Das ± ist vielleicht zu klein.',
	/** What one round more would make of both uncertainties (95 %). */
	oneMoreRound: (more: {pullUncertaintyPct: number; bandUncertaintyPct: number}): string =>
		`Mit einer Runde mehr sinkt das ±: Zug ± ${percent(more.pullUncertaintyPct, 2)}, Reibung ± ${percent(more.bandUncertaintyPct, 2)}.`,
	oneMoreIsIdle: 'Eine Runde mehr hilft kaum.',
	roundsApart: (here: RadiusApart): string =>
		`Die Runden passen nicht zusammen: ${differ(here)}. Neu messen oder die abweichende streichen.`,
	/** Their spread counts at the other radii too. */
	roundsApartElsewhere: (there: RadiusApart): string =>
		`Die Runden bei ${mm(there.radiusMm)} passen nicht zusammen, darum ist das ± hier größer: ${differ(there)}.`,
	obstacles,
	notes,
	/** Why a check is marked void. What is kept is the text, as it was on the day; the last one is typed. */
	voidReasons,
	voidReasonWanted: 'Grund kurz eintippen, höchstens 80 Zeichen.',
	void: ({at, reason}: {at: string; reason: string}): string =>
		`UNGÜLTIG seit ${dayText(at.slice(0, 10))}: ${reason}. Zählt nicht für Vergleiche, Trend und nächste Prüfung.`,
	voidUnknown: 'Ob diese Prüfung zählt, ist unbekannt: Ihre Notizen sind nicht lesbar.',
	wasVoid: ({at, takenBackAt, reason}: {at: string; takenBackAt: string; reason: string}): string =>
		`War ungültig vom ${dayText(at.slice(0, 10))} bis ${dayText(takenBackAt.slice(0, 10))} (${reason}). Zählt wieder.`,
	/** How far off the day of the next check is. */
	due: ({inDays}: Pick<DueArm, 'inDays'>): string => {
		if (inDays === 0) return 'heute fällig';
		const days = plural(Math.abs(inDays), {one: '1 Tag', other: `${Math.abs(inDays)} Tagen`});
		return inDays < 0 ? `seit ${days} überfällig` : `in ${days}`;
	},
};
