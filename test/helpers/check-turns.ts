import type {IdOf, TickLine} from '../../source/procedure/step-ids.js';
import {anything, around, says, tickText, withAnything, words} from './said.js';
import {answer, limitAsked, option, type Turn, turn, typed} from './walk.js';

// The check that the tests play: an invented arm on an invented deck. All values are made up; its readings are those
// of the worked example in `test/results/example.ts`.

/** Home, where nothing is unfinished. */
export const start: Turn = turn('1', option(1, words.beside.home.start));
/** Home, with an unfinished check. */
export const resume: Turn = turn('1', ...around(option(1, words.beside.home.resume({arm: anything}))));

/** A list of lines, each ticked. */
const ticked = <List extends IdOf<'ticks'>>(list: List, lines: readonly TickLine<List>[]): Turn[] =>
	lines.map((line) => answer(list, 'y', lineAsked(list, line)));

/** A line that is asked for. */
export const lineAsked = <List extends IdOf<'ticks'>>(list: List, line: TickLine<List>): string =>
	words.faces.yesNo({question: tickText(list, line)});

export const makeSafe: readonly Turn[] = ticked('safe', ['amplifier', 'platter', 'mains', 'rest']);

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
	answer('gauge-turns', '1', option(1, words.options['gauge-turns'].inner)),
	typed('gauge-scale-uncertainty', '1'),
	typed('gauge-nudge', '0.5'),
	typed('scale-step', '0.01'),
	typed('scale-uncertainty', '0.02'),
	typed('level-step', '0.05'),
];

export const roomAndMat: readonly Turn[] = [
	typed('room-temperature', '21'),
	typed('room-note', '-'),
	answer('mat', '3', option(3, words.options.mat.off)),
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

export const lookAlongArm: readonly Turn[] = ticked('wires', ['leads', 'lifter', 'rest', 'screws', 'air', 'static']);

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

/** The second inner round is taken with the gauge turned. */
const isTurned = (place: string, index: number): boolean => place === 'inner' && index === 1;

/** What the hands are told before a round: the second inner one is taken with the gauge turned. */
const headOf = (place: 'inner' | 'outer' | 'closing', index: number): readonly string[] => {
	if (index === 0) return [];
	if (isTurned(place, index)) return [words.rounds.turned];
	return [place === 'inner' && index === 2 ? words.rounds.turnedBack : words.rounds.anew];
};

/** Said where a round is asked for again that was begun and left. */
export const roundAnew: string = says.notice({id: 'round-anew', values: {}});

/** Whether a turn asks for the outer limit of a round. */
export const asksOuterLimit = ({shows}: Turn): boolean =>
	[true, false].some((turned) => shows.includes(limitAsked('outer', turned)));

/** Rounds at one place, and on to the next place. */
export const probe = (place: 'inner' | 'outer' | 'closing', rounds: readonly Round[]): readonly Turn[] => [
	...rounds.flatMap(([inner, outer], index) => [
		typed(`probe-${place}`, inner, limitAsked('inner', isTurned(place, index)), ...headOf(place, index)),
		typed(`probe-${place}`, outer, limitAsked('outer', isTurned(place, index))),
	]),
	answer(`probe-${place}`, '1', option(2, says.label({id: 'one-more-round', values: {}}))),
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

/** The verdict of an arm that wants something, and from there to the put-back list. */
export const readVerdict: Turn = answer('verdict', '2', option(2, says.label({id: 'put-back', values: {}})));
/** The verdict of a sound arm: to put the deck back is all there is to do. */
export const leaveIt: Turn = answer('verdict', '1', option(1, says.label({id: 'leave', values: {}})));
/** From the verdict to what else can be done than its next action. */
export const anotherWay: Turn = answer('verdict', '3', option(3, says.label({id: 'other-way', values: {}})));

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
export const filed: string = words.beside.home.filed.ready;

/** The last words after a check was left open: how to go on, and nothing behind it. */
export const leftOpen = new RegExp(
	`${withAnything(words.commands.parting.goOnWithDeck({isReady: false, goOn: anything}), '[^:]+').source}$`,
);
