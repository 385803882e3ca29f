import type {Check, Series, Trial} from '../../check/check.js';
import {openSeries} from '../../check/series.js';
import type {Facts} from '../../procedure/facts.js';
import {factsOfTrial, partialDocument} from '../document-of-check.js';
import type {Document} from '../document-schema.js';
import {type Figures, figuresOf} from '../figures.js';
import type {BiasFigures} from '../figures-types.js';

/** A setting of the bias device that has figures. */
export type SettingRead = {
	readonly document: Document;
	readonly figures: Figures;
	readonly bias: BiasFigures;
	readonly facts: Facts;
};

/** What a setting came to; undefined where it has no figures. */
export function settingRead(check: Check, series: Series, trial: Trial): SettingRead | undefined {
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
