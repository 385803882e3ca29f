import type {Facts} from './facts.js';
import {type Problem, problem, setTo} from './problem.js';
import {linesOf} from './read-answer.js';
import type {StepOf} from './step.js';

/** Where a list that is ticked line by line stands. Stored as `line=yes` or `line=no` in the order of ticking. */
export type TickState = {readonly line: string; readonly mark: 'yes' | 'no' | undefined};

export function tickStates({id, input}: StepOf<'ticks'>, facts: Facts): readonly TickState[] {
	const marks = facts.list(id);
	return linesOf(input, facts).map((line) => ({
		line,
		mark: marks.includes(`${line}=yes`) ? 'yes' : marks.includes(`${line}=no`) ? 'no' : undefined,
	}));
}

/** The lines that have no mark yet. */
export const openLines = (states: readonly TickState[]): string[] =>
	states.flatMap(({line, mark}) => (mark === undefined ? [line] : []));

/** The line that is asked now; undefined when every line has its mark. */
export const nextLine = (states: readonly TickState[]): string | undefined => openLines(states)[0];

/** What the lines that were answered with no leave to be done. */
export function ticksProblem(step: StepOf<'ticks'>, facts: Facts): Problem | undefined {
	const states = tickStates(step, facts);
	const missing = states.filter(({mark}) => mark === 'no');
	if (nextLine(states) || missing.length === 0) return;
	const yes = facts.list(step.id).filter((mark) => mark.endsWith('=yes'));
	const values = {list: step.id, lines: missing.map(({line}) => line)};
	return problem('lines-left', values, setTo('tick-again', step.id, yes));
}

export const describeTicks = (marks: readonly string[]): string =>
	marks.map((mark) => mark.replace('=', ': ')).join(', ');
