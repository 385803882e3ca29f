import constants from '../../shared/constants.json' with {type: 'json'};

/** Arithmetic mean. @throws RangeError without values */
export const mean = (values: readonly number[]): number => {
	if (values.length === 0) throw new RangeError('The mean of no values is not defined.');
	return values.reduce((sum, value) => sum + value, 0) / values.length;
};

/** Sum of squared deviations from the mean, in two passes: the one-pass formula loses all digits on NIST StRD NumAcc4. */
export const squaredDeviations = (values: readonly number[]): number => {
	const centre = mean(values);
	return values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
};

/** Root sum of squares. */
export const rootSumSquares = (...parts: readonly number[]): number =>
	Math.sqrt(parts.reduce((sum, part) => sum + part ** 2, 0));

export type Spread = {readonly sd: number; readonly degreesOfFreedom: number};

/**
 * Standard deviation pooled over groups (JCGM 100:2008 4.2.4): s² = Σ(n−1)s² / Σ(n−1). Null when no group has two
 * values, for then nothing is known of it. Below 1e-9 it is 0: that is rounding, not spread.
 */
export const pooledSpread = (groups: readonly (readonly number[])[]): Spread | null => {
	const filled = groups.filter((group) => group.length > 1);
	const degreesOfFreedom = filled.reduce((sum, group) => sum + group.length - 1, 0);
	if (degreesOfFreedom === 0) return null;
	const sd = Math.sqrt(filled.reduce((sum, group) => sum + squaredDeviations(group), 0) / degreesOfFreedom);
	return {sd: sd < constants.comparisonSlack.value ? 0 : sd, degreesOfFreedom};
};
