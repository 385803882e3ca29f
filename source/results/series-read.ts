import {
	type GaugeScale,
	type LimitPair,
	reachesTop,
	roundCentresPct,
	roundWidthsPct,
	uncheckedZeroPct,
	zeroByTurningPct,
} from '../measures/hold-band.js';
import {
	centreReading,
	centreScatter,
	type ReadingGrain,
	type SeriesKnown,
	type Turned,
	unseenReading,
	widthReading,
	widthScatter,
} from '../measures/uncertainty.js';
import {type Conditions, conditionsOf} from './conditions.js';
import type {Document, ProbedRadius} from './document-schema.js';

/** The rounds of one probe radius in percent, the gauge's zero still in them. */
export type RadiusRead = {
	readonly radius: ProbedRadius;
	/** Middles of the rounds as used, and of those with the gauge turned, in its own sign. */
	readonly usedPct: readonly number[];
	readonly turnedPct: readonly number[];
	/** Widths of all of them. */
	readonly widthsPct: readonly number[];
};

/** Where the zero of the gauge is known from; in percent of the playing force. */
export type ZeroRead = {readonly pct: number} & (
	| {readonly source: 'turned'; readonly at: RadiusRead}
	| {readonly source: 'stated'; readonly standardPct: number}
	| {readonly source: 'unchecked'; readonly standardPct: number}
);

const isTurned = ({gauge}: ProbedRadius['rounds'][number]): boolean => gauge === 'turned';

/** Whether any reading at a radius reached the top of the scale. */
export const reachesScaleTop = (
	{rounds}: {readonly rounds: readonly LimitPair[]},
	{topOfScale}: Pick<Conditions, 'topOfScale'>,
): boolean =>
	rounds.some(({innerLimit, outerLimit}) => reachesTop(innerLimit, topOfScale) || reachesTop(outerLimit, topOfScale));

const radiusRead = (radius: ProbedRadius, {factor}: Conditions): RadiusRead => ({
	radius,
	usedPct: roundCentresPct(
		radius.rounds.filter((round) => !isTurned(round)),
		factor,
	),
	turnedPct: roundCentresPct(radius.rounds.filter(isTurned), factor),
	widthsPct: roundWidthsPct(radius.rounds, factor),
});

/** What step and nudge are in percent of the playing force. */
export const readingOf = ({factor, step, nudge}: Conditions): ReadingGrain => ({
	stepPct: factor * step,
	nudgePct: factor * nudge,
});

function zeroRead({gauge}: Document, {factor, step}: Conditions, onScale: readonly RadiusRead[]): ZeroRead {
	const at = onScale.find(({turnedPct}) => turnedPct.length > 0);
	if (at) return {source: 'turned', pct: zeroByTurningPct(at.usedPct, at.turnedPct), at};
	const {zero, zeroUncertainty = 0} = gauge;
	return zero === undefined
		? {source: 'unchecked', pct: 0, standardPct: uncheckedZeroPct(factor * step)}
		: {source: 'stated', pct: factor * zero, standardPct: factor * zeroUncertainty};
}

function knownOf(onScale: readonly RadiusRead[], conditions: Conditions, alike: readonly RadiusRead[]): SeriesKnown {
	const pool = [...onScale, ...alike];
	const centres = centreScatter(pool.flatMap(({usedPct, turnedPct}) => [usedPct, turnedPct]));
	const widths = widthScatter(pool.map(({widthsPct}) => widthsPct));
	const reading = readingOf(conditions);
	return {
		centres,
		widths,
		centreReading: unseenReading(centreReading(reading), centres),
		widthReading: unseenReading(widthReading(reading), widths),
		settingUp: conditions.settingUp,
		gainPct: conditions.gainPct,
	};
}

/** One series as it was read: what every figure of it starts from. */
export type SeriesRead = ReturnType<typeof seriesRead>;

/** Radii without a reading off scale. */
const radiiOnScale = ({probe}: Document, conditions: Conditions): RadiusRead[] =>
	probe.filter((radius) => !reachesScaleTop(radius, conditions)).map((radius) => radiusRead(radius, conditions));

/**
 * Reads a document: rounds to percent, zero, scatter; rounds of an off-scale radius enter nothing.
 *
 * @param alike other series of the same arm and gauge, whose rounds tell too how well rounds repeat (JCGM 100:2008 4.2.4)
 */
export function seriesRead(document: Document, alike: readonly Document[] = []) {
	const conditions = conditionsOf(document);
	const onScale = radiiOnScale(document, conditions);
	const zero = zeroRead(document, conditions, onScale);
	const {factor, nudge} = conditions;
	const scale: GaugeScale = {factor, zero: zero.pct / factor, nudge};
	const others = alike.flatMap((one) => radiiOnScale(one, conditionsOf(one)));
	return {document, conditions, onScale, zero, known: knownOf(onScale, conditions, others), scale};
}

export const roundsRead = ({usedPct, turnedPct}: RadiusRead): Turned => ({
	used: usedPct.length,
	turned: turnedPct.length,
});
