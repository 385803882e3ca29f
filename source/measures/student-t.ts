import quantile from '@stdlib/stats-base-dists-t-quantile';
import constants from '../../shared/constants.json' with {type: 'json'};
import {rootSumSquares} from './statistics.js';

/**
 * Coverage factor for 95 %: the 0.975 quantile of Student's t (JCGM 100:2008 table G.2), the normal one for
 * infinite degrees of freedom. Degrees of freedom need not be whole.
 */
export const coverageFactor = (degreesOfFreedom: number): number =>
	Number.isFinite(degreesOfFreedom) ? quantile(0.975, degreesOfFreedom) : constants.normalQuantile975.value;

/** The same for 99 %, the 0.995 quantile, for finite degrees of freedom. */
export const coverageFactor99 = (degreesOfFreedom: number): number => quantile(0.995, degreesOfFreedom);

/** A part of a sum: its standard uncertainty, and how well that is known. */
export type UncertainPart = {readonly uncertainty: number; readonly degreesOfFreedom: number};

/**
 * Effective degrees of freedom of a sum by Welch and Satterthwaite (JCGM 100:2008 G.4.1). Not rounded; above a
 * million, and where no part has finite degrees of freedom, it is infinite.
 */
export const effectiveDegreesOfFreedom = (parts: readonly UncertainPart[]): number => {
	const whole = rootSumSquares(...parts.map(({uncertainty}) => uncertainty));
	// Ratios to the whole keep fourth powers of small forces from vanishing.
	const inverse = parts.reduce(
		(sum, {uncertainty, degreesOfFreedom}) => sum + (uncertainty / whole) ** 4 / degreesOfFreedom,
		0,
	);
	return inverse * constants.infiniteDegreesOfFreedom.value < 1 ? Number.POSITIVE_INFINITY : 1 / inverse;
};
