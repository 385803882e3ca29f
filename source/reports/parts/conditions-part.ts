import type {Answer, Check} from '../../check/check.js';
import {factsOfSeries, progressOf} from '../../check/progress.js';
import {levelLines} from '../../pages/level-consequence.js';
import type {Facts} from '../../procedure/facts.js';
import {type StageId, type Step, takes} from '../../procedure/step.js';
import {tickStates} from '../../procedure/ticks.js';
import {carriedMn} from '../../procedure/weighing.js';
import {seriesThatCounts} from '../../results/document-of-check.js';
import {reportWords} from '../../words/reports.js';
import {tickText, titleOf} from '../../words/step-text.js';
import {around, type ReportBlock, type Section, type TableCell, typed} from '../report.js';

const {conditions, sections} = reportWords;

type Fact = readonly [name: string, value: TableCell];
type Group = {readonly title: keyof typeof conditions.groups; readonly stages: readonly StageId[]};

const groups: readonly Group[] = [
	{title: 'room', stages: ['mat', 'level', 'next']},
	{title: 'prepared', stages: ['safe', 'damping', 'bias', 'wires']},
	{title: 'force', stages: ['force', 'clearance']},
	{title: 'zero', stages: ['probe']},
	{title: 'biasOn', stages: ['bias-on']},
	{title: 'arm', stages: ['arm']},
	{title: 'tools', stages: ['tools']},
];

/** Under what it was measured: every answer as it was typed, and what was worked out from it at once. */
export function conditionsPart(check: Check): Section {
	const {visible, facts} = progressOf(check);
	const tables = groups.flatMap(({title, stages}): ReportBlock[] => {
		const rows = visible
			.filter(({stage, isPrivate}) => stages.includes(stage) && !isPrivate)
			.flatMap((step) => answerRows(step, facts, check.answers));
		return rows.length === 0 ? [] : [{kind: 'facts', caption: conditions.groups[title], facts: rows}];
	});
	const workedOut = workedOutFrom(factsOfSeries(check, seriesThatCounts(check)));
	return {
		title: sections.conditions,
		blocks: [...(workedOut.length > 0 ? [{kind: 'list', items: workedOut} as const] : []), ...tables],
	};
}

function answerRows(step: Step, facts: Facts, answers: Readonly<Record<string, Answer>>): Fact[] {
	const {id, input} = step;
	const answer = answers[id];
	if (
		!answer ||
		answer.typed === '' ||
		id === 'next-check' ||
		['profile', 'still', 'rounds', 'verdict', 'bias-result'].includes(input.kind)
	)
		return [];
	if (takes(step, 'ticks'))
		return tickStates(step, facts).map(({line, mark}) => [tickText(step.id, line), conditions.ticked[mark ?? 'open']]);
	return [
		[
			titleOf(id),
			answer.override ? around(answer.typed, (text) => conditions.overridden({answer: text})) : typed(answer.typed),
		],
	];
}

function workedOutFrom(facts: Facts): string[] {
	const [carried, playingMn] = [carriedMn(facts), facts.number('playing-force')];
	return [
		...levelLines(facts).flatMap((one) => (one.kind === 'line' ? [one.text] : [])),
		...(carried === undefined || playingMn === undefined ? [] : [conditions.carried({carriedMn: carried, playingMn})]),
	];
}
