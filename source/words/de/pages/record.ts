import type {Place} from '../../../procedure/places.js';
import type {Outcome} from '../../../results/record.js';
import {dayText} from '../../dates.js';
import {radiusName} from '../figures.js';

const outcomes: Readonly<Record<Outcome, string>> = {
	complete: 'fertig',
	stopped: 'vorzeitig beendet, Laufwerk spielbereit gemacht',
	interrupted: 'unterbrochen, Laufwerk nicht spielbereit',
};

type Ended = {readonly outcome: Outcome; readonly putBackOn: string | undefined};
const endedHow = ({outcome, putBackOn}: Ended): string =>
	putBackOn === undefined ? outcomes[outcome] : `unterbrochen, Laufwerk spielbereit gemacht am ${dayText(putBackOn)}`;

/** A filed check. */
export const record = {
	outcome: endedHow,
	heading: ({date, ...ended}: Ended & {date: string}) => `Prüfung vom ${dayText(date)}: ${endedHow(ended)}`,
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
