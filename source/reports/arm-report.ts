import type {PastCheck} from '../check/past-check.js';
import type {Overridden} from '../pages/verdict-lines.js';
import {rowOf} from '../results/past-row.js';
import {dayText} from '../words/dates.js';
import {words} from '../words/index.js';
import {reportWords} from '../words/reports.js';
import type {CheckSource, Imprint} from './check-source.js';
import {aboutCheck, imprinted, runningHead} from './parts/about.js';
import {cautionsPart, deckPart} from './parts/deck-part.js';
import {findingsPart} from './parts/findings-part.js';
import {methodPart} from './parts/method-part.js';
import {verdictPart} from './parts/verdict-part.js';
import {checksTables, yearsPart} from './parts/years-part.js';
import {around, type Report, type Section, sentenceBlock, tableBlock, typed} from './report.js';

const {about, captions, sections, titles, years} = reportWords;

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
	const isPractice = check.practice !== undefined;
	return {
		title: around(source.arm, (arm) => titles.arm({arm, isPractice})),
		running: runningHead(source.arm, check),
		about: [[about.checksThatCount, String(1 + newest.history.length)], ...aboutCheck(check)],
		sections: [
			{...verdictPart(newest), title: sections.stands({day: dayText(check.startedAt.slice(0, 10))})},
			...findingsPart(newest),
			...(newest.history.length === 0 ? [onlyCheck(newest)] : yearsPart(newest)),
			...overriddenPart(source),
			...notCountedPart(source),
			deckPart(newest),
			cautionsPart,
			methodPart(check, issued),
		],
		foot: about.armFoot(imprinted(imprint, check)),
	};
}

const onlyCheck = ({record: {check, issued}}: CheckSource): Section => ({
	title: sections.years,
	blocks: [sentenceBlock(years.onlyCheck), ...checksTables([rowOf(check, issued)])],
});

function overriddenPart({overridden}: ArmSource): Section[] {
	const rows = overridden.flatMap(({date, overridden: list}) =>
		list.map(({title, sentence: failed, reason}) => [dayText(date), title, failed, typed(reason)]),
	);
	if (rows.length === 0) return [];
	const table = tableBlock(captions.overriddenEarlier, ['date', 'step', 'failed', 'reason'], rows);
	return [{title: sections.overridden, blocks: [table]}];
}

function notCountedPart({notCounted}: ArmSource): Section[] {
	if (notCounted.length === 0) return [];
	const rows = notCounted.map(({date, voidBecause, isVoidUnknown, outcome, id}) => [
		dayText(date),
		isVoidUnknown
			? words.results.voidUnknown
			: voidBecause === undefined
				? years.noFigures({outcome})
				: around(voidBecause, (reason) => years.voidBecause({reason})),
		id,
	]);
	return [{title: sections.notCounted, blocks: [tableBlock(captions.notCounted, ['date', 'why', 'id'], rows)]}];
}
