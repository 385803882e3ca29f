import {units} from '../units.js';

const labels = [...new Set(Object.values(units).map(({label}) => label))].map((label) => label.replaceAll('/', '\\/'));
const unit = `(?:${['µN·m', ...labels].toSorted((one, other) => other.length - one.length).join('|')})(?![\\p{L}\\d])`;

// As it is, and as it is spelled where the terminal has no more than ASCII.
const plusMinus = '(?:±|\\+\\/-)';

/** Blanks between a number and its unit, on both sides of a ±, and before the one word, 'out', that may stand there; and before a dash that is to be typed. */
const within = new RegExp(
	`(?<=\\d) (?=${unit})| (?=${plusMinus} \\d)|(?<=\\d ?${unit}) (?=\\p{L}+ ${plusMinus} \\d)|(?<=${plusMinus}) (?=\\d)|(?<=\\p{L}) (?=- \\p{Ll})`,
	'gu',
);

/** A sentence in which no line ends between a number and its unit, beside a ±, or before a dash to be typed: its blanks there do not break. */
export const heldTogether = (text: string): string => text.replace(within, '\u00a0');
