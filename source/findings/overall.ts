import type {AtWorst, RadiusFigures, Verdict} from './figures-types.js';

type Judged = {readonly verdict: Verdict; readonly atWorst: AtWorst};

const severity = {good: 0, usable: 2, beyond: 4, 'off-scale': 5} as const satisfies Record<AtWorst, number>;

// An undecided figure stands just below the zone that it may turn out to be in.
const rank = ({verdict, atWorst}: Judged): number =>
	verdict === 'undecided' ? severity[atWorst] - 1 : severity[verdict];

/**
 * The verdict of the whole series: that of the highest rank over all radii, pull and band. What ranks highest is
 * also the worst at worst, so one order serves both words.
 */
export const overallOf = (probe: readonly RadiusFigures[]): Judged =>
	probe
		.flatMap(({pullVerdict, pullAtWorst, bandVerdict, bandAtWorst}): Judged[] => [
			{verdict: pullVerdict, atWorst: pullAtWorst},
			{verdict: bandVerdict, atWorst: bandAtWorst},
		])
		.reduce((worst, one) => (rank(one) > rank(worst) ? one : worst), {verdict: 'good', atWorst: 'good'});
