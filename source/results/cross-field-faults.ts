import defaults from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isAtMost} from '../measures/compare.js';
import {canBeProbed, reachMm} from '../measures/geometry.js';
import type {Fault} from './document.js';
import type {Document, PlaceName} from './document-schema.js';

type Check = (document: Document) => Fault[];

const limitFaults: Check = ({limits = {}}) =>
	(['pull', 'band'] as const).flatMap((figure) => {
		const good = limits[`${figure}GoodPct`] ?? defaults[`${figure}GoodPct`].value;
		const usable = limits[`${figure}UsablePct`] ?? defaults[`${figure}UsablePct`].value;
		if (isAtMost(good, usable)) return [];
		return [
			{
				path: `limits.${figure}UsablePct`,
				sentence: `Found ${usable}, below ${figure}GoodPct ${good}. Wanted: a usable limit at least as large as the good one.`,
			},
		];
	});

const gaugeFaults: Check = ({gauge, probe}) => {
	if (gauge.zero === undefined)
		return gauge.zeroUncertainty === undefined
			? []
			: [
					{
						path: 'gauge.zeroUncertainty',
						sentence: `Found ${gauge.zeroUncertainty} without a zero. Wanted: the zero too.`,
					},
				];
	return probe.some(({rounds}) => rounds.some(isTurned))
		? [
				{
					path: 'gauge.zero',
					sentence: `Found ${gauge.zero} beside rounds with the gauge turned. Wanted: one of the two, since those rounds show the zero.`,
				},
			]
		: [];
};

const floatedFaults: Check = ({gauge, trackingForce}) =>
	gauge.unit !== 'percent' || isAbove(trackingForce.scaleReadingMn, 0)
		? []
		: [
				{
					path: 'trackingForce.scaleReadingMn',
					sentence: `Found ${trackingForce.scaleReadingMn} with a percent gauge, which carries the arm. Wanted: what the stylus scale showed, above zero.`,
				},
			];

const guardFaults: Check = ({trackingForce}) =>
	trackingForce.guard !== 'left-out' || trackingForce.guardMassG !== undefined
		? []
		: [
				{
					path: 'trackingForce.guardMassG',
					sentence: 'Found nothing. Wanted: the mass of the guard in g, since it was left out of the weighing.',
				},
			];

const placeFaults: Check = ({probe}) => {
	const twice = probe.flatMap(({place}, index) =>
		place !== 'other' && probe.findIndex((other) => other.place === place) < index
			? [{path: `probe[${index}].place`, sentence: `Found a second "${place}". Wanted: exactly one of each place.`}]
			: [],
	);
	// With one place named twice, the other is missing by the same slip: one line is enough.
	if (twice.length > 0) return twice;
	return (['inner', 'outer'] as const satisfies readonly PlaceName[])
		.filter((wanted) => probe.every(({place}) => place !== wanted))
		.map((wanted) => ({path: 'probe', sentence: `Found no "${wanted}" radius. Wanted: exactly one.`}));
};

type ProbeRound = Document['probe'][number]['rounds'][number];
type Radius = {readonly radiusMm: number; readonly rounds: readonly ProbeRound[]};

const isTurned = ({gauge}: ProbeRound): boolean => gauge === 'turned';

const radiusFaults = (arm: Document['arm'], base: string, radii: readonly Radius[]): Fault[] =>
	radii.flatMap(({radiusMm}, index) => {
		const path = `${base}[${index}].radiusMm`;
		const faults: Fault[] = [];
		if (!canBeProbed(arm, radiusMm)) {
			const [least, most] = reachMm(arm).map((radius) => Number(radius.toPrecision(6)));
			faults.push({
				path,
				sentence: `Found ${radiusMm} mm, which an arm of effectiveLengthMm ${arm.effectiveLengthMm} and pivotDistanceMm ${arm.pivotDistanceMm} does not reach. Wanted: a radius between ${least} and ${most} mm.`,
			});
		}
		if (radii.slice(0, index).some((earlier) => !isAbove(Math.abs(earlier.radiusMm - radiusMm), 0))) {
			faults.push({path, sentence: `Found ${radiusMm} mm a second time. Wanted: each radius once.`});
		}
		return faults;
	});

const roundFaults = (base: string, radii: readonly Radius[]): Fault[] =>
	radii.flatMap(({rounds}, radius) =>
		rounds.flatMap((round, index) => {
			const {innerLimit, outerLimit} = round;
			const turned = isTurned(round);
			if (!isAbove(turned ? outerLimit : innerLimit, turned ? innerLimit : outerLimit)) return [];
			return [
				{
					path: `${base}[${radius}].rounds[${index}].innerLimit`,
					sentence: turned
						? `Found ${innerLimit}, below the outer limit ${outerLimit}. Wanted: with the gauge turned, an inner limit no lower than the outer one.`
						: `Found ${innerLimit}, above the outer limit ${outerLimit}. Wanted: an inner limit no higher than the outer one.`,
				},
			];
		}),
	);

/** Rounds with the gauge turned: at one radius only, beside a round as used. */
const turnedFaults: Check = ({probe}) => {
	const first = probe.findIndex(({rounds}) => rounds.some(isTurned));
	return probe.flatMap(({rounds}, radius) => {
		const wanted = rounds.every(isTurned)
			? 'a round as used at this radius too'
			: radius !== first
				? 'rounds with the gauge turned at one radius only'
				: undefined;
		if (wanted === undefined) return [];
		return rounds.flatMap((round, index) =>
			isTurned(round)
				? [{path: `probe[${radius}].rounds[${index}].gauge`, sentence: `Found "turned". Wanted: ${wanted}.`}]
				: [],
		);
	});
};

/** The closing round: one in all, as used, with another one as used at its radius. */
const closingFaults: Check = ({probe}) => {
	const closing = probe.flatMap(({rounds}, radius) =>
		rounds.flatMap((round, index) =>
			round.closing ? [{round, rounds, path: `probe[${radius}].rounds[${index}].closing`}] : [],
		),
	);
	return closing.flatMap(({round, rounds, path}, index) => {
		const wanted = isTurned(round)
			? 'a closing round with the gauge as used'
			: index > 0
				? 'one closing round in all'
				: rounds.every((one) => one === round || isTurned(one))
					? 'another round as used at its radius, to hold it against'
					: undefined;
		return wanted === undefined ? [] : [{path, sentence: `Found true. Wanted: ${wanted}.`}];
	});
};

const orderFaults: Check = ({probe}) => {
	const index = probe.findIndex(({place}) => place === 'inner');
	const inner = probe[index]?.radiusMm;
	const outer = probe.find(({place}) => place === 'outer')?.radiusMm;
	if (inner === undefined || outer === undefined || !isAbove(inner, outer)) return [];
	return [
		{
			path: `probe[${index}].radiusMm`,
			sentence: `Found ${inner} mm, outside the outer radius of ${outer} mm. Wanted: an inner radius smaller than the outer one.`,
		},
	];
};

const clockFaults: Check = ({bias}) =>
	bias === undefined || bias.device === 'weighted-lever'
		? []
		: (bias.readings ?? []).flatMap(({leverClock}, index) =>
				leverClock === undefined
					? []
					: [
							{
								path: `bias.readings[${index}].leverClock`,
								sentence: `Found "${leverClock}" with the device "${bias.device}". Wanted: no lever place without a weighted lever.`,
							},
						],
			);

const checks: readonly Check[] = [
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
