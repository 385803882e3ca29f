import type {Place} from '../../../procedure/places.js';
import type {Outcome} from '../../../results/record.js';
import {dayText} from '../../dates.js';
import {entries} from '../entries.js';

const outcomes: Readonly<Record<Outcome, string>> = {
	complete: 'complete',
	stopped: 'stopped early, deck put back',
	interrupted: 'interrupted, deck not ready to play',
};

type Ended = {readonly outcome: Outcome; readonly putBackOn: string | undefined};
const endedHow = ({outcome, putBackOn}: Ended): string =>
	putBackOn === undefined ? outcomes[outcome] : `interrupted, deck put back on ${dayText(putBackOn)}`;

/** A filed check. */
export const record = {
	outcome: endedHow,
	heading: ({date, ...ended}: Ended & {date: string}) => `Check of ${dayText(date)}: ${endedHow(ended)}`,
	deckNotReady: 'Deck not ready to play.',
	nextCheck: ({date, because}: {date: string; because: string}) => `Next check: ${dayText(date)}. ${because}`,
	id: ({id, isPractice}: {id: string; isPractice: boolean}) =>
		`Id of this check${isPractice ? '' : ', for compute --id'}: ${id}`,
	answers: 'Answers',
	/** What pages of a record are called. */
	leaves: {readings: 'readings', answers: 'answers'},
	readings: 'Readings as taken (inner limit / outer limit)',
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
		`Series ${series}, ${entries.places[place]}${setting === undefined ? '' : `, setting ${setting}`}, round ${round}${
			isTurned ? ', gauge turned' : ''
		}: ${innerLimit} / ${outerLimit ?? '…'}${struck === undefined ? '' : ` (struck out: ${struck})`}`,
};
