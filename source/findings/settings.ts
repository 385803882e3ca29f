import defaults from '../../shared/limits.json' with {type: 'json'};
import type {GaugeScale} from '../measures/hold-band.js';
import {rootSumSquares} from '../measures/statistics.js';
import {carriedForceMn, forceScaleFactor, mnPerGram, percentScaleFactor} from '../measures/tracking-force.js';
import type {GaugeUncertainty} from '../measures/uncertainty.js';
import type {Limits} from '../measures/verdict.js';
import {units} from '../units.js';
import type {Document} from './document-schema.js';

/** What holds for every radius of a document, with the optional keys filled in. */
export type Settings = {
	readonly carriedMn: number;
	readonly scale: GaugeScale;
	readonly uncertainty: GaugeUncertainty;
	readonly topOfScale: number;
	readonly pivotDirectionDeg: number;
	/** The force that leans with the deck over the playing force. */
	readonly leaning: number;
	readonly pullLimits: Limits;
	readonly bandLimits: Limits;
};

const factorOf = ({gauge, trackingForce: {playingMn}}: Document, carriedMn: number): number =>
	gauge.unit === 'percent'
		? percentScaleFactor(carriedMn, playingMn)
		: forceScaleFactor(units[gauge.unit].scale, playingMn);

// A gravity-loaded arm leans with all that the gauge carries; a spring-loaded one only with the guard's own weight.
const leaningOf = ({arm, trackingForce}: Document, carriedMn: number): number => {
	const {guard, guardMassG = 0, playingMn} = trackingForce;
	if (arm.loading === 'gravity') return carriedMn / playingMn;
	return guard === 'none' ? 0 : (guardMassG * mnPerGram) / playingMn;
};

/** The limits of a document, those left out filled in with the project's own. */
export const limitsOf = ({limits = {}}: Document): {pull: Limits; band: Limits} => ({
	pull: {
		good: limits.pullGoodPct ?? defaults.pullGoodPct.value,
		usable: limits.pullUsablePct ?? defaults.pullUsablePct.value,
	},
	band: {
		good: limits.bandGoodPct ?? defaults.bandGoodPct.value,
		usable: limits.bandUsablePct ?? defaults.bandUsablePct.value,
	},
});

export const settingsOf = (document: Document): Settings => {
	const {arm, gauge, trackingForce} = document;
	const {guard, guardMassG = 0, scaleReadingMn} = trackingForce;
	const carriedMn = carriedForceMn(scaleReadingMn, guard === 'left-out' ? guardMassG : 0);
	const factor = factorOf(document, carriedMn);
	const nudge = gauge.nudge ?? 0;
	// With a percent gauge the gain of the stylus scale cancels in carried over playing force.
	const forcePct = gauge.unit === 'percent' ? 0 : (trackingForce.relativeUncertaintyPct ?? 0);
	const {pull, band} = limitsOf(document);
	return {
		carriedMn,
		scale: {factor, zero: gauge.zero ?? 0, nudge},
		uncertainty: {
			factor,
			step: gauge.step,
			nudge,
			zeroUncertainty: gauge.zeroUncertainty ?? 0,
			relativePct: rootSumSquares(gauge.relativeUncertaintyPct ?? 0, forcePct),
		},
		topOfScale: gauge.topOfScale ?? defaults.topOfScalePct.value,
		pivotDirectionDeg: arm.pivotDirectionDeg ?? defaults.pivotDirectionDeg.value,
		leaning: leaningOf(document, carriedMn),
		pullLimits: pull,
		bandLimits: band,
	};
};
