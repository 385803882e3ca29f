import type {Facts} from './facts.js';
import type {Problem} from './problem.js';
import {linesOf} from './read-answer.js';
import type {Input, Line} from './step.js';
import type {IdOf} from './step-ids.js';

type Ticks = Extract<Input, {kind: 'ticks'}>;

/** Where a list that is ticked line by line stands. Stored as `line=yes` or `line=no` in the order of ticking. */
export type TickState = {readonly line: Line; readonly mark: 'yes' | 'no' | undefined};

export const tickStates = (input: Ticks, facts: Facts, marks: readonly string[]): readonly TickState[] =>
	linesOf(input, facts).map((line) => ({
		line,
		mark: marks.includes(`${line.id}=yes`) ? 'yes' : marks.includes(`${line.id}=no`) ? 'no' : undefined,
	}));

/** The line that is asked now; undefined when every line has its mark. */
export const nextLine = (states: readonly TickState[]): Line | undefined =>
	states.find(({mark}) => mark === undefined)?.line;

/** What the lines that were answered with no leave to be done. */
export function ticksProblem(stepId: IdOf<'ticks'>, input: Ticks, facts: Facts): Problem | undefined {
	const marks = facts.list(stepId);
	const states = tickStates(input, facts, marks);
	const missing = states.filter(({mark}) => mark === 'no');
	if (nextLine(states) || missing.length === 0) return;
	const yes = marks.filter((mark) => mark.endsWith('=yes'));
	return {
		id: 'lines-left',
		values: {list: stepId, lines: missing.map(({line}) => line.id)},
		ways: [{label: 'done now: tick again', do: 'set', step: stepId, value: yes, typed: describeTicks(yes)}],
	};
}

export const describeTicks = (marks: readonly string[]): string =>
	marks.map((mark) => mark.replace('=', ': ')).join(', ');
