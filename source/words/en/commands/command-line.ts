/** How the program ends. */
export const exitStatusRows = [
	['0', 'done'],
	['1', 'could not read or write'],
	['2', 'usage, bad input or no terminal'],
	['3', 'input ended, or left with a check open (saved)'],
	['4', 'another copy is writing'],
	['5', 'an import left something out that differs here'],
	['10', 'something is due'],
	['70', 'internal fault'],
	['129', 'SIGHUP: its terminal is gone'],
	['130', 'Ctrl+C'],
	['131', 'SIGQUIT'],
	['143', 'SIGTERM'],
] as const;

/** The lines of the examples, without their heading. */
const examples = `  armdrift                      start, or go on where you stopped
  armdrift --arm "north deck"   check this arm straight away
  armdrift recheck              the arm due first, quicker than a full check
  armdrift practice             learn it on an invented arm, no turntable
  armdrift due                  which arms are due, and when
  armdrift --plain < answers    answer line by line, or from a file
  armdrift compute check.json   only the figures
  armdrift help readings        how readings are typed; alone it lists topics
`;

const exitStatuses = `Exit status: ${exitStatusRows.map(([status, meaning]) => `${status} ${meaning}`).join('; ')}.`;

/** What `--help` prints, and what is said of a command line that cannot be used. */
export const commandLine = {
	about: 'Guides a tonearm check at the bench: pull and friction at the inner and outer radius.',
	examples,
	/** Stands before the usage: most people want one of these. */
	before: `Examples:\n${examples}`,
	/** Stands behind the options. */
	after: `\n${exitStatuses.replace(/(.{1,79})(?: |$)/g, '$1\n')}A verdict never changes the status.`,
	arm: 'start a check of this arm, named in full or in part',
	data: 'folder of the data (else ARMDRIFT_DATA, else the usual place)',
	language: 'language of what is said (else by the settings, else as the system has it)',
	plain: 'plain lines: for screen readers, pipes and simple terminals',
	noColor: 'no colours (NO_COLOR does the same)',
	notUtf8: 'A name on the command line, or in ARMDRIFT_DATA, is not UTF-8. Rename that file or folder, then try again.',
	man: 'print the manual page: armdrift --man | man -l -',
	/** What stands over the parts of the help. */
	headings: {'Usage:': 'Usage:', 'Arguments:': 'Arguments:', 'Options:': 'Options:', 'Commands:': 'Commands:'},
	withChoices: ({about, choices}: {readonly about: string; readonly choices: readonly string[]}) =>
		`${about} (${choices.join(', ')})`,
	allowed: ({choices}: {readonly choices: readonly string[]}) => `Allowed: ${choices.join(', ')}.`,
	version: 'print the version',
	helpOption: 'print this help',
	wholeNumber: ({least}: {readonly least: number}) => `A whole number from ${least} up is wanted.`,
	dayWanted: 'Wanted: a day as 2026-11-25, a month as 2026-11, or a year.',
	recheck: {
		about: 'repeat the last check of an arm: of the one that is due first, where none is named',
		arm: 'name of the arm, or a part of it',
	},
	compute: {
		about: 'work out the figures of a JSON document, as JSON',
		file: 'the document; - or nothing for standard input',
		schema: 'print the JSON Schema of the document',
		id: 'take a saved check instead of a file',
	},
	export: {
		about: 'write all filed checks, profiles and settings as JSON, one check a line, or the figures as CSV',
		as: 'json: everything; csv: a table',
		table: 'with csv: probe radii with their figures (else), or readings with the bias on',
		out: 'the file to write; - or nothing for standard output',
		force: 'overwrite that file where it is there already',
	},
	import: {
		about: 'add what is new in an export (JSON), after showing what it is; ends with 5 where it left something out',
		file: 'the export',
		yes: 'add it without asking',
	},
	list: {
		about: 'past checks, newest first, one a line',
		arm: 'only those of this arm: a name of today or of then, or a part of one',
		verdict: 'only those that came to it, or to none; void ones are left out',
		since: 'only those of this day or later; a month or a year will do',
		until: 'only those of this day or earlier; a month or a year will do',
		limit: 'no more than so many',
		as: 'form of the list; what json holds is in "armdrift help scripts"',
	},
	due: {
		about: 'arms by the day of their next check; ends with 10 when one is due, else with 0',
		arm: 'only this arm: its name, or a part of it',
		as: 'form of the list; what json holds is in "armdrift help scripts"',
		within: 'only those that are due within so many days',
		quiet: 'print nothing: the exit status tells',
		calendar: 'write all dates as a calendar (RFC 5545); - for standard output',
		force: 'replace a file that is no calendar of this program',
	},
	delete: {
		about: 'remove an arm with all its checks, after writing a back-up of them',
		arm: 'the arm to delete, its name in full',
		name: 'its name once more, instead of typing it when asked',
		backup: 'where the back-up is written (else in the data folder, under "backups")',
	},
	report: {
		about: 'write a report of a check, or of an arm over the years',
		id: 'id of the check, see "armdrift list"',
		arm: 'the arm whose history it is about: its name, or a part of it',
		as: 'html for reading and printing, markdown for an e-mail, maker for a repair, json for scripts',
		all: 'a report of every check, each in its own file; with --arm of every check of it',
		out: 'write to this file; else, and with -, to standard output; with --all, the folder',
		practice: 'a practice check instead of a real one',
		force: 'replace a file that is there already',
		after: `
Without ID and --arm it is about the newest check that is not void. With --arm it is about the arm over all its checks;
as maker, about its newest check. A page needs nothing but a browser: no network, no script.`,
	},
	practice: {
		about: 'practise the check on an invented arm, without a turntable',
		on: 'begin with this invented arm at once, see --arms',
		extent: 'begin at once: one round at each radius, the whole probe, or the whole check',
		seed: 'another seed gives other chance, the same seed the same',
		arms: 'list the invented arms',
		prove: 'probe so many random arms and print how often the figures are right',
		after: `
Practice data stay in a folder of their own, marked as practice, and are never mixed with real checks.`,
	},
	paths: {
		about: 'print where data, index, reports and back-ups lie',
		as: 'form of the list; what json holds is in "armdrift help scripts"',
	},
	help: {
		about: 'explain a topic or a command; alone, list them',
		topic: 'topic or command',
		man: 'print the manual page, as armdrift --man does',
	},
	completion: {
		about: 'print a script that completes command lines at the Tab key',
		shell: 'the shell',
		after: `
bash  eval "$(armdrift completion bash)"     in ~/.bashrc
zsh   source <(armdrift completion zsh)      in ~/.zshrc, after compinit
fish  armdrift completion fish | source      in config.fish`,
	},
};
