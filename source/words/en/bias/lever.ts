import type {LeverChange} from '../../../measures/lever-fit.js';
import {listed, mm, percent, plainNumber, printsAsZero, rounded} from '../../numbers.js';

/** A weighted lever is read by the clock, a thread by its angle to the bias pin. */
type Reads = 'clock' | 'angle';

const parts: Readonly<Record<Reads, string>> = {clock: 'lever', angle: 'thread'};

/** A change; less than the last digit shown is none. */
const moves = (pct: number): string =>
	printsAsZero(pct, 1) ? 'stay the same' : `${pct > 0 ? 'grow' : 'fall'} by ${percent(Math.abs(pct), 1)}`;

/** Turned by so many degrees, which raises or lowers a lever, and what is left then. */
type Turned = {readonly byDeg: number; readonly isRaised: boolean; readonly worstPct: number};

type Gain = {
	readonly reads: Reads;
	readonly nowPct: number;
	/** The setting was chosen, so nothing is to be done now. */
	readonly isKept: boolean;
	/** Friction hides what is left now. */
	readonly isHidden: boolean;
	/** What another length of thread, or another place of its guide, would leave at most. */
	readonly turned: Turned | undefined;
	/** What would be left if lever or thread stood the same over the whole record. */
	readonly heldPct: number | undefined;
};

const turnedText = (reads: Reads, {byDeg, isRaised, worstPct}: Turned): string =>
	reads === 'angle'
		? `move the guide until the angle between thread and bias pin is ${plainNumber(Math.abs(byDeg))}° ${byDeg > 0 ? 'larger' : 'smaller'}. Then at most ${percent(worstPct, 1)} is left over`
		: `${isRaised ? 'shorten' : 'lengthen'} the thread until the lever stands ${plainNumber(Math.abs(byDeg), 0)}° ${isRaised ? 'higher' : 'lower'}. Then at most ${percent(worstPct, 1)} is left over`;

const heldText = (reads: Reads, worstPct: number): string =>
	reads === 'clock'
		? `move the pulley, as far as its maker allows, so that the thread runs nearer to the pivot. The lever then stays about level. Hang on more weight. Then at most ${percent(worstPct, 1)} is left over`
		: `move the guide farther from the arm, so that the thread stays about square to the bias pin. Then at most ${percent(worstPct, 1)} is left over`;

type Doubt = LeverChange & {readonly reads: Reads};

/** What lever or thread do to the bias over the record, and what another place of the pulley would gain. */
export const lever = {
	leverStands: ({places}: {readonly places: readonly {readonly radiusMm: number; readonly clock: string}[]}) =>
		`The lever stands at ${listed(places.map(({radiusMm, clock}) => `${clock} at ${mm(radiusMm)}`))}.`,
	threadStands: ({places}: {readonly places: readonly {readonly radiusMm: number; readonly deg: number}[]}) =>
		`Thread to bias pin: ${listed(places.map(({radiusMm, deg}) => `${plainNumber(deg)}° at ${mm(radiusMm)}`))}.`,
	weightThatActs: ({reads, shares: [least, most], askedShare}: ActingWeight) =>
		`${reads === 'clock' ? 'Lever' : 'Thread'}: ${rounded(100 * least, 0)} to ${rounded(100 * most, 0)} % of the weight acts, depending on the radius. It should be ${rounded(100 * askedShare, 0)} to 100 %.`,
	doubt: ({reads, fromMm, toMm, measuredPct, expectedPct, openPct}: Doubt) => {
		const part = parts[reads];
		return `The ${part} does not explain the bias. From ${plainNumber(fromMm)} to ${mm(toMm)} the bias should ${moves(expectedPct)}. The readings make it ${moves(measuredPct)} (± ${percent(openPct, 1)}). Read ${part} and limits again before you move pulley or thread.`;
	},
	gain: ({reads, nowPct, isKept, isHidden, turned, heldPct}: Gain) =>
		[
			`With the ${parts[reads]} where it is now, the best setting leaves ${percent(nowPct, 1)}.${isHidden ? ' Friction hides that.' : ''}`,
			[...(turned ? [turnedText(reads, turned)] : []), ...(heldPct === undefined ? [] : [heldText(reads, heldPct)])]
				.map(
					(way, index) =>
						`${index > 0 ? 'Another way' : isHidden ? 'Later, once the friction is smaller' : isKept ? 'For another time' : 'Later, to leave less'}: ${way}.`,
				)
				.join(' '),
			...(isKept || isHidden ? [] : ['Then probe again.']),
		].join(' '),
	gainsNothing: 'Moving pulley or thread gains nothing.',
	leavesLeast: ({nowPct}: {readonly nowPct: number}) =>
		`The best setting leaves ${percent(nowPct, 1)}. With this pull no other place of pulley or thread leaves less.`,
};

type ActingWeight = {
	readonly reads: Reads;
	/** Least and most of the weight that acts over the radii. */
	readonly shares: readonly [least: number, most: number];
	/** The least that skating asks for, as part of the most. */
	readonly askedShare: number;
};
