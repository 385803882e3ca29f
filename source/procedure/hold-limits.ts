import {type ClosingRound, closingRound} from '../measures/closing-round.js';
import {isAtMost} from '../measures/compare.js';
import {type LimitPair, reachesTop, roundCentresPct} from '../measures/hold-band.js';
import {mean} from '../measures/statistics.js';
import {forceScaleFactor, percentScaleFactor} from '../measures/tracking-force.js';
import {centreReading, settingUpVariance} from '../measures/uncertainty.js';
import {fromBase, units} from '../units.js';
import type {Facts, HoldLimits} from './facts.js';
import {type ProbePlace, probeRadii} from './geometry.js';
import type {Place} from './places.js';
import {type Problem, problem, type Way} from './problem.js';
import {gaugeUnitOf} from './readings.js';
import {freeZeroSteps} from './step-groups.js';
import {carriedMn} from './weighing.js';

/** A base value in the gauge's own unit, free of the dust that conversions leave. */
export const inGaugeUnit = (value: number, facts: Facts): number =>
	Number(fromBase(value, gaugeUnitOf(facts)).toPrecision(12));

/** Complete rounds that count, in the gauge's own unit. */
export const roundsAt = (facts: Facts, place: Place): readonly HoldLimits[] =>
	facts.rounds(place).map(({innerLimit, outerLimit, ...rest}) => ({
		...rest,
		innerLimit: inGaugeUnit(innerLimit, facts),
		outerLimit: inGaugeUnit(outerLimit, facts),
	}));

const isTurned = ({gauge}: HoldLimits): boolean => gauge === 'turned';

/** A round as the figures take it: which way the gauge stood, and whether it closed the probe. */
export type ProbeRound = HoldLimits & {readonly closing?: true};

/**
 * The rounds of each probe radius, those of the closing place with the inner ones. A radius without any round as used has
 * none that count.
 */
export const probeRounds = (facts: Facts): readonly (ProbePlace & {readonly rounds: readonly ProbeRound[]})[] =>
	probeRadii(facts).map((radius) => {
		const own = roundsAt(facts, radius.place);
		const rounds = radius.place === 'inner' ? [...own, ...closingRounds(facts, own)] : own;
		return {...radius, rounds: rounds.every(isTurned) ? [] : rounds};
	});

/** The last of them closes the probe, where it has another one to be held against. */
function closingRounds(facts: Facts, inner: readonly HoldLimits[]): ProbeRound[] {
	const rounds = roundsAt(facts, 'closing');
	const hasOther = rounds.length > 1 || !inner.every(isTurned);
	return rounds.map((round, index) => (hasOther && index === rounds.length - 1 ? {...round, closing: true} : round));
}

/** Percent of the playing force for each unit of the gauge; undefined until the arm was weighed. */
function scaleFactor(facts: Facts): number | undefined {
	const playingMn = facts.number('playing-force');
	const carried = carriedMn(facts);
	if (playingMn === undefined || carried === undefined) return;
	const unit = gaugeUnitOf(facts);
	return unit === 'percent' ? percentScaleFactor(carried, playingMn) : forceScaleFactor(units[unit].scale, playingMn);
}

/** The end of the gauge's scale in its own unit; every gauge has its own, so undefined until it was asked. */
export const topOfScale = (facts: Facts): number | undefined => {
	const top = facts.number('gauge-top');
	return top === undefined ? undefined : inGaugeUnit(top, facts);
};

/** The end of the scale as it is printed: `20 %`. */
export const topText = (facts: Facts): string => `${topOfScale(facts) ?? '?'} ${units[gaugeUnitOf(facts)].label}`;

/** Whether a reading in the gauge's own unit reaches the end of its scale. */
export const isOverTop = (facts: Facts, reading: number): boolean => {
	const top = topOfScale(facts);
	return top !== undefined && reachesTop(reading, top);
};

/** Whether any reading at a place reached the end of the scale: then it has no figures. */
export const isPlaceOffScale = (facts: Facts, place: Place): boolean =>
	roundsAt(facts, place).some((round) => isRoundOffScale(facts, round));

export const isRoundOffScale = (facts: Facts, {innerLimit, outerLimit}: LimitPair): boolean =>
	isOverTop(facts, innerLimit) || isOverTop(facts, outerLimit);

/** Step and nudge of the gauge in its own unit. */
export const gaugeReading = (facts: Facts): {readonly step: number; readonly nudge: number} => ({
	step: inGaugeUnit(facts.number('gauge-step') ?? 0, facts),
	nudge: inGaugeUnit(facts.number('gauge-nudge') ?? 0, facts),
});

/** The zero of a gauge that was read free of the arm, in its own unit, with its standard uncertainty. */
export type StatedZero = {readonly zero: number; readonly zeroUncertainty: number};

/**
 * The mean of what the pointer showed before the first round and after the last; undefined where neither was read. Each
 * reading is good to step/√12 (JCGM 100:2008 F.2.2.1); a drift between them may have stood anywhere between (4.3.7).
 */
export function statedZero(facts: Facts): StatedZero | undefined {
	const read = freeZeroSteps.flatMap((id) => {
		const value = facts.number(id);
		return value === undefined ? [] : [inGaugeUnit(value, facts)];
	});
	if (read.length === 0) return;
	const halfDrift = (Math.max(...read) - Math.min(...read)) / 2;
	const {step} = gaugeReading(facts);
	return {
		zero: mean(read),
		zeroUncertainty: Math.hypot(step / Math.sqrt(12 * read.length), halfDrift / Math.sqrt(3)),
	};
}

export type Closing = ClosingRound & {
	/** What counts as no change is no more than a good pull: else the rounds scatter too much to tell. */
	readonly tells: boolean;
};

/** The closing round against the other inner rounds as used; undefined until both are there with figures. */
export function closingOf(facts: Facts): Closing | undefined {
	const factor = scaleFactor(facts);
	const radii = probeRounds(facts).filter(({rounds}) => !rounds.some((round) => isRoundOffScale(facts, round)));
	const used = radii.find(({place}) => place === 'inner')?.rounds.filter((round) => !isTurned(round)) ?? [];
	const closing = used.find((round) => round.closing);
	if (factor === undefined || !closing) return;
	const middles = (rounds: readonly ProbeRound[]) => roundCentresPct(rounds, factor);
	const {step, nudge} = gaugeReading(facts);
	const found = closingRound({
		centrePct: middles([closing])[0] ?? 0,
		othersPct: middles(used.filter((round) => round !== closing)),
		groupsPct: radii.flatMap(({rounds}) => [
			middles(rounds.filter((round) => !isTurned(round) && round !== closing)),
			middles(rounds.filter(isTurned)),
		]),
		reading: centreReading({stepPct: factor * step, nudgePct: factor * nudge}),
		settingUp: settingUpVariance(facts.setAnew),
	});
	return {...found, tells: isAtMost(found.allowedPct, facts.limits.pullGoodPct)};
}

const probeAgain: Way = {id: 'probe-anew', do: 'new-series', because: 'closing-off', steps: ['wires']};

export function closingProblem(facts: Facts): Problem | undefined {
	const round = roundsAt(facts, 'closing').at(-1);
	if (round && isRoundOffScale(facts, round) && !isPlaceOffScale(facts, 'inner'))
		return problem('closing-off-scale', {}, probeAgain);
	const closing = closingOf(facts);
	return closing?.moved ? problem('closing-moved', {movedPct: closing.movedPct}, probeAgain) : undefined;
}
