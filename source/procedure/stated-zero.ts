import {mean} from '../measures/statistics.js';
import type {Facts} from './facts.js';
import {gaugeReading, inGaugeUnit} from './hold-limits.js';
import {freeZeroSteps} from './step-groups.js';

/** The zero of a gauge that was read free of the arm, in its own unit, with its standard uncertainty. */
export type StatedZero = {readonly zero: number; readonly zeroUncertainty: number};

/**
 * The mean of what the pointer showed before the first round and after the last; undefined where neither was read. Each
 * reading is good to step/√12 (JCGM 100:2008 F.2.2.1); a drift between them may have stood anywhere between (4.3.7).
 */
export function statedZero(facts: Facts): StatedZero | undefined {
	const read = freeZeroSteps.flatMap((id) => {
		const value = facts.number(id);
		return value === undefined ? [] : [inGaugeUnit(value, facts)];
	});
	if (read.length === 0) return;
	const halfDrift = (Math.max(...read) - Math.min(...read)) / 2;
	const {step} = gaugeReading(facts);
	return {
		zero: mean(read),
		zeroUncertainty: Math.hypot(step / Math.sqrt(12 * read.length), halfDrift / Math.sqrt(3)),
	};
}
