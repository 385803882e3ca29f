import type {PastCheck} from '../../../check/past-check.js';
import type {DueArm} from '../../../results/years/due.js';
import {dayText} from '../../dates.js';
import {listed} from '../../numbers.js';
import {results} from '../results.js';
import {past} from './past.js';

type Span = {
	readonly first: number;
	readonly last: number;
	readonly total: number;
	/** Keys turn the list. */
	readonly hasKeys: boolean;
	/** Only arms with this in their name. */
	readonly part: string | undefined;
};

type Counted = {readonly checks: number};

/** Arms: their list, how one is found, and where one stands. */
export const arms = {
	title: 'Arms',
	none: 'No arm is on file yet.',
	span: ({first, last, total, hasKeys, part}: Span) =>
		`${first} to ${last} of ${total}${part === undefined ? '' : ` with "${part}" in the name`}, due first${hasKeys ? '; left and right turn the list' : ''}.`,
	/** One line of the list: where an arm stands. */
	stands: ({last, due}: {readonly last: string; readonly due: string}) =>
		[last, due].filter((one) => one !== '').join(', '),
	/** When it is due, where nothing before it says what is meant. */
	due: ({inDays}: Pick<DueArm, 'inDays'>) => (inDays > 0 ? `next ${results.due({inDays})}` : results.due({inDays})),
	lastVerdict: ({date, ...one}: Pick<PastCheck, 'date' | 'outcome' | 'verdict' | 'voidBecause'>) =>
		`${past.state(one)} on ${dayText(date)}`,
	noVerdictYet: 'no verdict yet',
	aside: 'set aside',
	deckOpen: 'deck not put back',
	more: 'more arms',
	find: 'find an arm: type part of its name',
	findTitle: 'Find an arm',
	typePart: 'Type part of its name. Case and accents do not matter. Enter alone lists all.',
	noneWith: ({typed}: {readonly typed: string}) =>
		`No arm has "${typed}" in its name. Type another part, or press Enter for the whole list.`,
	dueFirst: 'Due first:',
	/** An arm's own page. */
	one: {
		/** Its latest verdict, as a sentence. */
		last: ({verdict, date}: {readonly verdict: string; readonly date: string}) =>
			`Last check on ${dayText(date)}: ${verdict}.`,
		noVerdict: 'No check of it came to a verdict yet.',
		formerly: ({names}: {readonly names: readonly string[]}) => `Called ${listed(names)} before.`,
		nextCheck: ({date, inDays}: Pick<DueArm, 'date' | 'inDays'>) =>
			`Next check on ${dayText(date)}: ${results.due({inDays})}.`,
		noNextCheck: 'No day is set for the next check.',
		aside: 'Set aside: checks do not offer it, and nothing is due.',
		deckOpen: 'Deck NOT ready to play: its put-back list waits.',
		done: 'Done to it:',
		putBack: 'put its deck back',
		recheck: 're-check it',
		start: 'new full check of it',
		past: ({checks}: Counted) => `its past checks (${checks})`,
		report: 'write its report, all checks in one',
		events: 'note something that was done to it',
		profile: 'its profile',
	},
	/** Of the line on the first screen. */
	onFile: ({arms: count, due}: {readonly arms: number; readonly due: number}) =>
		`all arms: ${count}${due === 0 ? '' : `, ${due} due`}`,
};
