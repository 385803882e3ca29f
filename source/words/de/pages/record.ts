import type {Place} from '../../../procedure/places.js';
import type {Outcome} from '../../../results/record.js';
import {dayText} from '../../dates.js';
import {radiusName} from '../figures.js';

const outcomes: Readonly<Record<Outcome, string>> = {
	complete: 'fertig',
	stopped: 'vorzeitig beendet, Laufwerk zurückgebaut',
	interrupted: 'unterbrochen, Laufwerk nicht spielbereit',
};

/** A filed check. */
export const record = {
	outcome: ({outcome, putBackOn}: {outcome: Outcome; putBackOn: string | undefined}) =>
		putBackOn === undefined ? outcomes[outcome] : `unterbrochen; zurückgebaut am ${dayText(putBackOn)}`,
	heading: ({date, outcome}: {date: string; outcome: string}) => `Prüfung vom ${dayText(date)}: ${outcome}`,
	deckNotReady: 'Laufwerk nicht spielbereit.',
	nextCheck: ({date, because}: {date: string; because: string}) => `Nächste Prüfung: ${dayText(date)}. ${because}`,
	id: ({id, isPractice}: {id: string; isPractice: boolean}) =>
		`Kennung der Prüfung${isPractice ? '' : ', für compute --id'}: ${id}`,
	answers: 'Antworten',
	/** What pages of a record are called. */
	leaves: {readings: 'Messwerte', answers: 'Antworten'},
	readings: 'Messwerte wie gelesen (innere / äußere Grenze)',
	reading: ({
		series,
		place,
		setting,
		round,
		isTurned,
		innerLimit,
		outerLimit,
		struck,
	}: {
		series: number;
		place: Place;
		/** Of the bias; undefined without it. */
		setting: string | undefined;
		round: number;
		isTurned: boolean;
		innerLimit: string;
		outerLimit: string | undefined;
		/** Why it was struck out. */
		struck: string | undefined;
	}) =>
		`Messreihe ${series}, ${radiusName(place)}${setting === undefined ? '' : `, Einstellung ${setting}`}, Runde ${round}${
			isTurned ? ', Kraftmesser gedreht' : ''
		}: ${innerLimit} / ${outerLimit ?? '…'}${struck === undefined ? '' : ` (gestrichen: ${struck})`}`,
};
