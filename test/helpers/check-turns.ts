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

/** What is known of the arm, on one page. */
export const describeArm: readonly Turn[] = [
	typed('arm-name', 'north deck'),
	typed('arm-length', '233'),
	typed('arm-pivot-distance', '215,4 mm'),
	typed('playing-force', '2,1 g'),
	answer('arm-loading', '1'),
	answer('arm-bias-device', '3'),
];

export const describeTools: readonly Turn[] = [
	typed('tools-name', 'bench set'),
	answer('gauge-mount', '1'),
	answer('gauge-unit', '1'),
	typed('gauge-step', '0.5'),
	typed('gauge-top', '20'),
	answer('gauge-sign', '1'),
	answer('gauge-turns', '1', option(1, words.options['gauge-turns'].inner)),
];

/** Arm and gauge as an earlier check left them; of the arm is asked what was done since. */
export const pickKnown: readonly Turn[] = [
	answer('arm-profile', '1'),
	answer('done-since', '1', option(1, words.options['done-since'].nothing)),
	answer('tools-profile', '1'),
];

export const makeSafe: readonly Turn[] = ticked('safe', ['amplifier', 'mains', 'record', 'platter', 'lock']);

export const coverStylus: Turn = answer('guard-on', '1');
/** The stylus covered, with what is kept of the guard. */
export const guardOn: readonly Turn[] = [typed('guard-mass', '0.4'), coverStylus, typed('guard-depth', '1.3')];

export const matOff: readonly Turn[] = [
	answer('mat', '3', option(3, words.options.mat.off)),
	typed('mat-thickness', '3'),
];

/** What is kept of the deck the arm stands on. */
export const describeDeck: readonly Turn[] = [answer('arm-pivot-place', '1'), answer('deck-sprung', '1')];

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

export const lookAlongArm: readonly Turn[] = ticked('wires', ['screws', 'leads', 'rest', 'air']);

export const weigh: Turn = typed('force-reading', '2.15 g');
/** With the guard's depth of 1.3 mm the stylus stands 5.6 mm high. */
export const setHeight: Turn = typed('guard-gap', '4.3');
/** Asked before every series. */
export const swing: readonly Turn[] = [answer('first-swing', 'y')];
export const letGo: readonly Turn[] = [answer('lifter-clear', 'y'), ...swing];

/** Up to the level. */
export const describeAll: readonly Turn[] = [
	...describeArm,
	...describeTools,
	...makeSafe,
	...guardOn,
	...matOff,
	...describeDeck,
];
/** From the level, which is read, to the height of the stylus. */
export const levelToForce: readonly Turn[] = [
	answer('arm-damping', '1'),
	...biasOff,
	answer('arm-bearing', '1'),
	answer('arm-wire-path', '1'),
	...lookAlongArm,
	weigh,
];
/** From the level on, up to the probe. */
export const prepareOn: readonly Turn[] = [...readLevel(), ...levelToForce, setHeight, ...letGo];
export const prepare: readonly Turn[] = [...describeAll, ...prepareOn];

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

type Place = 'inner' | 'outer' | 'closing';

/** Rounds at one place, the first of them after so many others. */
const roundsAt = (place: Place, rounds: readonly Round[], before = 0): readonly Turn[] =>
	rounds.flatMap(([inner, outer], nth) => {
		const index = before + nth;
		// Back from the other radius the gauge is moved.
		const head = before > 0 && nth === 0 ? [words.rounds.moved] : headOf(place, index);
		return [
			typed(`probe-${place}`, inner, limitAsked('inner', isTurned(place, index)), ...head),
			typed(`probe-${place}`, outer, limitAsked('outer', isTurned(place, index))),
		];
	});

const enoughAt = (place: Place): Turn =>
	answer(`probe-${place}`, '1', option(2, says.label({id: 'one-more-round', values: {}})));

/** Rounds at one place, and on to the next place. */
export const probe = (place: Place, rounds: readonly Round[]): readonly Turn[] => [
	...roundsAt(place, rounds),
	enoughAt(place),
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

export const endProbe: readonly Turn[] = [answer('probe-end', 'y')];

export const probeAll = ({inner, outer, closing}: Series): readonly Turn[] => [
	...probe('inner', inner),
	...probe('outer', outer),
	...probe('closing', [closing]),
	...endProbe,
];

/** After a remedy: two rounds at each radius show what it did, and those that lack yet judge the arm. */
export const probeAfterRemedy = ({inner, outer, closing}: Series): readonly Turn[] => [
	...roundsAt('inner', inner.slice(0, 2)),
	answer('probe-inner', '1', option(2, says.label({id: 'strike', values: {}}))),
	...roundsAt('outer', outer.slice(0, 2)),
	answer('probe-outer', '1', option(2, says.label({id: 'strike', values: {}}))),
	...endProbe,
	// Readings are kept by the second: of two places read in the same one nobody could tell which was the last.
	{...answer('verdict', '1', option(1, says.label({id: 'judge', values: {}}))), waitsMs: 1000},
	...roundsAt('inner', inner.slice(2), 2),
	enoughAt('inner'),
	...roundsAt('outer', outer.slice(2), 2),
	enoughAt('outer'),
	...probe('closing', [closing]),
	...endProbe,
];

/** The verdict of an arm that wants something, and from there to the put-back list. */
export const readVerdict: Turn = answer('verdict', '2', option(2, says.label({id: 'put-back', values: {}})));
/** The verdict of a sound arm: to put the deck back is all there is to do. */
export const leaveIt: Turn = answer('verdict', '1', option(1, says.label({id: 'leave', values: {}})));
/** From the verdict to what else can be done than its next action. */
export const anotherWay: Turn = answer('verdict', '3', option(3, says.label({id: 'other-way', values: {}})));

/** The deck put back, and the temperature of the room that day. */
export const putBackAt = (celsius: string): readonly Turn[] => [
	answer('back-lock', 'y'),
	answer('back-gauge', 'y'),
	answer('back-mat', 'y'),
	answer('back-blocks', 'y'),
	answer('back-bias', 'y'),
	answer('back-level', 'y'),
	answer('back-height', 'y'),
	answer('back-weight', 'y'),
	answer('back-guard', 'y'),
	typed('back-force', '2.1'),
	answer('back-covers', 'y'),
	typed('room-temperature', celsius),
	answer('next-check', 'y'),
];
export const putBack: readonly Turn[] = putBackAt('21');

/** The whole check, from the first question to the last. */
export const fullCheck: readonly Turn[] = [...prepare, ...probeAll(springy), readVerdict, ...putBack];
export const filed: string = words.beside.home.filed.ready;

/** The last words after a check was left open: how to go on, and nothing behind it. */
export const leftOpen = new RegExp(
	`${withAnything(words.commands.parting.goOnWithDeck({isReady: false, goOn: anything}), '[^:]+').source}$`,
);
