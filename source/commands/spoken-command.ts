import {Command, type Option} from 'commander';
import {commandLine as say} from '../words/command-line.js';

/** What is wrong with a command line: told by `usage-fault.ts`, which is loaded only then. */
export type UsageFault =
	| {readonly id: 'argument-missing'; readonly command: string; readonly name: string}
	| {readonly id: 'value-missing'; readonly flags: string}
	| {readonly id: 'option-missing'; readonly command: string; readonly flags: string}
	| {readonly id: 'option-unknown'; readonly flag: string; readonly known: readonly string[]}
	| {readonly id: 'command-unknown'; readonly typed: string; readonly known: readonly string[]}
	| {readonly id: 'too-many'; readonly command: string; readonly most: number; readonly given: number}
	| {readonly id: 'value-wrong'; readonly of: string; readonly typed: string; readonly wanted: string};

/** A command line that cannot be used. */
export class UsageError extends Error {
	constructor(readonly fault: UsageFault) {
		super(fault.id);
	}
}

// Of an option or an argument whose value its parser did not take; behind it stands what the parser says.
const NOT_TAKEN =
	/^error: (?:option '(?<flags>.*?)' argument '(?<typed>.*)'|command-argument value '(?<value>.*)') is invalid(?: for argument '(?<name>.*?)')?\. (?<wanted>.*)$/s;

/**
 * A command of commander that speaks the language in use: its help has our headings, and its faults are thrown as ids with
 * their values. Commander calls these methods by their names; where a newer one does not any more, its own English is
 * printed, and `test/commands/usage.test.ts` fails.
 */
export class SpokenCommand extends Command {
	override createCommand(name?: string): SpokenCommand {
		return new SpokenCommand(name);
	}

	override createHelp() {
		const help = super.createHelp();
		const {headings} = say;
		const isHeading = (text: string): text is keyof typeof headings => Object.hasOwn(headings, text);
		return Object.assign(help, {
			styleTitle: (title: string) => (isHeading(title) ? headings[title] : title),
			commandUsage: (command: Command) =>
				[command.parent?.name(), command.name(), command.usage()].filter(Boolean).join(' '),
			optionDescription: ({description, argChoices}: Option) =>
				argChoices ? say.withChoices({about: description, choices: argChoices}) : description,
		});
	}

	override error(message: string, options?: {readonly exitCode?: number; readonly code?: string}): never {
		const {flags, typed, value, name, wanted} = NOT_TAKEN.exec(message)?.groups ?? {};
		if (wanted !== undefined)
			throw new UsageError({id: 'value-wrong', of: flags ?? name ?? '', typed: typed ?? value ?? '', wanted});
		return super.error(message, options);
	}

	missingArgument(name: string): never {
		throw new UsageError({id: 'argument-missing', command: this.name(), name});
	}

	optionMissingArgument({flags}: Option): never {
		throw new UsageError({id: 'value-missing', flags});
	}

	missingMandatoryOptionValue({flags}: Option): never {
		throw new UsageError({id: 'option-missing', command: this.name(), flags});
	}

	unknownOption(flag: string): never {
		const commands = this.parent ? [this, this.parent] : [this];
		const options = commands.flatMap((command) => command.createHelp().visibleOptions(command));
		throw new UsageError({id: 'option-unknown', flag, known: options.flatMap(({long}) => long ?? [])});
	}

	_excessArguments({length: given}: readonly string[]): never | undefined {
		const {length: most} = this.registeredArguments;
		if (!this.parent) return undefined;
		throw new UsageError({id: 'too-many', command: this.name(), most, given});
	}
}
