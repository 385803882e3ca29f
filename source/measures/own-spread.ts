import limits from '../../shared/limits.json' with {type: 'json'};
import {pooledSpread} from './statistics.js';

/**
 * How far an arm's figure wanders from check to check by itself: the standard deviation, in mN, of the forces of its
 * earlier checks at one radius (JCGM 100:2008 4.2.2; H.5 tells such a spread between days from that within one).
 * Undefined below four checks, for then it says too little. It holds a drift too, if there was one.
 */
export const ownSpreadMn = (forcesMn: readonly number[]): number | undefined =>
	forcesMn.length < limits.ownSpreadChecks.value ? undefined : pooledSpread([forcesMn])?.sd;
