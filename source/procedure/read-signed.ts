import {isSpelled, spellings} from '../spellings.js';
import {type UnitId, units} from '../units.js';
import type {Facts} from './facts.js';
import {readNumber, withPlainSigns} from './read-number.js';
import {signOfPlus} from './readings.js';
import type {TypedRefusal} from './refusal.js';
import type {Side, Sides} from './step.js';

export type SignedRead =
	| {readonly kind: 'value'; readonly value: number}
	/** A size without a direction: one key must say which side. */
	| {readonly kind: 'side-wanted'; readonly size: number}
	| {readonly kind: 'refused'; readonly refusal: TypedRefusal};

/**
 * Reads a number with a direction: `2.5 out`, `1.5i`, `+2.5`, `1.5-`, `0.1 right`, `0.1l`. Zero needs no direction. A size
 * without one asks for it; a sign and a word that contradict each other are refused. A direction is never guessed.
 */
export function readSigned(typed: string, unit: UnitId, sides: Sides, facts: Facts): SignedRead {
	const plain = withPlainSigns(typed);
	const {rest, side} = takeWord(sides.sign === 'of-gauge' ? signFirst(plain) : plain, sides);
	const read = readNumber(rest, units[unit].of, unit, [sides.plus.word, sides.minus.word]);
	if (!read.ok)
		return sides.words === 'sign-of-gauge' && namesPush(rest)
			? {kind: 'refused', refusal: {id: 'gauge-sign-counts', values: {}}}
			: {kind: 'refused', refusal: read.refusal};
	const byWord = side && Math.abs(read.value) * signOfWord(side, sides, facts);
	const bySign = read.signed && sides.sign === 'of-gauge' ? read.value * signOfPlus(facts) : undefined;
	if (read.value === 0) return {kind: 'value', value: 0};
	if (byWord !== undefined && bySign !== undefined && byWord !== bySign)
		return {kind: 'refused', refusal: {id: 'two-sides', values: {typed}}};
	if (side && byWord !== undefined && read.value < 0 && sides.sign === 'means-nothing')
		return {kind: 'refused', refusal: {id: 'minus-and-word', values: {word: side.word}}};
	const value = byWord ?? bySign;
	return value === undefined ? {kind: 'side-wanted', size: Math.abs(read.value)} : {kind: 'value', value};
}

/** Whether a word in it says which way the arm pushes. */
const namesPush = (typed: string): boolean =>
	typed.split(/[^\p{L}]+/u).some((word) => isSpelled([...spellings.out, ...spellings.in], word));

/** A sign typed after its number, as a side is, before it: `2.5-` is `-2.5`. */
const signFirst = (typed: string): string => typed.replace(/^([^-+]*\d[^-+]*?)\s*([-+])$/, '$2$1');

/** The sign in the program's sense of a word. */
const signOfWord = (side: Side, sides: Sides, facts: Facts): 1 | -1 => {
	const sign = side === sides.plus ? 1 : -1;
	if (sides.words === 'direction') return sign;
	return sign === signOfPlus(facts) ? 1 : -1;
};

function takeWord(typed: string, sides: Sides): {rest: string; side?: Side} {
	for (const side of [sides.plus, sides.minus]) {
		for (const word of side.spelled) {
			const before = new RegExp(`^\\s*${word}\\s+(?=[-+\\d.,])`, 'iu');
			const after = new RegExp(`(?<!\\p{L})${word}\\s*$`, 'iu');
			if (before.test(typed)) return {rest: typed.replace(before, ''), side};
			if (after.test(typed)) return {rest: typed.replace(after, ''), side};
		}
	}
	return {rest: typed};
}
