import {listed, mm, percent, plainNumber, printsAsZero, rounded} from '../../numbers.js';
import {forceAsTyped} from '../figures.js';

/** A force at a radius, in percent of the playing force. */
type ForceAt = {readonly radiusMm: number; readonly pct: number};

/** A force at a radius: '12,5 % außen bei 136 mm'. */
const at = ({radiusMm, pct}: ForceAt): string => `${forceAsTyped(pct, '%', 1)} bei ${mm(radiusMm)}`;

/** What is left of a reading: too little or too much bias. */
const leftOver = ({leftoverPct}: {readonly leftoverPct: number}): string =>
	printsAsZero(leftoverPct, 1)
		? 'kein Rest'
		: `${percent(Math.abs(leftoverPct), 1)} ${leftoverPct < 0 ? 'zu wenig' : 'zu viel'}`;

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
		`Sollwert mit Antiskating, bei Rillenreibung ${rounded(drag, 2)} (angenommen): ${listed(wanted.map(at))}.`,
	dragMoves: ({drag, byPct}: {readonly drag: number; readonly byPct: number}) =>
		`${plainNumber(drag)} mehr oder weniger Rillenreibung ändert das um höchstens ${percent(byPct, 1)}.`,
	leastSkating: ({radiusMm}: {readonly radiusMm: number}) => `Skating ist bei ${rounded(radiusMm, 0)} mm am kleinsten.`,
	offTheRecord: 'Der Arm erreicht die Platte nicht.',
	ownPull: ({own}: {readonly own: readonly ForceAt[]}) => `Zug ohne Antiskating: ${listed(own.map(at))}.`,
	readAt: (read: ForceAt & {readonly leftoverPct: number}) =>
		`Messwert mit Antiskating: ${at(read)}, ${leftOver(read)}.`,
	readHere: ({pullOnPct, wantedPct, leftoverPct, biasPct}: BiasRead) =>
		`Mitte ${forceAsTyped(pullOnPct, '%', 1)}, Sollwert ${forceAsTyped(wantedPct, '%', 1)}: ${leftOver({leftoverPct})}. Antiskating allein: ${forceAsTyped(biasPct, '%', 1)}.`,
};
