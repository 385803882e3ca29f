import type {Check, Round, Series} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {isReadyToPlay, progressOf} from '../check/progress.js';
import {nameOfTrial, trialsOf} from '../check/trials.js';
import {offPlaces, onPlaces, placeLabel} from '../procedure/places.js';
import type {FinishedCheck} from '../results/record.js';
import type {Voids} from '../results/voids.js';
import {words} from '../words/index.js';
import {becauseText, reasonText} from '../words/says.js';
import {practiceNotice} from './practice-words.js';
import {line, type Shown} from './shown-lines.js';
import {verdictLines} from './verdict-lines.js';

const outcomeWords = {
	complete: 'complete',
	stopped: 'stopped early, deck put back',
	interrupted: 'interrupted, deck not ready to play',
} as const;

/** Whether the deck was put back: in the check itself, or later. */
export const isDeckReady = ({check}: FinishedCheck, putBackAt?: string): boolean =>
	putBackAt !== undefined || isReadyToPlay(progressOf(check));

/** How a check ended, and what became of its deck. */
export const outcomeText = ({outcome}: FinishedCheck, putBackAt?: string): string =>
	putBackAt === undefined ? outcomeWords[outcome] : `interrupted; put back on ${putBackAt.slice(0, 10)}`;

/** A filed check, whole: outcome, verdict, how it stands against what came before, readings as taken, and every answer. */
export function recordLines(
	record: FinishedCheck,
	putBackAt?: string,
	{history = [], ...voids}: Voids & {readonly history?: readonly PastCheck[]} = {},
): readonly Shown[] {
	const {check, nextCheck, issued} = record;
	const progress = progressOf(check);
	return [
		line(`Check of ${check.startedAt.slice(0, 10)}: ${outcomeText(record, putBackAt)}`, 'strong'),
		...(check.practice ? [line(practiceNotice, 'warn')] : []),
		...voidLines(voids),
		...(isDeckReady(record, putBackAt) ? [] : [line('Deck not ready to play.', 'bad')]),
		// What does not count gives no date either.
		...(nextCheck && !check.practice && !voids.voided
			? [line(`Next check: ${nextCheck.date}. ${nextCheck.because}`)]
			: []),
		...verdictLines(check, issued, history),
		...readings(check),
		line(`Id of this check${check.practice ? '' : ', for compute --id'}: ${check.id}`),
		line('Answers', 'strong'),
		...progress.visible.flatMap(({id, title}) => {
			const answer = check.answers[id];
			return answer && answer.typed !== '' ? [line(`${title}: ${answer.typed}`)] : [];
		}),
	];
}

function readings(check: Check): Shown[] {
	const lines = check.series.flatMap((series, index) => seriesLines(check, series, index));
	return lines.length === 0 ? [] : [line('Readings as taken (inner limit / outer limit)', 'strong'), ...lines];
}

const roundLine =
	(where: string) =>
	(round: Round, number: number): Shown =>
		line(
			`${where}, round ${number + 1}${round.gauge === 'turned' ? ', gauge turned' : ''}: ${round.innerLimit.typed} / ${round.outerLimit?.typed ?? '…'}${round.struck ? ` (struck out: ${reasonText(round.struck.reason)})` : ''}`,
		);

function seriesLines(check: Check, series: Series, index: number): Shown[] {
	const name = `Series ${index + 1}`;
	const rounds = offPlaces.flatMap((place) => series[place].map(roundLine(`${name}, ${placeLabel(place)}`)));
	const trials = trialsOf(check, series).flatMap((trial, number) =>
		onPlaces.flatMap((place) =>
			trial[place].map(roundLine(`${name}, ${placeLabel(place)}, setting ${nameOfTrial(number + 1, trial)}`)),
		),
	);
	return [
		...rounds,
		...trials,
		...(series.closed ? [line(`Series ${index + 1} closed: ${becauseText(series.closed.because)}`)] : []),
	];
}

/** What stands beside a past check about its being void. */
export const voidLines = ({voided, formerVoids = []}: Voids): Shown[] => [
	...(voided ? [line(words.results.void(voided), 'bad')] : []),
	...formerVoids.map((one) => line(words.results.wasVoid(one))),
];
