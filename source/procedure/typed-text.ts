import {findUnit, type UnitId, units} from '../units.js';
import type {Sides} from './step.js';

const NUMBER_AND_WORD = /^([-+\u2212]?\s*[\d.,]+)\s*(\p{L}*)$/u;

/**
 * What was typed, with the unit in which it was taken: `2.5 out` on a percent gauge is kept as `2.5 % out`. So a reading
 * says for good what it was, whatever unit is usual later. With `sides` a trailing word may be a direction, and its letter
 * is written out: `2.5o` is kept as `2.5 % out`.
 */
export function withUnit(typed: string, unit: UnitId, sides?: Sides): string {
	const text = typed.trim();
	const [, number = '', word = ''] = NUMBER_AND_WORD.exec(text) ?? [];
	const {label, of} = units[unit];
	if (number === '' || (word !== '' && (!sides || findUnit(word, of)))) return text;
	const gap = label === '°' || label === '′' ? '' : ' ';
	return `${number}${gap}${label}${word === '' ? '' : ` ${sides ? writtenOut(word, sides) : word}`}`;
}

const writtenOut = (word: string, {plus, minus}: Sides): string =>
	word.length === 1 ? ([plus, minus].find(({also}) => also.includes(word.toLowerCase()))?.word ?? word) : word;
