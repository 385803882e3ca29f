import {Argument, type Command} from 'commander';
import {type Shell, shells} from './completion/shells.js';

type Leave = (status: number) => void;

const installing = `
bash  eval "$(armdrift completion bash)"     in ~/.bashrc
zsh   source <(armdrift completion zsh)      in ~/.zshrc, after compinit
fish  armdrift completion fish | source      in config.fish`;

/** `help`, in place of commander's own, and the completion of command lines. Both follow from commander's table. */
export function addHelpCommands(program: Command, leave: Leave): void {
	program.helpCommand(false);
	program
		.command('help')
		.description('explain a topic or a command; alone, list them')
		.allowExcessArguments(false)
		.argument('[topic]', 'topic or command')
		.option('--man', 'print a manual page: armdrift help --man | man -l -')
		.action(async (topic: string | undefined, options: {man?: boolean}) => {
			const {runHelpCommand} = await import('./help/help-command.js');
			leave(await runHelpCommand(program, {topic, ...options}));
		});
	program
		.command('completion')
		.description('print a script that completes command lines at the Tab key')
		.allowExcessArguments(false)
		.addArgument(new Argument('<shell>', 'the shell').choices(shells))
		.addHelpText('after', installing)
		.action(async (shell: Shell) => {
			const {scripts} = await import('./completion/scripts.js');
			const {printOut} = await import('./print-out.js');
			leave(await printOut(scripts[shell]));
		});
	program
		.command('complete', {hidden: true})
		.addArgument(new Argument('<shell>').choices(shells))
		.argument('[words...]')
		.action(async (shell: Shell, words: string[]) => {
			const {runCompleteCommand} = await import('./completion/complete-command.js');
			leave(await runCompleteCommand(program, shell, words));
		});
}
