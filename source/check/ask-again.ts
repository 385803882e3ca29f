import type {StepId} from '../procedure/step-ids.js';
import type {Check} from './check.js';

/** Marks answers to be confirmed again; each keeps its old value as the offer. */
export function askAgain(check: Check, steps: readonly StepId[]): Check {
	const marked = steps.flatMap((id) => {
		const old = check.answers[id];
		if (!old) return [];
		const {override: _dropped, ...rest} = old;
		return [[id, {...rest, again: true as const}] as const];
	});
	return marked.length === 0 ? check : {...check, answers: {...check.answers, ...Object.fromEntries(marked)}};
}
