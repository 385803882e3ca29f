import {isAbove, isAtMost} from '../measures/compare.js';
import {canBeProbed, reachMm} from '../measures/geometry.js';
import type {Nothing, Said} from '../said.js';
import {documentLimits} from './conditions.js';
import type {Document, PlaceName} from './document-schema.js';

/** What no single field can see, by id; lengths in mm, readings in the gauge's unit. */
export type CrossFieldFaults = {
	'usable-below-good': {readonly figure: 'pull' | 'band'; readonly usable: number; readonly good: number};
	'uncertainty-without-zero': {readonly zeroUncertainty: number};
	/** Rounds with the gauge turned show the zero already. */
	'zero-beside-turned': {readonly zero: number};
	'nothing-carried': {readonly scaleReadingMn: number};
	/** The guard was left out of the weighing, and its mass is not given. */
	'guard-mass-missing': Nothing;
	'place-twice': {readonly place: PlaceName};
	'place-missing': {readonly place: PlaceName};
	'out-of-reach': Document['arm'] & {readonly radiusMm: number; readonly leastMm: number; readonly mostMm: number};
	'radius-twice': {readonly radiusMm: number};
	'limits-crossed': LimitsOfRound;
	'turned-limits-crossed': LimitsOfRound;
	'turned-without-used': Nothing;
	'turned-at-two-radii': Nothing;
	'closing-turned': Nothing;
	'closing-twice': Nothing;
	'closing-alone': Nothing;
	'inner-outside-outer': {readonly innerMm: number; readonly outerMm: number};
	'clock-without-lever': {readonly leverClock: string; readonly device: string};
};

type LimitsOfRound = Pick<ProbeRound, 'innerLimit' | 'outerLimit'>;
type Fault = {readonly path: string} & Said<CrossFieldFaults>;
type Find = (document: Document) => Fault[];

const limitFaults: Find = (document) =>
	(['pull', 'band'] as const).flatMap((figure) => {
		const {good, usable} = documentLimits(document, figure);
		if (isAtMost(good, usable)) return [];
		return [{path: `limits.${figure}UsablePct`, id: 'usable-below-good', values: {figure, usable, good}}];
	});

const gaugeFaults: Find = ({gauge: {zero, zeroUncertainty}, probe}) => {
	if (zero === undefined)
		return zeroUncertainty === undefined
			? []
			: [{path: 'gauge.zeroUncertainty', id: 'uncertainty-without-zero', values: {zeroUncertainty}}];
	return probe.some(({rounds}) => rounds.some(isTurned))
		? [{path: 'gauge.zero', id: 'zero-beside-turned', values: {zero}}]
		: [];
};

const floatedFaults: Find = ({gauge, trackingForce: {scaleReadingMn}}) =>
	gauge.unit !== 'percent' || isAbove(scaleReadingMn, 0)
		? []
		: [{path: 'trackingForce.scaleReadingMn', id: 'nothing-carried', values: {scaleReadingMn}}];

const guardFaults: Find = ({trackingForce}) =>
	trackingForce.guard !== 'left-out' || trackingForce.guardMassG !== undefined
		? []
		: [{path: 'trackingForce.guardMassG', id: 'guard-mass-missing', values: {}}];

const placeFaults: Find = ({probe}) => {
	const twice = probe.flatMap(({place}, index): Fault[] =>
		place !== 'other' && probe.findIndex((other) => other.place === place) < index
			? [{path: `probe[${index}].place`, id: 'place-twice', values: {place}}]
			: [],
	);
	// With one place named twice, the other is missing by the same slip: one line is enough.
	if (twice.length > 0) return twice;
	return (['inner', 'outer'] as const)
		.filter((wanted) => probe.every(({place}) => place !== wanted))
		.map((place) => ({path: 'probe', id: 'place-missing', values: {place}}));
};

type ProbeRound = Document['probe'][number]['rounds'][number];
type Radius = {readonly radiusMm: number; readonly rounds: readonly ProbeRound[]};

const isTurned = ({gauge}: ProbeRound): boolean => gauge === 'turned';

const radiusFaults = (arm: Document['arm'], base: string, radii: readonly Radius[]): Fault[] =>
	radii.flatMap(({radiusMm}, index) => {
		const path = `${base}[${index}].radiusMm`;
		const faults: Fault[] = [];
		if (!canBeProbed(arm, radiusMm)) {
			const [leastMm = 0, mostMm = 0] = reachMm(arm).map((radius) => Number(radius.toPrecision(6)));
			faults.push({path, id: 'out-of-reach', values: {...arm, radiusMm, leastMm, mostMm}});
		}
		if (radii.slice(0, index).some((earlier) => !isAbove(Math.abs(earlier.radiusMm - radiusMm), 0)))
			faults.push({path, id: 'radius-twice', values: {radiusMm}});
		return faults;
	});

const roundFaults = (base: string, radii: readonly Radius[]): Fault[] =>
	radii.flatMap(({rounds}, radius) =>
		rounds.flatMap((round, index): Fault[] => {
			const {innerLimit, outerLimit} = round;
			const turned = isTurned(round);
			if (!isAbove(turned ? outerLimit : innerLimit, turned ? innerLimit : outerLimit)) return [];
			const path = `${base}[${radius}].rounds[${index}].innerLimit`;
			return [{path, id: turned ? 'turned-limits-crossed' : 'limits-crossed', values: {innerLimit, outerLimit}}];
		}),
	);

/** Rounds with the gauge turned: at one radius only, beside a round as used. */
const turnedFaults: Find = ({probe}) => {
	const first = probe.findIndex(({rounds}) => rounds.some(isTurned));
	return probe.flatMap(({rounds}, radius) => {
		const id = rounds.every(isTurned) ? 'turned-without-used' : radius !== first ? 'turned-at-two-radii' : undefined;
		if (id === undefined) return [];
		return rounds.flatMap((round, index): Fault[] =>
			isTurned(round) ? [{path: `probe[${radius}].rounds[${index}].gauge`, id, values: {}}] : [],
		);
	});
};

/** The closing round: one in all, as used, with another one as used at its radius. */
const closingFaults: Find = ({probe}) => {
	const closing = probe.flatMap(({rounds}, radius) =>
		rounds.flatMap((round, index) =>
			round.closing ? [{round, rounds, path: `probe[${radius}].rounds[${index}].closing`}] : [],
		),
	);
	return closing.flatMap(({round, rounds, path}, index): Fault[] => {
		const id = isTurned(round)
			? 'closing-turned'
			: index > 0
				? 'closing-twice'
				: rounds.every((one) => one === round || isTurned(one))
					? 'closing-alone'
					: undefined;
		return id === undefined ? [] : [{path, id, values: {}}];
	});
};

const orderFaults: Find = ({probe}) => {
	const index = probe.findIndex(({place}) => place === 'inner');
	const innerMm = probe[index]?.radiusMm;
	const outerMm = probe.find(({place}) => place === 'outer')?.radiusMm;
	if (innerMm === undefined || outerMm === undefined || !isAbove(innerMm, outerMm)) return [];
	return [{path: `probe[${index}].radiusMm`, id: 'inner-outside-outer', values: {innerMm, outerMm}}];
};

const clockFaults: Find = ({bias}) =>
	bias === undefined || bias.device === 'weighted-lever'
		? []
		: (bias.readings ?? []).flatMap(({leverClock}, index): Fault[] => {
				const path = `bias.readings[${index}].leverClock`;
				return leverClock === undefined
					? []
					: [{path, id: 'clock-without-lever', values: {leverClock, device: bias.device}}];
			});

const checks: readonly Find[] = [
	gaugeFaults,
	floatedFaults,
	guardFaults,
	placeFaults,
	orderFaults,
	({arm, probe}) => radiusFaults(arm, 'probe', probe),
	({probe}) => roundFaults('probe', probe),
	turnedFaults,
	closingFaults,
	limitFaults,
	({arm, bias}) => radiusFaults(arm, 'bias.readings', bias?.readings ?? []),
	({bias}) => roundFaults('bias.readings', bias?.readings ?? []),
	clockFaults,
];

/** What no single field can see; asked only of a document whose shape is sound. */
export const crossFieldFaults = (document: Document): Fault[] => checks.flatMap((check) => check(document));
