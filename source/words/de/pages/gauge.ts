import type {ZeroFigures} from '../../../results/figures-types.js';
import {type GaugeUnit, units} from '../../../units.js';
import {decimalsFor, mm, plainNumber, rounded, stepDecimals, withSign} from '../../numbers.js';
import {forceAsTyped} from '../figures.js';

/** A gauge as it is read; its end and its readings in its own unit. */
type Gauge = {readonly unit: GaugeUnit; readonly step: number};
type End = {readonly unit: GaugeUnit; readonly topOfScale: number};

/** A reading as this gauge lets it be read, with the way the arm pushes: '13,8 % außen'. */
const reading = ({reading, unit, step}: Gauge & {readonly reading: number}): string =>
	forceAsTyped(reading, units[unit].label, stepDecimals(step));

const ends = ({topOfScale, unit}: End): string =>
	`dieser Kraftmesser endet bei ${plainNumber(topOfScale)} ${units[unit].label} und kann das nicht zeigen`;

const named = {inner: 'innere', outer: 'äußere'};
const others = {inner: 'äußeren', outer: 'inneren'};

const sources = {turned: 'durch Drehen gefunden', stated: 'ohne Arm gelesen'};

/** What the gauge shows, and where it ends. */
export const gauge = {
	reading,
	/** 'innere Grenze 11,9 % außen, äußere Grenze 15,7 % außen, Mitte 13,8 % außen' */
	aim: ({
		middle,
		limits,
		...gauge
	}: Gauge & {middle: number; limits: {readonly inner: number; readonly outer: number} | undefined}) => {
		const shown = (one: number) => reading({...gauge, reading: one});
		if (!limits) return `Mitte ${shown(middle)}`;
		return `innere Grenze ${shown(limits.inner)}, äußere Grenze ${shown(limits.outer)}`;
	},
	ends,
	middleBeyond: ({radiusMm, middle, ...gauge}: Gauge & End & {radiusMm: number; middle: number}) =>
		`Bei ${mm(radiusMm)} wäre die Mitte ${reading({...gauge, reading: middle})}: ${ends(gauge)}.`,
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
		`Bei ${mm(radiusMm)} wäre die ${named[limit]} Grenze ${reading({...gauge, reading: beyond})}: ${ends(gauge)}.${
			other === undefined ? '' : ` Dort mit der ${others[limit]} Grenze zielen: ${reading({...gauge, reading: other})}.`
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
			`Alle Zahlen in % der Abspielkraft${playing === undefined ? '' : `, ${plainNumber(playing)} ${label}`}.`,
			...(times === undefined ? [] : [`Der Kraftmesser trägt das ${rounded(times, 2)}-Fache davon.`]),
			...(zero === undefined
				? []
				: [
						`Die Messwerte sind um die Nullanzeige des Kraftmessers berichtigt (${forceAsTyped(zero, label, Math.min(2, stepDecimals(Number(zero.toFixed(2)))))}).`,
					]),
			...(isHandForce ? ['Außen und innen: wohin der Arm drückt.'] : []),
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
		return `Nullanzeige des Kraftmessers, ${sources[source]}: ${withSign(side === 'minus' ? -size : size, decimals)} ${label}${
			uncertainty === null ? '' : ` ± ${rounded(uncertainty, decimals)} ${label}`
		}. Alle Messwerte sind darum berichtigt.`;
	},
	zeroUnchecked:
		'Nullanzeige des Kraftmessers ungeprüft. Sie kann um ein halbes Prozent oder einen Ableseschritt abweichen. Das steckt im ± des Zugs.',
};
