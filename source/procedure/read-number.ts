import {findUnit, labelsOf, type Quantity, toBase, type UnitId, units} from '../units.js';

/** A number as a person typed it: the value in the base unit, and what stood there. */
export type NumberRead =
	| {ok: true; value: number; entered: number; unit: UnitId; signed: boolean}
	| {ok: false; sentence: string};

const SHAPE = /^([+-])?(\d+(?:[.,]\d*)?|[.,]\d+)\s*(.*)$/;

/** Full-width characters and typographic minus signs as the plain ones. Raised digits stay what they are: 2² is not 22. */
export const plainly = (typed: string): string =>
	typed
		.replace(/[\uFF01-\uFF5E]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
		.replace(/[\u2212\u2010-\u2015\uFE63]/g, '-')
		.trim();

/** What was typed, in quotation marks, and no longer than a refusal can bear. */
export const quoted = (typed: string): string => {
	const letters = [...typed.trim()];
	return `'${letters.length > 20 ? `${letters.slice(0, 20).join('')}…` : letters.join('')}'`;
};

/**
 * Reads `4`, `4.5`, `4,5`, `+4`, `-3`, `1.8 g`, `18 mN`, `0.7 in`.
 * Full-width digits and the typographic minus are taken for what they are; grouped thousands, exponents and
 * anything that is not a plain decimal number are refused with a sentence that shows what is wanted.
 */
export function readNumber(typed: string, quantity: Quantity, defaultUnit: UnitId): NumberRead {
	const text = plainly(typed);
	const example = `for example ${exampleOf(defaultUnit)}`;
	if (text === '') return {ok: false, sentence: `Type a number, ${example}.`};
	const match = SHAPE.exec(text);
	if (!match)
		return {ok: false, sentence: `${quoted(typed)} is not a number; type it like this: ${exampleOf(defaultUnit)}.`};
	const [, sign = '', digits = '', tail = ''] = match;
	if (/^[.,\d]/.test(tail))
		return {
			ok: false,
			sentence: `${quoted(typed)} has more than one decimal mark; type it with a single point or comma, ${example}.`,
		};
	const unit = tail === '' ? defaultUnit : findUnit(tail, quantity);
	if (unit === undefined)
		return {ok: false, sentence: `${quoted(tail)} is not a unit known here; use ${labelsOf(quantity).join(', ')}.`};
	const entered = Number(`${sign}${digits.replace(',', '.')}`);
	if (!Number.isFinite(entered) || digits.length > 15)
		return {ok: false, sentence: `${quoted(typed)} has more digits than a reading can have; type it ${example}.`};
	return {ok: true, value: toBase(entered, unit), entered, unit, signed: sign !== ''};
}

function exampleOf(unit: UnitId): string {
	const samples: Record<Quantity, string> = {
		length: '12.5',
		force: units[unit].label === 'g' ? '1.8' : '18',
		mass: '0.5',
		angle: '0.1',
		temperature: '21',
		ratio: '0.3',
		percent: '4.5',
		compliance: '15',
		time: '5',
	};
	return `${samples[units[unit].of]} ${units[unit].label}`;
}
