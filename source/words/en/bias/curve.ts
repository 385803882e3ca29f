import {listed, mm, percent, plainNumber, printsAsZero, rounded} from '../../numbers.js';
import {forceWithWay} from '../figures.js';

/** A force at a radius, in percent of the playing force. */
type ForceAt = {readonly radiusMm: number; readonly pct: number};

/** A force at a radius: '12.5 % out at 136 mm'. */
const at = ({radiusMm, pct}: ForceAt): string => `${forceWithWay(pct, '%', 1)} at ${mm(radiusMm)}`;

/** What is left of a reading: too little or too much bias. */
const leftOver = ({leftoverPct}: {readonly leftoverPct: number}): string =>
	printsAsZero(leftoverPct, 1)
		? 'nothing left over'
		: `${percent(Math.abs(leftoverPct), 1)} ${leftoverPct < 0 ? 'too little' : 'too much'}`;

type BiasRead = {
	readonly pullOnPct: number;
	readonly wantedPct: number;
	readonly leftoverPct: number;
	readonly biasPct: number;
};

/** The wanted reading over the record, the arm's own pull, and what was read with the bias on. */
export const curve = {
	leftOver,
	wantedOverRecord: ({wanted, drag}: {readonly wanted: readonly ForceAt[]; readonly drag: number}) =>
		`Wanted with bias on, if the drag is ${rounded(drag, 2)} (assumed): ${listed(wanted.map(at))}.`,
	dragMoves: ({drag, byPct}: {readonly drag: number; readonly byPct: number}) =>
		`Drag ${plainNumber(drag)} more or less moves that by ${percent(byPct, 1)} at most.`,
	leastSkating: ({radiusMm}: {readonly radiusMm: number}) => `Skating is least at ${rounded(radiusMm, 0)} mm.`,
	offTheRecord: 'The arm does not reach the record.',
	ownPull: ({own}: {readonly own: readonly ForceAt[]}) => `Pull with bias off: ${listed(own.map(at))}.`,
	readAt: (read: ForceAt & {readonly leftoverPct: number}) => `Read with the bias on: ${at(read)}, ${leftOver(read)}.`,
	readHere: ({pullOnPct, wantedPct, leftoverPct, biasPct}: BiasRead) =>
		`Middle ${forceWithWay(pullOnPct, '%', 1)}, wanted ${forceWithWay(wantedPct, '%', 1)}: ${leftOver({leftoverPct})}. Bias alone: ${forceWithWay(biasPct, '%', 1)}.`,
};
