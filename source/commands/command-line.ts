import {Argument, type Command, CommanderError, Option} from 'commander';
import {commandLine as say} from '../words/command-line.js';
import type {PracticeExtent} from '../workbench.js';
import type {ExportFlags} from './export.js';
import {csvTableNames, dayOrSpan, verdictWords, wholeNumberFrom} from './option-values.js';
import type {ReportForm} from './report.js';
import {type Shell, shells} from './shell-words.js';

/** Options of the program, which it takes before and behind a command's name. */
export type ProgramFlags = {
	readonly arm?: string;
	readonly data?: string;
	readonly plain?: boolean;
	readonly color: boolean;
	readonly man?: boolean;
};

/** Runs what was asked for, and leaves with the exit status that it comes to. */
type Run = (work: Promise<number>) => Promise<void>;

const choice = (flags: string, about: string, choices: readonly string[]): Option =>
	new Option(flags, about).choices(choices);

/**
 * The table of commands: name, what they take, and the file that runs them. That file is loaded when its command runs,
 * so that help and version are quick; completion and the manual page follow from the table.
 */
export function addCommands(program: Command, version: string, run: Run): void {
	const add = (name: string, about: string): Command =>
		program.command(name).description(about).allowExcessArguments(false);
	/** The options of a command with the program's own: of two with one name, the program is the one that gets it. */
	const all = <T>(command: Command): T & ProgramFlags => command.optsWithGlobals<T & ProgramFlags>();
	program.helpCommand(false);
	program.hook('preAction', async (_program, command) => {
		// `help` has it as an option of its own.
		if (!all(command).man || command === program || command.name() === 'help') return;
		const {runHelp} = await import('./help.js');
		throw new CommanderError(await runHelp(program, {topic: undefined, man: true}), 'armdrift.man', '');
	});

	add('recheck', say.recheck.about)
		.argument('[arm]', say.recheck.arm)
		.action(async (arm: string | undefined, _own: unknown, command: Command) => {
			const {runCheck} = await import('./check.js');
			const named = arm === undefined ? {} : {arm};
			await run(runCheck({...all(command), ...named, recheck: true, version}));
		});

	add('compute', say.compute.about)
		.argument('[file]', say.compute.file)
		.option('--schema', say.compute.schema)
		.option('--id <id>', say.compute.id)
		// The spelling of earlier versions.
		.addOption(new Option('--check <id>').hideHelp())
		.action(async (file: string | undefined, _own: unknown, command: Command) => {
			const {check, id = check, schema, data} = all<{schema?: boolean; id?: string; check?: string}>(command);
			const {runComputeCommand} = await import('./compute.js');
			await run(runComputeCommand({file, schema, id, data}));
		});

	add('export', say.export.about)
		.addOption(choice('--as <form>', say.export.as, ['json', 'csv']).makeOptionMandatory())
		.addOption(choice('--table <name>', say.export.table, csvTableNames))
		.option('--out <file>', say.export.out)
		.option('--force', say.export.force)
		.action(async (_own: unknown, command: Command) => {
			const {runExport} = await import('./export.js');
			await run(runExport({...all<ExportFlags>(command), version}));
		});

	add('import', say.import.about)
		.argument('<file>', say.import.file)
		.option('--yes', say.import.yes)
		.action(async (file: string, _own: unknown, command: Command) => {
			const {runImport} = await import('./import.js');
			await run(runImport({...all<{yes?: boolean}>(command), file}));
		});

	add('list', say.list.about)
		.option('--arm <name>', say.list.arm)
		// An unknown one is refused by the command, with the one that may be meant.
		.addOption(choice('--verdict <word>', say.list.verdict, verdictWords).argParser((word) => word))
		.option('--since <date>', say.list.since, dayOrSpan)
		.option('--until <date>', say.list.until, dayOrSpan)
		.option('--limit <count>', say.list.limit, wholeNumberFrom(1))
		.addOption(choice('--as <form>', say.list.as, ['text', 'json']).default('text'))
		.action(async (_own: unknown, command: Command) => {
			const {runList} = await import('./list.js');
			await run(runList(all<{limit?: number; as: string}>(command)));
		});

	add('due', say.due.about)
		.option('--arm <name>', say.due.arm)
		.addOption(choice('--as <form>', say.due.as, ['text', 'json']).default('text'))
		.option('--within <days>', say.due.within, wholeNumberFrom(0))
		.option('-q, --quiet', say.due.quiet)
		.option('--calendar <file>', say.due.calendar)
		.option('--force', say.due.force)
		.action(async (_own: unknown, command: Command) => {
			const {runDue} = await import('./due.js');
			await run(runDue(all(command)));
		});

	add('delete', say.delete.about)
		.option('--arm <name>', say.delete.arm)
		.option('--name <arm>', say.delete.name)
		.option('--backup <file>', say.delete.backup)
		.action(async (_own: unknown, command: Command) => {
			const {runDelete} = await import('./delete.js');
			await run(runDelete({...all<{name?: string; backup?: string}>(command), version}));
		});

	add('report', say.report.about)
		.argument('[id]', say.report.id)
		.option('--arm <name>', say.report.arm)
		.addOption(choice('--as <form>', say.report.as, ['html', 'markdown', 'maker', 'json']).makeOptionMandatory())
		.option('--all', say.report.all)
		.option('--out <file>', say.report.out)
		.option('--practice', say.report.practice)
		.option('--force', say.report.force)
		.addHelpText('after', say.report.after)
		.action(async (id: string | undefined, _own: unknown, command: Command) => {
			type Options = {as: ReportForm; all?: boolean; out?: string; force?: boolean; practice?: boolean};
			const {all: isOfAll, ...options} = all<Options>(command);
			const wanted = {...options, id, version};
			if (isOfAll) {
				const {runReports} = await import('./report-all.js');
				return run(runReports(wanted));
			}
			const {runReport} = await import('./report.js');
			await run(runReport(wanted));
		});

	add('practice', say.practice.about)
		.option('--on <which>', say.practice.on)
		.addOption(choice('--extent <much>', say.practice.extent, ['once', 'probe', 'whole']))
		.option('--seed <number>', say.practice.seed)
		.option('--arms', say.practice.arms)
		.option('--prove <count>', say.practice.prove)
		.addHelpText('after', say.practice.after)
		.action(async (_own: unknown, command: Command) => {
			type Options = {on?: string; extent?: PracticeExtent; prove?: string; seed?: string; arms?: boolean};
			const {prove, arms, ...options} = all<Options>(command);
			if (prove !== undefined) {
				const {runProve} = await import('./prove.js');
				return run(runProve({prove, seed: options.seed}));
			}
			const {printPracticeArms, runPractice} = await import('./practice.js');
			return run(arms ? printPracticeArms() : runPractice({...options, version}));
		});

	add('paths', say.paths.about)
		.addOption(choice('--as <form>', say.paths.as, ['text', 'json']).default('text'))
		.action(async (_own: unknown, command: Command) => {
			const {runPaths} = await import('./paths.js');
			await run(runPaths(all<{as: string}>(command)));
		});

	add('help', say.help.about)
		.argument('[topic]', say.help.topic)
		.option('--man', say.help.man)
		.action(async (topic: string | undefined, _own: unknown, command: Command) => {
			const {man} = all(command);
			const {runHelp} = await import('./help.js');
			await run(runHelp(program, {topic, man}));
		});

	add('completion', say.completion.about)
		.addArgument(new Argument('<shell>', say.completion.shell).choices(shells))
		.addHelpText('after', say.completion.after)
		.action(async (shell: Shell) => {
			const {runCompletion} = await import('./completion.js');
			await run(runCompletion(shell));
		});

	program
		.command('complete', {hidden: true})
		.addArgument(new Argument('<shell>').choices(shells))
		.argument('[words...]')
		.action(async (shell: Shell, words: string[]) => {
			const {runComplete} = await import('./complete.js');
			await run(runComplete(program, shell, words));
		});
}
