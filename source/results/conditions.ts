import defaults from '../../shared/limits.json' with {type: 'json'};
import {rootSumSquares} from '../measures/statistics.js';
import {carriedForceMn, forceScaleFactor, mnPerGram, percentScaleFactor} from '../measures/tracking-force.js';
import {settingUpVariance} from '../measures/uncertainty.js';
import type {Limits} from '../measures/verdict.js';
import {units} from '../units.js';
import type {Document} from './document-schema.js';

export type Conditions = ReturnType<typeof conditionsOf>;

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

/** The limits of a document, those left out filled in with the program's own. */
export const documentLimits = ({limits = {}}: Document, figure: 'pull' | 'band'): Limits => ({
	good: limits[`${figure}GoodPct`] ?? defaults[`${figure}GoodPct`].value,
	usable: limits[`${figure}UsablePct`] ?? defaults[`${figure}UsablePct`].value,
});

/** What holds for every radius of a document, with the optional keys filled in. */
export const conditionsOf = (document: Document) => {
	const {arm, gauge, trackingForce} = document;
	const {guard, guardMassG = 0, scaleReadingMn} = trackingForce;
	const carriedMn = carriedForceMn(scaleReadingMn, guard === 'left-out' ? guardMassG : 0);
	// With a percent gauge the gain of the stylus scale cancels in carried over playing force.
	const forcePct = gauge.unit === 'percent' ? 0 : (trackingForce.relativeUncertaintyPct ?? 0);
	return {
		carriedMn,
		/** Percent of the playing force for each unit of the gauge. */
		factor: factorOf(document, carriedMn),
		/** Smallest step and size of a nudge, in the gauge's unit. */
		step: gauge.step,
		nudge: gauge.nudge ?? 0,
		topOfScale: gauge.topOfScale,
		/** Relative standard uncertainty of a whole figure, in percent. */
		gainPct: rootSumSquares(gauge.relativeUncertaintyPct ?? 0, forcePct),
		/** Variance of setting the gauge up, in %²; nothing where it was set anew between rounds. */
		settingUp: settingUpVariance(gauge.setAnew ?? false),
		pivotDirectionDeg: arm.pivotDirectionDeg ?? defaults.pivotDirectionDeg.value,
		/** The force that leans with the deck over the playing force. */
		leaning: leaningOf(document, carriedMn),
		pullLimits: documentLimits(document, 'pull'),
		bandLimits: documentLimits(document, 'band'),
	};
};
