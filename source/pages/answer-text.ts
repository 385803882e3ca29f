import type {Facts} from '../procedure/facts.js';
import {stepById} from '../procedure/index.js';
import {unitOf} from '../procedure/read-answer.js';
import {readNumber} from '../procedure/read-number.js';
import {takes} from '../procedure/step.js';
import type {AnswerValue} from '../procedure/step-ids.js';
import {tickStates} from '../procedure/ticks.js';
import {units} from '../units.js';
import {words} from '../words/index.js';
import {inUnit, listed} from '../words/numbers.js';
import {names, optionLabel, tickText} from '../words/step-text.js';
import {signedTyped} from '../words/typed.js';

const said = words.pages.consequences.answered;

/** More decimals than anything at the bench is read with. */
const mostDecimals = 3;

type Given = {readonly typed: string; readonly value: AnswerValue};

/**
 * An answer as a person reads it: what was chosen by its value, in the words of the language in use, a number in the unit in which
 * it was typed, anything else as it was typed; empty where it is not known.
 */
export function answerInWords(id: string, {typed, value}: Given, facts: Facts): string {
	const step = stepById(id);
	if (!step || typed === '') return typed;
	const {input} = step;
	switch (input.kind) {
		case 'choice':
			return typeof value === 'string' ? optionLabel(step.id, value) : typed;
		case 'several':
			return Array.isArray(value) ? listed(value.map((one) => optionLabel(step.id, one))) : typed;
		case 'confirm':
			return value === true ? names.yes : names.no;
		case 'ticks': {
			if (!takes(step, 'ticks')) return typed;
			const left = tickStates(step, facts).filter(({mark}) => mark !== 'yes');
			return left.length === 0 ? said.allDone : said.left({lines: left.map(({line}) => tickText(step.id, line))});
		}
		case 'number': {
			const unit = unitOf(input, facts);
			const read = readNumber(typed, units[unit].of, unit);
			return read.ok ? inUnit(read.value, read.unit, mostDecimals) : typed;
		}
		case 'signed':
			return signedTyped(typed);
		case 'text':
		case 'clock':
		case 'profile':
		case 'still':
		case 'rounds':
		case 'verdict':
		case 'bias-result':
			return typed;
	}
}
