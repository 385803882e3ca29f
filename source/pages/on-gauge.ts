import {isAbove} from '../measures/compare.js';
import {gaugeShows, halfSpanRead, toStep} from '../measures/gauge-shows.js';
import {type GaugeScale, type Round, reachesTop} from '../measures/hold-band.js';
import type {Facts} from '../procedure/facts.js';
import {showsHandForce} from '../procedure/readings.js';
import type {Document} from '../results/document-schema.js';
import {seriesRead} from '../results/series-read.js';
import {type GaugeUnit, units} from '../units.js';
import {forceWithWay, plainNumber, stepDecimals} from '../words/wording.js';
import {line, type Shown} from './shown-lines.js';

/** The gauge in front of the technician: how it shows forces, and where it ends; all but the factor in its own unit. */
export type OnGauge = {
	readonly scale: GaugeScale;
	readonly unit: GaugeUnit;
	readonly step: number;
	readonly topOfScale: number;
	/** It shows the force of the hand, so its own sign is not the way the arm pushes. */
	readonly isHandForce: boolean;
};

export function onGauge(document: Document, facts: Facts): OnGauge {
	const {scale} = seriesRead(document);
	const {unit, step, topOfScale} = document.gauge;
	return {scale, unit, step, topOfScale, isHandForce: showsHandForce(facts)};
}

/** A reading as this gauge lets it be read, with the way the arm pushes: '13.8 % out'. */
export const readingWithWay = (reading: number, {unit, step}: OnGauge): string =>
	forceWithWay(toStep(reading, step), units[unit].label, stepDecimals(step));

/** What the gauge shows at a radius where the arm pushes with a wanted force; the limits where the span is known. */
export type Aim = {
	readonly radiusMm: number;
	readonly middle: number;
	readonly limits?: {readonly inner: number; readonly outer: number};
};

/** @param rounds rounds as they were read at that radius, which say how far the limits lie from the middle */
export function aimAt(radiusMm: number, forcePct: number, gauge: OnGauge, rounds: readonly Round[] = []): Aim {
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

/** What the gauge then shows: '11.9 % out at the inner and 15.7 % out at the outer limit, 13.8 % out in the middle'. */
export function aimText({middle, limits}: Aim, gauge: OnGauge): string {
	const said = readingWithWay(middle, gauge);
	if (!limits) return `${said} in the middle of both limits`;
	return `${readingWithWay(limits.inner, gauge)} at the inner and ${readingWithWay(limits.outer, gauge)} at the outer limit, ${said} in the middle`;
}

/** Where the gauge ends, said of a reading that lies beyond. */
export const endText = ({topOfScale, unit}: OnGauge): string =>
	`this gauge ends at ${plainNumber(topOfScale)} ${units[unit].label} and cannot show it`;

/** That the gauge ends before what it would have to show, and what to go by instead; nothing where it can show it. */
export function beyondTop(aim: Aim, gauge: OnGauge): Shown[] {
	const where = `At ${plainNumber(aim.radiusMm)} mm`;
	const end = endText(gauge);
	if (!showsMiddle(aim, gauge))
		return [line(`${where} it would be ${readingWithWay(aim.middle, gauge)} in the middle: ${end}.`, 'warn')];
	if (!aim.limits || showsLimits(aim, gauge)) return [];
	const {inner, outer} = aim.limits;
	const [over, other, name, otherName] = isBeyond(outer, gauge)
		? ([outer, inner, 'outer', 'inner'] as const)
		: ([inner, outer, 'inner', 'outer'] as const);
	const instead = isBeyond(other, gauge) ? '' : ` Go by the ${otherName} limit there, ${readingWithWay(other, gauge)}.`;
	return [line(`${where} the ${name} limit would be ${readingWithWay(over, gauge)}: ${end}.${instead}`, 'warn')];
}

/** A gauge that carries so much more or less than the playing force shows other figures than are printed. */
const plainlyOther = 0.01;

/** Once on a screen: why printed figures are not what was typed; nothing where they are the same. */
export function scaleLine({scale: {factor, zero}, unit, isHandForce}: OnGauge): Shown[] {
	const {label} = units[unit];
	const atNothing =
		plainNumber(Math.abs(zero)) === '0' ? '' : `shows ${forceWithWay(zero, label, decimalsOf(zero))} at nothing`;
	const carries =
		unit === 'percent' && isAbove(Math.abs(factor - 1), plainlyOther)
			? `carries ${factor.toFixed(2)} times as much`
			: '';
	const whose = unit === 'percent' ? '' : `, which is ${plainNumber(100 / factor)} ${label} here`;
	const gauge = [carries, atNothing].filter((text) => text !== '').join(' and ');
	if (whose === '' && gauge === '') return [];
	const ways = isHandForce ? ' Out and in mean the way the arm pushes.' : '';
	return [
		line(
			`Figures are percent of the playing force${whose}${gauge === '' ? '' : `; this gauge ${gauge}`}.${ways}`,
			'dim',
		),
	];
}

const decimalsOf = (value: number): number => stepDecimals(Number(plainNumber(value)));
