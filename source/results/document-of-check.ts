import type {Check, Series, Trial} from '../check/check.js';
import {factsOfSeries} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {shownAtIn} from '../check/short-series.js';
import {chosenTrial, withTrial} from '../check/trials.js';
import {biasDeviceIds} from '../procedure/bias-devices.js';
import {onRadii} from '../procedure/bias-on.js';
import {stylusHeightMm} from '../procedure/clearance.js';
import type {Facts} from '../procedure/facts.js';
import {armOf, type ProbePlace, pivotDirectionDeg} from '../procedure/geometry.js';
import {
	gaugeReading,
	probeRounds,
	roundsAt,
	type StatedZero,
	statedZero,
	topOfScale,
} from '../procedure/hold-limits.js';
import {levelReadings} from '../procedure/level.js';
import {radiusOf} from '../procedure/places.js';
import {gaugeUnitOf} from '../procedure/readings.js';
import {guardHandling, scaleReadingMn} from '../procedure/weighing.js';
import type {Document, PlaceName} from './document-schema.js';

/** What a check still lacks for a document: arm and force, or a complete round at a radius. */
export type MissingPart = 'description' | 'inner' | 'outer';

/** A whole document, or which part of the check is still missing for one. */
export type DocumentOfCheck =
	| {readonly ok: true; readonly document: Document}
	| {readonly ok: false; readonly missing: MissingPart};

/**
 * The compute document of a series of a check; where none is named, of the last one. A check that was stopped in a
 * series that was begun and not measured keeps what it came to before. Pure.
 */
export function documentOfCheck(check: Check, series: Series = seriesThatCounts(check)): DocumentOfCheck {
	const document = partialDocument(factsWithBias(check, series));
	if (!document) return {ok: false, missing: 'description'};
	const missing = (['inner', 'outer'] as const).find((place) => !document.probe.some((one) => one.place === place));
	return missing ? {ok: false, missing} : {ok: true, document};
}

/** What is known of a series, with the bias setting that counts. */
function factsWithBias(check: Check, series: Series): Facts {
	const chosen = chosenTrial(check, series);
	return chosen ? factsOfTrial(check, series, chosen.trial) : factsOfSeries(check, series);
}

/** What is known of a series with one of the bias settings that were tried. */
export function factsOfTrial(check: Check, series: Series, trial: Trial): Facts {
	const then = withTrial(check, series, trial);
	return factsOfSeries(then.check, then.series);
}

/**
 * The series whose figures a check is judged by: the last one, or the last that was measured where it was stopped or
 * where the last one shows at one radius what a remedy did.
 */
export function seriesThatCounts(check: Check): Series {
	const open = openSeries(check);
	const mayLack = check.stopped || shownAtIn(check, open);
	if (!mayLack || documentOfCheck(check, open).ok) return open;
	return check.series.findLast((one) => documentOfCheck(check, one).ok) ?? open;
}

/** A stated ± is taken as a rectangular bound: a/√3 (JCGM 100:2008 4.3.7). */
const standard = (plusMinus: number): number => plusMinus / Math.sqrt(3);

/** Standard uncertainty of a weighing, in mN: the scale's step (JCGM 100:2008 F.2.2.1) and its stated ±. */
const forceUncertaintyMn = (facts: Facts): number =>
	Math.hypot((facts.number('scale-step') ?? 0) / Math.sqrt(12), standard(facts.number('scale-uncertainty') ?? 0));

/**
 * The document as far as it goes: probe radii without a complete round are left out, and readings with the bias on at
 * fewer radii than two, which say nothing about the record. Undefined before the weighing.
 */
export function partialDocument(facts: Facts, leastBiasRadii = 2): Document | undefined {
	const arm = armOf(facts);
	const playingMn = facts.number('playing-force');
	const scaleMn = scaleReadingMn(facts);
	const guard = guardHandling(facts);
	const top = topOfScale(facts);
	if (!arm || playingMn === undefined || scaleMn === undefined || guard === undefined || top === undefined) return;
	const probe = probeRounds(facts)
		.filter(({rounds}) => rounds.length > 0)
		.map(({place, radiusMm, rounds}) => ({place: documentPlace(place), radiusMm, rounds: [...rounds]}));
	const guardMassG = facts.number('guard-mass');
	return {
		arm: {
			...arm,
			loading: facts.is('arm-loading', 'spring') ? 'spring' : 'gravity',
			pivotDirectionDeg: pivotDirectionDeg(facts),
		},
		gauge: {...gaugeOf(facts, top), ...zeroPart(facts, probe)},
		trackingForce: {
			playingMn,
			scaleReadingMn: scaleMn,
			guard,
			...(guardMassG === undefined ? {} : {guardMassG}),
			relativeUncertaintyPct: (100 * forceUncertaintyMn(facts)) / scaleMn,
		},
		...levelPart(facts),
		...clearancePart(facts),
		...cartridgePart(facts),
		probe,
		limits: {...facts.limits},
		...biasPart(facts, leastBiasRadii),
	};
}

const documentPlace = (place: ProbePlace['place']): PlaceName => (place === 'extra' ? 'other' : place);

const gaugeOf = (facts: Facts, topOfScale: number): Document['gauge'] => ({
	unit: gaugeUnitOf(facts),
	topOfScale,
	...gaugeReading(facts),
	relativeUncertaintyPct: standard(facts.number('gauge-scale-uncertainty') ?? 0),
	setAnew: facts.setAnew,
});

/** The zero that was read free of the arm; rounds with the gauge turned show it better. */
function zeroPart(facts: Facts, probe: Document['probe']): Partial<StatedZero> {
	const isTurned = probe.some(({rounds}) => rounds.some(({gauge}) => gauge === 'turned'));
	return isTurned ? {} : (statedZero(facts) ?? {});
}

function levelPart(facts: Facts): Pick<Document, 'level'> {
	const leftRightDeg = [...levelReadings(facts, 'lr')];
	const frontBackDeg = [...levelReadings(facts, 'fb')];
	if (leftRightDeg.length === 0 || frontBackDeg.length === 0) return {};
	return {level: {stepDeg: facts.number('level-step') ?? 0, leftRightDeg, frontBackDeg}};
}

function clearancePart(facts: Facts): Pick<Document, 'clearance'> {
	const stylusMm = stylusHeightMm(facts);
	if (stylusMm === undefined) return {};
	const guardDepthMm = facts.number('guard-depth');
	return {
		clearance: {
			stylusMm,
			matRemovedMm: facts.number('mat-thickness') ?? 0,
			...(guardDepthMm === undefined ? {} : {guardDepthMm}),
		},
	};
}

function cartridgePart(facts: Facts): Pick<Document, 'cartridge'> {
	const staticComplianceUmPerMn = facts.number('cartridge-compliance');
	const cantileverMm = facts.number('cartridge-cantilever');
	if (staticComplianceUmPerMn === undefined) return {};
	return {cartridge: {staticComplianceUmPerMn, ...(cantileverMm === undefined ? {} : {cantileverMm})}};
}

function biasPart(facts: Facts, leastRadii: number): Pick<Document, 'bias'> {
	const device = biasDeviceIds.find((id) => facts.is('arm-bias-device', id));
	if (!device) return {};
	const effectiveDrag = facts.number('bias-drag');
	const readings = onRadii(facts).flatMap(({place, radiusMm}) => {
		const rounds = roundsAt(facts, place);
		const leverClock = facts.text(`bias-clock-${radiusOf(place)}`);
		return rounds.length === 0
			? []
			: [{radiusMm, rounds: [...rounds], ...(leverClock === undefined ? {} : {leverClock})}];
	});
	return {
		bias: {
			device,
			...(effectiveDrag === undefined ? {} : {effectiveDrag}),
			// One radius says nothing about the record.
			...(readings.length < leastRadii ? {} : {readings}),
		},
	};
}
