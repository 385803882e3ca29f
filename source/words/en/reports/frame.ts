import {scaleAndMn} from '../../numbers.js';

type Titled = {arm: string; isPractice: boolean};

const ifPractice = (isPractice: boolean): string => (isPractice ? 'PRACTICE: ' : '');

/** Titles, headings and captions, and what stands at the head and the foot. */
export const frame = {
	/** What a report is called; one of practice says so first of all. */
	titles: {
		check: ({arm, isPractice}: Titled) => `${ifPractice(isPractice)}Tonearm check: ${arm}`,
		maker: ({arm, isPractice}: Titled) => `${ifPractice(isPractice)}Measured on a tonearm: ${arm}`,
		arm: ({arm, isPractice}: Titled) => `${ifPractice(isPractice)}History of a tonearm: ${arm}`,
	},

	/** What a report is about and where it comes from: names at its head, a line at its foot. */
	about: {
		unnamedArm: 'unnamed arm',
		checksThatCount: 'Checks that count',
		practice: 'Practice',
		invented: 'an invented arm: nothing here is real',
		arm: 'Arm',
		date: 'Date',
		force: scaleAndMn,
		answers: {
			'arm-serial': 'Serial number',
			'cartridge-name': 'Cartridge',
			'playing-force': 'Playing force',
			'tools-name': 'Gauge and tools',
			'room-temperature': 'Room',
			'room-note': 'Note',
		},
		foot: ({id, program, day, version}: {id: string; program: string; day: string; version: string}) =>
			`Check ${id}, made with armdrift ${program}; report written on ${day} by armdrift ${version}.`,
		armFoot: ({id, program, day, version}: {id: string; program: string; day: string; version: string}) =>
			`Check ${id}, made with armdrift ${program}; report written on ${day} by armdrift ${version}. Each check has its readings in its own report: armdrift report with its id.`,
	},

	sections: {
		beforeAndAfter: 'Before and after',
		bias: 'Bias against skating',
		cautions: 'Cautions',
		conditions: 'Conditions',
		deck: 'Deck',
		details: 'More figures',
		figures: 'What the figures mean',
		findings: 'What it means',
		hidden: 'What was hidden',
		howMeasured: 'How it was measured',
		howSure: 'How sure it is',
		limitsOfMethod: 'Limits of the method',
		measured: 'What was measured',
		method: 'Appendix: method and uncertainty',
		notCounted: 'Checks that do not count',
		overridden: 'Overridden in earlier checks',
		readings: 'Readings as taken',
		ruledOut: 'What was ruled out',
		stands: ({day}: {day: string}) => `Where it stands: check of ${day}`,
		verdict: 'Verdict',
		years: 'Over the years',
	},

	/** Captions of tables and titles of pictures. */
	captions: {
		about: 'Arm, cartridge, gauge and room',
		bands: 'Pull and friction',
		beforeAndNow: 'Before and now',
		bias: 'Bias by radius, percent of the playing force',
		biasToBeSet: ({column}: {column: string}) =>
			`Bias by radius, percent of the playing force. '${column}': what this gauge shows in the middle of both limits`,
		budget: 'What the ± is made of',
		checks: 'All checks that count, newest first',
		curve: 'Wanted reading over the record, percent of the playing force',
		done: 'Done between checks; what a check was told stands on its day',
		figures: 'Figures, each with its ± for 95 %; percent is of the playing force',
		figuresAt: ({place}: {place: string}) =>
			`Figures at the ${place} radius, percent of the playing force, each with its ± for 95 %`,
		hidden: 'Found, and hidden, in percent',
		lever: 'The lever on its clock face',
		notCounted: 'On file, and in no figure above',
		overridden: 'Overridden: steps passed all the same',
		overriddenEarlier: 'Steps passed all the same',
		putBack: 'Put-back list',
		radii: 'Pull and friction, percent of the playing force, each with its ± for 95 %',
		ruledOut: 'Causes outside the arm, as the technician confirmed or measured them',
		series: ({number}: {number: number}) => `Series ${number}`,
		seriesClosed: ({number, because}: {number: number; because: string}) => `Series ${number}, ended (${because})`,
		seriesTakenBack: ({number}: {number: number}) => `Series ${number}: taken back, in no figure`,
	},

	/** Headings of the columns of tables. */
	columns: {
		by: 'by',
		cause: 'cause',
		date: 'date',
		done: 'what was done',
		failed: 'what did not pass',
		holdBand: 'friction',
		id: 'id',
		innerLimit: 'inner limit',
		limit: 'limit',
		note: 'note',
		outerLimit: 'outer limit',
		place: 'place',
		playingForce: 'playing force',
		radius: 'radius',
		reading: 'reading',
		reason: 'reason given',
		room: 'room',
		round: 'round',
		sidePull: 'pull',
		state: 'state',
		step: 'step',
		tools: 'gauge and tools',
		verdict: 'verdict',
		why: 'why',
	},
};
