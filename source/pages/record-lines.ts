import type {Check, Round, Series} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {isReadyToPlay, progressOf} from '../check/progress.js';
import {nameOfTrial, trialsOf} from '../check/trials.js';
import {offPlaces, onPlaces, type Place} from '../procedure/places.js';
import type {Input} from '../procedure/step.js';
import type {FinishedCheck} from '../results/record.js';
import {isKnownToCount, type Voids} from '../results/voids.js';
import {words} from '../words/index.js';
import {becauseText, reasonText} from '../words/says.js';
import {titleOf} from '../words/step-text.js';
import {signedTyped} from '../words/typed.js';
import {answerInWords} from './answer-text.js';
import {line, type Shown, unheard} from './shown-lines.js';
import {verdictLines} from './verdict-lines.js';

const {record: said, verdict, consequences} = words.pages;

/** Whether the deck was put back: in the check itself, or later. */
export const isDeckReady = ({check}: FinishedCheck, putBackAt?: string): boolean =>
	putBackAt !== undefined || isReadyToPlay(progressOf(check));

/** How a check ended, and what became of its deck. */
export const outcomeText = (record: FinishedCheck, putBackAt?: string): string =>
	said.outcome(endedHow(record, putBackAt));

const endedHow = ({outcome}: FinishedCheck, putBackAt?: string) => ({outcome, putBackOn: putBackAt?.slice(0, 10)});

type Around = Voids & {readonly history?: readonly PastCheck[]};

/** A filed check, whole: outcome, verdict, how it stands against what came before, readings as taken, and every answer. */
export const recordLines = (record: FinishedCheck, putBackAt?: string, around: Around = {}): readonly Shown[] => [
	...outcomeLines(record, putBackAt, around),
	...nextLines(record, around),
	...verdictOf(record, around.history),
	...takenLines(record),
];

/** The same of a check that has just come to its end: a voice tells the verdict only where it was not read before. */
export function justFiled(record: FinishedCheck): readonly Shown[] {
	const {answers, stopped} = record.check;
	const verdict = verdictOf(record);
	return [
		...outcomeLines(record),
		...nextLines(record).map(unheard),
		...(answers.verdict && !stopped ? verdict.map(unheard) : verdict),
		...takenLines(record).map(unheard),
	];
}

function outcomeLines(record: FinishedCheck, putBackAt?: string, voids: Voids = {}): Shown[] {
	const {check} = record;
	return [
		line(said.heading({date: check.startedAt.slice(0, 10), ...endedHow(record, putBackAt)}), 'strong'),
		...(check.practice ? [line(words.beside.practice.notice, 'warn')] : []),
		...voidLines(voids),
		...(isDeckReady(record, putBackAt) ? [] : [line(said.deckNotReady, 'bad')]),
	];
}

/** What does not count gives no date. */
const nextLines = ({check, nextCheck}: FinishedCheck, voids?: Voids): Shown[] =>
	nextCheck && !check.practice && isKnownToCount(voids) ? [line(said.nextCheck(nextCheck))] : [];

const verdictOf = ({check, issued}: FinishedCheck, history: readonly PastCheck[] = []): readonly Shown[] =>
	verdictLines(check, issued, history, progressOf(check));

/** What was read and chosen stands above the answers. */
const toldElsewhere: ReadonlySet<Input['kind']> = new Set(['profile', 'still', 'rounds', 'verdict', 'bias-result']);

/** Readings as they were taken, the id of the check, and its answers. */
function takenLines({check}: FinishedCheck): Shown[] {
	const {visible, facts} = progressOf(check);
	return [
		...readings(check),
		line(said.id({id: check.id, isPractice: check.practice !== undefined})),
		{...line(said.answers, 'strong'), leaf: said.leaves.answers},
		...visible.flatMap(({id, input}) => {
			const answer = check.answers[id];
			if (!answer || answer.typed === '' || toldElsewhere.has(input.kind)) return [];
			return [line(consequences.answer({title: titleOf(id), typed: answerInWords(id, answer, facts)}))];
		}),
	];
}

function readings(check: Check): Shown[] {
	const lines = check.series.flatMap((series, index) => seriesLines(check, series, index + 1));
	return lines.length === 0 ? [] : [{...line(said.readings, 'strong'), leaf: said.leaves.readings}, ...lines];
}

function seriesLines(check: Check, series: Series, number: number): Shown[] {
	const reading = (place: Place, setting?: string) => (round: Round, index: number) =>
		line(
			said.reading({
				series: number,
				place,
				setting,
				round: index + 1,
				isTurned: round.gauge === 'turned',
				innerLimit: signedTyped(round.innerLimit.typed),
				outerLimit: round.outerLimit && signedTyped(round.outerLimit.typed),
				struck: round.struck && reasonText(round.struck.reason),
			}),
		);
	return [
		...offPlaces.flatMap((place) => series[place].map(reading(place))),
		...trialsOf(check, series).flatMap((trial, index) =>
			onPlaces.flatMap((place) => trial[place].map(reading(place, nameOfTrial(index + 1, trial)))),
		),
		...(series.closed
			? [line(verdict.series.closed({number, because: becauseText(series.closed.because), hasFigures: true}))]
			: []),
	];
}

/** What stands beside a past check about its being void. */
export const voidLines = ({voided, formerVoids = [], unknownBecause}: Voids): Shown[] => [
	...(unknownBecause === undefined ? [] : [line(words.results.voidUnknown, 'bad')]),
	...(voided ? [line(words.results.void(voided), 'bad')] : []),
	...formerVoids.map((one) => line(words.results.wasVoid(one))),
];
