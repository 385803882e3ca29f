import {isAbove} from '../measures/compare.js';
import {gaugeShows, halfSpanRead, type LimitPair, reachesTop, toStep} from '../measures/hold-band.js';
import type {Facts} from '../procedure/facts.js';
import {gaugeUnitOf, showsHandForce, signOfPlus} from '../procedure/readings.js';
import type {Document} from '../results/document-schema.js';
import type {ZeroFigures} from '../results/figures-types.js';
import {seriesRead} from '../results/series-read.js';
import {words} from '../words/index.js';
import {printsAsZero} from '../words/numbers.js';
import {line, type Shown} from './shown-lines.js';

const {gauge: said} = words.pages;

export type OnGauge = ReturnType<typeof onGauge>;

/** The gauge in front of the technician: how it shows forces, and where it ends; all but the factor in its own unit. */
export function onGauge(document: Document, facts: Facts) {
	const {scale} = seriesRead(document);
	const {unit, step, topOfScale} = document.gauge;
	// Where it shows the force of the hand its own sign is not the way the arm pushes.
	return {scale, unit, step, topOfScale, isHandForce: showsHandForce(facts)};
}

/** A reading as this gauge lets it be read, with the way the arm pushes: '13.8 % out'. */
export const readingWithWay = (reading: number, gauge: OnGauge): string =>
	said.reading({...gauge, reading: toStep(reading, gauge.step)});

/** What the gauge shows at a radius where the arm pushes with a wanted force; the limits where the span is known. */
export type Aim = {
	readonly radiusMm: number;
	readonly middle: number;
	readonly limits?: {readonly inner: number; readonly outer: number};
};

/** @param rounds rounds as they were read at that radius, which say how far the limits lie from the middle */
export function aimAt(radiusMm: number, forcePct: number, gauge: OnGauge, rounds: readonly LimitPair[] = []): Aim {
	const middle = gaugeShows(forcePct, gauge.scale);
	if (rounds.length === 0) return {radiusMm, middle};
	const half = halfSpanRead(rounds);
	return {radiusMm, middle, limits: {inner: middle - half, outer: middle + half}};
}

const isBeyond = (reading: number, {step, topOfScale}: OnGauge): boolean =>
	reachesTop(toStep(reading, step), topOfScale);

/** Whether the gauge can show the middle, which both limits make. */
export const showsMiddle = ({middle}: Aim, gauge: OnGauge): boolean => !isBeyond(middle, gauge);

/** Whether the gauge can show both limits. */
export const showsLimits = ({limits}: Aim, gauge: OnGauge): boolean =>
	limits !== undefined && !isBeyond(limits.inner, gauge) && !isBeyond(limits.outer, gauge);

/** What the gauge then shows: 'inner limit 11.9 % out, outer limit 15.7 % out'; the middle where they are not known. */
export const aimText = ({middle, limits}: Aim, gauge: OnGauge): string =>
	said.aim({
		...gauge,
		middle: toStep(middle, gauge.step),
		limits: limits && {inner: toStep(limits.inner, gauge.step), outer: toStep(limits.outer, gauge.step)},
	});

/** That the gauge ends before what it would have to show, and what to go by instead; nothing where it can show it. */
export function beyondTop(aim: Aim, gauge: OnGauge): Shown[] {
	const {radiusMm, middle, limits} = aim;
	const read = (reading: number) => toStep(reading, gauge.step);
	if (!showsMiddle(aim, gauge)) return [line(said.middleBeyond({...gauge, radiusMm, middle: read(middle)}), 'warn')];
	if (!limits || showsLimits(aim, gauge)) return [];
	const [limit, other] = isBeyond(limits.outer, gauge) ? (['outer', 'inner'] as const) : (['inner', 'outer'] as const);
	const instead = isBeyond(limits[other], gauge) ? undefined : read(limits[other]);
	return [line(said.limitBeyond({...gauge, radiusMm, limit, beyond: read(limits[limit]), other: instead}), 'warn')];
}

/** A gauge that carries so much more or less than the playing force shows other figures than are printed. */
const plainlyOther = 0.01;

/** Once on a screen: why printed figures are not what was typed; nothing where they are the same. */
export function scaleLine({scale: {factor, zero}, unit, isHandForce}: OnGauge): Shown[] {
	const isPercent = unit === 'percent';
	const playing = isPercent ? undefined : 100 / factor;
	const times = isPercent && isAbove(Math.abs(factor - 1), plainlyOther) ? factor : undefined;
	const shown = printsAsZero(zero, 3) ? undefined : zero;
	if (playing === undefined && times === undefined && shown === undefined) return [];
	return [line(said.scale({unit, playing, times, zero: shown, isHandForce}), 'aside')];
}

/** The zero of the gauge in its own sign, and how it was found; or that nobody looked at it. */
export function zeroText({source, zero, zeroUncertainty}: ZeroFigures, facts: Facts): string {
	if (source === 'unchecked' || zero === null) return said.zeroUnchecked;
	const side = zero === 0 ? undefined : zero * signOfPlus(facts) > 0 ? 'plus' : 'minus';
	return said.zero({source, size: Math.abs(zero), side, uncertainty: zeroUncertainty, unit: gaugeUnitOf(facts)});
}
