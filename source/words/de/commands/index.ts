import {listed} from '../../numbers.js';
import {misfitText, valueText} from '../misfits.js';
import {deleting} from './deleting.js';
import {exchange} from './exchange.js';

type ArmMeant = {
	/** As it was typed. */
	readonly arm: string;
	/** The known name that was probably meant. */
	readonly meant?: string | undefined;
};

const hasPastCheck = ({arm, meant}: ArmMeant): string =>
	meant === undefined
		? `There is no past check of "${arm}"; see "armdrift list" for the arms that have any.`
		: `There is no past check of "${arm}"; did you mean "${meant}"?`;

/** The subcommands: what they print, and why they refuse. Names and paths are as they came. */
export const commands = {
	outputFailed: ({code}: {readonly code: string}) => `Standard output could not be written (${code}).`,
	optionRefused: ({option, because}: {readonly option: string; readonly because: string}) => `${option}: ${because}`,
	compute: {
		oneOnly: 'Give one of these only: a file, --id or --schema.',
		nameFile: 'Name a FILE to read, or send a document to standard input: armdrift compute FILE.',
		noFile: ({name}: {readonly name: string}) => `${name}: no such file.`,
		notRead: ({name, code}: {readonly name: string; readonly code: string | undefined}) =>
			`${name}: could not be read (${code ?? 'unknown reason'}).`,
		notJson: ({name, reason}: {readonly name: string; readonly reason: string}) =>
			`${name}: not a JSON document (${reason}).`,
		tooLarge: ({name, mostMb}: {readonly name: string; readonly mostMb: number}) =>
			`${name}: larger than ${mostMb} MB, which no document is.`,
		noFigure: ({name}: {readonly name: string}) =>
			`${name}: its numbers are so large or so small that no figure can be worked out from them.`,
		fault: ({at, sentence}: {readonly at: string; readonly sentence: string}) => `${at}: ${sentence}`,
	},
	/** An arm that was named by a part of its name. */
	armNamed: {
		taken: ({typed, arm}: {readonly typed: string; readonly arm: string}) => `"${typed}" is taken for "${arm}".`,
		takenOrNew: ({typed, arm}: {readonly typed: string; readonly arm: string}) =>
			`"${typed}" is taken for "${arm}". To check another arm, start armdrift without --arm.`,
		several: ({typed, arms}: {readonly typed: string; readonly arms: readonly string[]}) =>
			`"${typed}" fits several arms: ${listed(arms.map((one) => `"${one}"`))}. Type more of the name.`,
	},
	list: {
		none: ({dataDir}: {readonly dataDir: string}) => `There are no past checks in "${dataDir}".`,
		noneOfArm: hasPastCheck,
		noneSuch: 'No past check is like that.',
		unknownVerdict: ({
			verdict,
			meant,
			known,
		}: {
			readonly verdict: string;
			readonly meant: string | undefined;
			readonly known: readonly string[];
		}) =>
			meant === undefined
				? `There is no verdict "${verdict}"; there are: ${known.join(', ')}.`
				: `There is no verdict "${verdict}"; did you mean "${meant}"?`,
	},
	due: {
		none: 'No arm has a date for its next check, or none in that time.',
		noneOfArm: hasPastCheck,
		noCalendar: 'No arm has a date for its next check, so there is no calendar to write.',
		lastCheck: ({date, because}: {readonly date: string; readonly because: string}) => `last check ${date}. ${because}`,
		written: ({arms, cancelled, file}: {readonly arms: number; readonly cancelled: number; readonly file: string}) => {
			const dates = arms === 0 ? 'no date' : arms === 1 ? 'the date of one arm' : `the dates of ${arms} arms`;
			const taken = cancelled === 0 ? '' : `, and took away ${cancelled === 1 ? 'one' : cancelled} set aside`;
			return `Wrote ${dates} to "${file}"${taken}.`;
		},
	},
	report: {
		none: ({dataDir}: {readonly dataDir: string}) => `There is no past check in "${dataDir}" to report on.`,
		noneOfArm: hasPastCheck,
		open: ({id}: {readonly id: string}) =>
			`Check ${id} is still open: come to its end first, then its report can be written.`,
		ofOtherArm: ({id, of, arm}: {readonly id: string; readonly of: string; readonly arm: string}) =>
			`Check ${id} is one of "${of}", not of "${arm}": leave one of the two out.`,
		noneCounts: ({arm}: {readonly arm: string}) =>
			`No check of "${arm}" counts: all are void or without figures. Name one of them by its id, see "armdrift list".`,
		written: ({file}: {readonly file: string}) => `Wrote the report to "${file}".`,
		allOrOne: 'Give an id or --all, not both.',
		folderWanted: 'Name the folder for the reports with --out.',
	},
	exchange: {
		...exchange,
		misfit: ({where, at, why}: {readonly where: string; readonly at: string; readonly why: string}) =>
			`${where}.${misfitText({at, why})}`,
		value: (value: Parameters<typeof valueText>[0]) => `${valueText(value)}.`,
	},
	delete: deleting,
	practice: {
		/** Marks the folder of practice data. */
		mark: 'Checks of invented tonearms, made with "armdrift practice". No reading in this folder is real.\nIt can be removed at any time; nothing else depends on it.\n',
		noArm: ({arm, meant}: ArmMeant) =>
			meant === undefined
				? `There is no practice arm "${arm}"; see "armdrift practice --arms".`
				: `There is no practice arm "${arm}"; did you mean "${meant}"?`,
		unknownArm: ({arm}: {readonly arm: string}) =>
			`The practice check that is open is of an arm "${arm}", which this version of the program does not have: begin another one.`,
		seedWanted: ({most}: {readonly most: number}) => `Wanted: --seed with a whole number from 0 to ${most}.`,
	},
	/** What lies where: the name of each place. */
	paths: {
		data: 'data',
		checks: 'filed checks',
		index: 'index',
		reports: 'reports',
		backups: 'back-ups',
		practice: 'practice',
	},
	help: {
		oneOnly: 'Give a topic or --man, not both.',
		unknown: ({
			topic,
			meant,
			known,
		}: {
			readonly topic: string;
			readonly meant: string | undefined;
			readonly known: readonly string[];
		}) =>
			meant === undefined
				? `There is no topic or command "${topic}"; there are: ${known.join(', ')}.`
				: `There is no topic or command "${topic}"; did you mean "${meant}"?`,
		topics: 'Topics (armdrift help TOPIC):',
		commands: '\nCommands (armdrift help COMMAND):',
		more: '\nOptions and examples: armdrift --help\nAll of it as a manual page: armdrift --man | man -l -\n',
		/** Headings of the manual page, which are set in capitals there, and its first line. */
		man: {
			name: 'NAME',
			synopsis: 'SYNOPSIS',
			description: 'DESCRIPTION',
			options: 'OPTIONS',
			commands: 'COMMANDS',
			examples: 'EXAMPLES',
			usage: '[options]',
			about: 'check a tonearm at the bench',
		},
	},
	/** The workbench on the disk: checks that are started, repeated and marked. */
	desk: {
		newArm: 'a new arm',
		itsEnd: 'its end',
		nothingOpen: 'There is no unfinished check; start a new one.',
		cameToEnd: 'That check had come to its end; it is filed now, see past checks.',
		voidAlready: ({reason}: {readonly reason: string}) => `That check is void already: ${reason}.`,
		notVoid: 'That check is not void.',
		/** What is noted beside one check, or beside all of them, cannot be read. */
		countsNotKnown: ({sentence, ofAll}: {readonly sentence: string; readonly ofAll: boolean}) =>
			ofAll
				? `${sentence} Until then nobody knows which checks are void: all are left out of comparisons, trend and due dates.`
				: `${sentence} Until then nobody knows whether the check is void: it is left out of comparisons, trend and due dates.`,
		filedElsewhere: ({filed, own}: {readonly filed: string; readonly own: string}) =>
			`This check was filed from elsewhere meanwhile, with other answers, as ${filed}. Yours goes on as ${own}: both are kept.`,
		nothingToRepeat: 'No arm has a past check to repeat; start a full one.',
		nothingToRepeatOf: ({arm, meant}: ArmMeant) =>
			meant === undefined
				? `There is no past check of "${arm}" to repeat; start a full one with --arm.`
				: `There is no past check of "${arm}" to repeat; did you mean "${meant}"?`,
		listedWrongly: ({id, dataDir}: {readonly id: string; readonly dataDir: string}) =>
			`The check ${id} is listed under another arm than its own. Remove the folder "index" in "${dataDir}": it is made anew from the checks.`,
		remarkInTheWay: ({sentence}: {readonly sentence: string}) => `${sentence} Move that file away, then delete again.`,
	},
	/** The last lines on the normal screen: what is saved or filed, and how to go on. */
	parting: {
		saved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
			`Saved: the check of ${arm} stands at '${step}'.`,
		practiceSaved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
			`PRACTICE saved: ${arm} stands at '${step}'.`,
		waiting: ({arm, step, goOn}: {readonly arm: string; readonly step: string; readonly goOn: string}) =>
			`The check of ${arm} still waits at '${step}'. Go on with: ${goOn}`,
		goOn: ({goOn}: {readonly goOn: string}) => `Go on with: ${goOn}`,
		goOnWithDeck: ({isReady, goOn}: {readonly isReady: boolean; readonly goOn: string}) =>
			isReady ? `Deck ready to play. Go on with: ${goOn}` : `Deck not ready to play. Go on with: ${goOn}`,
		nothingOpen: 'Left; no check is open.',
		filed: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
			`Filed as ${id}: ${verdict ?? 'no verdict'}.`,
		practiceFiled: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
			`PRACTICE, filed as ${id}: ${verdict ?? 'no verdict'}.`,
		deckNotReady: 'Deck NOT ready to play: see its put-back list under past checks.',
		deckReady: 'Deck ready to play; volume down for the first record.',
		practiceReport: ({command}: {readonly command: string}) => `Report on it: ${command}`,
	},
};
