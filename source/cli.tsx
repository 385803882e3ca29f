import {type Command, CommanderError, Option} from 'commander';
import packageJson from '../package.json' with {type: 'json'};
import {addCommands, type ProgramFlags} from './commands/command-line.js';
import {SpokenCommand, shown} from './commands/spoken-command.js';
import {didYouMean} from './desk/did-you-mean.js';
import {languageCodes} from './language.js';
import {unforeseen} from './terminal/unforeseen.js';
import {commandLine as say} from './words/command-line.js';

/** Builds the command line. What a command needs is loaded when it runs, so that help and version are quick. */
function commandLine(): Command {
	const program = new SpokenCommand('armdrift')
		.description(say.about)
		.version(packageJson.version, '-V, --version', say.version)
		.addOption(new Option('--arm <name>', say.arm))
		.addOption(new Option('--data <folder>', say.data))
		.addOption(new Option('--language <code>', say.language).choices(languageCodes))
		.addOption(new Option('--plain', say.plain))
		.addOption(new Option('--no-color', say.noColor))
		.addOption(new Option('--man', say.man))
		.addHelpText('before', say.before)
		.addHelpText('after', say.after)
		.exitOverride()
		.configureOutput({outputError: (text, write) => write(`${text.trim().replace(/\s*\n\s*/g, ' ')}\n`)})
		.allowExcessArguments()
		.action(async (flags: ProgramFlags, command: Command) => {
			const [unknown] = command.args;
			if (unknown !== undefined) {
				const known = command
					.createHelp()
					.visibleCommands(command)
					.map((one) => one.name());
				command.error(say.unknownCommand({command: shown(unknown), meant: didYouMean(unknown, known), known}));
			}
			if (flags.man) {
				const {runHelp} = await import('./commands/help.js');
				return leave(await runHelp(program, {topic: undefined, man: true}));
			}
			const {runCheck} = await import('./commands/check.js');
			leave(await runCheck({...flags, version: packageJson.version}));
		});
	if (mayNameCommand(process.argv.slice(2)))
		addCommands(program, packageJson.version, async (work) => leave(await work));
	return program;
}

/** Whether a word may be a command's name, or help wants their table. Else the first screen need not wait for it. */
const mayNameCommand = (words: readonly string[]): boolean =>
	words.some((word) => !/^-./.test(word) || /^(?:-\w*h|--help|--man)$/.test(word));

// A full disk or a reader that went away would end the process with a stack trace, were nobody listening.
let isOutputLost = false;
process.stdout.on('error', () => {
	isOutputLost = true;
});

/** Ends the process as soon as its output is out: timers of libraries would hold it up for no one. */
function leave(status: number): void {
	process.exitCode = status;
	process.stdout.write('', () => process.exit(status === 0 && isOutputLost ? 1 : status));
}

/** Faults of the command line end with 2; help and version with 0; anything else is a fault of the program. */
function statusOf(error: unknown): number {
	if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
	const {sentence, isOurs} = unforeseen(error);
	process.stderr.write(`${sentence}\n`);
	return isOurs ? 70 : 1;
}

// Node puts U+FFFD in the place of bytes that are not UTF-8, so that another file would be meant.
if ([...process.argv.slice(2), process.env.ARMDRIFT_DATA].some((word) => word?.includes('\uFFFD'))) {
	process.stderr.write(`${say.notUtf8}\n`);
	leave(2);
} else
	commandLine()
		.parseAsync()
		.catch((error: unknown) => leave(statusOf(error)));
