import {type UnitId, units} from '../units.js';

const BARE = /^([-+\u2212]?\s*[\d.,]+)(\s+\p{L}+|\p{L})?$/u;

/**
 * What was typed, with the unit in which it was taken: `4 out` on a percent gauge is kept as `4 % out`. So a reading
 * says for good what it was, whatever unit is usual later. `side` tells whether a trailing word is a direction.
 */
export function withUnit(typed: string, unit: UnitId, side = false): string {
	const text = typed.trim();
	const match = BARE.exec(text);
	if (!match || (match[2] !== undefined && !side)) return text;
	const [, number = '', word = ''] = match;
	const {label} = units[unit];
	const gap = label === '°' || label === '′' ? '' : ' ';
	return `${number}${gap}${label}${word === '' ? '' : ` ${word.trim()}`}`;
}
