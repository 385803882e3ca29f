import {type Command, Option} from 'commander';
import type {ReportForm} from './report-command.js';

type Leave = (status: number) => void;

const explained = `
Without ID and --arm it is about the newest check that is not void. With --arm it is about the arm over all its checks;
as maker, about its newest check. A page needs nothing but a browser: no network, no script.`;

/** `report`: a check or the history of an arm, as a page, as Markdown, or as a page for the maker. */
export function addReportCommand(program: Command, leave: Leave, version: string): void {
	program
		.command('report')
		.description('write a report of a check, or of an arm over the years')
		.allowExcessArguments(false)
		.argument('[id]', 'id of the check, see "armdrift list"')
		.option('--arm <name>', 'the arm whose history it is about')
		.addOption(
			new Option('--as <form>', 'html for reading and printing, markdown for an e-mail, maker for a repair')
				.choices(['html', 'markdown', 'maker'])
				.makeOptionMandatory(),
		)
		.option('--out <file>', 'write to this file; else, and with -, to standard output')
		.option('--practice', 'a practice check instead of a real one')
		.option('--force', 'replace a file that is there already')
		.addHelpText('after', explained)
		.action(async (id: string | undefined, _own: unknown, command: Command) => {
			type Options = {arm?: string; as: ReportForm; out?: string; force?: boolean; practice?: boolean; data?: string};
			// The program itself has --arm too, and is the one that gets it.
			const options = command.optsWithGlobals<Options>();
			const {runReportCommand} = await import('./report-command.js');
			leave(await runReportCommand({...options, id, version}));
		});
}
