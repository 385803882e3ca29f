/** How the program ends. */
export const exitStatusRows = [
	['0', 'done'],
	['1', 'could not read or write'],
	['2', 'usage, bad input or no terminal'],
	['3', 'input ended, or left with a check open (saved)'],
	['4', 'another copy is writing'],
	['5', 'an import left out what differs here'],
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
	plain: 'plain lines: for screen readers, pipes and simple terminals',
	noColor: 'no colours (NO_COLOR does the same)',
	helpOption: 'print this help',
	version: 'print the version',
	/** Headings of the help, by those of the library that prints it. */
	titles: {
		'Usage:': 'Usage:',
		'Arguments:': 'Arguments:',
		'Options:': 'Options:',
		'Commands:': 'Commands:',
	} as Readonly<Record<string, string>>,
	/** What an option may be, behind what it is for. */
	choices: ({choices, usual}: {readonly choices: readonly string[]; readonly usual: string | undefined}) =>
		usual === undefined ? `(${choices.join(', ')})` : `(${choices.join(', ')}; usual: ${usual})`,
	notUtf8: 'A name on the command line, or in ARMDRIFT_DATA, is not UTF-8. Rename that file or folder, then try again.',
	man: 'print the manual page: armdrift --man | man -l -',
	unknownCommand: ({
		command,
		meant,
		known,
	}: {
		readonly command: string;
		readonly meant: string | undefined;
		readonly known: readonly string[];
	}) =>
		meant === undefined
			? `There is no command "${command}". The commands are: ${known.join(', ')}.`
			: `There is no command "${command}". Did you mean "${meant}"?`,
	unknownOption: ({
		option,
		meant,
		command,
	}: {
		readonly option: string;
		readonly meant: string | undefined;
		/** The command that was named; undefined for the program itself. */
		readonly command: string | undefined;
	}) => {
		if (meant !== undefined) return `There is no option ${option} here. Did you mean ${meant}?`;
		return command === undefined
			? `There is no option ${option} here. "armdrift --help" shows the options.`
			: `There is no option ${option} here. "armdrift help ${command}" shows the options.`;
	},
	missingArgument: ({command, argument}: {readonly command: string; readonly argument: string}) =>
		`A word is missing. Type armdrift ${command} <${argument}>.`,
	missingValue: ({flags}: {readonly flags: string}) => `An option lacks its value. Type ${flags}.`,
	missingOption: ({option, choices}: {readonly option: string; readonly choices: readonly string[]}) =>
		`Add ${option} with one of these: ${choices.join(', ')}.`,
	tooManyWords: ({word}: {readonly word: string}) =>
		`"${word}" is one word too many. Put a name of several words in quotes.`,
	notTaken: ({name, typed, because}: {readonly name: string; readonly typed: string; readonly because: string}) =>
		`${name} does not take "${typed}". ${because}`,
	choiceWanted: ({choices}: {readonly choices: readonly string[]}) => `Type one of these: ${choices.join(', ')}.`,
	wholeNumber: ({least}: {readonly least: number}) => `Type a whole number from ${least} up.`,
	dayWanted: 'Type a day like 2026-11-25, a month like 2026-11, or a year.',
	recheck: {
		about: 'repeat the last check of an arm; without a name, of the arm that is due first',
		arm: 'name of the arm, or a part of it',
	},
	compute: {
		about: 'work out the figures of a JSON document, as JSON',
		file: 'the document; without it, or with -, standard input',
		schema: 'print the JSON Schema of the document',
		id: 'take a filed check instead of a file',
	},
	export: {
		about: 'write all filed checks, profiles and settings as JSON, or the figures as CSV',
		as: 'json: everything, one check a line; csv: a table',
		table: 'with csv: the figures at each radius (usual), or the readings with the bias on',
		out: 'the file to write; without it, or with -, standard output',
		force: 'overwrite the file, if it is there already',
	},
	import: {
		about: 'show what is new in an export (JSON), then add it; ends with 5 where it left something out',
		file: 'the export',
		yes: 'add it without asking',
	},
	list: {
		about: 'past checks, newest first, one a line',
		arm: 'only those of this arm: its name of today or of then, or a part of it',
		verdict: 'only those with this verdict, or with none; void checks are left out',
		since: 'only those of this day or later; a month or a year is enough',
		until: 'only those of this day or earlier; a month or a year is enough',
		limit: 'at most this many',
		as: 'form of the list; what json holds is in "armdrift help scripts"',
	},
	due: {
		about: 'arms by the day of their next check; ends with 10 when one is due, else with 0',
		arm: 'only this arm: its name, or a part of it',
		as: 'form of the list; what json holds is in "armdrift help scripts"',
		within: 'only those that are due within this many days',
		quiet: 'print nothing: read the exit status',
		calendar: 'write all dates as a calendar (RFC 5545); - for standard output',
		force: 'overwrite the file, even if it is no calendar of this program',
	},
	delete: {
		about: 'write a back-up of an arm with all its checks, then remove it',
		arm: 'the arm to delete, its name in full',
		name: 'its name once more, so that nothing is asked',
		backup: 'file for the back-up (usual: in the data folder, under "backups")',
	},
	report: {
		about: 'write a report of a check, or of an arm over the years',
		id: 'id of the check, see "armdrift list"',
		arm: 'the arm whose history it is about: its name, or a part of it',
		as: 'html to read and print, markdown for an e-mail, maker for a repair, json for scripts',
		all: 'a report of every check, each in its own file; with --arm, of every check of that arm',
		out: 'the file to write; without it, or with -, standard output; with --all, the folder',
		practice: 'a practice check instead of a real one',
		force: 'overwrite the file, if it is there already',
		after: `
Without ID and --arm: the newest check that is not void. With --arm: the arm over all its checks;
as maker, its newest check. A page needs nothing but a browser: no network, no script.`,
	},
	practice: {
		about: 'practise the check on an invented arm, without a turntable',
		on: 'begin with this invented arm at once, see --arms',
		extent: 'begin at once: one round at each radius, the whole probe, or the whole check',
		seed: 'a number that sets the chance: the same number, the same chance',
		arms: 'list the invented arms',
		prove: 'probe this many random arms, and print how often the figures are right',
		after: `
Practice data stay in a folder of their own, marked as practice, and are never mixed with real checks.`,
	},
	paths: {
		about: 'print where data, index, reports and back-ups are',
		as: 'form of the list; what json holds is in "armdrift help scripts"',
	},
	help: {
		about: 'explain a topic or a command; without one, list them',
		topic: 'topic or command',
		man: 'print the manual page, as armdrift --man does',
	},
	completion: {
		about: 'print a script that completes command lines at the Tab key',
		shell: 'bash, zsh or fish',
		after: `
bash  eval "$(armdrift completion bash)"     in ~/.bashrc
zsh   source <(armdrift completion zsh)      in ~/.zshrc, after compinit
fish  armdrift completion fish | source      in config.fish`,
	},
};
