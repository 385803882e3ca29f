import {swingAngleDeg} from '../measures/geometry.js';
import type {FindingCode} from '../results/diagnose.js';
import type {ArmSpec} from './arm-spec.js';
import type {Bench} from './bench.js';
import {onePercentMicroNm, ordinaryBench, soundArm} from './sound-arm.js';

/** An invented arm with one lesson. */
export type LessonArm = {
	readonly id: string;
	readonly name: string;
	/** What it teaches, in a sentence; told at the end. */
	readonly lesson: string;
	/** The finding that must name it. */
	readonly finding: FindingCode;
	readonly spec: ArmSpec;
	readonly bench: Bench;
	/** What is to be seen by looking. */
	readonly looks: {readonly wires: string; readonly bias: string; readonly damping: string};
	/** The weight on its bias device as it came, in g. */
	readonly biasWeightG?: number;
	readonly wireStiffness: 'limp' | 'stiff';
	/** The deed by which its fault is put right at the bench, where there is one. */
	readonly cure?: string;
	/** Whether the lesson only shows with the bias on. */
	readonly readsBias: boolean;
};

const plainLooks = {
	wires: 'The leads leave the arm in an easy loop and touch nothing.',
	bias: 'The arm has no bias device.',
	damping: 'The arm has no damping.',
};

const plain = {bench: ordinaryBench, looks: plainLooks, wireStiffness: 'limp', readsBias: false} as const;

const innerSwingDeg = swingAngleDeg(soundArm.geometry, 68);
const outerSwingDeg = swingAngleDeg(soundArm.geometry, 136);

const stickyFriction = {staticMicroNm: 4.4 * onePercentMicroNm, kineticShare: 0.85};

/** The invented arms, in the order in which they are best met. A row added here is offered and proved. */
export const lessonArms: readonly LessonArm[] = [
	{
		...plain,
		id: 'well-behaved',
		name: 'A well-behaved arm',
		lesson: 'A sound arm still has a little pull and a little friction: both are far inside their limits.',
		finding: 'sound',
		spec: soundArm,
	},
	{
		...plain,
		id: 'stiff-wire',
		name: 'An arm with a stiff wire',
		lesson: 'The wire pulls like a spring: toward the rim inside, hardly at all outside, while friction is small.',
		finding: 'spring-pull',
		cure: 'leads-dressed',
		wireStiffness: 'stiff',
		spec: {
			...soundArm,
			wire: {springMicroNmPerDeg: 8, restRadiusMm: 110, twistMicroNm: 2 * onePercentMicroNm},
		},
		looks: {...plainLooks, wires: 'The leads are thick and stand in a stiff bow behind the pivot.'},
	},
	{
		...plain,
		id: 'sticky-bearing',
		name: 'An arm with a sticky bearing',
		lesson:
			'The arm holds wherever it is put: the two limits lie far apart, and their centre says that it pulls little.',
		finding: 'friction',
		spec: {...soundArm, friction: stickyFriction},
	},
	{
		...plain,
		id: 'sticks-and-pulls',
		name: 'An arm that sticks and pulls',
		lesson:
			'Friction and a pull toward the spindle at once: the arm reads differently wherever it rests, and only both limits tell the two apart.',
		finding: 'pull-and-friction',
		cure: 'leads-dressed',
		wireStiffness: 'stiff',
		spec: {
			...soundArm,
			friction: stickyFriction,
			wire: {springMicroNmPerDeg: 3, restRadiusMm: 100, twistMicroNm: -6.6 * onePercentMicroNm},
		},
		looks: {...plainLooks, wires: 'The leads are thick, and a cable tie holds them hard against the pillar.'},
	},
	{
		...plain,
		id: 'tilted-deck',
		name: 'A good arm on a tilted deck',
		lesson: 'The arm is sound: it leans with the deck, and the level says by how much.',
		finding: 'tilt-explains',
		cure: 'levelled',
		spec: {
			...soundArm,
			wire: {springMicroNmPerDeg: 0, restRadiusMm: 100, twistMicroNm: 0},
			tilt: {leftRightDeg: -1.5, frontBackDeg: 0},
		},
	},
	{
		...plain,
		id: 'bias-left-on',
		name: 'An arm whose last user forgot something',
		lesson: 'The bias was still on: a steady pull toward the rim at both radii.',
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
		looks: {...plainLooks, bias: 'A small weight hangs on its thread, and the thread is taut.'},
		biasWeightG: 1.2,
	},
	{
		...plain,
		id: 'paddle-left-in',
		name: 'An arm with a trough of fluid',
		lesson: 'The paddle stood in the fluid: the arm creeps, and the skin of the fluid holds it like a bad bearing.',
		finding: 'friction',
		cure: 'damping-out',
		spec: {
			...soundArm,
			damping: {isIn: true, viscousMicroNmS: 19_000, yieldMicroNm: 3.4 * onePercentMicroNm},
		},
		looks: {...plainLooks, damping: 'The paddle dips into the fluid of its trough.'},
	},
	{
		...plain,
		id: 'lever-badly-set',
		name: 'An arm with a weighted lever',
		lesson:
			'The lever points to half past eight outside and to a quarter past seven inside, where two fifths of its weight are lost.',
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
		looks: {
			...plainLooks,
			bias: 'The thread runs over a pulley to a lever with a weight; the weight lies beside the deck.',
		},
		biasWeightG: 2.4,
		readsBias: true,
	},
	{
		...plain,
		id: 'worn-race',
		name: 'An arm with a worn race',
		lesson: 'Friction is two and a half times as large inside as outside: a damaged place in the bearing.',
		finding: 'friction-local',
		spec: {
			...soundArm,
			friction: {staticMicroNm: onePercentMicroNm, kineticShare: 0.8, worn: {withinMm: 95, times: 2.6}},
		},
	},
];
