import type {SidesWanted, TypedRefusalValues} from '../../procedure/refusal.js';
import type {Sentences} from '../../said.js';
import {labelsOf, type Quantity, type UnitId, units} from '../../units.js';
import {inUnit} from '../numbers.js';
import {entries} from './entries.js';

/** What was typed, in quotation marks, and no longer than a refusal can bear. */
export const inQuotes = (typed: string): string => {
	const letters = [...typed.trim()];
	return `'${letters.length > 20 ? `${letters.slice(0, 20).join('')}…` : letters.join('')}'`;
};

function exampleIn(unit: UnitId): string {
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

const withSide = (wanted: SidesWanted | undefined): string =>
	wanted ? `, with its side: ${entries.written.sides[wanted[0]]} or ${entries.written.sides[wanted[1]]}` : '';

/** What is answered to typed text that is not taken. */
export const refusals: Sentences<TypedRefusalValues> = {
	'no-number-typed': (wanted) => `Type a number, for example ${exampleIn(wanted.unit)}${withSide(wanted.sides)}.`,
	'not-a-number': ({typed, unit, sides}) =>
		`${inQuotes(typed)} is no number. Type it like this: ${exampleIn(unit)}${withSide(sides)}.`,
	'more-than-one-mark': ({typed, unit, sides}) =>
		`${inQuotes(typed)} has two decimal marks. Type it like this: ${exampleIn(unit)}${withSide(sides)}.`,
	'unit-not-known': ({tail, quantity, sides}) =>
		`${inQuotes(tail)} is no unit here. Use ${labelsOf(quantity).join(', ')}${withSide(sides)}.`,
	'too-many-digits': ({typed, unit, sides}) =>
		`${inQuotes(typed)} has too many digits. Type it like this: ${exampleIn(unit)}${withSide(sides)}.`,
	'gauge-sign-counts': () => "Type the gauge's own + or −, for example +4. Out and in do not count here.",
	'two-sides': ({typed}) => `${inQuotes(typed)} names two sides: one by sign, one by word. Type only one of them.`,
	'minus-and-word': ({word}) =>
		`Leave out the minus: the word '${entries.written.sides[word]}' already names the side.`,
	'not-believable': ({typed, least, most, unit, meant}) =>
		`${inQuotes(typed)} cannot be right. Allowed here: ${inUnit(least, unit)} to ${inUnit(most, unit)}.${meant ? ` Did you mean ${Number(meant.entered.toPrecision(6))} ${units[meant.unit].label}?` : ''}`,
	'no-name': () => 'Type a name.',
	'control-characters': () => 'Control characters cannot stand in a name. Type it again.',
	'too-long': ({characters, most}) => `That is ${characters} characters. At most ${most} are kept.`,
	'not-in-list': ({options}) => `Choose by number, 1 to ${options}.`,
	'stands-alone': ({name}) => `Choose '${name}' alone, or leave it out.`,
	'not-yes-or-no': () => 'Press y for yes, n for not yet.',
	'no-clock-time': ({typed}) => `${inQuotes(typed)} is no clock time. Type it like 8:30, or 8 for 8 o'clock.`,
	'not-by-text': () => 'This step takes no text.',
};
