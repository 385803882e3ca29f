import {listed, plural} from '../../numbers.js';
import {misfitText, valueText} from '../misfits.js';
import {meaningOf} from '../system.js';
import {deleting} from './deleting.js';
import {type ArmMeant, desk, parting} from './desk.js';
import {exchange} from './exchange.js';

const hasPastCheck = ({arm, meant}: ArmMeant): string =>
	meant === undefined
		? `There is no past check of "${arm}". "armdrift list" shows the arms with checks.`
		: `There is no past check of "${arm}". Did you mean "${meant}"?`;

/** The subcommands: what they print, and why they refuse. Names and paths are as they came. */
export const commands = {
	outputFailed: ({code}: {readonly code: string}) => `Standard output could not be written (${code}).`,
	optionRefused: ({option, because}: {readonly option: string; readonly because: string}) => `${option}: ${because}`,
	compute: {
		oneOnly: 'Give only one of these: a file, --id or --schema.',
		folder: ({name}: {readonly name: string}) => `${name}: this is a folder. Name a file.`,
		nameFile: 'Name a file to read: armdrift compute FILE.',
		noFile: ({name}: {readonly name: string}) => `${name}: there is no such file.`,
		notRead: ({name, code}: {readonly name: string; readonly code: string | undefined}) =>
			`${name}: ${code === undefined ? 'it could not be read.' : meaningOf(code)}`,
		notJson: ({name, line}: {readonly name: string; readonly line: number}) =>
			`${name}: this is not whole JSON (line ${line}).`,
		tooLarge: ({name, mostMb}: {readonly name: string; readonly mostMb: number}) =>
			`${name}: larger than ${mostMb} MB, too large for a document of figures.`,
		noFigure: ({name}: {readonly name: string}) =>
			`${name}: a number in it is too large or too small to work out figures.`,
		fault: ({at, sentence}: {readonly at: string; readonly sentence: string}) => `${at}: ${sentence}`,
	},
	/** An arm that was named by a part of its name. */
	armNamed: {
		taken: ({typed, arm}: {readonly typed: string; readonly arm: string}) => `"${typed}" is taken to mean "${arm}".`,
		takenOrNew: ({typed, arm}: {readonly typed: string; readonly arm: string}) =>
			`"${typed}" is taken to mean "${arm}". To check another arm, start armdrift without --arm.`,
		several: ({typed, arms}: {readonly typed: string; readonly arms: readonly string[]}) =>
			`"${typed}" fits several arms: ${listed(arms.map((one) => `"${one}"`))}. Type more of the name.`,
	},
	list: {
		none: ({dataDir}: {readonly dataDir: string}) => `There are no past checks in "${dataDir}".`,
		noneOfArm: hasPastCheck,
		noneSuch: 'No past check fits these options.',
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
				? `There is no verdict "${verdict}". The verdicts are: ${known.join(', ')}.`
				: `There is no verdict "${verdict}". Did you mean "${meant}"?`,
	},
	due: {
		none: 'No arm has a date for its next check.',
		noneWithin: ({days}: {readonly days: number}) =>
			plural(days, {one: 'No next check is due within 1 day.', other: `No next check is due within ${days} days.`}),
		noneOfArm: hasPastCheck,
		noCalendar: 'No calendar was written: no arm has a date for its next check.',
		lastCheck: ({date, because}: {readonly date: string; readonly because: string}) => `last check ${date}. ${because}`,
		written: ({arms, cancelled, file}: {readonly arms: number; readonly cancelled: number; readonly file: string}) => {
			const wrote = plural(arms, {
				one: `Wrote the date of 1 arm to "${file}".`,
				other: `Wrote the dates of ${arms} arms to "${file}".`,
			});
			if (cancelled === 0) return wrote;
			const took = plural(cancelled, {
				one: 'It cancels the date of 1 arm that is set aside.',
				other: `It cancels the dates of ${cancelled} arms that are set aside.`,
			});
			return `${wrote} ${took}`;
		},
	},
	report: {
		none: ({dataDir}: {readonly dataDir: string}) => `There is no past check in "${dataDir}" to report on.`,
		noneOfArm: hasPastCheck,
		open: ({id}: {readonly id: string}) => `Check ${id} is still open. Finish it, then write its report.`,
		ofOtherArm: ({id, of, arm}: {readonly id: string; readonly of: string; readonly arm: string}) =>
			`Check ${id} is of "${of}", not of "${arm}". Leave --arm out.`,
		noneCounts: ({arm}: {readonly arm: string}) =>
			`No check of "${arm}" counts: all are void or without figures. Name one by its id: "armdrift list" shows them.`,
		written: ({file}: {readonly file: string}) => `Wrote the report to "${file}".`,
		allOrOne: 'Give an id or --all, not both.',
		folderWanted: 'Name the folder for the reports with --out.',
	},
	exchange: {
		...exchange,
		misfit: ({where, at, why}: {readonly where: string; readonly at: string; readonly why: string}) =>
			`${misfitText({at: at === '' ? where : `${where}.${at}`, why})}.`,
		value: (value: Parameters<typeof valueText>[0]) => `${valueText(value)}.`,
	},
	delete: deleting,
	practice: {
		/** Marks the folder of practice data. */
		mark: 'Checks of invented tonearms, made with "armdrift practice". No reading in this folder is real.\nYou may remove the folder at any time.\n',
		noArm: ({arm, meant}: ArmMeant) =>
			meant === undefined
				? `There is no practice arm "${arm}". "armdrift practice --arms" lists them.`
				: `There is no practice arm "${arm}". Did you mean "${meant}"?`,
		unknownArm: ({arm}: {readonly arm: string}) =>
			`This version has no practice arm "${arm}", so the open practice check cannot go on. Begin another one.`,
		seedWanted: ({most}: {readonly most: number}) => `Type --seed with a whole number from 0 to ${most}.`,
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
				? `There is no topic or command "${topic}". There are: ${known.join(', ')}.`
				: `There is no topic or command "${topic}". Did you mean "${meant}"?`,
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
	desk,
	parting,
};
