import {type Command, Option} from 'commander';
import type {ExportForm} from './export-command.js';

type Leave = (status: number) => void;

/** The commands that carry data out and in: `export` and `import`. */
export function addDataCommands(program: Command, leave: Leave): void {
	program
		.command('export')
		.description('write all filed checks, profiles and settings as JSON, or the figures as CSV')
		.allowExcessArguments(false)
		.addOption(
			new Option('--as <form>', 'json: everything; csv: a table of the figures')
				.choices(['json', 'csv'])
				.makeOptionMandatory(),
		)
		.option('--out <file>', 'the file to write; - or nothing for standard output')
		.option('--force', 'overwrite that file where it is there already')
		.action(async (_own: unknown, command: Command) => {
			const options = command.optsWithGlobals<{as: ExportForm; out?: string; force?: boolean; data?: string}>();
			const {runExportCommand} = await import('./export-command.js');
			leave(await runExportCommand({...options, version: program.version() ?? ''}));
		});
	program
		.command('import')
		.description('add what is new in an export (JSON), after showing what it is')
		.allowExcessArguments(false)
		.argument('<file>', 'the export')
		.option('--yes', 'add it without asking')
		.action(async (file: string, _own: unknown, command: Command) => {
			const options = command.optsWithGlobals<{yes?: boolean; data?: string}>();
			const {runImportCommand} = await import('./import-command.js');
			leave(await runImportCommand({...options, file}));
		});
}
