import {uncheckedZeroPct, zeroByTurningPct} from '../measures/gauge-zero.js';
import {type GaugeScale, type Round, reachesTop, roundCentresPct, roundWidthsPct} from '../measures/hold-band.js';
import {
	centreReading,
	centreScatter,
	type Reading,
	type Series,
	type Turned,
	unseenReading,
	widthReading,
	widthScatter,
} from '../measures/uncertainty.js';
import type {Document, ProbeRadius} from './document-schema.js';
import {type Settings, settingsOf} from './settings.js';

/** The rounds of one probe radius in percent, the gauge's zero still in them. */
export type RadiusRead = {
	readonly radius: ProbeRadius;
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

/** One series as it was read: what every figure of it starts from. */
export type SeriesRead = {
	readonly document: Document;
	readonly settings: Settings;
	/** Radii without a reading off scale. */
	readonly onScale: readonly RadiusRead[];
	readonly zero: ZeroRead;
	readonly known: Series;
	readonly scale: GaugeScale;
};

const isTurned = ({gauge}: ProbeRadius['rounds'][number]): boolean => gauge === 'turned';

/** Whether any reading at a radius reached the top of the scale. */
export const isOffScale = (
	{rounds}: {readonly rounds: readonly Round[]},
	{topOfScale}: Pick<Settings, 'topOfScale'>,
): boolean =>
	rounds.some(({innerLimit, outerLimit}) => reachesTop(innerLimit, topOfScale) || reachesTop(outerLimit, topOfScale));

const radiusRead = (radius: ProbeRadius, {factor}: Settings): RadiusRead => ({
	radius,
	usedPct: roundCentresPct(
		radius.rounds.filter((round) => !isTurned(round)),
		factor,
	),
	turnedPct: roundCentresPct(radius.rounds.filter(isTurned), factor),
	widthsPct: roundWidthsPct(radius.rounds, factor),
});

/** What step and nudge are in percent of the playing force. */
export const readingOf = ({factor, step, nudge}: Settings): Reading => ({
	stepPct: factor * step,
	nudgePct: factor * nudge,
});

function zeroRead({gauge}: Document, {factor, step}: Settings, onScale: readonly RadiusRead[]): ZeroRead {
	const at = onScale.find(({turnedPct}) => turnedPct.length > 0);
	if (at) return {source: 'turned', pct: zeroByTurningPct(at.usedPct, at.turnedPct), at};
	const {zero, zeroUncertainty = 0} = gauge;
	return zero === undefined
		? {source: 'unchecked', pct: 0, standardPct: uncheckedZeroPct(factor * step)}
		: {source: 'stated', pct: factor * zero, standardPct: factor * zeroUncertainty};
}

function knownOf(onScale: readonly RadiusRead[], settings: Settings): Series {
	const centres = centreScatter(onScale.flatMap(({usedPct, turnedPct}) => [usedPct, turnedPct]));
	const widths = widthScatter(onScale.map(({widthsPct}) => widthsPct));
	const reading = readingOf(settings);
	return {
		centres,
		widths,
		centreReading: unseenReading(centreReading(reading), centres),
		widthReading: unseenReading(widthReading(reading), widths),
		settingUp: settings.settingUp,
		gainPct: settings.gainPct,
	};
}

/** Reads a document: rounds to percent, zero, scatter; rounds of an off-scale radius enter nothing. */
export function seriesRead(document: Document): SeriesRead {
	const settings = settingsOf(document);
	const onScale = document.probe
		.filter((radius) => !isOffScale(radius, settings))
		.map((radius) => radiusRead(radius, settings));
	const zero = zeroRead(document, settings, onScale);
	const {factor, nudge} = settings;
	return {
		document,
		settings,
		onScale,
		zero,
		known: knownOf(onScale, settings),
		scale: {factor, zero: zero.pct / factor, nudge},
	};
}

export const roundsRead = ({usedPct, turnedPct}: RadiusRead): Turned => ({
	used: usedPct.length,
	turned: turnedPct.length,
});
