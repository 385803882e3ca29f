import constants from '../../shared/constants.json' with {type: 'json'};
import {clearancePasses, guardWindowMm, stylusWindowMm} from '../measures/clearance.js';
import {closingRound} from '../measures/closing-round.js';
import {roundCentresPct} from '../measures/hold-band.js';
import {levelPasses, levelTilt, wholeTiltDeg} from '../measures/level.js';
import {centreReading, expandedUncertainty, zeroBudget} from '../measures/uncertainty.js';
import {gravest, type Judged} from '../measures/verdict.js';
import {betweenRadiiOf} from './between-radii-figures.js';
import {biasFigures} from './bias/figures.js';
import type {Conditions} from './conditions.js';
import type {Document} from './document-schema.js';
import type {
	ClearanceFigures,
	ClosingFigures,
	Figures,
	LevelFigures,
	RadiusFigures,
	ZeroFigures,
} from './figures-types.js';
import {placedOf, radiusFigures} from './radius-figures.js';
import {readingOf, roundsRead, type SeriesRead, seriesRead} from './series-read.js';

export type * from './figures-types.js';
export {isMeasured} from './figures-types.js';

/**
 * All figures of one series, worked out from its document. Pure; parts whose input is absent are null.
 *
 * @param alike other series of the same arm and gauge, whose rounds tell too how well rounds repeat
 */
export const figuresOf = (document: Document, alike: readonly Document[] = []): Figures => {
	const series = seriesRead(document, alike);
	const {conditions} = series;
	const placed = document.probe.map((radius) => placedOf(document, conditions, radius));
	const level = levelFigures(document, conditions, placed);
	const probe = radiusFigures(series, placed, level?.passes ?? true);
	return {
		scaleFactor: conditions.factor,
		carriedMn: conditions.carriedMn,
		level,
		clearance: clearanceFigures(document),
		zero: zeroFigures(series),
		probe,
		closing: closingFigures(series),
		...overallOf(probe),
		betweenRadii: betweenRadiiOf(series, probe),
		bias: biasFigures(series, probe),
	};
};

/** Tilt in both directions, and whether its share of the pull and the whole tilt are small enough at every radius. */
const levelFigures = (
	{level}: Document,
	{pullLimits}: Conditions,
	probe: readonly Pick<RadiusFigures, 'tiltSharePct'>[],
): LevelFigures | null => {
	if (level === undefined) return null;
	const leftRight = levelTilt(level.leftRightDeg);
	const frontBack = levelTilt(level.frontBackDeg);
	const shares = probe.map(({tiltSharePct}) => tiltSharePct ?? 0);
	const passes = levelPasses(shares, wholeTiltDeg(leftRight, frontBack), pullLimits.good);
	return {leftRight, frontBack, passes};
};

/** Both clearance windows, and whether the stylus stands inside its own with the guard clear of the surface. */
const clearanceFigures = ({clearance, trackingForce}: Document): ClearanceFigures | null => {
	if (clearance === undefined) return null;
	const {stylusMm, matRemovedMm = 0, guardDepthMm} = clearance;
	const stylusWindow = stylusWindowMm(matRemovedMm);
	const depthMm = trackingForce.guard === 'none' ? undefined : guardDepthMm;
	return {
		stylusWindowMm: stylusWindow,
		guardWindowMm: depthMm === undefined ? null : guardWindowMm(stylusWindow, depthMm),
		passes: clearancePasses(stylusMm, stylusWindow, depthMm),
	};
};

/** The zero of the gauge in its own unit, its uncertainty for 95 %; both null where nobody looked. */
function zeroFigures({zero, known, conditions: {factor}}: SeriesRead): ZeroFigures {
	if (zero.source === 'unchecked') return {source: zero.source, zero: null, zeroUncertainty: null};
	const uncertaintyPct =
		zero.source === 'turned'
			? expandedUncertainty(zeroBudget(roundsRead(zero.at), known)).uncertaintyPct
			: constants.normalQuantile975.value * zero.standardPct;
	return {source: zero.source, zero: zero.pct / factor, zeroUncertainty: uncertaintyPct / factor};
}

/** The closing round against the others at its radius; null without one, and where its radius is off scale. */
function closingFigures({onScale, conditions}: SeriesRead): ClosingFigures | null {
	const at = onScale.find(({radius}) => radius.rounds.some(({closing}) => closing));
	if (!at) return null;
	const used = at.radius.rounds.filter(({gauge}) => gauge !== 'turned');
	const middles = (isClosing: boolean): number[] =>
		roundCentresPct(
			used.filter(({closing = false}) => closing === isClosing),
			conditions.factor,
		);
	const othersPct = middles(false);
	const groupsPct = onScale.flatMap((one) => [one === at ? othersPct : one.usedPct, one.turnedPct]);
	const [centrePct = 0] = middles(true);
	const reading = centreReading(readingOf(conditions));
	return closingRound({centrePct, othersPct, groupsPct, reading, settingUp: conditions.settingUp});
}

/** The verdict of the whole series: the gravest over all radii, pull and band. */
const overallOf = (probe: readonly RadiusFigures[]): Judged =>
	gravest<Judged>(
		{verdict: 'good', atWorst: 'good'},
		...probe.flatMap(({pullVerdict, pullAtWorst, bandVerdict, bandAtWorst}): Judged[] => [
			{verdict: pullVerdict, atWorst: pullAtWorst},
			{verdict: bandVerdict, atWorst: bandAtWorst},
		]),
	);
