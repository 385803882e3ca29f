import type {GaugeScale, LimitPair} from './hold-band.js';
import {mean} from './statistics.js';

/**
 * What a gauge shows, in its own unit, where the arm pushes with a force in percent of the playing force: the way of a
 * reading to percent, turned round.
 */
export const gaugeShows = (forcePct: number, {factor, zero}: Pick<GaugeScale, 'factor' | 'zero'>): number =>
	forcePct / factor + zero;

/** Half the span between the limits as they are read, in the gauge's unit: without the nudge that is added to a hold band. */
export const halfSpanRead = (rounds: readonly LimitPair[]): number =>
	mean(rounds.map(({innerLimit, outerLimit}) => outerLimit - innerLimit)) / 2;

/** The nearest reading that a gauge's smallest step has, free of the dust that steps leave. */
export const toStep = (reading: number, step: number): number =>
	Number((Math.round(reading / step) * step).toPrecision(12));
