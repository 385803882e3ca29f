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
	title: 'Arme',
	none: 'Noch kein Arm abgelegt.',
	span: ({first, last, total, hasKeys, part}: Span) =>
		`${first} bis ${last} von ${total}${part === undefined ? '' : ` mit „${part}“ im Namen`}, fällige zuerst${hasKeys ? '; links, rechts blättern' : ''}.`,
	/** One line of the list: where an arm stands. */
	stands: ({last, due}: {readonly last: string; readonly due: string}) =>
		[last, due].filter((one) => one !== '').join(', '),
	/** When it is due, where nothing before it says what is meant. */
	due: ({inDays}: Pick<DueArm, 'inDays'>) => (inDays > 0 ? `nächste ${results.due({inDays})}` : results.due({inDays})),
	lastVerdict: ({date, ...one}: Pick<PastCheck, 'date' | 'outcome' | 'verdict' | 'voidBecause'>) =>
		`${past.state(one)} am ${dayText(date)}`,
	noVerdictYet: 'noch kein Urteil',
	aside: 'beiseite',
	deckOpen: 'nicht spielbereit',
	more: 'weitere Arme',
	find: 'Arm suchen: Teil des Namens eintippen',
	findTitle: 'Arm suchen',
	typePart: 'Teil des Namens eintippen. Groß oder klein ist gleich. Nur Enter zeigt alle.',
	noneWith: ({typed}: {readonly typed: string}) =>
		`Kein Arm hat „${typed}“ im Namen. Anderen Teil eintippen, oder Enter für die ganze Liste.`,
	dueFirst: 'Zuerst fällig:',
	/** An arm's own page. */
	one: {
		/** Its latest verdict, as a sentence. */
		last: ({verdict, date}: {readonly verdict: string; readonly date: string}) =>
			`Letzte Prüfung am ${dayText(date)}: ${verdict}.`,
		noVerdict: 'Noch keine Prüfung kam zu einem Urteil.',
		formerly: ({names}: {readonly names: readonly string[]}) => `Hieß früher ${listed(names)}.`,
		nextCheck: ({date, inDays}: Pick<DueArm, 'date' | 'inDays'>) =>
			`Nächste Prüfung am ${dayText(date)}: ${results.due({inDays})}.`,
		noNextCheck: 'Kein Tag für die nächste Prüfung gesetzt.',
		aside: 'Beiseite: Prüfungen bieten ihn nicht an, nichts ist fällig.',
		deckOpen: 'Laufwerk NICHT spielbereit: noch zurückzubauen.',
		done: 'An ihm gemacht:',
		putBack: 'Laufwerk spielbereit machen',
		recheck: 'Nachprüfung',
		start: 'neue volle Prüfung',
		past: ({checks}: Counted) => `frühere Prüfungen (${checks})`,
		report: 'Bericht, alle Prüfungen in einem',
		events: 'notieren, was gemacht wurde',
		profile: 'Profil',
	},
	/** Of the line on the first screen. */
	onFile: ({arms: count, due}: {readonly arms: number; readonly due: number}) =>
		`alle Arme: ${count}${due === 0 ? '' : `, ${due} fällig`}`,
};
