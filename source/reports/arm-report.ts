import type {PastCheck} from '../check/past-check.js';
import type {Overridden} from '../pages/verdict-lines.js';
import {dayText} from '../pages/years/day-text.js';
import {rowOf} from '../results/past-row.js';
import type {CheckSource, Imprint} from './check-source.js';
import {aboutCheck, footOf} from './parts/about.js';
import {cautionsPart} from './parts/cautions-part.js';
import {deckPart} from './parts/deck-part.js';
import {findingsPart} from './parts/findings-part.js';
import {methodPart} from './parts/method-part.js';
import {titleOf} from './parts/practice-part.js';
import {verdictPart} from './parts/verdict-part.js';
import {checksTables, yearsPart} from './parts/years-part.js';
import {type Report, type Section, sentence, typed} from './report.js';

/** What a report on an arm's history is made from. */
export type ArmSource = {
	/** The name that it has today. */
	readonly arm: string;
	/** Its newest check that counts, with the ones before it. */
	readonly newest: CheckSource;
	/** What was overridden in the earlier checks, newest first. */
	readonly overridden: readonly {readonly date: string; readonly overridden: readonly Overridden[]}[];
	/** Checks of the arm that are on file and do not count, newest first. */
	readonly notCounted: readonly PastCheck[];
};

/** An arm over all its checks that count: where it stands, what changed, and how it came there. */
export function armReport(source: ArmSource, imprint: Imprint): Report {
	const {newest} = source;
	const {check, issued} = newest.record;
	return {
		title: titleOf(check, 'History of a tonearm: ', typed(source.arm)),
		about: [['Checks that count', String(1 + newest.history.length)], ...aboutCheck(check)],
		sections: [
			{...verdictPart(newest), title: `Where it stands: check of ${dayText(check.startedAt.slice(0, 10))}`},
			...findingsPart(newest),
			...(newest.history.length === 0 ? [onlyCheck(newest)] : yearsPart(newest)),
			...overriddenPart(source),
			...notCountedPart(source),
			deckPart(newest),
			cautionsPart,
			methodPart(check, issued),
		],
		foot: `${footOf(imprint, check)} The readings of each check are in its own report: armdrift report with its id.`,
	};
}

const onlyCheck = ({record: {check, issued}}: CheckSource): Section => ({
	title: 'Over the years',
	blocks: [sentence('This is the only check so far that counts.'), ...checksTables([rowOf(check, issued)])],
});

function overriddenPart({overridden}: ArmSource): Section[] {
	const rows = overridden.flatMap(({date, overridden: list}) =>
		list.map(({title, sentence: why, reason}) => [dayText(date), title, why, typed(reason)]),
	);
	if (rows.length === 0) return [];
	const head = ['date', 'step', 'what did not pass', 'reason given'];
	return [
		{
			title: 'Overridden in earlier checks',
			blocks: [{kind: 'table', caption: 'Gone on although it did not pass', head, rows}],
		},
	];
}

function notCountedPart({notCounted}: ArmSource): Section[] {
	if (notCounted.length === 0) return [];
	const rows = notCounted.map(({date, voidBecause, outcome, id}) => [
		dayText(date),
		voidBecause === undefined ? `no figures (${outcome})` : ['void: ', typed(voidBecause)],
		id,
	]);
	return [
		{
			title: 'Checks that do not count',
			blocks: [{kind: 'table', caption: 'On file, and in no figure above', head: ['date', 'why', 'id'], rows}],
		},
	];
}
