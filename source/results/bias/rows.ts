import limits from '../../../shared/limits.json' with {type: 'json'};
import {isIdle, leftoverAt} from '../../measures/bias-fit.js';
import {isAbove, isAtLeast, isAtMost} from '../../measures/compare.js';
import {type DiagnosisFacts, placesOf} from '../diagnosis-facts.js';
import type {PlaceName} from '../document-schema.js';
import type {FindingRow} from '../finding-row.js';
import {reachesScaleTop} from '../series-read.js';
import {biasBandsPct, biasProblem, usableReadings} from './figures.js';

/** A bias radius by its place among those read: the innermost, the outermost, or between. */
function placeOf(radiusMm: number, {document}: DiagnosisFacts): PlaceName {
	const radii = (document.bias?.readings ?? []).map((one) => one.radiusMm);
	if (radiusMm === Math.min(...radii)) return 'inner';
	return radiusMm === Math.max(...radii) ? 'outer' : 'other';
}

const biasPlaces = (radiiMm: readonly number[], facts: DiagnosisFacts): PlaceName[] => [
	...new Set(radiiMm.map((radiusMm) => placeOf(radiusMm, facts))),
];

function offScaleRadii({document, series}: DiagnosisFacts): number[] {
	return (document.bias?.readings ?? [])
		.filter((one) => reachesScaleTop(one, series.conditions))
		.map(({radiusMm}) => radiusMm);
}

/** How much wider the widest hold band is with the bias on, and where that is. */
function rub({series, measured}: DiagnosisFacts) {
	const bandsPct = biasBandsPct(series);
	if (measured.length === 0 || bandsPct.length === 0) return;
	const widestPct = Math.max(...bandsPct);
	const radiusMm = usableReadings(series)[bandsPct.indexOf(widestPct)]?.radiusMm ?? 0;
	const offPct = Math.max(...measured.map(({bandPct}) => bandPct));
	return {radiusMm, onPct: widestPct, offPct};
}

type Left = {readonly radiusMm: number; readonly leftPct: number};

/** What the best setting leaves at the innermost and the outermost radius measured. */
function leftAtEnds({series, figures}: DiagnosisFacts): Left[] {
	const problem = biasProblem(series, figures.probe);
	const fit = figures.bias?.fit;
	if (!problem || !fit) return [];
	const radii = problem.bias.map(({radiusMm}) => radiusMm);
	return [Math.min(...radii), Math.max(...radii)].map((radiusMm) => ({
		radiusMm,
		leftPct: leftoverAt(problem, radiusMm, fit.factor),
	}));
}

/** Radii at which a bias that is on does nothing. */
function idleRadii({series, figures}: DiagnosisFacts): number[] {
	const problem = biasProblem(series, figures.probe);
	return problem && problem.bias.length > 1 && isIdle(problem.bias) ? problem.bias.map(({radiusMm}) => radiusMm) : [];
}

/** What the readings with the bias on say, in order of weight. */
export const biasRows = [
	{
		code: 'bias-idle',
		who: 'technician',
		bias: 'none',
		find: (facts) => {
			const radiiMm = idleRadii(facts);
			return {places: biasPlaces(radiiMm, facts), values: {radiiMm, leastPct: limits.leastBiasPct.value}};
		},
	},
	{
		code: 'bias-off-scale',
		who: 'technician',
		bias: 'none',
		find: (facts) => {
			const radiiMm = offScaleRadii(facts);
			const {topOfScale, unit} = facts.document.gauge;
			return {places: biasPlaces(radiiMm, facts), values: {radiiMm, topOfScale, unit}};
		},
	},
	{
		code: 'bias-rubs',
		who: 'technician',
		bias: 'none',
		find: (facts) => {
			const found = rub(facts);
			const leastPct = facts.bandLimits.good / 2;
			if (!found || !isAtLeast(found.onPct - found.offPct, leastPct)) return;
			return {places: biasPlaces([found.radiusMm], facts), values: {...found, leastPct}};
		},
	},
	{
		code: 'bias-uneven',
		who: 'technician',
		bias: 'none',
		find: (facts) => {
			const allowedPct = Math.max(facts.figures.bias?.fit?.frictionFloorPct ?? 0, facts.pullLimits.good);
			const left = leftAtEnds(facts).filter(({leftPct}) => isAbove(Math.abs(leftPct), allowedPct));
			const radiiMm = left.map(({radiusMm}) => radiusMm);
			return {places: biasPlaces(radiiMm, facts), values: {left, allowedPct}};
		},
	},
	{
		code: 'playable-with-bias',
		who: 'technician',
		bias: 'carries',
		find: ({figures, measured, pullLimits: {good, usable}}) => {
			const fit = figures.bias?.fit;
			const radii = measured.filter(({pullVerdict}) => pullVerdict === 'beyond');
			if (!fit || radii.length === 0) return;
			const {worstAfterPct, worstAfterDragPct} = fit;
			if (!isAtMost(worstAfterPct, good) || !isAtMost(worstAfterDragPct, usable)) return;
			const drag = limits.effectiveDragBand.value;
			const values = {radii, worstAfterPct, goodPct: good, worstAfterDragPct, usablePct: usable, drag};
			return {places: placesOf(measured), values};
		},
	},
] as const satisfies readonly FindingRow[];
