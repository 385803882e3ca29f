import {type Argument, Command, type Option} from 'commander';
import {didYouMean} from '../desk/did-you-mean.js';
import {commandLine as say} from '../words/command-line.js';

/** A word from the command line, safe to print. */
export const shown = (word: string): string => word.replace(/[\p{Cc}\p{Cf}]/gu, '?').slice(0, 40);

/** How an option or an argument is named in a sentence. */
const nameOf = (target: Option | Argument): string =>
	'long' in target ? (target.long ?? target.flags) : `<${target.name()}>`;

/**
 * A command of commander whose help and refusals are sentences of this program. The methods stand in for those of the
 * same names in commander, which are not in its types.
 */
export class SpokenCommand extends Command {
	constructor(name?: string) {
		super(name);
		this.helpOption('-h, --help', say.helpOption);
		this.configureHelp({
			styleTitle: (title) => say.titles[title] ?? title,
			argumentDescription: ({description}) => description,
			optionDescription: ({description, argChoices: choices, defaultValue: usual}) =>
				choices === undefined ? description : `${description} ${say.choices({choices, usual})}`,
		});
	}

	override createCommand(name?: string): SpokenCommand {
		return new SpokenCommand(name);
	}

	missingArgument(argument: string): void {
		this.error(say.missingArgument({command: this.name(), argument}), {code: 'commander.missingArgument'});
	}

	optionMissingArgument({flags}: Option): void {
		this.error(say.missingValue({flags}), {code: 'commander.optionMissingArgument'});
	}

	missingMandatoryOptionValue(option: Option): void {
		const refusal = say.missingOption({option: nameOf(option), choices: option.argChoices ?? []});
		this.error(refusal, {code: 'commander.missingMandatoryOptionValue'});
	}

	unknownOption(flag: string): void {
		const commands = this.parent ? [this, this.parent] : [this];
		const options = commands.flatMap((one) => one.createHelp().visibleOptions(one));
		const known = options.flatMap(({long}) => long ?? []);
		const command = this.parent ? this.name() : undefined;
		const refusal = say.unknownOption({option: shown(flag), meant: didYouMean(flag, known), command});
		this.error(refusal, {code: 'commander.unknownOption'});
	}

	_excessArguments(typed: readonly string[]): void {
		const word = typed[this.registeredArguments.length];
		if (word === undefined || this.parent === null) return;
		this.error(say.tooManyWords({word: shown(word)}), {code: 'commander.excessArguments'});
	}

	_callParseArg(target: Option | Argument, typed: string, previous: unknown): unknown {
		try {
			return target.parseArg?.(typed, previous);
		} catch (error) {
			if (!(error instanceof Error && 'code' in error && error.code === 'commander.invalidArgument')) throw error;
			const because = target.argChoices ? say.choiceWanted({choices: target.argChoices}) : error.message;
			return this.error(say.notTaken({name: nameOf(target), typed: shown(typed), because}), {code: error.code});
		}
	}
}
