import {Command, CommanderError, Option} from 'commander';
import packageJson from '../package.json' with {type: 'json'};
import {addHelpCommands} from './commands/add-help-commands.js';
import {addPracticeCommand} from './commands/add-practice-command.js';
import {addReportCommand} from './commands/add-report-command.js';
import {addYearsCommands} from './commands/add-years-commands.js';
import {addDataCommands} from './commands/data/add-data-commands.js';
import {addDeleteCommand} from './commands/deletion/add-delete-command.js';
import {examples, exitStatuses} from './commands/help-texts.js';

type Flags = {readonly arm?: string; readonly data?: string; readonly plain?: boolean; readonly color: boolean};

type ComputeFlags = {readonly schema?: boolean; readonly id?: string; readonly check?: string};

/** Builds the command line. What a command needs is loaded when it runs, so that help and version are quick. */
function commandLine(): Command {
	const program = new Command('armdrift')
		.description('Guides a tonearm check at the bench: side pull and friction at the inner and outer radius.')
		.version(packageJson.version)
		.addOption(new Option('--arm <name>', 'start a check of this arm straight away'))
		.addOption(new Option('--data <folder>', 'folder of the data (else ARMDRIFT_DATA, else the usual place)'))
		.addOption(new Option('--plain', 'plain lines: for screen readers, pipes and simple terminals'))
		.addOption(new Option('--no-color', 'no colours (NO_COLOR does the same)'))
		.addHelpText('before', examples)
		.addHelpText('after', exitStatuses)
		.showSuggestionAfterError()
		.exitOverride()
		.configureOutput({outputError: (text, write) => write(`${text.trim().replace(/\s*\n\s*/g, ' ')}\n`)})
		.allowExcessArguments()
		.action(async (flags: Flags, command: Command) => {
			const [unknown] = command.args;
			if (unknown !== undefined)
				command.error(
					`error: unknown command '${shown(unknown)}'; the commands are: ${command
						.createHelp()
						.visibleCommands(command)
						.map((one) => one.name())
						.join(', ')}`,
				);
			const {runCheck} = await import('./commands/check.js');
			leave(await runCheck({...flags, version: packageJson.version}));
		});
	if (mayNameCommand(process.argv.slice(2))) addCommands(program);
	return program;
}

/** Whether a word may be a command's name, or help wants their table. Else the first screen need not wait for it. */
const mayNameCommand = (words: readonly string[]): boolean =>
	words.some((word) => !/^-./.test(word) || /^(?:-\w*h|--help)$/.test(word));

function addCommands(program: Command): void {
	program
		.command('recheck')
		.description('repeat the last check of an arm: of the one that is due first, where none is named')
		.allowExcessArguments(false)
		.argument('[arm]', 'name of the arm')
		.action(async (arm: string | undefined) => {
			const flags = program.opts<Flags>();
			const {runCheck} = await import('./commands/check.js');
			leave(
				await runCheck({...flags, ...(arm === undefined ? {} : {arm}), recheck: true, version: packageJson.version}),
			);
		});
	program
		.command('compute')
		.description('work out the figures of a JSON document, as JSON')
		.allowExcessArguments(false)
		.argument('[file]', 'the document; - or nothing for standard input')
		.option('--schema', 'print the JSON Schema of the document')
		.option('--id <id>', 'take a saved check instead of a file')
		// The spelling of earlier versions.
		.addOption(new Option('--check <id>').hideHelp())
		.action(async (file: string | undefined, {check, id = check, ...options}: ComputeFlags) => {
			const {runComputeCommand} = await import('./commands/compute-command.js');
			leave(await runComputeCommand({file, ...options, id, data: program.opts<Flags>().data}));
		});
	addDataCommands(program, leave);
	addYearsCommands(program, leave);
	addDeleteCommand(program, leave);
	addReportCommand(program, leave, packageJson.version);
	addPracticeCommand(program, leave, packageJson.version);
	addHelpCommands(program, leave);
}

/** A word from the command line, safe to print. */
const shown = (word: string): string => word.replace(/[\p{Cc}\p{Cf}]/gu, '?').slice(0, 40);

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
	const message = error instanceof Error ? error.message : String(error);
	process.stderr.write(`armdrift stopped by a fault of its own: ${message.split('\n')[0]}\n`);
	return 70;
}

commandLine()
	.parseAsync()
	.catch((error: unknown) => leave(statusOf(error)));
