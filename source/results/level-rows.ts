import {isAbove, isAtLeast, isAtMost} from '../measures/compare.js';
import {allowedTiltSharePct} from '../measures/level.js';
import {forceWithWay, listed, plainNumber, pullAt, sideForce} from '../words/wording.js';
import {type DiagnosisFacts, placesWhere} from './diagnosis-facts.js';
import type {MeasuredRadius, RadiusFigures} from './figures-types.js';
import type {FindingRow} from './finding-row.js';

const levelFirst = 'the owner levels the armboard, then probe again';

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

const sharesAt = (radii: readonly RadiusFigures[]): string =>
	listed(
		radii.map(
			({tiltSharePct, tiltShareUncertaintyPct, radiusMm}) =>
				`${sideForce(tiltSharePct ?? 0, tiltShareUncertaintyPct ?? 0)} at ${plainNumber(radiusMm)} mm`,
		),
	);

/** What the arm would do on a level deck, as far as is known; the pull is judged by that too. */
const ownPulls = ({measured}: DiagnosisFacts): string => {
	const own = measured.flatMap(({ownPullPct, radiusMm}) =>
		ownPullPct === null ? [] : [`${forceWithWay(ownPullPct, '%', 1)} at ${plainNumber(radiusMm)} mm`],
	);
	return own.length === 0 ? '' : `; without it the pull would be ${listed(own)}`;
};

/** What the level says of the pull. */
export const levelRows = [
	{
		code: 'tilt-explains',
		who: 'owner',
		places: (facts) => placesWhere(tilted(facts), () => true),
		say: (facts) =>
			`The side pull is ${listed(tilted(facts).map(pullAt))} (good to ${plainNumber(facts.pullLimits.good)} %), and the tilt alone makes ${sharesAt(tilted(facts))}`,
		likely: 'the tilt makes the pull',
		next: () => levelFirst,
	},
	{
		code: 'not-level',
		who: 'owner',
		places: (facts) => placesWhere(slanted(facts), () => true),
		say: (facts) =>
			`The deck is not level: the tilt alone makes ${sharesAt(slanted(facts))} (allowed ${plainNumber(allowedTiltSharePct(facts.pullLimits.good))} %)${ownPulls(facts)}`,
		likely: 'the tilt is part of every reading',
		next: () => levelFirst,
	},
] as const satisfies readonly FindingRow[];
