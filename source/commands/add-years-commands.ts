import {type Command, InvalidArgumentError, Option} from 'commander';

type Leave = (status: number) => void;

/** A whole number as people type it on a command line. */
const wholeNumber =
	(least: number) =>
	(text: string): number => {
		const value = Number(text);
		if (/^\d+$/.test(text) && Number.isSafeInteger(value) && value >= least) return value;
		throw new InvalidArgumentError(`A whole number from ${least} up is wanted.`);
	};

/** The commands that look at past checks: `list` and `due`. */
export function addYearsCommands(program: Command, leave: Leave): void {
	program
		.command('list')
		.description('past checks, newest first, one a line')
		.allowExcessArguments(false)
		.option('--arm <name>', 'only those of this arm, also under the names that it had before')
		.option('--limit <count>', 'no more than so many', wholeNumber(1))
		.addOption(new Option('--as <form>', 'form of the list').choices(['text', 'json']).default('text'))
		.action(async (_own: unknown, command: Command) => {
			// The program itself has --arm too, and is the one that gets it.
			const options = command.optsWithGlobals<{arm?: string; limit?: number; as: string; data?: string}>();
			const {runListCommand} = await import('./list-command.js');
			leave(await runListCommand(options));
		});
	program
		.command('due')
		.description('arms by the day of their next check; ends with 10 when one is due, else with 0')
		.allowExcessArguments(false)
		.option('--within <days>', 'only those that are due within so many days', wholeNumber(0))
		.option('-q, --quiet', 'print nothing: the exit status tells')
		.option('--calendar <file>', 'write all dates as a calendar (RFC 5545); - for standard output')
		.option('--force', 'replace a file that is no calendar of this program')
		.action(async (_own: unknown, command: Command) => {
			const {runDueCommand} = await import('./due-command.js');
			leave(await runDueCommand(command.optsWithGlobals()));
		});
}
