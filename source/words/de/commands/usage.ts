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
	'argument-missing': ({command, name}) => `<${name}> fehlt. Hinter „armdrift ${command}“ eintippen.`,
	'value-missing': ({flags}) => `Hinter ${flags} einen Wert eintippen.`,
	'option-missing': ({command, flags}) => `armdrift ${command} braucht ${flags}. Siehe „armdrift help ${command}“.`,
	'option-unknown': ({flag, meant}) =>
		meant === undefined
			? `Eine Option „${flag}“ gibt es nicht. Siehe „armdrift --help“.`
			: `Eine Option „${flag}“ gibt es nicht. Gemeint „${meant}“?`,
	'command-unknown': ({typed, meant, known}) =>
		meant === undefined
			? `Einen Befehl „${typed}“ gibt es nicht. Die Befehle sind: ${known.join(', ')}.`
			: `Einen Befehl „${typed}“ gibt es nicht. Gemeint „${meant}“?`,
	'too-many': ({command, most, given}) =>
		`armdrift ${command} nimmt ${plural(most, {one: '1 Wort', other: `${most} Wörter`})}, bekam aber ${given}. Einen Namen mit Leerzeichen in Anführungszeichen setzen.`,
	'value-wrong': ({of, typed, wanted}) => `„${typed}“ passt nicht zu ${of}. ${wanted}`,
};
