import limits from '../../../shared/limits.json' with {type: 'json'};
import {isIdle, leftoverAt} from '../../measures/bias-fit.js';
import {isAbove, isAtLeast, isAtMost} from '../../measures/compare.js';
import {units} from '../../units.js';
import {forceWithWay, listed, plainNumber, pullAt} from '../../words/wording.js';
import {type DiagnosisFacts, placesWhere} from '../diagnosis-facts.js';
import type {PlaceName} from '../document-schema.js';
import type {FindingRow} from '../finding-row.js';
import {isOffScale} from '../series-read.js';
import {biasBandsPct, biasProblem, usableReadings} from './figures.js';

/** A bias radius by its place among those read: the innermost, the outermost, or between. */
function placeOf(radiusMm: number, {document}: DiagnosisFacts): PlaceName {
	const radii = (document.bias?.readings ?? []).map((one) => one.radiusMm);
	if (radiusMm === Math.min(...radii)) return 'inner';
	return radiusMm === Math.max(...radii) ? 'outer' : 'other';
}

const placesOf = (radiiMm: readonly number[], facts: DiagnosisFacts): PlaceName[] => [
	...new Set(radiiMm.map((radiusMm) => placeOf(radiusMm, facts))),
];

const at = (radiiMm: readonly number[]): string => listed(radiiMm.map((radiusMm) => `${plainNumber(radiusMm)} mm`));

function offScaleRadii({document, series}: DiagnosisFacts): number[] {
	return (document.bias?.readings ?? [])
		.filter((one) => isOffScale(one, series.settings))
		.map(({radiusMm}) => radiusMm);
}

const topOf = ({document: {gauge}}: DiagnosisFacts): string =>
	`${plainNumber(gauge.topOfScale)} ${units[gauge.unit].label}`;

/** How much wider the widest hold band is with the bias on, and where that is. */
function rub({series, measured}: DiagnosisFacts) {
	const bandsPct = biasBandsPct(series);
	if (measured.length === 0 || bandsPct.length === 0) return;
	const widestPct = Math.max(...bandsPct);
	const radiusMm = usableReadings(series)[bandsPct.indexOf(widestPct)]?.radiusMm ?? 0;
	const offPct = Math.max(...measured.map(({bandPct}) => bandPct));
	return {radiusMm, onPct: widestPct, offPct};
}

const rubs = (facts: DiagnosisFacts) => {
	const found = rub(facts);
	return found && isAtLeast(found.onPct - found.offPct, facts.bandLimits.good / 2) ? found : undefined;
};

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

const allowedPct = ({figures, pullLimits}: DiagnosisFacts): number =>
	Math.max(figures.bias?.fit?.frictionFloorPct ?? 0, pullLimits.good);

const uneven = (facts: DiagnosisFacts): Left[] =>
	leftAtEnds(facts).filter(({leftPct}) => isAbove(Math.abs(leftPct), allowedPct(facts)));

const isCarried = ({figures, pullLimits}: DiagnosisFacts): boolean => {
	const fit = figures.bias?.fit;
	return (
		fit !== undefined &&
		fit !== null &&
		isAtMost(fit.worstAfterPct, pullLimits.good) &&
		isAtMost(fit.worstAfterDragPct, pullLimits.usable)
	);
};

/** Radii at which a bias that is on does nothing. */
function idleRadii({series, figures}: DiagnosisFacts): number[] {
	const problem = biasProblem(series, figures.probe);
	return problem && problem.bias.length > 1 && isIdle(problem.bias) ? problem.bias.map(({radiusMm}) => radiusMm) : [];
}

const strong = ({measured}: DiagnosisFacts) => measured.filter(({pullVerdict}) => pullVerdict === 'beyond');

/** What the readings with the bias on say, in order of weight. */
export const biasRows = [
	{
		code: 'bias-idle',
		who: 'technician',
		places: (facts) => placesOf(idleRadii(facts), facts),
		say: (facts) =>
			`With the bias on, less than ${limits.leastBiasPct.value} % more was read at ${at(idleRadii(facts))} than without it`,
		likely: 'the device does nothing: its weight is not on, its thread is not hooked, or a stop is in its way',
		next: () => 'the technician looks at the device, arm locked and guard on, then probes again',
	},
	{
		code: 'bias-off-scale',
		who: 'technician',
		places: (facts) => placesOf(offScaleRadii(facts), facts),
		say: (facts) =>
			`With the bias on, a reading at ${at(offScaleRadii(facts))} reached the top of the scale, ${topOf(facts)}, so there is no figure`,
		likely: 'too strong a bias, or a drag that is assumed too high',
		next: () => 'the technician sets less bias and probes again',
	},
	{
		code: 'bias-rubs',
		who: 'technician',
		places: (facts) => placesOf(rubs(facts) ? [rubs(facts)?.radiusMm ?? 0] : [], facts),
		say: (facts) => {
			const {onPct = 0, offPct = 0, radiusMm = 0} = rubs(facts) ?? {};
			return `With the bias on the hold band is ${onPct.toFixed(1)} % at ${at([radiusMm])}, without it at most ${offPct.toFixed(1)} %: the device adds friction (half the good limit is ${plainNumber(facts.bandLimits.good / 2)} %)`;
		},
		likely: 'a thread or pulley that drags',
		next: () => 'the technician cleans and aligns thread and pulley, and probes again',
	},
	{
		code: 'bias-uneven',
		who: 'technician',
		places: (facts) =>
			placesOf(
				uneven(facts).map(({radiusMm}) => radiusMm),
				facts,
			),
		say: (facts) =>
			`At its best setting the bias still leaves ${listed(uneven(facts).map(({radiusMm, leftPct}) => `${forceWithWay(leftPct, '%', 1)} at ${at([radiusMm])}`))} (allowed: ${plainNumber(allowedPct(facts))} %): its shape over the record does not fit`,
		likely: 'a lever that does not lie about level over the whole record, or the angle of the thread',
		next: () =>
			'the technician makes the thread longer or shorter, or shifts its pulley as far as its maker allows, until the lever lies about level at every radius read',
	},
	{
		code: 'playable-with-bias',
		who: 'technician',
		places: (facts) => (isCarried(facts) && strong(facts).length > 0 ? placesWhere(facts.measured, () => true) : []),
		say: (facts) =>
			`The side pull is ${listed(strong(facts).map(pullAt))}, yet bias can carry it: at its best setting at most ${(facts.figures.bias?.fit?.worstAfterPct ?? 0).toFixed(1)} % is left over the record (good to ${plainNumber(facts.pullLimits.good)} %), and ${(facts.figures.bias?.fit?.worstAfterDragPct ?? 0).toFixed(1)} % were the drag ${limits.effectiveDragBand.value} less or more (usable to ${plainNumber(facts.pullLimits.usable)} %)`,
		likely: 'a steady pull',
		next: () => 'the technician sets the bias so, it may be played, and the pull is cured at leisure',
	},
] as const satisfies readonly FindingRow[];
