import type {ZeroFigures} from '../../../results/figures-types.js';
import {type GaugeUnit, units} from '../../../units.js';
import {decimalsFor, mm, plainNumber, rounded, stepDecimals, withSign} from '../../numbers.js';
import {forceWithWay} from '../figures.js';

/** A gauge as it is read; its end and its readings in its own unit. */
type Gauge = {readonly unit: GaugeUnit; readonly step: number};
type End = {readonly unit: GaugeUnit; readonly topOfScale: number};

/** A reading as this gauge lets it be read, with the way the arm pushes: '13.8 % out'. */
const reading = ({reading, unit, step}: Gauge & {readonly reading: number}): string =>
	forceWithWay(reading, units[unit].label, stepDecimals(step));

const ends = ({topOfScale, unit}: End): string =>
	`this gauge ends at ${plainNumber(topOfScale)} ${units[unit].label} and cannot show it`;

const others = {inner: 'outer', outer: 'inner'} as const;

const sources = {turned: 'found by turning it', stated: 'read with the arm in its rest'};

/** What the gauge shows, and where it ends. */
export const gauge = {
	reading,
	/** '11.9 % out at the inner and 15.7 % out at the outer limit, 13.8 % out in the middle' */
	aim: ({
		middle,
		limits,
		...gauge
	}: Gauge & {middle: number; limits: {readonly inner: number; readonly outer: number} | undefined}) => {
		const shown = (one: number) => reading({...gauge, reading: one});
		if (!limits) return `middle ${shown(middle)}`;
		return `inner limit ${shown(limits.inner)}, outer limit ${shown(limits.outer)}`;
	},
	ends,
	middleBeyond: ({radiusMm, middle, ...gauge}: Gauge & End & {radiusMm: number; middle: number}) =>
		`At ${mm(radiusMm)} the middle would be ${reading({...gauge, reading: middle})}: ${ends(gauge)}.`,
	limitBeyond: ({
		radiusMm,
		limit,
		beyond,
		other,
		...gauge
	}: Gauge &
		End & {
			radiusMm: number;
			limit: 'inner' | 'outer';
			beyond: number;
			/** What the other limit would be, where the gauge can show that one. */
			other: number | undefined;
		}) =>
		`At ${mm(radiusMm)} the ${limit} limit would be ${reading({...gauge, reading: beyond})}: ${ends(gauge)}.${
			other === undefined ? '' : ` Aim with the ${others[limit]} limit there: ${reading({...gauge, reading: other})}.`
		}`,
	/** Why printed figures are not what was typed. */
	scale: ({
		unit,
		playing,
		times,
		zero,
		isHandForce,
	}: {
		unit: GaugeUnit;
		/** The playing force in the gauge's unit; undefined where it shows percent. */
		playing: number | undefined;
		/** How many times as much it carries as plays, where that is not plainly the same. */
		times: number | undefined;
		/** What it shows at nothing, where that is not nothing. */
		zero: number | undefined;
		isHandForce: boolean;
	}) => {
		const {label} = units[unit];
		return [
			playing === undefined
				? 'Figures are percent of the playing force.'
				: `Figures are percent of the playing force, ${plainNumber(playing)} ${label}.`,
			...(times === undefined ? [] : [`The gauge carries ${rounded(times, 2)} times that force.`]),
			...(zero === undefined
				? []
				: [
						`Readings are corrected for the gauge's zero (${forceWithWay(zero, label, Math.min(2, stepDecimals(Number(zero.toFixed(2)))))}).`,
					]),
			...(isHandForce ? ['Out and in: how the arm pushes.'] : []),
		].join(' ');
	},
	/** The zero of the gauge in its own sign, and how it was found. */
	zero: ({
		source,
		size,
		side,
		uncertainty,
		unit,
	}: {
		source: Exclude<ZeroFigures['source'], 'unchecked'>;
		size: number;
		/** Undefined at nothing. */
		side: 'plus' | 'minus' | undefined;
		uncertainty: number | null;
		unit: GaugeUnit;
	}) => {
		const {label} = units[unit];
		const decimals =
			uncertainty === null ? Math.min(stepDecimals(Number(size.toPrecision(2))), 20) : decimalsFor(uncertainty);
		return `Zero of the gauge, ${sources[source]}: ${withSign(side === 'minus' ? -size : size, decimals)} ${label}${
			uncertainty === null ? '' : ` ± ${rounded(uncertainty, decimals)} ${label}`
		}. All readings are corrected for it.`;
	},
	zeroUnchecked:
		'Zero of the gauge not checked. It may be off by half a percent or one step, whichever is more. The ± of the pull includes that.',
};
