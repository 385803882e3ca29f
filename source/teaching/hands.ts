import type {PracticeNotes} from '../check/practice-notes.js';
import type {ArmSpec} from '../practice/arm-spec.js';
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
};

/** Nobody levels finer than this with feet and a bubble; invented. */
const levelDeg = 0.1;

/** Whether a deck stands level already, as far as feet can be turned. */
export const isLevel = ({tilt}: ArmSpec): boolean => Math.hypot(tilt.leftRightDeg, tilt.frontBackDeg) < levelDeg;

const isTilted = ({spec, lesson}: BenchNow): boolean => spec.tilt === lesson.spec.tilt;
/** Leads are probed as they are used; only as a remedy are they laid anew. */
const isRemedy = ({readings}: PracticeNotes): boolean => readings.some(({step}) => placeOfRounds(step) !== undefined);

/** A lever is moved for what the readings say, not beforehand. */
const wasReadWithBias = ({readings}: PracticeNotes): boolean =>
	readings.some(({step}) => isOnPlace(placeOfRounds(step)));

/** The deeds, in the order in which they are offered where several fit. */
export const handsOn: readonly HandsOn[] = [
	{deed: 'levelled', at: ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2'], when: isTilted},
	{deed: 'damping-out', at: ['damping-off'], when: ({spec}) => spec.damping?.isIn === true},
	{deed: 'bias-off', at: ['bias-off'], when: ({spec}) => spec.bias?.isOn === true},
	{deed: 'bias-on', at: ['bias-on'], when: ({spec}) => spec.bias?.isOn === false},
	{
		deed: 'pulley-moved',
		at: ['bias-set'],
		when: ({spec, done}, notes) =>
			spec.bias?.device.kind === 'weighted-lever' && wasReadWithBias(notes) && !done.includes('pulley-moved'),
	},
	{deed: 'leads-dressed', at: ['wires'], when: ({done}, notes) => isRemedy(notes) && !done.includes('leads-dressed')},
];
