import {torqueMicroNm} from '../measures/between-radii.js';
import {bandPct, pullByTurningPct} from '../measures/hold-band.js';
import {levelTilt, tiltUncertaintyDeg} from '../measures/level.js';
import {leanDegrees, leanMicrometres, skatingFraction, wallForce, wallShares} from '../measures/skating.js';
import {mean, rootSumSquares} from '../measures/statistics.js';
import {outwardDirection, tiltSharePct, tiltShareUncertaintyPct} from '../measures/tilt-share.js';
import {
	type Budget,
	bandBudget,
	expandedUncertainty,
	isAssumed,
	pullBudget,
	type ZeroOfPull,
} from '../measures/uncertainty.js';
import {type Figure, gravest, guardedVerdict, type Limits, whatWouldDecide} from '../measures/verdict.js';
import type {Conditions} from './conditions.js';
import type {Document, ProbedRadius} from './document-schema.js';
import type {MeasuredRadius, OffScaleRadius, RadiusFigures} from './figures-types.js';
import {type RadiusRead, roundsRead, type SeriesRead} from './series-read.js';

type Placed = Pick<RadiusFigures, 'place' | 'radiusMm' | 'tiltSharePct' | 'tiltShareUncertaintyPct'>;

/** Standard uncertainty of the tilt in degrees: the larger of both directions; null without level readings. */
export const tiltStandardDeg = ({level}: Document): number | null =>
	level === undefined
		? null
		: Math.max(
				tiltUncertaintyDeg(level.stepDeg, level.leftRightDeg),
				tiltUncertaintyDeg(level.stepDeg, level.frontBackDeg),
			);

/** A radius with what the tilt makes of its pull. */
export const placedOf = (
	document: Document,
	{leaning, pivotDirectionDeg}: Conditions,
	{place, radiusMm}: ProbedRadius,
): Placed => {
	const {arm, level} = document;
	const uncertaintyDeg = tiltStandardDeg(document);
	if (level === undefined || uncertaintyDeg === null)
		return {place, radiusMm, tiltSharePct: null, tiltShareUncertaintyPct: null};
	const tilt = {
		leftRightDeg: levelTilt(level.leftRightDeg).tiltDeg,
		frontBackDeg: levelTilt(level.frontBackDeg).tiltDeg,
	};
	return {
		place,
		radiusMm,
		tiltSharePct: tiltSharePct(leaning, tilt, outwardDirection(arm, pivotDirectionDeg, radiusMm)),
		tiltShareUncertaintyPct: tiltShareUncertaintyPct(leaning, uncertaintyDeg),
	};
};

const offScaleFigures = (where: Placed): OffScaleRadius => ({
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
	ownPullPct: null,
	pullWouldDecide: null,
	bandWouldDecide: null,
	wallShare: null,
	lean: null,
});

const leanOf = ({cartridge = {}, trackingForce}: Document, wallPct: number): MeasuredRadius['lean'] => {
	const {staticComplianceUmPerMn, cantileverMm} = cartridge;
	if (staticComplianceUmPerMn === undefined) return null;
	const micrometres = leanMicrometres(wallPct, trackingForce.playingMn, staticComplianceUmPerMn);
	return {micrometres, degrees: cantileverMm === undefined ? null : leanDegrees(micrometres, cantileverMm)};
};

function zeroOfPull(here: RadiusRead, {zero}: SeriesRead): ZeroOfPull {
	if (zero.source !== 'turned') return {kind: 'apart', variance: zero.standardPct ** 2};
	return zero.at === here
		? {kind: 'turned-here', turned: here.turnedPct.length}
		: {kind: 'turned-there', there: roundsRead(zero.at)};
}

/** The side pull at a radius, and its uncertainty with so many rounds as used more. */
export function pullFigure(here: RadiusRead, series: SeriesRead): Figure {
	const {zero, known} = series;
	const {usedPct, turnedPct} = here;
	const value =
		zero.source === 'turned' && zero.at === here ? pullByTurningPct(usedPct, turnedPct) : mean(usedPct) - zero.pct;
	const of = zeroOfPull(here, series);
	return {
		value,
		used: usedPct.length,
		isAssumed: isAssumed(known.centres),
		budgetWith: (more, isFiner) => {
			const budget = pullBudget(value, usedPct.length + more, of, {
				...known,
				...(isFiner ? {centreReading: 0} : {}),
			});
			return withMore(budget, more);
		},
	};
}

/** The hold band at a radius, likewise. */
export function bandFigure({usedPct, widthsPct}: RadiusRead, {known, conditions}: SeriesRead): Figure {
	const value = bandPct(widthsPct, conditions);
	return {
		value,
		used: usedPct.length,
		isAssumed: isAssumed(known.widths),
		budgetWith: (more, isFiner) => {
			const budget = bandBudget(value, widthsPct.length + more, {...known, ...(isFiner ? {widthReading: 0} : {})});
			return withMore(budget, more);
		},
	};
}

/** Each round more is a degree of freedom more. */
const withMore = (budget: Budget, rounds: number): Budget => ({
	...budget,
	degreesOfFreedom: budget.degreesOfFreedom + rounds,
});

/** A tilt must not hide a pull: where the level does not pass, the arm's own pull is judged too, and the graver stands. */
function judgedPull(pullPct: number, uncertaintyPct: number, where: Placed, limits: Limits, isLevel: boolean) {
	const asItIs = guardedVerdict(pullPct, uncertaintyPct, limits);
	const {tiltSharePct, tiltShareUncertaintyPct} = where;
	if (isLevel || tiltSharePct === null) return asItIs;
	const ownUncertaintyPct = rootSumSquares(uncertaintyPct, tiltShareUncertaintyPct ?? 0);
	return gravest(asItIs, guardedVerdict(pullPct - tiltSharePct, ownUncertaintyPct, limits));
}

function measuredFigures(here: RadiusRead, series: SeriesRead, where: Placed, isLevel: boolean): MeasuredRadius {
	const {document, conditions, known} = series;
	const {arm, trackingForce} = document;
	const pull = pullFigure(here, series);
	const band = bandFigure(here, series);
	const ofPull = expandedUncertainty(pull.budgetWith(0, false));
	const ofBand = expandedUncertainty(band.budgetWith(0, false));
	const pullVerdict = judgedPull(pull.value, ofPull.uncertaintyPct, where, conditions.pullLimits, isLevel);
	const bandVerdict = guardedVerdict(band.value, ofBand.uncertaintyPct, conditions.bandLimits);
	const {degreesOfFreedom} = ofPull;
	const wallPct = wallForce(pull.value, skatingFraction(arm, where.radiusMm));
	const isOpen = ({verdict}: typeof bandVerdict): boolean => verdict === 'undecided';
	return {
		...where,
		pullPct: pull.value,
		pullUncertaintyPct: ofPull.uncertaintyPct,
		bandPct: band.value,
		bandUncertaintyPct: ofBand.uncertaintyPct,
		breakawayPct: band.value / 2,
		torqueMicroNm: torqueMicroNm(pull.value, trackingForce.playingMn, arm.effectiveLengthMm),
		effectiveDegreesOfFreedom: Number.isFinite(degreesOfFreedom) ? degreesOfFreedom : null,
		repeatability: isAssumed(known.centres) ? 'assumed' : 'pooled',
		pullVerdict: pullVerdict.verdict,
		pullAtWorst: pullVerdict.atWorst,
		bandVerdict: bandVerdict.verdict,
		bandAtWorst: bandVerdict.atWorst,
		ownPullPct: where.tiltSharePct === null ? null : pull.value - where.tiltSharePct,
		pullWouldDecide: isOpen(pullVerdict) ? whatWouldDecide(pull, conditions.pullLimits) : null,
		bandWouldDecide: isOpen(bandVerdict) ? whatWouldDecide(band, conditions.bandLimits) : null,
		wallShare: wallShares(wallPct),
		lean: leanOf(document, wallPct),
	};
}

/**
 * Figures at each probe radius, in the order of the document.
 *
 * @param isLevel the level passes, or was not read
 */
export const radiusFigures = (series: SeriesRead, placed: readonly Placed[], isLevel: boolean): RadiusFigures[] =>
	series.document.probe.map((radius, index) => {
		const where = placed[index] ?? placedOf(series.document, series.conditions, radius);
		const here = series.onScale.find((one) => one.radius === radius);
		return here ? measuredFigures(here, series, where, isLevel) : offScaleFigures(where);
	});
