import {isAbove, isAtLeast, isAtMost} from '../measures/compare.js';
import {allowedTiltSharePct} from '../measures/level.js';
import {type DiagnosisFacts, placesOf} from './diagnosis-facts.js';
import type {MeasuredRadius, RadiusFigures} from './figures-types.js';
import type {FindingRow} from './finding-row.js';

/** Radii with a pull that is not good, where the tilt makes half of it at least, and surely some of it. */
function tilted({ends, pullLimits: {good}}: DiagnosisFacts): readonly MeasuredRadius[] {
	if (!ends?.both.every(({ownPullPct}) => ownPullPct !== null && isAtMost(Math.abs(ownPullPct), good))) return [];
	const strong = ends.both.filter(({pullPct}) => isAbove(Math.abs(pullPct), good));
	return strong.every(isOfTilt) ? strong : [];
}

const isOfTilt = ({pullPct, tiltSharePct, tiltShareUncertaintyPct}: MeasuredRadius): boolean => {
	const share = Math.abs(tiltSharePct ?? 0);
	return isAtLeast(share, Math.abs(pullPct) / 2) && isAbove(share, tiltShareUncertaintyPct ?? 0);
};

/** Radii at which the tilt makes more of the pull than is allowed; all of them where only the whole tilt is too large. */
function slanted(facts: DiagnosisFacts): readonly RadiusFigures[] {
	const {figures, pullLimits} = facts;
	if (figures.level?.passes !== false || tilted(facts).length > 0) return [];
	const allowedPct = allowedTiltSharePct(pullLimits.good);
	const over = figures.probe.filter(({tiltSharePct}) => isAbove(Math.abs(tiltSharePct ?? 0), allowedPct));
	return over.length > 0 ? over : figures.probe;
}

/** What the tilt makes of the pull, and how uncertain that is (95 %). */
const sharesAt = (radii: readonly RadiusFigures[]) =>
	radii.map(({radiusMm, tiltSharePct, tiltShareUncertaintyPct}) => ({
		radiusMm,
		sharePct: tiltSharePct ?? 0,
		uncertaintyPct: tiltShareUncertaintyPct ?? 0,
	}));

/** What the level says of the pull. */
export const levelRows = [
	{
		code: 'tilt-explains',
		who: 'owner',
		bias: 'after-cure',
		find: (facts) => {
			const radii = tilted(facts);
			return {places: placesOf(radii), values: {radii, shares: sharesAt(radii), goodPct: facts.pullLimits.good}};
		},
	},
	{
		code: 'not-level',
		who: 'owner',
		bias: 'after-cure',
		find: (facts) => {
			const radii = slanted(facts);
			// What the arm would do on a level deck, as far as is known; the pull is judged by that too.
			const own = facts.measured.flatMap(({radiusMm, ownPullPct}) =>
				ownPullPct === null ? [] : [{radiusMm, ownPullPct}],
			);
			const allowedPct = allowedTiltSharePct(facts.pullLimits.good);
			return {places: placesOf(radii), values: {shares: sharesAt(radii), allowedPct, own}};
		},
	},
] as const satisfies readonly FindingRow[];
