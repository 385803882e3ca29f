import {leftoverAt} from '../../measures/bias-fit.js';
import {isAbove, isAtLeast, isAtMost} from '../../measures/compare.js';
import {units} from '../../units.js';
import {type DiagnosisFacts, placesWhere} from '../diagnosis-facts.js';
import type {PlaceName} from '../document-schema.js';
import type {FindingRow} from '../finding-row.js';
import {isOffScale} from '../radius-figures.js';
import {settingsOf} from '../settings.js';
import {forceWithWay, listed, plainNumber, pullAt} from '../wording.js';
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

function offScaleRadii({document}: DiagnosisFacts): number[] {
	const settings = settingsOf(document);
	return (document.bias?.readings ?? []).filter((one) => isOffScale(one, settings)).map(({radiusMm}) => radiusMm);
}

const topOf = ({document}: DiagnosisFacts): string =>
	`${plainNumber(settingsOf(document).topOfScale)} ${units[document.gauge.unit].label}`;

/** How much wider the widest hold band is with the bias on, and where that is. */
function rub({document, measured}: DiagnosisFacts) {
	const settings = settingsOf(document);
	const bandsPct = biasBandsPct(document, settings);
	if (measured.length === 0 || bandsPct.length === 0) return;
	const widestPct = Math.max(...bandsPct);
	const radiusMm = usableReadings(document, settings)[bandsPct.indexOf(widestPct)]?.radiusMm ?? 0;
	const offPct = Math.max(...measured.map(({bandPct}) => bandPct));
	return {radiusMm, onPct: widestPct, offPct};
}

const rubs = (facts: DiagnosisFacts) => {
	const found = rub(facts);
	return found && isAtLeast(found.onPct - found.offPct, facts.bandLimits.good / 2) ? found : undefined;
};

type Left = {readonly radiusMm: number; readonly leftPct: number};

/** What the best setting leaves at the innermost and the outermost radius measured. */
function leftAtEnds({document, figures}: DiagnosisFacts): Left[] {
	const problem = biasProblem(document, settingsOf(document), figures.probe);
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

const isCarried = ({figures, pullLimits}: DiagnosisFacts): boolean =>
	figures.bias?.fit !== null &&
	figures.bias?.fit !== undefined &&
	isAtMost(figures.bias.fit.worstAfterPct, pullLimits.good);

const strong = ({measured}: DiagnosisFacts) => measured.filter(({pullVerdict}) => pullVerdict === 'beyond');

/** What the readings with the bias on say, in order of weight. */
export const biasRows = [
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
		likely: "a lever that leaves 3 or 9 o'clock, or the angle of the thread",
		next: () =>
			"the technician moves the pulley nearer or farther, or changes the length of the thread, so that a lever stays about 3 or 9 o'clock across the record",
	},
	{
		code: 'playable-with-bias',
		who: 'technician',
		places: (facts) => (isCarried(facts) ? placesWhere(strong(facts), () => true) : []),
		say: (facts) =>
			`The side pull is ${listed(strong(facts).map(pullAt))}, yet bias can carry it: at its best setting at most ${(facts.figures.bias?.fit?.worstAfterPct ?? 0).toFixed(1)} % is left over the record (good to ${plainNumber(facts.pullLimits.good)} %)`,
		likely: 'a steady pull',
		next: () => 'the technician sets the bias so, it may be played, and the pull is cured at leisure',
	},
] as const satisfies readonly FindingRow[];
