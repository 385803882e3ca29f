import quantile from '@stdlib/stats-base-dists-t-quantile';
import constants from '../../shared/constants.json' with {type: 'json'};

/**
 * Coverage factor for 95 %: the 0.975 quantile of Student's t (JCGM 100:2008 table G.2), the normal one for
 * infinite degrees of freedom. Degrees of freedom need not be whole.
 */
export const coverageFactor = (degreesOfFreedom: number): number =>
	Number.isFinite(degreesOfFreedom) ? quantile(0.975, degreesOfFreedom) : constants.normalQuantile975.value;

/**
 * Effective degrees of freedom by Welch and Satterthwaite (JCGM 100:2008 G.4.1), for a sum in which one part has
 * finite degrees of freedom. Not rounded; above a million it is infinite.
 */
export const effectiveDegreesOfFreedom = (whole: number, part: number, partDegreesOfFreedom: number): number => {
	if (part === 0) return Number.POSITIVE_INFINITY;
	const effective = partDegreesOfFreedom * (whole / part) ** 4;
	return effective > constants.infiniteDegreesOfFreedom.value ? Number.POSITIVE_INFINITY : effective;
};
