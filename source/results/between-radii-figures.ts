import {differenceEn, type FigureAt, neutralRadiusMm, torqueSlopeMicroNmPerDeg} from '../measures/between-radii.js';
import {isAbove} from '../measures/compare.js';
import {outwardDirection, slantPct} from '../measures/tilt-share.js';
import {bandDifferenceBudget, expandedUncertainty, pullDifferenceBudget} from '../measures/uncertainty.js';
import {type BetweenRadii, isMeasured, type MeasuredRadius, type RadiusFigures} from './figures-types.js';
import {tiltStandardDeg} from './radius-figures.js';
import type {RadiusRead, SeriesRead} from './series-read.js';

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
});

/** Standard uncertainty of what the tilt makes of the difference of the pulls, in percent; 0 without level readings. */
function slantBetween({document, conditions}: SeriesRead, innerMm: number, outerMm: number): number {
	const standardDeg = tiltStandardDeg(document);
	if (standardDeg === null) return 0;
	const outward = (radiusMm: number) => outwardDirection(document.arm, conditions.pivotDirectionDeg, radiusMm);
	return slantPct(conditions.leaning, standardDeg, [outward(innerMm), outward(outerMm)]);
}

const readAt = ({onScale}: SeriesRead, place: 'inner' | 'outer'): RadiusRead | undefined =>
	onScale.find(({radius}) => radius.place === place);

/** How the inner and the outer radius differ; null where either has no figures. */
export const betweenRadiiOf = (series: SeriesRead, probe: readonly RadiusFigures[]): BetweenRadii | null => {
	const ends = endsOf(probe);
	const [innerRead, outerRead] = [readAt(series, 'inner'), readAt(series, 'outer')];
	if (ends === null || !innerRead || !outerRead) return null;
	const {arm, trackingForce} = series.document;
	const inner = ownPullAt(ends.inner);
	const outer = ownPullAt(ends.outer);
	const pullDifferencePct = outer.valuePct - inner.valuePct;
	const bandDifferencePct = ends.outer.bandPct - ends.inner.bandPct;
	const ofPull = expandedUncertainty(
		pullDifferenceBudget(
			ends.outer.pullPct - ends.inner.pullPct,
			[outerRead.usedPct.length, innerRead.usedPct.length],
			slantBetween(series, inner.radiusMm, outer.radiusMm),
			series.known,
		),
	);
	const ofBand = expandedUncertainty(
		bandDifferenceBudget(bandDifferencePct, [outerRead.widthsPct.length, innerRead.widthsPct.length], series.known),
	);
	const en = differenceEn(pullDifferencePct, ofPull.uncertaintyPct);
	const bandEn = differenceEn(bandDifferencePct, ofBand.uncertaintyPct);
	const differs = isAbove(en, 1);
	return {
		pullDifferencePct,
		pullDifferenceUncertaintyPct: ofPull.uncertaintyPct,
		bandDifferencePct,
		bandDifferenceUncertaintyPct: ofBand.uncertaintyPct,
		en,
		differs,
		bandEn,
		bandDiffers: isAbove(bandEn, 1),
		torqueSlopeMicroNmPerDeg: torqueSlopeMicroNmPerDeg(arm, trackingForce.playingMn, inner, outer),
		neutralRadiusMm: differs ? neutralRadiusMm(arm, inner, outer) : null,
	};
};
