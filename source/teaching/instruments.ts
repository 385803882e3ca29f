import {toStep} from '../measures/gauge-shows.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import type {LessonArm} from '../practice/arms.js';
import {levelShownDeg, leverClockShown, scaleShownMn, threadAngleShownDeg} from '../practice/bench.js';
import {onRadiusMm} from '../procedure/bias-on.js';
import type {Facts} from '../procedure/facts.js';
import type {OnPlace} from '../procedure/places.js';
import type {StepId} from '../procedure/step-ids.js';
import {formatIn} from '../units.js';
import {stepDecimals, withSign} from '../words/wording.js';

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

/** A reading, shown in a sentence and answered as it is. */
const reading = (sentence: (text: string) => string, read: (bench: BenchNow) => string | undefined): Instrument => ({
	see: (bench) => {
		const text = read(bench);
		return text === undefined ? undefined : sentence(text);
	},
	answer: read,
});

const looks = (
	of: keyof LessonArm['looks'],
	after?: {readonly when: (bench: BenchNow) => boolean; readonly text: string},
) => ({
	see: (bench: BenchNow) => (after?.when(bench) ? after.text : bench.lesson.looks[of]),
});

const sides = {leftRightDeg: ['right', 'left'], frontBackDeg: ['back', 'front']} as const;

/** What the level calls high; turned round, its plus end points the other way. */
const level = (axis: keyof typeof sides, isTurned: boolean): Instrument =>
	reading(
		(text) =>
			text === '0'
				? 'The bubble stands in the middle: 0°.'
				: `The level shows ${text.replace(' ', '°, high on the ')}.`,
		({lesson, spec}) => {
			const [direct, turned] = levelShownDeg(spec, lesson.bench, axis);
			const highDeg = isTurned ? -turned : direct;
			const [plus, minus] = sides[axis];
			return highDeg === 0 ? '0' : `${Math.abs(highDeg)} ${highDeg > 0 ? plus : minus}`;
		},
	);

const scale = (sentence: (text: string) => string): Instrument =>
	reading(sentence, ({lesson, spec, facts}) => {
		const withGuard = facts.is('weighed', 'with') || !facts.is('guard-on', 'on');
		return formatIn(withGuard ? scaleShownMn(spec, lesson.bench) : spec.playingMn, 'gf');
	});

const biasDeviceSeen: Instrument['see'] = ({lesson, spec}) => {
	if (!spec.bias || spec.bias.isOn === lesson.spec.bias?.isOn) return lesson.looks.bias;
	return spec.bias.isOn
		? 'The weight hangs on, and the thread is taut.'
		: 'The weight lies beside the deck, the thread hangs slack.';
};

const lever = (place: OnPlace): Instrument =>
	reading(
		(text) => `The lever points at ${text}.`,
		({spec, facts}) => {
			const radiusMm = onRadiusMm(facts, place);
			return radiusMm === undefined ? undefined : leverClockShown(spec, radiusMm);
		},
	);

const thread = (place: OnPlace): Instrument =>
	reading(
		(text) => `Thread and stub stand at ${text}°.`,
		({spec, facts}) => {
			const radiusMm = onRadiusMm(facts, place);
			const deg = radiusMm === undefined ? undefined : threadAngleShownDeg(spec, radiusMm);
			return deg === undefined ? undefined : String(deg);
		},
	);

/** The pointer of the gauge with nothing on it, in its own sign. */
const freeZero = reading(
	(text) => `Free of the arm the gauge shows ${text} %.`,
	({spec: {gauge}}) => withSign(toStep(gauge.zeroPct, gauge.stepPct), stepDecimals(gauge.stepPct)),
);

const matThickness = ({lesson}: BenchNow): number => lesson.bench.clearance.matRemovedMm;

/** What an invented bench shows, by step. */
export const instruments: Readonly<Partial<Record<StepId, Instrument>>> = {
	'room-temperature': reading(
		(text) => `The thermometer shows ${text} °C.`,
		() => '21',
	),
	mat: {
		see: (bench) => `A mat of ${matThickness(bench)} mm lies on the platter, which is of glass.`,
		answer: () => 'off',
	},
	'mat-thickness': reading(
		(text) => `The mat measures ${text} mm.`,
		(bench) => String(matThickness(bench)),
	),
	'level-lr-1': level('leftRightDeg', false),
	'level-lr-2': level('leftRightDeg', true),
	'level-fb-1': level('frontBackDeg', false),
	'level-fb-2': level('frontBackDeg', true),
	'damping-off': looks('damping', {
		when: ({spec}) => spec.damping?.isIn === false,
		text: 'The paddle hangs clear of the fluid.',
	}),
	'bias-setting': {see: biasDeviceSeen},
	'bias-off': {see: biasDeviceSeen},
	wires: looks('wires', {
		when: ({done}) => done.includes('leads-dressed'),
		text: 'The leads lie in a wide, easy loop, their twist taken out.',
	}),
	'guard-on': {see: () => 'The guard is on the stylus.', answer: () => 'on'},
	weighed: {see: () => 'The stylus scale stands ready.', answer: () => 'with'},
	'force-reading': scale((text) => `The scale shows ${text}.`),
	'force-at-height': scale((text) => `At probe height the scale shows ${text}.`),
	clearance: reading(
		(text) => `The ruler shows ${text} mm from the surface to the stylus.`,
		({lesson, facts}) => {
			const {stylusMm, matRemovedMm} = lesson.bench.clearance;
			return String(facts.is('mat', 'off') ? stylusMm : Number((stylusMm - matRemovedMm).toFixed(1)));
		},
	),
	'zero-free-before': freeZero,
	'zero-free-after': freeZero,
	'bias-weight': reading(
		(text) =>
			`The weight that came with the arm is marked ${text} g. Any other can be hung on: type it, and it hangs there.`,
		({lesson}) => (lesson.biasWeightG === undefined ? undefined : String(lesson.biasWeightG)),
	),
	'bias-on': {see: biasDeviceSeen},
	'bias-clock-outer': lever('bias-outer'),
	'bias-clock-middle': lever('bias-middle'),
	'bias-clock-inner': lever('bias-inner'),
	'bias-angle-outer': thread('bias-outer'),
	'bias-angle-middle': thread('bias-middle'),
	'bias-angle-inner': thread('bias-inner'),
	'back-force': reading(
		(text) => `Without the guard the scale shows ${text}.`,
		({spec}) => formatIn(spec.playingMn, 'gf', 2),
	),
};
