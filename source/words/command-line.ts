/**
 * Words that are wanted before, or without, all the others: of the command line and its help, and of a program that stops.
 * They are apart so that `--help` and `--version` need not wait for the rest.
 */
export {commandLine, exitStatusRows} from '#language/commands/command-line';
export {terminal as terminalWords} from '#language/terminal';
