import {differenceEn, type FigureAt, neutralRadiusMm, torqueSlopeMicroNmPerDeg} from '../measures/between-radii.js';
import {isAbove} from '../measures/compare.js';
import type {Document} from './document-schema.js';
import {type BetweenRadii, isMeasured, type MeasuredRadius, type RadiusFigures} from './figures-types.js';

/** The pull that tilt does not explain, in percent: what the arm itself does. A tilt share not known counts as none. */
export const ownPullPct = ({pullPct, tiltSharePct}: MeasuredRadius): number => pullPct - (tiltSharePct ?? 0);

/** Figures at the inner and the outer radius, where both have any. */
export const endsOf = (
	probe: readonly RadiusFigures[],
): {readonly inner: MeasuredRadius; readonly outer: MeasuredRadius} | null => {
	const inner = probe.find(({place}) => place === 'inner');
	const outer = probe.find(({place}) => place === 'outer');
	return inner && outer && isMeasured(inner) && isMeasured(outer) ? {inner, outer} : null;
};

const ownPullAt = (figures: MeasuredRadius): FigureAt => ({
	radiusMm: figures.radiusMm,
	valuePct: ownPullPct(figures),
	uncertaintyPct: figures.pullUncertaintyPct,
});

const bandAt = ({radiusMm, bandPct, bandUncertaintyPct}: MeasuredRadius): FigureAt => ({
	radiusMm,
	valuePct: bandPct,
	uncertaintyPct: bandUncertaintyPct,
});

/** How the inner and the outer radius differ; null where either has no figures. */
export const betweenRadiiOf = (
	{arm, trackingForce}: Document,
	probe: readonly RadiusFigures[],
): BetweenRadii | null => {
	const ends = endsOf(probe);
	if (ends === null) return null;
	const inner = ownPullAt(ends.inner);
	const outer = ownPullAt(ends.outer);
	const en = differenceEn(outer, inner);
	const bandEn = differenceEn(bandAt(ends.outer), bandAt(ends.inner));
	const differs = isAbove(en, 1);
	return {
		en,
		differs,
		bandEn,
		bandDiffers: isAbove(bandEn, 1),
		torqueSlopeMicroNmPerDeg: torqueSlopeMicroNmPerDeg(arm, trackingForce.playingMn, inner, outer),
		neutralRadiusMm: differs ? neutralRadiusMm(arm, inner, outer) : null,
	};
};
