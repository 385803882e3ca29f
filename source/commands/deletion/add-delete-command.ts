import type {Command} from 'commander';

type Leave = (status: number) => void;

/** The command that removes an arm for good: `delete`. */
export function addDeleteCommand(program: Command, leave: Leave): void {
	program
		.command('delete')
		.description('remove an arm with all its checks, after writing a back-up of them')
		.allowExcessArguments(false)
		.option('--arm <name>', 'the arm to delete')
		.option('--name <arm>', 'its name once more, instead of typing it when asked')
		.option('--backup <file>', 'where the back-up is written (else in the data folder, under "backups")')
		.action(async (_own: unknown, command: Command) => {
			// The program itself has --arm too, and is the one that gets it.
			const options = command.optsWithGlobals<{arm?: string; name?: string; backup?: string; data?: string}>();
			const {runDeleteCommand} = await import('./delete-command.js');
			leave(await runDeleteCommand({...options, version: program.version() ?? ''}));
		});
}
