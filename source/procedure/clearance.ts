import {guardIsClear, guardWindowMm, stylusWindowMm, type WindowMm} from '../measures/clearance.js';
import {isBelow, isWithin} from '../measures/compare.js';
import type {Facts} from './facts.js';
import type {Problem} from './problem.js';

export type ClearanceState = {
	readonly stylusMm: number | undefined;
	readonly stylusWindow: WindowMm;
	/** The window at the guard's underside; undefined without a guard or with an unknown depth. */
	readonly guardWindow: WindowMm | undefined;
	readonly guardMm: number | undefined;
};

/** Both windows, and where the value stands in them once it is known. */
export function clearanceState(facts: Facts): ClearanceState {
	const stylusMm = facts.number('clearance');
	const depth = facts.is('guard-on', 'no-guard') ? undefined : facts.number('guard-depth');
	const stylusWindow = stylusWindowMm(facts.number('mat-thickness') ?? 0);
	return {
		stylusMm,
		stylusWindow,
		guardWindow: depth === undefined ? undefined : guardWindowMm(stylusWindow, depth),
		guardMm: depth === undefined || stylusMm === undefined ? undefined : stylusMm - depth,
	};
}

/** Why the clearance does not pass, if so. */
export function clearanceProblem(facts: Facts): Problem | undefined {
	const {stylusMm, stylusWindow, guardMm} = clearanceState(facts);
	if (stylusMm === undefined) return;
	const again = {id: 'set-height', do: 'ask-again', steps: ['clearance']} as const;
	const [low, high] = stylusWindow;
	if (!isWithin(stylusMm, stylusWindow))
		return {
			id: 'stylus-height',
			values: {stylusMm, side: isBelow(stylusMm, low) ? 'low' : 'high', lowMm: low, highMm: high},
			ways: [again],
		};
	if (guardMm !== undefined && !guardIsClear(stylusMm, stylusMm - guardMm))
		return {
			id: 'guard-too-near',
			values: {guardMm},
			ways: [again, {id: 'take-mat-off', do: 'ask-again', steps: ['mat']}],
		};
	return;
}
