import {InvalidArgumentError} from 'commander';
import type {CsvTableName} from '../exchange/write-export.js';
import type {Verdict} from '../results/figures-types.js';
import {commandLine as say} from '../words/command-line.js';

/** A whole number as people type it on a command line. */
export const wholeNumberFrom =
	(least: number) =>
	(text: string): number => {
		const value = Number(text);
		if (/^\d+$/.test(text) && Number.isSafeInteger(value) && value >= least) return value;
		throw new InvalidArgumentError(say.wholeNumber({least}));
	};

/** A day, a month or a year: `2026-11-25`, `2026-11`, `2026`. */
export function dayOrSpan(text: string): string {
	const isRead = /^\d{4}(?:-\d\d(?:-\d\d)?)?$/.test(text) && !Number.isNaN(Date.parse(text));
	// A 30th of February would be taken for a day of March.
	if (isRead && new Date(Date.parse(text)).toISOString().startsWith(text)) return text;
	throw new InvalidArgumentError(say.dayWanted);
}

/** The tables of an export, for completion and help. */
export const csvTableNames: readonly CsvTableName[] = ['probe', 'bias'];

const isVerdictWord: Readonly<Record<Verdict | 'none', true>> = {
	good: true,
	usable: true,
	beyond: true,
	undecided: true,
	'off-scale': true,
	none: true,
};

/** The words by which a list is asked for a verdict; none where a check came to no verdict. */
export const verdictWords: readonly string[] = Object.keys(isVerdictWord);
