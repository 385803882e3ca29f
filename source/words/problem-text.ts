import type {ProblemValues, Trouble} from '../procedure/problem.js';
import {problems} from './en/problems.js';

/** What a person reads of a problem: one sentence, or one for each line left; nothing where nothing is wrong. */
export function problemText(trouble: Trouble | undefined): string {
	if (!trouble) return '';
	const {id, values} = trouble;
	// The table has for each id a sentence of just its values; the compiler cannot follow that through a look-up.
	return (problems[id] as (values: ProblemValues[typeof id]) => string)(values);
}
