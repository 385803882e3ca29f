import {armFromNulls, armFromOffset, type LaidOutArm} from '../measures/layouts.js';
import type {Facts} from './facts.js';
import {answerKinds, type OptionOf} from './step-ids.js';

/** How the pivot distance is worked out where it was not measured. */
export type PivotWay = OptionOf<'arm-pivot-way'>;

/** The pivot distance was left empty, so it is worked out. */
export const isWorkedOut = (facts: Facts): boolean => facts.unknown('arm-pivot-distance');

/** The way that was chosen, where one is needed. */
export const pivotWayOf = (facts: Facts): PivotWay | undefined =>
	isWorkedOut(facts) ? answerKinds['arm-pivot-way'].find((way) => facts.is('arm-pivot-way', way)) : undefined;

/**
 * The arm from effective length and null radii, or offset angle and one null radius: undefined while one of them is
 * missing, null where no arm can be like that.
 */
export function workedOutArm(facts: Facts): LaidOutArm | null | undefined {
	const way = pivotWayOf(facts);
	const lengthMm = facts.number('arm-length');
	const nullMm = facts.number('arm-null-radius');
	if (way === undefined || lengthMm === undefined || nullMm === undefined) return;
	if (way === 'nulls') {
		const otherMm = facts.number('arm-null-other');
		return otherMm === undefined ? undefined : armFromNulls(lengthMm, [nullMm, otherMm]);
	}
	const offsetDeg = facts.number('arm-offset');
	return offsetDeg === undefined ? undefined : armFromOffset(lengthMm, offsetDeg, nullMm);
}

/** The offset angle in degrees: what goes with both null radii, else as it was typed. */
export const offsetOf = (facts: Facts): number | undefined =>
	(pivotWayOf(facts) === 'nulls' ? workedOutArm(facts)?.offsetDeg : undefined) ?? facts.number('arm-offset');
