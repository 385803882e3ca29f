import {swingAngleDeg} from '../measures/geometry.js';
import type {FindingCode} from '../results/diagnose.js';
import type {ArmSpec} from './arm-spec.js';
import type {Bench} from './bench.js';
import {onePercentMicroNm, ordinaryBench, soundArm} from './sound-arm.js';

/** What is to be seen by looking at an arm, as it came and once something was done to it. */
export type Looks = {
	readonly wires: 'easy-loop' | 'twisted' | 'stiff-bow' | 'tied' | 'dressed';
	readonly bias: 'none' | 'weight-on-thread' | 'lever-unweighted' | 'on' | 'off';
	readonly damping: 'none' | 'in' | 'out';
};

type Lesson = {
	/** The finding that must name it. */
	readonly finding: FindingCode;
	readonly spec: ArmSpec;
	readonly bench: Bench;
	/** As it came. */
	readonly looks: Looks;
	/** The weight on its bias device as it came, in g. */
	readonly biasWeightG?: number;
	readonly wireStiffness: 'limp' | 'stiff';
	/** The deed by which its fault is put right at the bench, where there is one. */
	readonly cure?: string;
	/** Whether the lesson only shows with the bias on. */
	readonly readsBias: boolean;
};

const plainLooks = {wires: 'easy-loop', bias: 'none', damping: 'none'} as const;

const plain = {bench: ordinaryBench, looks: plainLooks, wireStiffness: 'limp', readsBias: false} as const;

const innerSwingDeg = swingAngleDeg(soundArm.geometry, 68);
const outerSwingDeg = swingAngleDeg(soundArm.geometry, 136);

const stickyFriction = {staticMicroNm: 4.4 * onePercentMicroNm, kineticShare: 0.85};

const lessons = {
	'twisted-lead': {
		...plain,
		finding: 'constant-pull',
		cure: 'leads-dressed',
		spec: {
			...soundArm,
			friction: {staticMicroNm: 2.6 * onePercentMicroNm, kineticShare: 0.8},
			wire: {springMicroNmPerDeg: 0, restRadiusMm: 100, twistMicroNm: -3.1 * onePercentMicroNm},
		},
		looks: {...plainLooks, wires: 'twisted'},
	},
	'well-behaved': {
		...plain,
		finding: 'sound',
		spec: soundArm,
	},
	'stiff-wire': {
		...plain,
		finding: 'spring-pull',
		cure: 'leads-dressed',
		wireStiffness: 'stiff',
		spec: {
			...soundArm,
			wire: {springMicroNmPerDeg: 8, restRadiusMm: 110, twistMicroNm: 2 * onePercentMicroNm},
		},
		looks: {...plainLooks, wires: 'stiff-bow'},
	},
	'sticky-bearing': {
		...plain,
		finding: 'friction',
		spec: {...soundArm, friction: stickyFriction},
	},
	'sticks-and-pulls': {
		...plain,
		finding: 'pull-and-friction',
		cure: 'leads-dressed',
		wireStiffness: 'stiff',
		spec: {
			...soundArm,
			friction: stickyFriction,
			wire: {springMicroNmPerDeg: 3, restRadiusMm: 100, twistMicroNm: -6.6 * onePercentMicroNm},
		},
		looks: {...plainLooks, wires: 'tied'},
	},
	'tilted-deck': {
		...plain,
		finding: 'tilt-explains',
		cure: 'levelled',
		spec: {
			...soundArm,
			wire: {springMicroNmPerDeg: 0, restRadiusMm: 100, twistMicroNm: 0},
			tilt: {leftRightDeg: -1.5, frontBackDeg: 0},
		},
	},
	'bias-left-on': {
		...plain,
		finding: 'constant-pull',
		cure: 'bias-off',
		spec: {
			...soundArm,
			bias: {
				isOn: true,
				device: {
					kind: 'weight-on-thread',
					fullMicroNm: 5.5 * onePercentMicroNm,
					angle: {atSwingDeg: 36.8, deg: 90, degPerDeg: -1},
				},
			},
		},
		looks: {...plainLooks, bias: 'weight-on-thread'},
		biasWeightG: 1.2,
	},
	'paddle-left-in': {
		...plain,
		finding: 'friction',
		cure: 'damping-out',
		spec: {
			...soundArm,
			damping: {isIn: true, viscousMicroNmS: 19_000, yieldMicroNm: 3.4 * onePercentMicroNm},
		},
		looks: {...plainLooks, damping: 'in'},
	},
	'lever-badly-set': {
		...plain,
		finding: 'bias-uneven',
		cure: 'pulley-moved',
		spec: {
			...soundArm,
			wire: {...soundArm.wire, twistMicroNm: -1.2 * onePercentMicroNm},
			bias: {
				isOn: false,
				device: {
					kind: 'weighted-lever',
					fullMicroNm: 12 * onePercentMicroNm,
					angle: {atSwingDeg: outerSwingDeg, deg: 255, degPerDeg: 37.5 / (outerSwingDeg - innerSwingDeg)},
				},
			},
		},
		looks: {...plainLooks, bias: 'lever-unweighted'},
		biasWeightG: 2.4,
		readsBias: true,
	},
	'worn-race': {
		...plain,
		finding: 'friction-local',
		spec: {
			...soundArm,
			friction: {staticMicroNm: onePercentMicroNm, kineticShare: 0.8, worn: {withinMm: 95, times: 2.6}},
		},
	},
} satisfies Readonly<Record<string, Lesson>>;

export type LessonId = keyof typeof lessons;

/** An invented arm with one lesson. */
export type LessonArm = Lesson & {readonly id: LessonId};

const isLessonId = (id: string): id is LessonId => Object.hasOwn(lessons, id);

/** The invented arms, in the order in which they are best met. A row added here is offered and proved. */
export const lessonArms: readonly LessonArm[] = Object.keys(lessons)
	.filter(isLessonId)
	.map((id) => ({id, ...lessons[id]}));
