import type {Topic} from './topics.js';

/** What `--as json` prints, by its key: the unit stands at the end of the key. A key that holds more is told as a whole. */
export const jsonKeys = {
	/** `list`, one object a check. */
	list: {
		id: 'of the check, as other commands take it',
		date: 'day on the calendar where it was made',
		startedAt: 'time of its start, with its offset',
		arm: 'name of the arm at that time',
		armToday: 'its present name',
		outcome: 'complete, stopped, interrupted, or put back',
		voidBecause: 'why it does not count; null where it does',
		isVoidUnknown: 'whether the note that would say so cannot be read',
		verdict: 'good, usable, beyond, undecided or off-scale; null where it came to none',
		atWorst: 'the worst verdict that the ± leaves open',
		'probe[].place': 'inner, outer or other',
		'probe[].radiusMm': 'distance from the spindle',
		'probe[].pullPct': 'pull, + toward the rim, percent of playing force; null off scale',
		'probe[].pullUncertaintyPct': 'its ± for 95 %',
		'probe[].bandPct': 'friction',
		'probe[].bandUncertaintyPct': 'its ± for 95 %',
		'probe[].tiltPct': 'what the tilt makes of the pull; null where no level was read',
		'probe[].tiltUncertaintyPct': 'its ± for 95 %',
		'measuredWith.playingMn': 'playing tracking force in millinewtons',
		'measuredWith.effectiveLengthMm': 'effective length of the arm',
		'measuredWith.loading': 'gravity or spring',
		'measuredWith.guard': 'guard in the weighing: included, left-out or none',
		'measuredWith.tools': 'name of the set of tools',
		'measuredWith.temperatureC': 'room in degrees Celsius; null where it is not known',
		'measuredWith.withoutSettingUp': 'whether its ± leave out the setting up, as early versions did',
		doneSince: 'what was done to the arm since the check before: ids',
		doneNote: 'what was done, in words, where it was something else',
		tookMinutes: 'minutes of work at the bench',
		nextDate: 'day of the next check; null where none was wanted',
		'overrides[].step': 'id of a step that was overridden',
		'overrides[].reason': 'id of the reason',
		'overrides[].typed': 'the reason as it was typed; null where it was chosen from the list',
		'overrides[].at': 'time of the override',
	},
	/** `due`, one object an arm. */
	due: {
		arm: 'its present name',
		nextDate: 'day of its next check',
		inDays: 'days from today; due at 0 and below',
		because: 'why it is due then',
		lastId: 'id of its last check',
		lastDate: 'day of that check',
	},
	/** `report` of a check: these beside those of the list. */
	report: {
		isPractice: 'whether the arm is invented',
		finishedAt: 'time of its end',
		putBackAt: 'time at which the deck was put back later; null where it was not',
		nextBecause: 'why the next check is due then',
		figures: 'as issued on the day, with the keys of "compute"; null where there are none',
		findings: 'as issued on the day, the first one first',
		document: 'the readings as a document for "compute"; null where they are not enough',
		record: 'the whole check as in an export, without customer and shop; values in the units of "compute"',
	},
	/** `paths`: full paths, whether anything lies there yet or not. */
	paths: {
		data: 'folder of all data: open check, profiles and settings',
		checks: 'its folder of filed checks, one file a check',
		index: 'its folder of the index, which the program makes again where it is missing',
		reports: 'its folder of reports written with a key on the screen',
		backups: 'its folder of the back-ups of deleted arms',
		practice: 'its folder of practice data',
	},
	/** `report --arm`. */
	arm: {
		arm: 'its present name',
		formerNames: 'its names before, the oldest first',
		checks: 'all its checks, the newest first, with the keys of the list',
	},
};

/** The help topic on scripts. */
export const scripts: Topic = {
	name: 'scripts',
	title: 'what --as json holds, tables, and filters',
	blocks: [
		'"list", "due", "report" and "paths" print JSON with --as json. It is UTF-8, with numbers unrounded. A key ends with its unit, and null stands for what is not known. Characters that do not show are escaped. A list has one object a line. New keys may come; those of today stay, and keep their meaning.',
		{
			lines: [
				'armdrift list --verdict beyond --since 2026 --as json',
				'armdrift due --arm north --as json',
				'armdrift report --all --as json --out FOLDER',
				'armdrift compute check.json',
				'armdrift compute --schema',
			],
		},
		'"compute" works out only the figures: one JSON document in, one out. --schema prints the JSON Schema of that document. --id ID takes a filed check.',
		'A part of the name of an arm is enough, in any case and without accents: o finds Öland. Where one arm fits, it is taken and named. Where several fit, all are named, and the command ends with 2. Only "delete" wants the whole name.',
		'"list", an object for each check:',
		{rows: Object.entries(jsonKeys.list)},
		'"due", an object for each arm:',
		{rows: Object.entries(jsonKeys.due)},
		'"report" of a check, beside the keys of the list:',
		{rows: Object.entries(jsonKeys.report)},
		'"report --arm":',
		{rows: Object.entries(jsonKeys.arm)},
		'"paths":',
		{rows: Object.entries(jsonKeys.paths)},
		'"export --as csv" is a table of the figures, one row a radius. With --table bias it is a table of the readings with the bias on, in the unit of the gauge. An import adds what it can. It ends with 5 where it left out what differs here.',
	],
};
