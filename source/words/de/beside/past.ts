import type {PastCheck, PastProbe} from '../../../check/past-check.js';
import {dayText} from '../../dates.js';
import {mm, plainNumber, rounded, span, withSign} from '../../numbers.js';
import {found} from '../../speaker.js';
import {placeName} from '../entries.js';
import {sideForce} from '../figures.js';

type Kept = {readonly radiusMm: number; readonly pullPct: number; readonly bandPct: number};
type WithUncertainty = Kept & {readonly pullUncertaintyPct: number; readonly bandUncertaintyPct: number};

const notKnown = 'nicht bekannt';
const noVerdict = 'kein Urteil';

/** Verdicts, and how a check ended, by their ids. */
const states: Readonly<Record<string, string>> = {
	good: 'gut',
	usable: 'brauchbar',
	beyond: 'zu viel',
	undecided: 'unentschieden',
	'off-scale': 'Skalenende',
	void: 'ungültig',
	stopped: 'beendet',
	interrupted: 'unterbrochen',
	open: 'noch offen',
	none: noVerdict,
	'not-known': notKnown,
};
const stateOf = (id: string): string => found(states, id) ?? id;
const verdictOf = ({verdict}: {readonly verdict: string}): string => stateOf(verdict);

/** Past checks: their list, one of them, and why one does not count. */
export const past = {
	title: 'Frühere Prüfungen',
	none: 'Noch keine Prüfung abgelegt.',
	/** Which of them are shown, and what the columns of the list are. */
	span: ({first, last, total, hasKeys, hasFigures = true}: SpanOfList) =>
		`${first} bis ${last} von ${total}${hasKeys ? '; ← neuer, → älter' : ''}.${hasFigures ? ' Spalten: Datum, Arm, Urteil; dann je Radius (in mm) Zug und Reibung in %. Zug mit + drückt zum Rand.' : ' Datum, Arm, Urteil.'}`,
	/** Where the filter leaves none. */
	noneSuch: 'Keine solche Prüfung abgelegt.',
	filter: {
		title: 'Welche Prüfungen?',
		now: ({arm, year, verdict}: Wanted) => {
			const parts = [arm, year, ...(verdict === undefined ? [] : [verdictOf({verdict})])].filter(
				(one) => one !== undefined,
			);
			return `Filter: ${parts.length === 0 ? 'alle' : parts.join(', ')}`;
		},
		byArm: 'ein Arm',
		byYear: 'ein Jahr',
		byVerdict: 'ein Urteil',
		all: 'alle zeigen',
		typePart: 'Teil des Armnamens eintippen. Nur Enter: alle Arme.',
		whichYear: 'Welches Jahr?',
		whichVerdict: 'Welches Urteil?',
		verdict: verdictOf,
	},
	older: 'ältere',
	/** A check that did not come to its end, or does not count, says so in place of its verdict. */
	state: ({outcome, verdict, voidBecause, isVoidUnknown}: StateOfPast) => {
		if (isVoidUnknown) return notKnown;
		if (voidBecause !== undefined) return stateOf('void');
		return stateOf(outcome === 'complete' ? (verdict ?? 'none') : outcome);
	},
	/** The figures at a radius, as short as can be. */
	figures: ({radiusMm, pullPct, bandPct}: Kept) =>
		`${plainNumber(radiusMm)}: ${withSign(pullPct, 1)}/${rounded(bandPct, 1)}`,
	offScale: ({radiusMm}: Pick<PastProbe, 'radiusMm'>) => `${plainNumber(radiusMm)}: Skalenende`,
	/** The same with every ±. */
	wholeFigures: ({radiusMm, pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct}: WithUncertainty) =>
		`${mm(radiusMm)} ${sideForce(pullPct, pullUncertaintyPct)}, Reibung ${span(bandPct, bandUncertaintyPct)}`,
	wholeOffScale: ({radiusMm}: Pick<PastProbe, 'radiusMm'>) => `${mm(radiusMm)} Skalenende`,
	check: {
		title: 'Frühere Prüfung',
		titleOf: ({arm, date}: Pick<PastCheck, 'arm' | 'date'>) => `${arm}: Prüfung vom ${dayText(date)}`,
		compare: 'mit anderer Prüfung vergleichen',
		putBack: 'Laufwerk jetzt spielbereit machen',
		back: 'zurück zur Liste',
		markVoid: 'für ungültig erklären',
		countAgain: 'wieder zählen lassen',
	},
	compared: {
		which: ({arm, date}: Pick<PastCheck, 'arm' | 'date'>) => `${arm}: ${dayText(date)} womit vergleichen?`,
		title: ({arm}: Pick<PastCheck, 'arm'>) => `${arm}: zwei Prüfungen`,
		columns: ({before, now}: {readonly before: string; readonly now: string}) => ['', dayText(before), dayText(now)],
		pull: ({place}: {readonly place: string}) => `Zug ${placeName(place)}`,
		band: ({place}: {readonly place: string}) => `Reibung ${placeName(place)}`,
		verdict: 'Urteil',
		notMeasured: '-',
		other: 'andere Prüfung',
	},
	reason: {
		title: 'Warum zählt diese Prüfung nicht?',
		whatItMeans:
			'Eine ungültige Prüfung bleibt mit ihrem Grund abgelegt. Sie zählt nicht mehr für Vergleich, Trend und Datum der nächsten Prüfung. Das lässt sich zurücknehmen.',
		inFewWords: 'Grund eintippen, höchstens 80 Zeichen.',
		given: ({reason}: {readonly reason: string}) => `Grund: ${reason}`,
		question: 'Prüfung für ungültig erklären?',
	},
};

type StateOfPast = Pick<PastCheck, 'outcome' | 'verdict' | 'voidBecause' | 'isVoidUnknown'>;

type Wanted = {
	readonly arm: string | undefined;
	readonly year: string | undefined;
	readonly verdict: string | undefined;
};

type SpanOfList = {
	readonly first: number;
	readonly last: number;
	readonly total: number;
	/** Keys turn the list. */
	readonly hasKeys: boolean;
	/** There is room for them; so where nothing else is said. */
	readonly hasFigures?: boolean;
};
