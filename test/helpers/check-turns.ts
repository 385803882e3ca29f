import {answer, type Turn, turn, typed} from './walk.js';

// The check that the tests play: an invented arm on an invented deck. All values are made up; its readings are those
// of the worked example in `test/results/example.ts`.

/** Home, where nothing is unfinished. */
export const start: Turn = turn('1', '1 new full check');
/** Home, with an unfinished check. */
export const resume: Turn = turn('1', '1 go on with the check of');

/** A list of lines, each ticked. */
const ticked = (step: string, lines: readonly string[]): Turn[] =>
	lines.map((line) => answer(step, 'y', `${line} y / n`));

export const makeSafe: readonly Turn[] = ticked('safe', [
	'Amplifier muted or off',
	'Platter stopped, kept from creeping',
	'Mains unplugged, or nothing will be opened',
	'Arm in its rest, guard at hand',
]);

export const describeArm: readonly Turn[] = [
	typed('arm-name', 'north deck'),
	typed('arm-serial', '-'),
	typed('arm-length', '233'),
	typed('arm-pivot-distance', '215,4 mm'),
	typed('arm-offset', '-'),
	answer('arm-pivot-place', '1'),
	answer('arm-bearing', '1'),
	answer('arm-gravity-centre', '1'),
	answer('arm-loading', '1'),
	answer('arm-auto-stop', '1'),
	answer('arm-wire-path', '1'),
	answer('arm-wire-stiffness', '1'),
	answer('arm-bias-device', '3'),
	answer('arm-damping', '1'),
	answer('deck-sprung', '1'),
	typed('radius-inner', '68'),
	typed('radius-outer', '136'),
	typed('radius-extra', '-'),
];

export const describeCartridge: readonly Turn[] = [
	typed('cartridge-name', 'test pickup'),
	typed('playing-force', '2,1 g'),
	typed('force-low', '1.8'),
	typed('force-high', '24 mN'),
	typed('cartridge-compliance', '12'),
	typed('cartridge-cantilever', '5.5'),
	typed('guard-mass', '0.4'),
	typed('guard-depth', '1.3'),
];

export const describeTools: readonly Turn[] = [
	typed('tools-name', 'bench set'),
	answer('gauge-unit', '1'),
	typed('gauge-step', '0.5'),
	typed('gauge-top', '20'),
	answer('gauge-sign', '1'),
	answer('gauge-turns', '1', '1 yes, at both radii'),
	typed('gauge-scale-uncertainty', '1'),
	typed('gauge-nudge', '0.5'),
	typed('scale-step', '0.01'),
	typed('scale-uncertainty', '0.02'),
	typed('level-step', '0.05'),
];

export const roomAndMat: readonly Turn[] = [
	typed('room-temperature', '21'),
	typed('room-note', '-'),
	answer('mat', '3', '3 the mat is taken off'),
	typed('mat-thickness', '3'),
];

export type LevelReadings = readonly [leftRight: string, turned: string, frontBack: string, turnedToo: string];

/** Level read twice each way, the level turned round in between. */
export const readLevel = (
	[leftRight, turned, frontBack, turnedToo]: LevelReadings = ['0.15 right', '0.05 right', '0.05 back', '0.1 front'],
): readonly [Turn, Turn, Turn, Turn] => [
	typed('level-lr-1', leftRight),
	typed('level-lr-2', turned),
	typed('level-fb-1', frontBack),
	typed('level-fb-2', turnedToo),
];

export const biasOff: readonly Turn[] = [typed('bias-setting', 'notch 3'), answer('bias-off', 'y')];

export const lookAlongArm: readonly Turn[] = ticked('wires', [
	'Leads lie as always, nothing touches the arm',
	'Lifter down and clear of the tube',
	'Rest and its clip are clear',
	'Headshell and cartridge screws tight',
	'Lid, fan and heating off: no draught',
	'No static on mat or hands',
]);

export const weigh: readonly Turn[] = [
	answer('guard-on', '1'),
	answer('weighed', '1'),
	typed('force-reading', '2.15 g'),
];
export const setHeight: Turn = typed('clearance', '5.6');

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
	...biasOff,
	...lookAlongArm,
	...weigh,
	setHeight,
];

/** Both limits as they are typed: with their side, or with the gauge's own sign where it is turned. */
export type Round = readonly [inner: string, outer: string];

/** What the hands are told before a round: the second inner one is taken with the gauge turned. */
const headOf = (place: 'inner' | 'outer' | 'closing', index: number): readonly string[] => {
	if (index === 0) return [];
	if (place === 'inner' && index === 1) return ['Turn the gauge end for end'];
	return [place === 'inner' && index === 2 ? 'Turn the gauge back' : 'set it anew'];
};

/** Rounds at one place, and on to the next place. */
export const probe = (place: 'inner' | 'outer' | 'closing', rounds: readonly Round[]): readonly Turn[] => [
	...rounds.flatMap(([inner, outer], index) => [
		typed(`probe-${place}`, inner, 'INNERMOST', ...headOf(place, index)),
		typed(`probe-${place}`, outer, 'OUTERMOST'),
	]),
	answer(`probe-${place}`, '1', '2 one more round'),
];

/** The second inner round is taken with the gauge turned. */
export type Series = {readonly inner: readonly Round[]; readonly outer: readonly Round[]; readonly closing: Round};

/** Readings of an arm whose wire acts as a spring: invented. */
export const springy: Series = {
	inner: [
		['3 out', '8.5 out'],
		['-2.5', '-8'],
		['3 out', '8 out'],
	],
	outer: [
		['1.5 out', '5.5 out'],
		['1.5 out', '5 out'],
		['2 out', '5.5 out'],
	],
	closing: ['2.5 out', '8 out'],
};

export const probeAll = ({inner, outer, closing}: Series): readonly Turn[] => [
	...probe('inner', inner),
	...probe('outer', outer),
	...probe('closing', [closing]),
];

/** The verdict, and from there to the put-back list. */
export const readVerdict: Turn = answer('verdict', '1', '1 put the deck back');

export const putBack: readonly Turn[] = [
	answer('back-lock', 'y'),
	answer('back-mat', 'y'),
	answer('back-bias', 'y'),
	answer('back-height', 'y'),
	answer('back-guard', 'y'),
	typed('back-force', '2.1'),
	answer('back-level', 'y'),
	answer('back-covers', 'y'),
	answer('next-check', 'y'),
];

/** The whole check, from the first question to the last. */
export const fullCheck: readonly Turn[] = [...prepare, ...probeAll(springy), readVerdict, ...putBack];
export const filed = 'Filed. The deck is ready to play';
