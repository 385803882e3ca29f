import {isAtLeast} from '../measures/compare.js';
import {placesOf} from './diagnosis-facts.js';
import {bothEnds, type FindingRow, holds} from './finding-row.js';
import {pullRows} from './pull-rows.js';

/** What the hold band says, in order of weight. */
const bandRows = [
	{
		code: 'friction',
		who: 'technician',
		bias: 'after-cure',
		find: ({ends, bandLimits}) =>
			ends?.both.every(({bandVerdict}) => bandVerdict === 'beyond')
				? {places: bothEnds, values: {radii: ends.both, usablePct: bandLimits.usable}}
				: undefined,
	},
	{
		code: 'friction-local',
		who: 'technician',
		bias: 'after-cure',
		find: ({ends, bandLimits}) => {
			const leastPct = bandLimits.good / 2;
			if (!ends?.between.bandDiffers || !isAtLeast(ends.bandDifferencePct, leastPct)) return;
			return {places: bothEnds, values: {radii: ends.both, differencePct: ends.bandDifferencePct, leastPct}};
		},
	},
] as const satisfies readonly FindingRow[];

const patterns: readonly FindingRow[] = [...pullRows, ...bandRows];

/** What the hold band says, and what shows no pattern at all. */
export const frictionRows = [
	...bandRows,
	{
		code: 'no-pattern',
		who: 'technician',
		bias: 'after-cure',
		find: (facts) => {
			if (patterns.some((row) => holds(row, facts))) return;
			const {measured, pullLimits, bandLimits} = facts;
			const radii = measured.filter(
				({pullVerdict, bandVerdict}) => pullVerdict === 'beyond' || bandVerdict === 'beyond',
			);
			const values = {radii, pullUsablePct: pullLimits.usable, bandUsablePct: bandLimits.usable};
			return {places: placesOf(radii), values};
		},
	},
] as const satisfies readonly FindingRow[];
