import {findUnit, type UnitId, units} from '../units.js';

const NUMBER_AND_WORD = /^([-+\u2212]?\s*[\d.,]+)\s*(\p{L}*)$/u;

/**
 * What was typed, with the unit in which it was taken: `2.5 out` on a percent gauge is kept as `2.5 % out`. So a reading
 * says for good what it was, whatever unit is usual later. `side` tells whether a trailing word may be a direction.
 */
export function withUnit(typed: string, unit: UnitId, side = false): string {
	const text = typed.trim();
	const [, number = '', word = ''] = NUMBER_AND_WORD.exec(text) ?? [];
	const {label, of} = units[unit];
	if (number === '' || (word !== '' && (!side || findUnit(word, of)))) return text;
	const gap = label === '°' || label === '′' ? '' : ' ';
	return `${number}${gap}${label}${word === '' ? '' : ` ${word}`}`;
}
