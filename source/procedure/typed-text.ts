import {isSpelled} from '../spellings.js';
import {findUnit, type UnitId, units} from '../units.js';
import type {Names} from './names.js';
import type {Sides} from './step.js';

const NUMBER_AND_WORD = /^([-+\u2212]?\s*[\d.,]+)\s*(\p{L}*)$/u;

/**
 * What was typed, with the unit in which it was taken: `2.5 out` on a percent gauge is kept as `2.5 % out`. So a reading
 * says for good what it was, whatever unit is usual later. With `sides` a trailing word may be a direction, and its letter
 * is written out: `2.5o` is kept as `2.5 % out`.
 *
 * @param names how the language in use writes a side; by its own word where they are left out
 */
export function withUnit(typed: string, unit: UnitId, sides?: Sides, names?: Names): string {
	const text = typed.trim();
	const [, number = '', word = ''] = NUMBER_AND_WORD.exec(text) ?? [];
	const {label, of} = units[unit];
	if (number === '' || (word !== '' && (!sides || findUnit(word, of)))) return text;
	const gap = ['', '°', '′'].includes(label) ? '' : ' ';
	return `${number}${gap}${label}${word === '' ? '' : ` ${sides ? writtenOut(word, sides, names) : word}`}`;
}

function writtenOut(typed: string, {plus, minus}: Sides, names: Names | undefined): string {
	if (typed.length > 1) return typed;
	const side = [plus, minus].find(({spelled}) => isSpelled(spelled, typed));
	return side ? (names?.sides[side.word] ?? side.word) : typed;
}
