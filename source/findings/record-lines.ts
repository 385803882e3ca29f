import type {Series} from '../check/check.js';
import {isReadyToPlay, progressOf} from '../check/progress.js';
import type {FinishedCheck} from './record.js';
import {line, type Shown} from './shown-lines.js';
import {verdictLines} from './verdict-lines.js';
import {placeLabel} from './wording.js';

const outcomeWords = {
	complete: 'complete',
	stopped: 'stopped early, deck put back',
	interrupted: 'interrupted, deck not ready to play',
} as const;

/** A filed check, whole: outcome, verdict, readings as taken, and every answer. */
export function recordLines({check, outcome, nextCheck, issued}: FinishedCheck, putBackAt?: string): readonly Shown[] {
	const progress = progressOf(check);
	const ready = isReadyToPlay(progress) || putBackAt !== undefined;
	return [
		line(
			`Check of ${check.startedAt.slice(0, 10)}: ${putBackAt === undefined ? outcomeWords[outcome] : `interrupted; put back on ${putBackAt.slice(0, 10)}`}`,
			'strong',
		),
		...(ready ? [] : [line('Deck not ready to play.', 'bad')]),
		...(nextCheck ? [line(`Next check: ${nextCheck.date}. ${nextCheck.because}`)] : []),
		...verdictLines(check, issued),
		...readings(check),
		line(`Id of this check, for compute --check: ${check.id}`),
		line('Answers', 'strong'),
		...progress.visible.flatMap(({id, title}) => {
			const answer = check.answers[id];
			return answer && answer.typed !== '' ? [line(`${title}: ${answer.typed}`)] : [];
		}),
	];
}

function readings({series}: FinishedCheck['check']): Shown[] {
	const lines = series.flatMap(seriesLines);
	return lines.length === 0 ? [] : [line('Readings as taken (inner limit / outer limit)', 'strong'), ...lines];
}

function seriesLines(series: Series, index: number): Shown[] {
	const places = (['inner', 'outer', 'extra', 'closing'] as const).flatMap((place) =>
		series[place].map((round, number) =>
			line(
				`Series ${index + 1}, ${placeLabel(place)}, round ${number + 1}: ${round.innerLimit.typed} / ${round.outerLimit?.typed ?? '…'}${round.struck ? ` (struck out: ${round.struck.reason})` : ''}`,
			),
		),
	);
	return [...places, ...(series.closed ? [line(`Series ${index + 1} closed: ${series.closed.because}`)] : [])];
}
