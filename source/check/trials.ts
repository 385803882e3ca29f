import {type OnPlace, onPlaces} from '../procedure/places.js';
import {trialSteps} from '../procedure/step-groups.js';
import type {Answer, Check, Series, Trial} from './check.js';
import {askAgain, openSeries, withOpenSeries} from './series.js';

const isOfTrial = (id: string): boolean => trialSteps.some((one) => one === id);

const only = (answers: Check['answers'], keep: (id: string) => boolean): Record<string, Answer> =>
	Object.fromEntries(Object.entries(answers).filter(([id]) => keep(id)));

const emptyRounds = (): Pick<Series, OnPlace> => ({'bias-outer': [], 'bias-middle': [], 'bias-inner': []});

/** Whether anything was read with the bias on since the last setting was closed. */
export const hasOnReadings = (series: Series): boolean => onPlaces.some((place) => series[place].length > 0);

/** The setting that is being tried, as it would be kept. */
const openTrial = (check: Check, series: Series, at: string): Trial => ({
	closedAt: at,
	answers: only(check.answers, (id) => isOfTrial(id) || id === 'bias-radius-middle'),
	'bias-outer': series['bias-outer'],
	'bias-middle': series['bias-middle'],
	'bias-inner': series['bias-inner'],
});

/** All settings of a series that were read, the present one last. */
export const trialsOf = (check: Check, series: Series = openSeries(check)): readonly Trial[] =>
	hasOnReadings(series) ? [...series.trials, openTrial(check, series, series.openedAt)] : series.trials;

/** How it was set is asked again for the next setting; everything that was read is read anew. */
const setting = ['bias-weight', 'bias-set'] as const;
const isOfSetting = (id: string): boolean => setting.some((one) => one === id);

/** Keeps the present setting with its readings, so that another one can be tried. */
export function closeTrial(check: Check, at: string): Check {
	const series = openSeries(check);
	if (!hasOnReadings(series)) return check;
	const closed = withOpenSeries(check, {
		...series,
		...emptyRounds(),
		trials: [...series.trials, openTrial(check, series, at)],
	});
	const answers = only(check.answers, (id) => !isOfTrial(id) || isOfSetting(id) || id === 'bias-on');
	// Hands were at the device: that it is on is confirmed afresh. Until then it counts as on, so that the arm itself is
	// not probed with it.
	return askAgain({...closed, answers}, [...setting, 'bias-on']);
}

/** Takes the bias out of a check whose series closes: it is switched off again before the next one. */
export function leaveBias(check: Check, at: string): Check {
	const closed = closeTrial(check, at);
	const wasOn = closed.answers['bias-on']?.value === true;
	const answers = only(closed.answers, (id) => !isOfTrial(id) || isOfSetting(id));
	return askAgain({...closed, answers}, wasOn ? [...setting, 'bias-off'] : setting);
}

/** The setting that counts, with its number: the one that was chosen, else the last one that was read at two radii. */
export function chosenTrial(check: Check, series: Series) {
	const trials = trialsOf(check, series);
	const chosen = check.answers['bias-result']?.value;
	const last = trials.findLastIndex(isWhole);
	// Somebody chose it; else it only stands for the series.
	const isKept = series === openSeries(check) && Array.isArray(chosen);
	const number = isKept ? Number(chosen[0]) : last < 0 ? trials.length : last + 1;
	const trial = trials[number - 1];
	return trial && {number, trial, isKept};
}

/** Read at two radii at least: fewer say nothing about the record. */
const isWhole = (trial: Trial): boolean =>
	onPlaces.filter((place) => trial[place].some((round) => round.outerLimit && !round.struck)).length >= 2;

/** A check and a series as they were with this setting. */
export function withTrial(check: Check, series: Series, trial: Trial): {check: Check; series: Series} {
	const verdict = {typed: 'read', value: 'bias', at: trial.closedAt};
	const answers = {...only(check.answers, (id) => !isOfTrial(id)), ...trial.answers, verdict};
	const rounds = {
		'bias-outer': trial['bias-outer'],
		'bias-middle': trial['bias-middle'],
		'bias-inner': trial['bias-inner'],
	};
	return {check: {...check, answers}, series: {...series, ...rounds}};
}

/** How the device was set, as it was typed: '2.4 g, second notch'; empty when nothing was noted. */
export const textOfTrial = ({answers}: Trial): string =>
	setting
		.map((id) => answers[id]?.typed ?? '')
		.filter((text) => text !== '')
		.join(', ');

/** '2: 2.4 g, second notch', or its number alone. */
export const nameOfTrial = (number: number, trial: Trial): string =>
	[String(number), textOfTrial(trial)].filter((text) => text !== '').join(': ');
