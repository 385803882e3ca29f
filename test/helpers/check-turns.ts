import {type Turn, turn, typed} from './walk.js';

// The check that the tests play: an invented arm of nine inches on an invented deck. All values are made up.

/** Home, where nothing is unfinished. */
export const start: Turn = turn('1', '1 new full check');
/** Home, with an unfinished check. */
export const resume: Turn = turn('1', '1 go on with the check of');

const ticked = (lines: readonly string[]): Turn[] => lines.map((line) => turn('y', `${line} y / n`));

export const makeSafe: readonly Turn[] = ticked([
	'Amplifier muted or off',
	'Platter stopped, kept from creeping',
	'Mains unplugged, or nothing will be opened',
	'Arm in its rest, guard at hand',
]);

const choices = {
	pivotPlace: '1',
	bearing: '1',
	loading: '1',
	biasDevice: '3',
	damping: '1',
	wireStiffness: '1',
} as const;

export const describeArm: readonly Turn[] = [
	typed('north deck', 'What do you call this arm?'),
	typed('-', 'leave it empty if there is none.'),
	typed('229', 'pivot to stylus, seen from above.'),
	typed('211,3 mm', 'spindle to pivot, seen from above.'),
	typed('-', "The headshell's offset angle"),
	turn(choices.pivotPlace, 'Where is the pivot, seen from the spindle?'),
	turn(choices.bearing, 'What kind of bearing does it swing on?'),
	turn('1', 'is the counterweight about level with the horizontal pivot'),
	turn(choices.loading, 'What makes the tracking force?', 'counterweight (gravity)'),
	turn('1', 'Is there an automatic stop or return'),
	turn('1', 'How do the signal wires leave the arm?'),
	turn(choices.wireStiffness, 'How stiff are they?'),
	turn(choices.biasDevice, 'Which bias (anti-skating) device does it have?'),
	turn(choices.damping, 'Does the arm have a fluid damper?'),
	turn('1', 'Does the deck stand on a spring suspension?'),
	typed('65', 'at which the inner probe is taken.'),
	typed('140', 'at which the outer probe is taken.'),
	typed('-', 'A third radius to probe'),
];

export const describeCartridge: readonly Turn[] = [
	typed('test pickup', 'What do you call this cartridge?'),
	typed('1,8 g', 'Tracking force as it is played.'),
	typed('1.6', "Lowest tracking force of the maker's range."),
	typed('20 mN', "Highest tracking force of the maker's range."),
	typed('15', 'Static lateral compliance;'),
	typed('6', 'Length of the cantilever;'),
	typed('0.5', 'Mass of the stylus guard;'),
	typed('1', 'How far does the guard hang below the stylus?'),
];

export const describeTools: readonly Turn[] = [
	typed('bench set', 'What do you call this set of gauge, scale and level?'),
	turn('1', 'What does the gauge read?'),
	typed('0.5', 'Smallest step that you can read on the gauge'),
	typed('16', 'Where does the scale of the gauge end?'),
	turn('1', 'What does the gauge show, and what does its plus mean?'),
	typed('1', 'The gauge is true to plus or minus'),
	typed('0.5', 'By how much does the reading move with one nudge?'),
	typed('0.02', 'The stylus scale is true to plus or minus how much?'),
	typed('0.05', 'Smallest tilt that you can read on the level'),
];

export const roomAndMat: readonly Turn[] = [
	typed('21', 'Room temperature.'),
	typed('-', 'A note for this check'),
	turn('1', 'Leave the mat on, or take it off'),
];

export type LevelReadings = readonly [leftRight: string, turned: string, frontBack: string, turnedToo: string];

/** Level read twice each way, the level turned round in between. */
export const readLevel = (
	[leftRight, turned, frontBack, turnedToo]: LevelReadings = ['0.1 right', '0.05 right', '0.05 back', '0.05 front'],
): readonly Turn[] => [
	typed(leftRight, 'which side is high?'),
	typed(turned, 'Which side does it call high now?'),
	typed(frontBack, 'is the back or the front high?'),
	typed(turnedToo, 'Which end does it call high now?'),
];

export const biasOff: Turn = turn('y', "Lever's weight off, thread slack?");

export const lookAlongArm: readonly Turn[] = ticked([
	'Leads lie as always, nothing touches the arm',
	'Lifter down and clear of the tube',
	'Rest and its clip are clear',
	'Headshell and cartridge screws tight',
	'Lid, fan and heating off: no draught',
	'No static on mat or hands',
]);

export const weighAndSet: readonly Turn[] = [
	turn('1', 'Is the stylus guard on'),
	turn('1', 'How do you weigh?'),
	typed('1.85 g', 'Scale reading with the guard on, at record height.'),
	typed('2.5', 'height of the stylus above the surface under it.'),
];

export const gaugeZero: readonly Turn[] = [
	turn('1', 'Can the gauge be turned end for end on its spot'),
	typed('+0.5', 'first round: inner limit'),
	typed('+5.5', 'first round: outer limit'),
	typed('0', 'gauge turned: inner limit'),
	typed('-4.5', 'gauge turned: outer limit'),
];

export const describeAll: readonly Turn[] = [
	...makeSafe,
	...describeArm,
	...describeCartridge,
	...describeTools,
	...roomAndMat,
];
export const prepare: readonly Turn[] = [
	...describeAll,
	...readLevel(),
	biasOff,
	...lookAlongArm,
	...weighAndSet,
	...gaugeZero,
];

export type Round = readonly [inner: string, outer: string];

const titles = {
	inner: 'Probe at the inner radius',
	outer: 'Probe at the outer radius',
	closing: 'Closing round at the inner radius',
} as const;

/** Rounds at one place, each limit typed with its side, and on to the next place. */
export const probe = (place: keyof typeof titles, rounds: readonly Round[]): readonly Turn[] => [
	...rounds.flatMap(([inner, outer]) => [
		typed(inner, titles[place], 'At the INNERMOST place'),
		typed(outer, titles[place], 'At the OUTERMOST place'),
	]),
	turn('1', titles[place], '2 one more round'),
];

export type Series = {readonly inner: readonly Round[]; readonly outer: readonly Round[]; readonly closing: Round};

/** Readings of an arm whose wire acts as a spring: invented. */
export const springy: Series = {
	inner: [
		['4 out', '10 out'],
		['4.5 out', '10 out'],
		['4 out', '9.5 out'],
	],
	outer: [
		['3 out', '7.5 out'],
		['3 out', '7 out'],
		['3.5 out', '7.5 out'],
	],
	closing: ['4 out', '10 out'],
};

export const probeAll = ({inner, outer, closing}: Series): readonly Turn[] => [
	...probe('inner', inner),
	...probe('outer', outer),
	...probe('closing', [closing]),
];

/** The verdict, and from there to the put-back list. */
export const readVerdict: Turn = turn('1', '1 put the deck back');

export const putBack: readonly Turn[] = [
	turn('y', 'lock the arm in its rest'),
	turn('y', "Put the lever's weight back"),
	turn('y', 'Set the arm to its playing height'),
	turn('y', 'Last of all, take the stylus guard off'),
	typed('1.8', 'Weigh at record height, bias and damping as played'),
	turn('y', 'Look at the level once more.'),
	turn('y', 'Covers back, nothing left on the platter.'),
	turn('y', 'When should this arm be checked again?'),
];

/** The whole check, from the first question to the last. */
export const fullCheck: readonly Turn[] = [...prepare, ...probeAll(springy), readVerdict, ...putBack];
export const filed = 'Filed. The deck is ready to play';
