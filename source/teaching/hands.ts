import type {PracticeNotes} from '../check/practice-notes.js';
import {placeOfRounds} from '../procedure/index.js';
import {isOnPlace} from '../procedure/places.js';
import type {Deed} from './deck.js';
import type {BenchNow} from './instruments.js';

/** Something that can be done to an invented deck where a question asks for it. */
export type HandsOn = {
	readonly deed: Deed;
	/** Steps at which it is offered. */
	readonly at: readonly string[];
	readonly when: (bench: BenchNow, notes: PracticeNotes) => boolean;
	/** What the key does. */
	readonly label: string;
	/** What was done, once it is; the bench as it was before. */
	readonly did: (before: BenchNow) => string;
};

/** Nobody levels finer than this with feet and a bubble; invented. */
const levelDeg = 0.1;

const isTilted = ({spec, lesson}: BenchNow): boolean => spec.tilt === lesson.spec.tilt;
const isDressed = ({done}: PracticeNotes['deck']): boolean => done.includes('leads-dressed');
/** Leads are probed as they are used; only as a remedy are they laid anew. */
const isRemedy = ({readings}: PracticeNotes): boolean => readings.some(({step}) => placeOfRounds(step) !== undefined);

/** A lever is moved for what the readings say, not beforehand. */
const wasReadWithBias = ({readings}: PracticeNotes): boolean =>
	readings.some(({step}) => isOnPlace(placeOfRounds(step)));

/** The deeds, in the order in which they are offered where several fit. */
export const handsOn: readonly HandsOn[] = [
	{
		deed: 'levelled',
		at: ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2'],
		when: isTilted,
		label: 'turn the feet until the armboard is level',
		did: ({spec}) =>
			Math.hypot(spec.tilt.leftRightDeg, spec.tilt.frontBackDeg) < levelDeg
				? 'It stood level already, as far as feet can be turned; a level that is off by itself shows when it is turned round.'
				: 'You turned the feet: read the level anew, in both directions.',
	},
	{
		deed: 'damping-out',
		at: ['damping-off'],
		when: ({spec}) => spec.damping?.isIn === true,
		label: 'lift the paddle clear of the fluid',
		did: () => 'You lifted the paddle.',
	},
	{
		deed: 'bias-off',
		at: ['bias-off'],
		when: ({spec}) => spec.bias?.isOn === true,
		label: 'take the bias weight off and lay the thread clear',
		did: () => 'You took the weight off.',
	},
	{
		deed: 'bias-on',
		at: ['bias-on'],
		when: ({spec}) => spec.bias?.isOn === false,
		label: 'hang the bias weight on, thread over its guide',
		did: () => 'You hung the weight on.',
	},
	{
		deed: 'pulley-moved',
		at: ['bias-set'],
		when: ({spec}, notes) =>
			spec.bias?.device.kind === 'weighted-lever' &&
			wasReadWithBias(notes) &&
			!notes.deck.done.includes('pulley-moved'),
		label: "move the pulley so that the thread runs nearer to the arm's pivot",
		did: () => 'You moved the pulley: the lever travels a quarter as far now.',
	},
	{
		deed: 'leads-dressed',
		at: ['wires'],
		when: (_bench, notes) => isRemedy(notes) && !isDressed(notes.deck),
		label: 'dress the leads in a wide, easy loop',
		did: () => 'You dressed the leads.',
	},
];
