import {toStep} from '../measures/hold-band.js';
import {mnPerGram} from '../measures/tracking-force.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import type {LessonArm, Looks} from '../practice/arms.js';
import {levelShownDeg, leverClockShown, scaleShownMn, threadAngleShownDeg} from '../practice/bench.js';
import {onRadiusMm} from '../procedure/bias-on.js';
import type {Facts} from '../procedure/facts.js';
import type {OnPlace} from '../procedure/places.js';
import type {StepId} from '../procedure/step-ids.js';
import {formatIn} from '../units.js';
import {readingText} from '../words/numbers.js';
import {practiceWords} from '../words/practice.js';

/** An invented deck as it stands, and what its technician has answered. */
export type BenchNow = {
	readonly lesson: LessonArm;
	readonly spec: ArmSpec;
	/** What was done to the deck by hand. */
	readonly done: readonly string[];
	readonly facts: Facts;
};

/** What there is to see or to read at a question, and what a careful technician answers to it. */
export type Instrument = {
	readonly see: (bench: BenchNow) => string | undefined;
	/** As it would be typed; undefined where it is a matter of taste. */
	readonly answer?: (bench: BenchNow) => string | undefined;
};

const {seen} = practiceWords;

/** A reading, shown in a sentence and answered as it is; without one where there is nothing to read. */
function reading<Values>(
	see: (values: Values) => string,
	read: (bench: BenchNow) => Values | undefined,
	answer: (values: Values) => string,
): Instrument {
	const told = (text: (values: Values) => string) => (bench: BenchNow) => {
		const values = read(bench);
		return values === undefined ? undefined : text(values);
	};
	return {see: told(see), answer: told(answer)};
}

const looks = <Part extends keyof Looks>(of: Part, now: (bench: BenchNow) => Looks[Part] | undefined): Instrument => ({
	see: (bench) => practiceWords.looks[of][now(bench) ?? bench.lesson.looks[of]],
});

const sides = {leftRightDeg: ['right', 'left'], frontBackDeg: ['back', 'front']} as const;

/** What the level calls high; turned round, its plus end points the other way. */
const level = (axis: keyof typeof sides, isTurned: boolean): Instrument =>
	reading(
		seen.level,
		({lesson, spec}) => {
			const [direct, turned] = levelShownDeg(spec, lesson.bench, axis);
			const highDeg = isTurned ? -turned : direct;
			const [plus, minus] = sides[axis];
			return {deg: Math.abs(highDeg), high: highDeg > 0 ? plus : minus};
		},
		({deg, high}) => (deg === 0 ? '0' : `${deg} ${high}`),
	);

const scale = (see: typeof seen.scale): Instrument =>
	reading(
		see,
		({lesson, spec, facts}) => {
			const withGuard = facts.is('weighed', 'with') || !facts.is('guard-on', 'on');
			const shownMn = scaleShownMn(spec, lesson.bench);
			return {forceMn: withGuard ? shownMn : shownMn - spec.guardMassG * mnPerGram};
		},
		({forceMn}) => formatIn(forceMn, 'gf'),
	);

const biasDevice = looks('bias', ({lesson, spec}) => {
	if (!spec.bias || spec.bias.isOn === lesson.spec.bias?.isOn) return;
	return spec.bias.isOn ? 'on' : 'off';
});

/** What is read of the bias device with the stylus at a radius. */
const atRadius =
	<Seen>(place: OnPlace, shown: (spec: ArmSpec, radiusMm: number) => Seen | undefined) =>
	({spec, facts}: BenchNow): Seen | undefined => {
		const radiusMm = onRadiusMm(facts, place);
		return radiusMm === undefined ? undefined : shown(spec, radiusMm);
	};

const lever = (place: OnPlace): Instrument =>
	reading((clock) => seen.lever({clock}), atRadius(place, leverClockShown), String);

const thread = (place: OnPlace): Instrument =>
	reading((deg) => seen.thread({deg}), atRadius(place, threadAngleShownDeg), String);

/** The pointer of the gauge with nothing on it, in its own sign. */
const freeZero = reading(
	seen.freeZero,
	({spec: {gauge}}) => ({readingPct: toStep(gauge.zeroPct, gauge.stepPct), stepPct: gauge.stepPct}),
	({readingPct, stepPct}) => readingText(readingPct, stepPct),
);

const matThickness = ({lesson}: BenchNow) => ({lengthMm: lesson.bench.clearance.matRemovedMm});

/** How high the stylus stands, or what hangs so far below it. */
function stylusHeight({lesson, facts}: BenchNow, belowMm = 0): {readonly lengthMm: number} {
	const {stylusMm, matRemovedMm} = lesson.bench.clearance;
	return {lengthMm: Number((stylusMm - (facts.is('mat', 'off') ? 0 : matRemovedMm) - belowMm).toFixed(1))};
}

const typedMm = ({lengthMm}: {readonly lengthMm: number}): string => String(lengthMm);

/** What an invented bench shows, by step. */
export const instruments: Readonly<Partial<Record<StepId, Instrument>>> = {
	'room-temperature': reading(
		seen.temperature,
		() => ({celsius: 21}),
		({celsius}) => String(celsius),
	),
	mat: {see: (bench) => seen.matLies(matThickness(bench)), answer: () => 'off'},
	'mat-thickness': reading(seen.mat, matThickness, typedMm),
	'level-lr-1': level('leftRightDeg', false),
	'level-lr-2': level('leftRightDeg', true),
	'level-fb-1': level('frontBackDeg', false),
	'level-fb-2': level('frontBackDeg', true),
	'damping-off': looks('damping', ({spec}) => (spec.damping?.isIn === false ? 'out' : undefined)),
	'bias-setting': biasDevice,
	'bias-off': biasDevice,
	wires: looks('wires', ({done}) => (done.includes('leads-dressed') ? 'dressed' : undefined)),
	'guard-on': {see: () => seen.guardOn, answer: () => 'on'},
	weighed: {see: () => seen.scaleReady, answer: () => 'with'},
	'force-reading': scale(seen.scale),
	'force-at-height': scale(seen.scaleAtHeight),
	'guard-gap': reading(
		seen.guardGap,
		(bench) => stylusHeight(bench, bench.lesson.bench.clearance.guardDepthMm),
		typedMm,
	),
	clearance: reading(seen.clearance, (bench) => stylusHeight(bench), typedMm),
	'lifter-clear': {see: () => seen.lifter},
	'first-swing': {see: () => seen.swing},
	'zero-free-before': freeZero,
	'zero-free-after': freeZero,
	'bias-weight': reading(
		seen.biasWeight,
		({lesson: {biasWeightG: g}}) => (g === undefined ? undefined : {g}),
		({g}) => String(g),
	),
	'bias-on': biasDevice,
	'bias-clock-outer': lever('bias-outer'),
	'bias-clock-middle': lever('bias-middle'),
	'bias-clock-inner': lever('bias-inner'),
	'bias-angle-outer': thread('bias-outer'),
	'bias-angle-middle': thread('bias-middle'),
	'bias-angle-inner': thread('bias-inner'),
	'back-force': reading(
		seen.scaleUnguarded,
		({spec}) => ({forceMn: spec.playingMn}),
		({forceMn}) => formatIn(forceMn, 'gf', 2),
	),
};
