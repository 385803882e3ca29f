import {exitStatusRows} from '../command-line.js';
import type {Topic} from '../topics.js';

/** What the program writes, and where its data lie. */
export const onFiles: readonly Topic[] = [
	{
		name: 'files',
		title: 'reports, exports, imports, the calendar',
		blocks: [
			'A report tells of one check, of an arm over the years, or of every check. It is a page to read and print, markdown for an e-mail, or a page for the maker.',
			{
				lines: [
					'armdrift report --as html --out check.html',
					'armdrift report --arm "north deck" --as html --out arm.html',
					'armdrift report --all --as html --out FOLDER',
				],
			},
			'With --all each check gets a file of its own; add --arm for the checks of one arm. A report is one file: no script, nothing from outside. A report of a check begins with one page for the owner of the arm. The rest is for whoever sets the arm up. On the page of a past check one key writes its report to reports/ in the data folder. Where there is a desktop, the report opens. On paper every page names arm and day in Chromium 131 and later; other browsers may leave that out.',
			'An export holds everything but the open check, one check a line (JSON Lines). The same data make the same export, whichever way they came.',
			{
				lines: [
					'armdrift export --as json --out all.jsonl',
					'armdrift export --as csv --out figures.csv',
					'armdrift export --as csv --table bias --out bias.csv',
					'armdrift import all.jsonl',
				],
			},
			'An import first shows what is new. It overwrites nothing, and a second import of the same file adds nothing. An arm that was renamed on either side keeps all its names. Where both sides renamed it, the name here stays, and the import says so. Earlier versions wrote a single JSON document: it is still imported, up to 512 MB.',
			'The CSV has one row a radius, in percent of the playing force, + toward the rim, ± for 95 %. With --table bias it has one row a round with the bias on, in the unit of the gauge. done_since, done_on and done_note say what was done to the arm before that check. They hold the kinds (levelled, leads, bearing, cartridge, moved, other), their days and the words typed.',
			'Customers are in no CSV and in no report for a maker. They stand only on the sheet of their check, and in the JSON export, which is the back-up.',
			{lines: ['armdrift due --calendar checks.ics']},
			'The calendar has one event for each arm, with a reminder a week before. Write and load it again after the next check: the event then moves to its new day. An overdue check is put on tomorrow. An arm that was set aside loses its event.',
		],
	},
	{
		name: 'data',
		title: 'where the data lie, what the environment changes, exit statuses',
		blocks: [
			'Every answer is on the disk before the next question. Each finished check has a file of its own in the data folder, with its result of that day. Name the folder with --data or with ARMDRIFT_DATA; --data comes first. Else it is called armdrift, in the usual place for settings of programs. "armdrift paths" prints where data, index, reports and back-ups are. If you remove the program, they stay there.',
			{
				rows: [
					['ARMDRIFT_DATA', 'folder of the data'],
					['NO_COLOR, FORCE_COLOR', 'without colours, with colours'],
					['ACCESSIBLE=1, TERM=dumb', 'plain lines instead of full screens, as with --plain'],
					['INK_SCREEN_READER=1', 'screens in the order for reading aloud'],
				],
			},
			'How the program ends; a verdict never changes it:',
			{rows: exitStatusRows},
			'The Tab key can complete commands, options, arms and ids of checks. Put one of these lines into the start-up file: ~/.bashrc, ~/.zshrc (after compinit) or config.fish. The package has the same scripts in dist/completions/.',
			{
				lines: [
					'eval "$(armdrift completion bash)"',
					'source <(armdrift completion zsh)',
					'armdrift completion fish | source',
				],
			},
			'"man armdrift" shows the manual page where man looks into the folder of npm. This always shows it:',
			{lines: ['armdrift --man | man -l -']},
		],
	},
];
