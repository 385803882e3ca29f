import {guardIsClear, guardWindowMm, stylusWindowMm} from '../measures/clearance.js';
import {isBelow, isWithin} from '../measures/compare.js';
import type {Facts} from './facts.js';
import {type Problem, problem, wayTo} from './problem.js';

export type ClearanceState = ReturnType<typeof clearanceState>;

/** Both windows, and where the value stands in them once it is known. */
export function clearanceState(facts: Facts) {
	const stylusMm = facts.number('clearance');
	const depth = facts.is('guard-on', 'no-guard') ? undefined : facts.number('guard-depth');
	const stylusWindow = stylusWindowMm(facts.number('mat-thickness') ?? 0);
	return {
		stylusMm,
		stylusWindow,
		/** The window at the guard's underside; undefined without a guard or with an unknown depth. */
		guardWindow: depth === undefined ? undefined : guardWindowMm(stylusWindow, depth),
		guardMm: depth === undefined || stylusMm === undefined ? undefined : stylusMm - depth,
	};
}

/** Why the clearance does not pass, if so. */
export function clearanceProblem(facts: Facts): Problem | undefined {
	const {stylusMm, stylusWindow, guardMm} = clearanceState(facts);
	if (stylusMm === undefined) return;
	const again = wayTo('set-height', 'clearance');
	const [low, high] = stylusWindow;
	const side = isBelow(stylusMm, low) ? 'low' : 'high';
	if (!isWithin(stylusMm, stylusWindow))
		return problem('stylus-height', {stylusMm, side, lowMm: low, highMm: high}, again);
	if (guardMm !== undefined && !guardIsClear(stylusMm, stylusMm - guardMm))
		return problem('guard-too-near', {guardMm}, again, wayTo('take-mat-off', 'mat'));
	return;
}
