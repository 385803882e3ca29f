import {isAtLeast, isBelow} from '../measures/compare.js';
import {type DiagnosisFacts, placesOf} from './diagnosis-facts.js';
import {bothEnds, type FindingRow, holds} from './finding-row.js';
import {levelRows} from './level-rows.js';

/** A pull that changes over the record: without the tilt, by half the good limit at least, and surely. */
function change({ends, pullLimits}: DiagnosisFacts) {
	const leastPct = pullLimits.good / 2;
	if (!ends?.between.differs || !isAtLeast(ends.pullDifferencePct, leastPct)) return;
	const {both, between, pullDifferencePct: differencePct} = ends;
	const values = {radii: both, differencePct, leastPct, neutralRadiusMm: between.neutralRadiusMm};
	return {places: bothEnds, slope: between.torqueSlopeMicroNmPerDeg, values};
}

/** What the side pull says, in order of weight. */
export const pullRows = [
	{
		code: 'pull-and-friction',
		who: 'technician',
		bias: 'after-cure',
		find: ({measured, pullLimits, bandLimits}) => {
			const radii = measured.filter(
				({pullAtWorst, bandVerdict}) => bandVerdict === 'beyond' && pullAtWorst === 'beyond',
			);
			// Half the widest band: no setting can be read finer.
			const finestPct = Math.max(...radii.map(({breakawayPct}) => breakawayPct));
			const values = {radii, pullUsablePct: pullLimits.usable, bandUsablePct: bandLimits.usable, finestPct};
			return {places: placesOf(radii), values};
		},
	},
	{
		code: 'constant-pull',
		who: 'technician',
		bias: 'after-cure',
		find: (facts) => {
			const {ends, figures, pullLimits} = facts;
			if (
				!ends ||
				holds(levelRows[0], facts) ||
				ends.both.some(({pullVerdict}) => pullVerdict === 'good') ||
				Math.sign(ends.inner.pullPct) * Math.sign(ends.outer.pullPct) <= 0 ||
				!isBelow(ends.pullDifferencePct, pullLimits.good / 2)
			)
				return;
			const isTurned = figures.zero.source === 'turned';
			return {places: bothEnds, values: {radii: ends.both, goodPct: pullLimits.good, isTurned}};
		},
	},
	{
		code: 'spring-pull',
		who: 'technician',
		bias: 'after-cure',
		find: (facts) => {
			const found = change(facts);
			return found && found.slope < 0 ? found : undefined;
		},
	},
	{
		code: 'runaway-pull',
		who: 'technician',
		bias: 'after-cure',
		find: (facts) => {
			const found = change(facts);
			return found && found.slope > 0 ? found : undefined;
		},
	},
] as const satisfies readonly FindingRow[];
