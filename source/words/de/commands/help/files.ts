import {exitStatusRows} from '../command-line.js';
import type {Topic} from '../topics.js';

/** What the program writes, and where its data lie. */
export const onFiles: readonly Topic[] = [
	{
		name: 'files',
		title: 'reports, exports, imports, the calendar',
		blocks: [
			'A report of a check, of an arm over the years, or of every check: a page for reading and printing, markdown for an e-mail, or a page for the maker of the arm.',
			{
				lines: [
					'armdrift report --as html --out check.html',
					'armdrift report --arm "north deck" --as html --out arm.html',
					'armdrift report --all --as html --out FOLDER',
				],
			},
			'With --all each check gets a file of its own; with --arm too, only those of one arm. A report is one file: no script, nothing from outside. That of a check begins with one page for the owner of the arm; the rest is for whoever sets it up. On the page of a past check one key writes it: it then lies in reports/ in the data folder, under the id of its check, and opens where there is a desktop. On paper every page names arm and day in Chromium 131 and later; other browsers may leave that out.',
			'An export carries everything but the check in progress, one check a line (JSON Lines). The same data make the same export, whichever way they came.',
			{
				lines: [
					'armdrift export --as json --out all.jsonl',
					'armdrift export --as csv --out figures.csv',
					'armdrift export --as csv --table bias --out bias.csv',
					'armdrift import all.jsonl',
				],
			},
			'An import first shows what is new. It overwrites nothing, and the same import twice adds nothing. An arm that was renamed on either side is one arm with all its names afterwards. Where both sides renamed it the name of here stays, and that is said. Exports of earlier versions, a single JSON document, are still imported, up to 512 MB.',
			'The CSV has one row a probe radius, in percent of the playing force, + toward the rim, ± for 95 %. With --table bias it has one row a round that was read with the bias on, in the unit of the gauge. done_since, done_on and done_note say what was done to the arm before that check: the kinds (levelled, leads, bearing, cartridge, moved, other), their days and the words typed.',
			'Customers are in no CSV and in no report for a maker. They stand only on the sheet of their check and in the JSON, which is the back-up.',
			{lines: ['armdrift due --calendar checks.ics']},
			'The calendar has one event for each arm and a reminder a week before. Take the file in again after the next check: the event moves, it does not double. An overdue check is put on tomorrow; an arm that was set aside loses its event.',
		],
	},
	{
		name: 'data',
		title: 'where the data lies, what the environment changes, exit statuses',
		blocks: [
			'Every answer is on the disk before the next question. Each finished check is a file of its own in the data folder, with the result as it was issued that day. The folder is the one given with --data, else the one that ARMDRIFT_DATA names, else one called armdrift, in the usual place for settings of programs. "armdrift paths" tells where data, index, reports and back-ups lie. Removing the program leaves them there.',
			{
				rows: [
					['ARMDRIFT_DATA', 'folder of the data'],
					['NO_COLOR, FORCE_COLOR', 'without colours, with colours'],
					['ACCESSIBLE=1, TERM=dumb', 'plain numbered questions instead of full screens, as with --plain'],
					['INK_SCREEN_READER=1', 'screens in an order that can be read aloud'],
				],
			},
			'How the program ends; a verdict never changes it:',
			{rows: exitStatusRows},
			'To complete commands, options, arms and ids of checks at the Tab key, put the line of your shell into its start-up file: ~/.bashrc, ~/.zshrc after compinit, config.fish. The package has the same scripts in dist/completions/.',
			{
				lines: [
					'eval "$(armdrift completion bash)"',
					'source <(armdrift completion zsh)',
					'armdrift completion fish | source',
				],
			},
			'"man armdrift" shows the manual page where npm\'s folder is on the path of manuals. This always does:',
			{lines: ['armdrift --man | man -l -']},
		],
	},
];
