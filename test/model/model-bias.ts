import {above, atLeast, atMost, below, mean} from './model-compare.js';
import {bestFactor, type Line, worstAt} from './model-envelope.js';
import {fraction, scaleFactor, swingAngle} from './model-geometry.js';
import {centreOf, isOffScale, widthOf} from './model-pool.js';
import type {BiasOutput, BiasRowOutput, FitOutput, ModelArm, ModelDocument, ProbeOutput} from './model-types.js';

interface Point {
	at: number;
	value: number;
}

/** Straight between the points, flat outside. */
const interpolate = (points: Point[], at: number): number => {
	const sorted = [...points].sort((a, b) => a.at - b.at);
	const below = sorted.filter((point) => point.at <= at).at(-1);
	const above = sorted.find((point) => point.at > at);
	if (below === undefined || above === undefined) {
		return (below ?? above)?.value ?? Number.NaN;
	}
	return below.value + ((above.value - below.value) * (at - below.at)) / (above.at - below.at);
};

export interface BiasWorkings {
	/** Readings that are on the scale, in the order of the document. */
	usable: {radiusMm: number; pullOn: number; bias: number; band: number; wanted: number}[];
	anyOffScale: boolean;
	idle: boolean;
	output: BiasOutput;
}

const grid = (arm: ModelArm): number[] => {
	const {effectiveLengthMm: l, pivotDistanceMm: d} = arm;
	const all = Array.from({length: 173}, (_, index) => 60 + index / 2);
	return all.filter((radius) => atLeast(radius, Math.abs(l - d)) && atMost(radius, l + d));
};

const shareOfLever = (clock: string): number => {
	const [hours = 0, minutes = 0] = clock.split(':').map(Number);
	return Math.abs(Math.sin(((hours * 30 + minutes / 2) * Math.PI) / 180));
};

const rms = (lines: Line[], k: number): number =>
	Math.sqrt(mean(lines.map(({offset, slope}) => (offset + k * slope) ** 2)));

const fitOf = (
	document: ModelDocument,
	drag: number,
	usable: BiasWorkings['usable'],
	pullOff: (radius: number) => number,
	frictionFloorPct: number,
): FitOutput | null => {
	const radii = grid(document.arm);
	if (usable.length < 2 || radii.length === 0 || usable.every(({bias}) => below(Math.abs(bias), 0.5))) {
		return null;
	}
	const points = usable.map(({radiusMm, bias}) => ({at: radiusMm, value: bias}));
	const linesFor = (mu: number): Line[] =>
		radii.map((radius) => ({
			offset: pullOff(radius) - 100 * mu * fraction(document.arm, radius),
			slope: interpolate(points, radius),
		}));
	const lines = linesFor(drag);
	const factor = bestFactor(lines);
	return {
		factor,
		worstBeforePct: worstAt(lines, 1),
		worstAfterPct: worstAt(lines, factor),
		worstAfterDragPct: Math.max(worstAt(linesFor(drag - 0.05), factor), worstAt(linesFor(drag + 0.05), factor)),
		rmsBeforePct: rms(lines, 1),
		rmsAfterPct: rms(lines, factor),
		frictionFloorPct,
		targets: usable.map(({radiusMm, bias}) => ({radiusMm, targetPct: pullOff(radiusMm) + factor * bias})),
	};
};

export const biasAnyOffScale = (document: ModelDocument): boolean =>
	(document.bias?.readings ?? []).some(({rounds}) => isOffScale(document, rounds));

export const biasOf = (document: ModelDocument, zero: number, probe: ProbeOutput[]): BiasWorkings | null => {
	const {arm, bias: given, gauge} = document;
	const off = probe.flatMap(({radiusMm, pullPct}) =>
		pullPct === null ? [] : [{at: swingAngle(arm, radiusMm), value: pullPct}],
	);
	if (given === undefined || off.length === 0) {
		return null;
	}
	const f = scaleFactor(document);
	const drag = given.effectiveDrag ?? 0.3;
	const pullOff = (radius: number): number => interpolate(off, swingAngle(arm, radius));
	const wantedAt = (radius: number): number => 100 * drag * fraction(arm, radius);
	const readings = given.readings ?? [];
	const usable = readings
		.filter(({rounds}) => !isOffScale(document, rounds))
		.map(({radiusMm, rounds}) => {
			const pullOn = mean(rounds.map((round) => centreOf(f, round))) - zero;
			const band = mean(rounds.map((round) => widthOf(f, round))) + f * (gauge.nudge ?? 0);
			return {radiusMm, pullOn, bias: pullOn - pullOff(radiusMm), band, wanted: wantedAt(radiusMm)};
		});
	// Rows are the readings, in their order; one that is off scale is left out of everything and has nothing but its place.
	const rowAt = (radiusMm: number): BiasRowOutput => {
		const read = usable.find((one) => one.radiusMm === radiusMm);
		return {
			radiusMm,
			fraction: fraction(arm, radiusMm),
			wantedPct: wantedAt(radiusMm),
			pullOnPct: read?.pullOn ?? null,
			biasPct: read?.bias ?? null,
			leftoverPct: read === undefined ? null : read.pullOn - read.wanted,
		};
	};
	const bandsOff = probe.flatMap(({bandPct}) => bandPct ?? []);
	const floor = Math.max(...bandsOff, ...usable.map(({band}) => band)) / 2;
	const lever = readings.flatMap(({radiusMm, leverClock}) =>
		leverClock === undefined ? [] : [{radiusMm, clock: leverClock, share: shareOfLever(leverClock)}],
	);
	const {effectiveLengthMm: l, pivotDistanceMm: d} = arm;
	return {
		usable,
		anyOffScale: biasAnyOffScale(document),
		idle: usable.length >= 2 && usable.every(({bias}) => below(Math.abs(bias), 0.5)),
		output: {
			effectiveDrag: drag,
			leastRadiusMm: above(l, d) ? Math.sqrt(l ** 2 - d ** 2) : null,
			rows: (given.readings ?? document.probe).map(({radiusMm}) => rowAt(radiusMm)),
			fit: fitOf(document, drag, usable, pullOff, floor),
			lever: lever.length > 0 ? lever : null,
		},
	};
};
