import {gravest, type Judged} from '../measures/verdict.js';
import type {RadiusFigures} from './figures-types.js';

/** The verdict of the whole series: the gravest over all radii, pull and band. */
export const overallOf = (probe: readonly RadiusFigures[]): Judged =>
	gravest<Judged>(
		{verdict: 'good', atWorst: 'good'},
		...probe.flatMap(({pullVerdict, pullAtWorst, bandVerdict, bandAtWorst}): Judged[] => [
			{verdict: pullVerdict, atWorst: pullAtWorst},
			{verdict: bandVerdict, atWorst: bandAtWorst},
		]),
	);
