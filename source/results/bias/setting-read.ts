import type {Check, Series, Trial} from '../../check/check.js';
import {openSeries} from '../../check/series.js';
import {factsOfTrial, partialDocument} from '../document-of-check.js';
import {figuresOf} from '../figures.js';

/** A setting of the bias device that has figures. */
export type SettingRead = NonNullable<ReturnType<typeof settingRead>>;

/** What a setting came to; undefined where it has no figures. */
export function settingRead(check: Check, series: Series, trial: Trial) {
	const facts = factsOfTrial(check, series, trial);
	const document = partialDocument(facts);
	const figures = document && figuresOf(document);
	return document && figures?.bias ? {document, figures, bias: figures.bias, facts} : undefined;
}

/** What the latest setting with readings came to. */
export function lastSettingRead(check: Check): SettingRead | undefined {
	const series = openSeries(check);
	const trial = series.trials.at(-1);
	return trial && settingRead(check, series, trial);
}
