import limits from '../../shared/limits.json' with {type: 'json'};
import {closingAllowedPct, somethingMoved} from '../measures/closing-round.js';
import {isAtMost} from '../measures/compare.js';
import {gaugeZero, gaugeZeroUncertainty} from '../measures/gauge-zero.js';
import {type GaugeScale, pullPct, type Round, reachesTop, roundCentresPct} from '../measures/hold-band.js';
import {pooledSpread, type Spread} from '../measures/statistics.js';
import {forceScaleFactor, percentScaleFactor} from '../measures/tracking-force.js';
import {fromBase, units} from '../units.js';
import type {Facts} from './facts.js';
import {probeRadii} from './geometry.js';
import {gaugeUnitOf} from './readings.js';
import type {Place, Problem, Way} from './step.js';
import {carriedMn} from './weighing.js';
import {isCrossed, zeroRoundOf} from './zero-rounds.js';

/** A base value in the gauge's own unit, free of the dust that conversions leave. */
export const inGaugeUnit = (value: number, facts: Facts): number =>
	Number(fromBase(value, gaugeUnitOf(facts)).toPrecision(12));

/** Complete rounds that count, in the gauge's own unit. */
export const roundsAt = (facts: Facts, place: Place): readonly Round[] =>
	facts.rounds(place).map(({innerLimit, outerLimit}) => ({
		innerLimit: inGaugeUnit(innerLimit, facts),
		outerLimit: inGaugeUnit(outerLimit, facts),
	}));

/** The gauge's zero in its own unit (0 when not checked), from one round before and one after turning it that both pass. */
export function zeroOf(facts: Facts): {readonly zero: number; readonly checked: boolean} {
	const [first, turned] = [zeroRoundOf(facts, 'first'), zeroRoundOf(facts, 'turned')];
	if (!first || !turned || isCrossed(facts, 'first') || isCrossed(facts, 'turned')) return {zero: 0, checked: false};
	const zero = gaugeZero((first.inner + first.outer) / 2, (turned.inner + turned.outer) / 2);
	return {zero: inGaugeUnit(zero, facts), checked: true};
}

/** Standard uncertainty of the gauge's zero, in its own unit; 0 when it was not checked. */
export function zeroUncertainty(facts: Facts): number {
	if (!zeroOf(facts).checked) return 0;
	const scale = gaugeScale(facts);
	const spread = spreadPct(facts);
	return gaugeZeroUncertainty({
		step: inGaugeUnit(facts.number('gauge-step') ?? 0, facts),
		nudge: inGaugeUnit(facts.number('gauge-nudge') ?? 0, facts),
		centreSd: scale && spread ? spread.sd / scale.factor : 0,
	});
}

/** How readings become percent of the playing force; undefined until the arm was weighed. */
export function gaugeScale(facts: Facts): GaugeScale | undefined {
	const playingMn = facts.number('playing-force');
	const carried = carriedMn(facts);
	if (playingMn === undefined || carried === undefined) return;
	const unit = gaugeUnitOf(facts);
	const factor =
		unit === 'percent' ? percentScaleFactor(carried, playingMn) : forceScaleFactor(units[unit].scale, playingMn);
	return {factor, zero: zeroOf(facts).zero, nudge: inGaugeUnit(facts.number('gauge-nudge') ?? 0, facts)};
}

export const topOfScale = (facts: Facts): number =>
	inGaugeUnit(facts.number('gauge-top') ?? limits.topOfScalePct.value, facts);

/** The top of the scale as it is printed: `16 %`. */
export const topText = (facts: Facts): string => `${topOfScale(facts)} ${units[gaugeUnitOf(facts)].label}`;

/** Whether any reading at a place reached the top of the scale: then it has no figures. */
export const isOffScale = (facts: Facts, place: Place): boolean =>
	roundsAt(facts, place).some((round) => isRoundOffScale(facts, round));

export const isRoundOffScale = (facts: Facts, {innerLimit, outerLimit}: Round): boolean =>
	reachesTop(innerLimit, topOfScale(facts)) || reachesTop(outerLimit, topOfScale(facts));

/** Spread of round centres in percent, pooled over the radii; null while no radius has two rounds. */
function spreadPct(facts: Facts): Spread | null {
	const scale = gaugeScale(facts);
	if (!scale) return null;
	return pooledSpread(
		probeRadii(facts)
			.filter(({place}) => !isOffScale(facts, place))
			.map(({place}) => roundCentresPct(roundsAt(facts, place), scale)),
	);
}

export type Closing = {
	readonly centrePct: number;
	readonly meanPct: number;
	readonly allowedPct: number;
	readonly moved: boolean;
	/** What counts as no change is no more than a good pull: else the rounds scatter too much to tell. */
	readonly tells: boolean;
};

/** The closing round against the mean of the inner rounds; undefined until both are there with figures. */
export function closingOf(facts: Facts): Closing | undefined {
	const scale = gaugeScale(facts);
	const inner = roundsAt(facts, 'inner');
	const closing = roundsAt(facts, 'closing').at(-1);
	if (!scale || !closing || inner.length === 0 || isOffScale(facts, 'inner') || isRoundOffScale(facts, closing)) return;
	const centrePct = pullPct([closing], scale);
	const meanPct = pullPct(inner, scale);
	const spread = spreadPct(facts)?.sd ?? null;
	const allowedPct = closingAllowedPct(inner.length, spread);
	return {
		centrePct,
		meanPct,
		allowedPct,
		moved: somethingMoved(centrePct, meanPct, inner.length, spread),
		tells: isAtMost(allowedPct, facts.limits.pullGoodPct),
	};
}

const probeAgain: Way = {
	label: 'probe again from the start: a new series',
	do: 'new-series',
	because: 'the closing round was off',
	steps: ['wires'],
};

export function closingProblem(facts: Facts): Problem | undefined {
	const round = roundsAt(facts, 'closing').at(-1);
	if (round && isRoundOffScale(facts, round) && !isOffScale(facts, 'inner'))
		return {
			sentence: 'The closing round is off scale, though the inner rounds were not: something moved. Probe again.',
			ways: [probeAgain],
		};
	const closing = closingOf(facts);
	if (!closing?.moved) return;
	const off = Math.abs(closing.centrePct - closing.meanPct).toFixed(2);
	return {
		sentence: `Something moved: the closing round is ${off} % away from the inner rounds. Probe again.`,
		ways: [probeAgain],
	};
}
