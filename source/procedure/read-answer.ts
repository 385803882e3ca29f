import {clockDeg} from '../measures/lever.js';
import {yesOrNo} from '../spellings.js';
import {fromBase, toBase, type UnitId, unitIds, units} from '../units.js';
import type {Facts} from './facts.js';
import {type Names, nameOf} from './names.js';
import {readNumber, withPlainSigns} from './read-number.js';
import {readSigned} from './read-signed.js';
import type {TypedRefusal} from './refusal.js';
import type {Input, Sides, Step} from './step.js';
import type {AnswerValue} from './step-ids.js';
import {withUnit} from './typed-text.js';

/** What became of typed text: an accepted value, a size whose side is still wanted, or why it was refused. */
export type AnswerRead =
	| {readonly kind: 'value'; readonly value: AnswerValue; readonly typed: string}
	| {readonly kind: 'side-wanted'; readonly size: number; readonly sides: Sides; readonly typed: string}
	| {readonly kind: 'refused'; readonly refusal: TypedRefusal};

const refused = (refusal: TypedRefusal): AnswerRead => ({kind: 'refused', refusal});

export const unitOf = (input: Extract<Input, {kind: 'number' | 'signed'}>, facts: Facts): UnitId =>
	typeof input.unit === 'function' ? input.unit(facts) : input.unit;

export const linesOf = (input: Extract<Input, {kind: 'ticks'}>, facts: Facts) =>
	typeof input.lines === 'function' ? input.lines(facts) : input.lines;

/**
 * Reads typed text as the answer to a step of the kinds text, choice, confirm, number and signed.
 * @param names of the language in which it was typed: an option may be typed by its name, and is kept by it
 */
export function readAnswer(step: Step, typed: string, facts: Facts, names?: Names): AnswerRead {
	const {input} = step;
	const text = typed.trim();
	if ('optional' in input && input.optional && (text === '' || text === '-'))
		return {kind: 'value', value: input.kind === 'text' || input.kind === 'clock' ? '' : null, typed: ''};
	switch (input.kind) {
		case 'text':
			return readText(text);
		case 'choice':
			return readChoice(text, input.options, (option) => nameOf(names, step.id, option));
		case 'several':
			return readSeveral(text, input.options, (option) => nameOf(names, step.id, option));
		case 'confirm':
			return readYesNo(text, names);
		case 'number': {
			const read = readNumber(text, units[unitOf(input, facts)].of, unitOf(input, facts));
			if (!read.ok) return refused(read.refusal);
			return (
				between(read.value, text, input, facts) ?? {
					kind: 'value',
					value: read.value,
					typed: withUnit(text, unitOf(input, facts)),
				}
			);
		}
		case 'signed': {
			const read = readSigned(text, unitOf(input, facts), input.sides, facts);
			if (read.kind === 'refused') return read;
			const size = read.kind === 'value' ? Math.abs(read.value) : read.size;
			const far = between(size, text, input, facts);
			if (far) return far;
			return read.kind === 'value'
				? {...read, typed: withUnit(text, unitOf(input, facts), input.sides, names)}
				: {...read, sides: input.sides, typed: withoutSign(text)};
		}
		case 'clock':
			return readClock(text);
		case 'ticks':
		case 'profile':
		case 'still':
		case 'rounds':
		case 'verdict':
		case 'bias-result':
			return refused({id: 'not-by-text', values: {}});
	}
}

/** A side is still asked for, so a sign meant nothing here; kept, it would contradict the side. */
const withoutSign = (text: string): string => withPlainSigns(text).replace(/^[-+]\s*/, '');

const printed = /^[^\p{Cc}\p{Cs}\u2028\u2029]*$/u;

const mostLetters = 80;

/** A name, a note or a reason: any characters but control characters, at most 80. */
export function readText(text: string): AnswerRead {
	if (text === '') return refused({id: 'no-name', values: {}});
	if (!printed.test(text)) return refused({id: 'control-characters', values: {}});
	const letters = [...text];
	return letters.length > mostLetters
		? refused({id: 'too-long', values: {characters: letters.length, most: mostLetters}})
		: {kind: 'value', value: text, typed: text};
}

function readChoice(text: string, options: readonly string[], called: (option: string) => string): AnswerRead {
	const folded = text.toLowerCase();
	const chosen =
		options.find((one) => one.toLowerCase() === folded || called(one).toLowerCase() === folded) ??
		(/^\d+$/.test(text) ? options[Number(text) - 1] : undefined);
	if (!chosen) return refused({id: 'not-in-list', values: {options: options.length}});
	return {kind: 'value', value: chosen, typed: called(chosen)};
}

/** '2 4', '2, 4', or names with commas between them; kept in the order of the list. */
function readSeveral(text: string, options: readonly string[], called: (option: string) => string): AnswerRead {
	const parts = text.split(/^[\d\s,]+$/.test(text) ? /[\s,]+/ : ',').filter((part) => part.trim() !== '');
	const read = parts.map((part) => readChoice(part.trim(), options, called));
	const wrong = read.find(({kind}) => kind !== 'value');
	if (wrong || read.length === 0) return wrong ?? refused({id: 'not-in-list', values: {options: options.length}});
	const chosen = options.filter((option) => read.some((one) => one.kind === 'value' && one.value === option));
	const [alone = ''] = options;
	if (chosen.length > 1 && chosen.includes(alone)) return refused({id: 'stands-alone', values: {name: called(alone)}});
	return {kind: 'value', value: chosen, typed: chosen.map(called).join(', ')};
}

function readYesNo(text: string, names: Names | undefined): AnswerRead {
	const answer = yesOrNo(text);
	if (answer === undefined) return refused({id: 'not-yes-or-no', values: {}});
	return {kind: 'value', value: answer === 'yes', typed: names?.[answer] ?? answer};
}

/** '8:30', '8.30', '830' or '8': a time of the clock face, kept as 'h:mm'. */
function readClock(text: string): AnswerRead {
	const found = /^(\d{1,2})(?:[:.,h ]?(\d{2}))?$/.exec(text.replace(/\s*(?:o'?clock|uhr)$/i, ''));
	const time = found ? `${Number(found[1])}:${found[2] ?? '00'}` : '';
	return clockDeg(time) === undefined
		? refused({id: 'no-clock-time', values: {typed: text}})
		: {kind: 'value', value: time, typed: time};
}

type Bounded = Extract<Input, {kind: 'number' | 'signed'}>;

/** Refuses a value that cannot be believed, and says which unit would make it believable. */
function between(value: number, text: string, input: Bounded, facts: Facts): AnswerRead | undefined {
	const unit = unitOf(input, facts);
	const [low, high] = typeof input.between === 'function' ? input.between(facts) : input.between;
	if (value >= low - 1e-9 && value <= high + 1e-9) return;
	const read = readNumber(text, units[unit].of, unit);
	const entered = read.ok ? read.entered : fromBase(value, unit);
	const other = unitIds.find((id) => {
		if (units[id].of !== units[unit].of) return false;
		const meant = toBase(entered, id);
		return meant >= low && meant <= high;
	});
	const meant = other && {entered, unit: other};
	return refused({id: 'not-believable', values: {typed: text, least: low, most: high, unit, meant}});
}

/** Whether a stored answer is one that the step can have; a file may be older than the step, or edited by hand. */
export function fits(input: Input, value: AnswerValue): boolean {
	switch (input.kind) {
		case 'text':
		case 'profile':
			return typeof value === 'string';
		case 'clock':
			return typeof value === 'string' && (value === '' ? (input.optional ?? false) : clockDeg(value) !== undefined);
		case 'choice':
			return input.options.some((id) => id === value);
		case 'several':
			return Array.isArray(value) && value.length > 0 && value.every((one) => input.options.includes(one));
		case 'confirm':
			return typeof value === 'boolean';
		case 'ticks':
			return Array.isArray(value);
		case 'number':
		case 'signed':
			return typeof value === 'number' || (value === null && (input.optional ?? false));
		case 'still':
		case 'rounds':
		case 'verdict':
		case 'bias-result':
			return true;
	}
}
