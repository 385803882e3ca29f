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
		atWorst: 'the same with its whole ± against it',
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
		'measuredWith.guard': 'stylus guard in the weighing: included, left-out or none',
		'measuredWith.tools': 'name of the set of tools',
		'measuredWith.temperatureC': 'room in degrees Celsius; null where it is not known',
		'measuredWith.withoutSettingUp': 'whether its ± leave out the setting up, as of old',
		doneSince: 'what was done to the arm since the check before: ids',
		doneNote: 'what was done in words, where it was something else',
		tookMinutes: 'minutes that hands were at it',
		nextDate: 'day of the next check; null where none was wanted',
		'overrides[].step': 'id of a step that was gone past',
		'overrides[].reason': 'id of the reason',
		'overrides[].typed': 'the reason in own words; null where it has none',
		'overrides[].at': 'time of it',
	},
	/** `due`, one object an arm. */
	due: {
		arm: 'its present name',
		nextDate: 'day of its next check',
		inDays: 'days from today; 0 and less is due',
		because: 'why it is due then',
		lastId: 'id of its last check',
		lastDate: 'day of that check',
	},
	/** `report` of a check: these beside those of the list. */
	report: {
		isPractice: 'whether the arm is an invented one',
		finishedAt: 'time of its end',
		putBackAt: 'time at which the deck was put back later; null where it was not',
		nextBecause: 'why the next check is due then',
		figures: 'as issued on the day, with the keys that "compute" prints; null where there are none',
		findings: 'as issued on the day, the first one first',
		document: 'the readings as a document for "compute"; null where one cannot be made',
		record: 'the whole check as an export holds it, without customer and shop; values in the base units of "compute"',
	},
	/** `paths`: full paths, whether anything lies there yet or not. */
	paths: {
		data: 'folder of all data: open check, profiles and settings',
		checks: 'its folder of filed checks, one file a check',
		index: 'its folder of the index, made anew from the checks where it is missing',
		reports: 'its folder of reports that a key on the screen wrote',
		backups: 'its folder of the back-ups that deleting an arm wrote',
		practice: 'its folder of practice data',
	},
	/** `report --arm`. */
	arm: {
		arm: 'its present name',
		formerNames: 'names that it had before, the oldest first',
		checks: 'all its checks, the newest first, with the keys of the list',
	},
};

/** The help topic on scripts. */
export const scripts: Topic = {
	name: 'scripts',
	title: 'what --as json holds, tables, and filters',
	blocks: [
		'"list", "due", "report" and "paths" print JSON with --as json: UTF-8, numbers unrounded, the unit at the end of a key, null for what is not known. Controls and other characters that do not show are escaped. A list has one object a line. Keys are not taken away or given another meaning; new ones may come.',
		{
			lines: [
				'armdrift list --verdict beyond --since 2026 --as json',
				'armdrift due --arm north --as json',
				'armdrift report --all --as json --out FOLDER',
				'armdrift compute check.json',
				'armdrift compute --schema',
			],
		},
		'"compute" works out only the figures: one JSON document in, one out. --schema prints the JSON Schema of that document; --id ID takes a saved check.',
		'You may name an arm by a part of its name, without regard to case and accents: o finds Öland. One that fits is taken and said; where several fit, all are named and the command ends with 2. Only "delete" wants the name in full.',
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
		'"export --as csv" is a table of the figures, one row a probe radius; with --table bias, of the readings with the bias on, one row a round, in the unit of the gauge. An import that leaves out what is otherwise here ends with 5, after all else was added.',
	],
};
