import {findUnit, type Quantity, toBase, type UnitId} from '../units.js';
import type {NumberRefusal, SidesWanted} from './refusal.js';

/** A number as a person typed it: the value in the base unit, and what stood there. */
export type NumberRead =
	| {ok: true; value: number; entered: number; unit: UnitId; signed: boolean}
	| {ok: false; refusal: NumberRefusal};

const SHAPE = /^([+-])?(\d+(?:[.,]\d*)?|[.,]\d+)\s*(.*)$/;

/** Full-width characters and typographic minus signs as the plain ones. Raised digits stay what they are: 2² is not 22. */
export const withPlainSigns = (typed: string): string =>
	typed
		.replace(/[\uFF01-\uFF5E]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
		.replace(/[\u2212\u2010-\u2015\uFE63]/g, '-')
		.trim();

/**
 * Reads `4`, `4.5`, `4,5`, `+4`, `-3`, `1.8 g`, `18 mN`, `0.7 in`.
 * Full-width digits and the typographic minus are taken for what they are; grouped thousands, exponents and
 * anything that is not a plain decimal number are refused, with what is wanted.
 * @param sides the two sides of which one is wanted too, so that a refusal names them
 */
export function readNumber(
	typed: string,
	quantity: Quantity,
	defaultUnit: UnitId,
	sides?: SidesWanted | undefined,
): NumberRead {
	const refused = (refusal: NumberRefusal): NumberRead => ({ok: false, refusal});
	const text = withPlainSigns(typed);
	const wanted = {typed, unit: defaultUnit, sides};
	if (text === '') return refused({id: 'no-number-typed', values: wanted});
	const match = SHAPE.exec(text);
	if (!match) return refused({id: 'not-a-number', values: wanted});
	const [, sign = '', digits = '', tail = ''] = match;
	if (/^[.,\d]/.test(tail)) return refused({id: 'more-than-one-mark', values: wanted});
	const unit = tail === '' ? defaultUnit : findUnit(tail, quantity);
	if (unit === undefined) return refused({id: 'unit-not-known', values: {tail, quantity, sides}});
	const entered = Number(`${sign}${digits.replace(',', '.')}`);
	if (!Number.isFinite(entered) || digits.length > 15) return refused({id: 'too-many-digits', values: wanted});
	return {ok: true, value: toBase(entered, unit), entered, unit, signed: sign !== ''};
}
