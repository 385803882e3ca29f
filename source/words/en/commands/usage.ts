import type {Sentences} from '../../../said.js';
import {plural} from '../../numbers.js';

export type UsageFaultValues = {
	'argument-missing': {readonly command: string; readonly name: string};
	'value-missing': {readonly flags: string};
	'option-missing': {readonly command: string; readonly flags: string};
	'option-unknown': {readonly flag: string; readonly meant: string | undefined};
	'command-unknown': {readonly typed: string; readonly meant: string | undefined; readonly known: readonly string[]};
	'too-many': {readonly command: string; readonly most: number; readonly given: number};
	'value-wrong': {readonly of: string; readonly typed: string; readonly wanted: string};
};

/** Why a command line cannot be used. */
export const usage: Sentences<UsageFaultValues> = {
	'argument-missing': ({command, name}) => `<${name}> is missing. Type it behind "armdrift ${command}".`,
	'value-missing': ({flags}) => `Type a value behind ${flags}.`,
	'option-missing': ({command, flags}) => `armdrift ${command} needs ${flags}. See "armdrift help ${command}".`,
	'option-unknown': ({flag, meant}) =>
		meant === undefined
			? `There is no option '${flag}'. See "armdrift --help".`
			: `There is no option '${flag}'. Did you mean '${meant}'?`,
	'command-unknown': ({typed, meant, known}) =>
		meant === undefined
			? `There is no command '${typed}'. The commands are: ${known.join(', ')}.`
			: `There is no command '${typed}'. Did you mean '${meant}'?`,
	'too-many': ({command, most, given}) =>
		`armdrift ${command} takes ${plural(most, {one: '1 word', other: `${most} words`})}, and got ${given}. Put a name with blanks in quotation marks.`,
	'value-wrong': ({of, typed, wanted}) => `'${typed}' does not fit ${of}. ${wanted}`,
};
