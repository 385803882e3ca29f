import type {LeverChange} from '../../../measures/lever-fit.js';
import {listed, mm, percent, plainNumber, printsAsZero, rounded} from '../../numbers.js';

/** A weighted lever is read by the clock, a thread by its angle to the bias pin. */
type Reads = 'clock' | 'angle';

const parts: Readonly<Record<Reads, string>> = {clock: 'Hebel', angle: 'Faden'};

/** A change; less than the last digit shown is none. */
const moves = (pct: number): string =>
	printsAsZero(pct, 1) ? 'gleich bleiben' : `um ${percent(Math.abs(pct), 1)} ${pct > 0 ? 'wachsen' : 'fallen'}`;

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
		? `die Führung versetzen, bis der Winkel zwischen Faden und Antiskating-Stab um ${plainNumber(Math.abs(byDeg))}° ${byDeg > 0 ? 'größer' : 'kleiner'} ist. Dann bleiben höchstens ${percent(worstPct, 1)} Rest`
		: `den Faden ${isRaised ? 'kürzen' : 'verlängern'}, bis der Hebel ${plainNumber(Math.abs(byDeg), 0)}° ${isRaised ? 'höher' : 'tiefer'} steht. Dann bleiben höchstens ${percent(worstPct, 1)} Rest`;

const heldText = (reads: Reads, worstPct: number): string =>
	reads === 'clock'
		? `die Rolle versetzen, soweit der Hersteller es erlaubt, damit der Faden näher am Drehpunkt läuft. Der Hebel bleibt dann etwa waagrecht. Mehr Gewicht anhängen. Dann bleiben höchstens ${percent(worstPct, 1)} Rest`
		: `die Führung weiter vom Arm setzen, damit der Faden etwa rechtwinklig zum Antiskating-Stab bleibt. Dann bleiben höchstens ${percent(worstPct, 1)} Rest`;

type Doubt = LeverChange & {readonly reads: Reads};

/** What lever or thread do to the bias over the record, and what another place of the pulley would gain. */
export const lever = {
	leverStands: ({places}: {readonly places: readonly {readonly radiusMm: number; readonly clock: string}[]}) =>
		`Der Hebel steht auf ${listed(places.map(({radiusMm, clock}) => `${clock} bei ${mm(radiusMm)}`))}.`,
	threadStands: ({places}: {readonly places: readonly {readonly radiusMm: number; readonly deg: number}[]}) =>
		`Winkel zwischen Faden und Antiskating-Stab: ${listed(places.map(({radiusMm, deg}) => `${plainNumber(deg)}° bei ${mm(radiusMm)}`))}.`,
	weightThatActs: ({reads, shares: [least, most], askedShare}: ActingWeight) =>
		`${parts[reads]}: Je nach Radius wirken ${rounded(100 * least, 0)} bis ${rounded(100 * most, 0)} % des Gewichts. Richtig wären ${rounded(100 * askedShare, 0)} bis 100 %.`,
	doubt: ({reads, fromMm, toMm, measuredPct, expectedPct, openPct}: Doubt) => {
		const part = parts[reads];
		return `Der ${part} erklärt das Antiskating nicht. Von ${plainNumber(fromMm)} bis ${mm(toMm)} müsste es ${moves(expectedPct)}. Die Messwerte lassen es ${moves(measuredPct)} (± ${percent(openPct, 1)}). ${part} und Grenzen noch einmal lesen, erst dann Rolle oder Faden versetzen.`;
	},
	gain: ({reads, nowPct, isKept, isHidden, turned, heldPct}: Gain) =>
		[
			`So wie der ${parts[reads]} jetzt steht, lässt die beste Einstellung ${percent(nowPct, 1)} Rest.${isHidden ? ' Dieser Rest geht in der Reibung unter.' : ''}`,
			[...(turned ? [turnedText(reads, turned)] : []), ...(heldPct === undefined ? [] : [heldText(reads, heldPct)])]
				.map(
					(way, index) =>
						`${index > 0 ? 'Anderer Weg' : isHidden ? 'Später, wenn die Reibung kleiner ist' : isKept ? 'Für ein andermal' : 'Später, für weniger Rest'}: ${way}.`,
				)
				.join(' '),
			...(isKept || isHidden ? [] : ['Dann noch einmal messen.']),
		].join(' '),
	gainsNothing: 'Rolle oder Faden versetzen bringt nichts.',
	leavesLeast: ({nowPct}: {readonly nowPct: number}) =>
		`Die beste Einstellung lässt ${percent(nowPct, 1)} Rest. Bei diesem Zug lässt kein anderer Platz von Rolle oder Faden weniger.`,
};

type ActingWeight = {
	readonly reads: Reads;
	/** Least and most of the weight that acts over the radii. */
	readonly shares: readonly [least: number, most: number];
	/** The least that skating asks for, as part of the most. */
	readonly askedShare: number;
};
