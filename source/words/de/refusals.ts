import type {SidesWanted, TypedRefusalValues} from '../../procedure/refusal.js';
import type {Sentences} from '../../said.js';
import {labelsOf, type Quantity, type UnitId, units} from '../../units.js';
import {inUnit, plainNumber, unitText} from '../numbers.js';
import {entries} from './entries.js';

/** What was typed, in quotation marks, and no longer than a refusal can bear. */
export const inQuotes = (typed: string): string => {
	const letters = [...typed.trim()];
	return `„${letters.length > 20 ? `${letters.slice(0, 20).join('')}…` : letters.join('')}“`;
};

function exampleIn(unit: UnitId): string {
	const samples: Record<Quantity, string> = {
		length: '12,5',
		force: units[unit].label === 'g' ? '1,8' : '18',
		mass: '0,5',
		angle: '0,1',
		temperature: '21',
		ratio: '0,3',
		percent: '4,5',
		compliance: '15',
		time: '5',
	};
	return `${samples[units[unit].of]} ${unitText(unit)}`;
}

const withSide = (wanted: SidesWanted | undefined): string =>
	wanted ? `, mit Seite: ${entries.written.sides[wanted[0]]} oder ${entries.written.sides[wanted[1]]}` : '';

/** What is answered to typed text that is not taken. */
export const refusals: Sentences<TypedRefusalValues> = {
	'no-number-typed': (wanted) => `Eine Zahl eintippen, etwa ${exampleIn(wanted.unit)}${withSide(wanted.sides)}.`,
	'not-a-number': ({typed, unit, sides}) =>
		`${inQuotes(typed)} ist keine Zahl. So eintippen: ${exampleIn(unit)}${withSide(sides)}.`,
	'more-than-one-mark': ({typed, unit, sides}) =>
		`${inQuotes(typed)} hat zwei Dezimalzeichen. So eintippen: ${exampleIn(unit)}${withSide(sides)}.`,
	'unit-not-known': ({tail, quantity, sides}) =>
		`${inQuotes(tail)} ist hier keine Einheit. Möglich: ${labelsOf(quantity).join(', ')}${withSide(sides)}.`,
	'too-many-digits': ({typed, unit, sides}) =>
		`${inQuotes(typed)} hat zu viele Stellen. So eintippen: ${exampleIn(unit)}${withSide(sides)}.`,
	'gauge-sign-counts': () =>
		'Das eigene + oder − des Kraftmessers eintippen, etwa +4. Außen und innen zählen hier nicht.',
	'two-sides': ({typed}) =>
		`${inQuotes(typed)} nennt zwei Seiten: durch Vorzeichen und durch Wort. Nur eine davon eintippen.`,
	'minus-and-word': ({word}) => `Minus weglassen: Das Wort „${entries.written.sides[word]}“ nennt schon die Seite.`,
	'not-believable': ({typed, least, most, unit, meant}) =>
		`${inQuotes(typed)} kann nicht stimmen. Hier erlaubt: ${inUnit(least, unit)} bis ${inUnit(most, unit)}.${meant ? ` Gemeint: ${plainNumber(Number(meant.entered.toPrecision(6)), 6)} ${unitText(meant.unit)}?` : ''}`,
	'no-name': () => 'Einen Namen eintippen.',
	'control-characters': () => 'Steuerzeichen gehören in keinen Namen. Neu eintippen.',
	'too-long': ({characters, most}) => `Das sind ${characters} Zeichen. Höchstens ${most} werden behalten.`,
	'not-in-list': ({options}) => `Mit einer Zahl wählen, 1 bis ${options}.`,
	'stands-alone': ({name}) => `„${name}“ allein wählen oder weglassen.`,
	'not-yes-or-no': () => 'j für ja, n für noch nicht.',
	'no-clock-time': ({typed}) => `${inQuotes(typed)} ist keine Uhrzeit. So eintippen: 8:30, oder 8 für 8 Uhr.`,
	'not-by-text': () => 'Dieser Schritt nimmt keinen Text.',
};
