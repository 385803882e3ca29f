import defaults from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isAtMost} from '../measures/compare.js';
import {reaches, reachMm} from '../measures/geometry.js';
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

const gaugeFaults: Check = ({gauge}) =>
	gauge.unit === 'percent' || gauge.topOfScale !== undefined
		? []
		: [
				{
					path: 'gauge.topOfScale',
					sentence: `Found nothing. Wanted: the top of the scale in ${gauge.unit}; only a percent gauge has a usual one.`,
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

type Radius = {readonly radiusMm: number; readonly rounds: Document['probe'][number]['rounds']};

const radiusFaults = (arm: Document['arm'], base: string, radii: readonly Radius[]): Fault[] =>
	radii.flatMap(({radiusMm}, index) => {
		const path = `${base}[${index}].radiusMm`;
		const faults: Fault[] = [];
		if (!reaches(arm, radiusMm)) {
			const [least, most] = reachMm(arm).map((radius) => Number(radius.toPrecision(6)));
			faults.push({
				path,
				sentence: `Found ${radiusMm} mm, which an arm of effectiveLengthMm ${arm.effectiveLengthMm} and pivotDistanceMm ${arm.pivotDistanceMm} does not reach. Wanted: a radius from ${least} to ${most} mm.`,
			});
		}
		if (radii.slice(0, index).some((earlier) => !isAbove(Math.abs(earlier.radiusMm - radiusMm), 0))) {
			faults.push({path, sentence: `Found ${radiusMm} mm a second time. Wanted: each radius once.`});
		}
		return faults;
	});

const roundFaults = (base: string, radii: readonly Radius[]): Fault[] =>
	radii.flatMap(({rounds}, radius) =>
		rounds.flatMap(({innerLimit, outerLimit}, round) =>
			isAbove(innerLimit, outerLimit)
				? [
						{
							path: `${base}[${radius}].rounds[${round}].innerLimit`,
							sentence: `Found ${innerLimit}, above the outer limit ${outerLimit}. Wanted: an inner limit no higher than the outer one.`,
						},
					]
				: [],
		),
	);

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
	guardFaults,
	placeFaults,
	orderFaults,
	({arm, probe}) => radiusFaults(arm, 'probe', probe),
	({probe}) => roundFaults('probe', probe),
	limitFaults,
	({arm, bias}) => radiusFaults(arm, 'bias.readings', bias?.readings ?? []),
	({bias}) => roundFaults('bias.readings', bias?.readings ?? []),
	clockFaults,
];

/** What no single field can see; asked only of a document whose shape is sound. */
export const crossFieldFaults = (document: Document): Fault[] => checks.flatMap((check) => check(document));
