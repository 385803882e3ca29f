import type {Answer, Check} from '../../check/check.js';
import {factsOfSeries, progressOf} from '../../check/progress.js';
import {levelConsequence} from '../../pages/level-consequence.js';
import type {Facts} from '../../procedure/facts.js';
import type {StageId, Step} from '../../procedure/step.js';
import {takes} from '../../procedure/step.js';
import {tickStates} from '../../procedure/ticks.js';
import {carriedMn} from '../../procedure/weighing.js';
import {seriesThatCounts} from '../../results/document-of-check.js';
import {formatIn} from '../../units.js';
import {tickText, titleOf} from '../../words/step-text.js';
import type {Block, Cell, Section} from '../report.js';
import {typed} from '../report.js';

type Fact = readonly [name: string, value: Cell];
type Group = {readonly title: string; readonly stages: readonly StageId[]};

const groups: readonly Group[] = [
	{title: 'Room, mat and level', stages: ['room', 'mat', 'level']},
	{title: 'Prepared', stages: ['safe', 'damping', 'bias', 'wires']},
	{title: 'Guard, tracking force, clearance', stages: ['force', 'clearance']},
	{title: 'Zero of the gauge, read free', stages: ['probe']},
	{title: 'Bias on', stages: ['bias-on']},
	{title: 'Arm', stages: ['arm']},
	{title: 'Cartridge', stages: ['cartridge']},
	{title: 'Gauge and tools', stages: ['tools']},
];

/** Under what it was measured: every answer as it was typed, and what was worked out from it at once. */
export function conditionsPart(check: Check): Section {
	const {visible, facts} = progressOf(check);
	const tables = groups.flatMap(({title, stages}): Block[] => {
		const rows = visible
			.filter(({stage}) => stages.includes(stage))
			.flatMap((step) => rowsOf(step, facts, check.answers));
		return rows.length === 0 ? [] : [{kind: 'facts', caption: title, facts: rows}];
	});
	const workedOut = workedOutLines(factsOfSeries(check, seriesThatCounts(check)));
	return {
		title: 'Conditions',
		blocks: [...(workedOut.length > 0 ? [{kind: 'list', items: workedOut} as const] : []), ...tables],
	};
}

function rowsOf(step: Step, facts: Facts, answers: Readonly<Record<string, Answer>>): Fact[] {
	const {id, input} = step;
	const answer = answers[id];
	if (!answer || answer.typed === '' || ['profile', 'still', 'rounds', 'verdict', 'bias-result'].includes(input.kind))
		return [];
	if (takes(step, 'ticks'))
		return tickStates(step, facts).map(({line, mark}) => [tickText(step.id, line), mark ?? 'not answered']);
	return [[titleOf(id), [typed(answer.typed), ...(answer.override ? [' (overridden)'] : [])]]];
}

function workedOutLines(facts: Facts): string[] {
	const carried = carriedMn(facts);
	const playing = facts.number('playing-force');
	const level = levelConsequence(facts).flatMap((one) => (one.kind === 'line' ? [one.text] : []));
	return [
		...level,
		...(carried === undefined || playing === undefined
			? []
			: [
					`The gauge carried ${formatIn(carried, 'gf')} = ${formatIn(carried, 'mN')}, ${((100 * carried) / playing).toFixed(1)} % of the playing force.`,
				]),
	];
}
