import defaults from '../../shared/limits.json' with {type: 'json'};
import {zoneOf} from '../measures/verdict.js';
import type {ComputeOutput} from '../results/compute.js';
import type {ArmSpec} from './arm-spec.js';
import {type Truth, truthOf} from './truth.js';

const emptyFigure = () => ({intervals: 0, holding: 0, statedPct: 0, errorPct: 0, squaredPct: 0});
/** How one figure did over many probes; in percent of the playing force. */
export type FigureTally = ReturnType<typeof emptyFigure>;

export const emptyTally = () => ({
	arms: 0,
	pull: emptyFigure(),
	band: emptyFigure(),
	offScaleRadii: 0,
	/** Arms truly not good at some radius, and how many of them were called good. */
	notGood: 0,
	notGoodCalledGood: 0,
	/** Arms truly beyond the usable limits at some radius, and how many of them were called good. */
	beyond: 0,
	beyondCalledGood: 0,
});
/** Counted over many arms. */
export type Tally = ReturnType<typeof emptyTally>;

function addFigure(tally: FigureTally, found: number, statedPct: number, truth: number): void {
	const error = found - truth;
	tally.intervals++;
	if (Math.abs(error) <= statedPct) tally.holding++;
	tally.statedPct += statedPct;
	tally.errorPct += error;
	tally.squaredPct += error ** 2;
}

const pullLimits = {good: defaults.pullGoodPct.value, usable: defaults.pullUsablePct.value};
const bandLimits = {good: defaults.bandGoodPct.value, usable: defaults.bandUsablePct.value};

const zonesOf = ({pullPct, bandPct}: Truth) => [zoneOf(Math.abs(pullPct), pullLimits), zoneOf(bandPct, bandLimits)];

/** Counts what was found of one arm against its hidden truth. */
export function addProbe(tally: Tally, spec: ArmSpec, {probe, verdict}: ComputeOutput): void {
	tally.arms++;
	for (const one of probe) {
		const truth = truthOf(spec, one.radiusMm);
		if (one.pullPct === null) {
			tally.offScaleRadii++;
			continue;
		}
		addFigure(tally.pull, one.pullPct, one.pullUncertaintyPct, truth.pullPct);
		addFigure(tally.band, one.bandPct, one.bandUncertaintyPct, truth.bandPct);
	}
	const zones = probe.flatMap(({radiusMm}) => zonesOf(truthOf(spec, radiusMm)));
	if (zones.every((zone) => zone === 'good')) return;
	tally.notGood++;
	if (verdict === 'good') tally.notGoodCalledGood++;
	if (!zones.includes('beyond')) return;
	tally.beyond++;
	if (verdict === 'good') tally.beyondCalledGood++;
}
