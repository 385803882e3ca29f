import {torqueMicroNm} from '../measures/between-radii.js';
import {wallShares} from '../measures/groove-walls.js';
import {bandPct, pullPct, reachesTop, roundCentresPct, roundWidthsPct} from '../measures/hold-band.js';
import {levelTilt, tiltUncertaintyDeg} from '../measures/level.js';
import {pooledSpread, type Spread} from '../measures/statistics.js';
import {leanDegrees, leanMicrometres} from '../measures/stylus-lean.js';
import {outwardDirection, tiltSharePct, tiltShareUncertaintyPct} from '../measures/tilt-share.js';
import {bandBudget, expandedUncertainty, pullBudget} from '../measures/uncertainty.js';
import {guardedVerdict, whatWouldDecide} from '../measures/verdict.js';
import type {Document, ProbeRadius} from './document-schema.js';
import type {MeasuredRadius, OffScaleRadius, RadiusFigures} from './figures-types.js';
import type {Settings} from './settings.js';

type Pool = {readonly centres: Spread | null; readonly widths: Spread | null};

/** Whether any reading at a radius reached the top of the scale. */
export const isOffScale = ({rounds}: Pick<ProbeRadius, 'rounds'>, {topOfScale}: Settings): boolean =>
	rounds.some(({innerLimit, outerLimit}) => reachesTop(innerLimit, topOfScale) || reachesTop(outerLimit, topOfScale));

const placed = ({arm, level}: Document, {leaning, pivotDirectionDeg}: Settings, {place, radiusMm}: ProbeRadius) => {
	if (level === undefined) return {place, radiusMm, tiltSharePct: null, tiltShareUncertaintyPct: null};
	const {leftRightDeg, frontBackDeg, stepDeg} = level;
	const tilt = {leftRightDeg: levelTilt(leftRightDeg).tiltDeg, frontBackDeg: levelTilt(frontBackDeg).tiltDeg};
	const uncertaintyDeg = Math.max(tiltUncertaintyDeg(stepDeg, leftRightDeg), tiltUncertaintyDeg(stepDeg, frontBackDeg));
	return {
		place,
		radiusMm,
		tiltSharePct: tiltSharePct(leaning, tilt, outwardDirection(arm, pivotDirectionDeg, radiusMm)),
		tiltShareUncertaintyPct: tiltShareUncertaintyPct(leaning, uncertaintyDeg),
	};
};

const offScaleFigures = (where: ReturnType<typeof placed>): OffScaleRadius => ({
	...where,
	pullPct: null,
	pullUncertaintyPct: null,
	bandPct: null,
	bandUncertaintyPct: null,
	breakawayPct: null,
	torqueMicroNm: null,
	effectiveDegreesOfFreedom: null,
	repeatability: null,
	pullVerdict: 'off-scale',
	pullAtWorst: 'off-scale',
	bandVerdict: 'off-scale',
	bandAtWorst: 'off-scale',
	pullWouldDecide: null,
	bandWouldDecide: null,
	wallShare: null,
	lean: null,
});

const leanOf = ({cartridge = {}, trackingForce}: Document, pull: number): MeasuredRadius['lean'] => {
	const {staticComplianceUmPerMn, cantileverMm} = cartridge;
	if (staticComplianceUmPerMn === undefined) return null;
	const micrometres = leanMicrometres(pull, trackingForce.playingMn, staticComplianceUmPerMn);
	return {micrometres, degrees: cantileverMm === undefined ? null : leanDegrees(micrometres, cantileverMm)};
};

const measuredFigures = (
	document: Document,
	{scale, uncertainty, pullLimits, bandLimits}: Settings,
	{rounds}: ProbeRadius,
	pool: Pool,
	where: ReturnType<typeof placed>,
): MeasuredRadius => {
	const pull = pullPct(rounds, scale);
	const band = bandPct(rounds, scale);
	const ofPull = pullBudget(pull, rounds.length, pool.centres, uncertainty);
	const ofBand = bandBudget(band, rounds.length, pool.widths, uncertainty);
	const pullExpanded = expandedUncertainty(ofPull);
	const bandExpanded = expandedUncertainty(ofBand);
	const pullVerdict = guardedVerdict(pull, pullExpanded.uncertaintyPct, pullLimits);
	const bandVerdict = guardedVerdict(band, bandExpanded.uncertaintyPct, bandLimits);
	const {degreesOfFreedom} = pullExpanded;
	return {
		...where,
		pullPct: pull,
		pullUncertaintyPct: pullExpanded.uncertaintyPct,
		bandPct: band,
		bandUncertaintyPct: bandExpanded.uncertaintyPct,
		breakawayPct: band / 2,
		torqueMicroNm: torqueMicroNm(pull, document.trackingForce.playingMn, document.arm.effectiveLengthMm),
		effectiveDegreesOfFreedom: Number.isFinite(degreesOfFreedom) ? degreesOfFreedom : null,
		repeatability: pool.centres === null ? 'unknown' : 'pooled',
		pullVerdict: pullVerdict.verdict,
		pullAtWorst: pullVerdict.atWorst,
		bandVerdict: bandVerdict.verdict,
		bandAtWorst: bandVerdict.atWorst,
		pullWouldDecide: whatWouldDecide(pull, ofPull, pullLimits),
		bandWouldDecide: whatWouldDecide(band, ofBand, bandLimits),
		wallShare: wallShares(pull),
		lean: leanOf(document, pull),
	};
};

const onScaleOf = (document: Document, settings: Settings): ProbeRadius[] =>
	document.probe.filter((radius) => !isOffScale(radius, settings));

/** Spread of centres and widths over the radii of a series; rounds of an off-scale radius do not enter. */
export const poolOf = (document: Document, settings: Settings): Pool => {
	const onScale = onScaleOf(document, settings);
	return {
		centres: pooledSpread(onScale.map(({rounds}) => roundCentresPct(rounds, settings.scale))),
		widths: pooledSpread(onScale.map(({rounds}) => roundWidthsPct(rounds, settings.scale))),
	};
};

/** Figures at each probe radius, in the order of the document. */
export const radiusFigures = (document: Document, settings: Settings): RadiusFigures[] => {
	const onScale = onScaleOf(document, settings);
	const pool = poolOf(document, settings);
	return document.probe.map((radius) => {
		const where = placed(document, settings, radius);
		return onScale.includes(radius) ? measuredFigures(document, settings, radius, pool, where) : offScaleFigures(where);
	});
};
