import {dayText} from '../../dates.js';
import {inUnit, listed, mm, percent, plainNumber} from '../../numbers.js';

type Clearance = {readonly lowMm: number; readonly highMm: number; readonly nowMm: number | undefined};

const window = (name: string, {lowMm, highMm, nowMm}: Clearance): string =>
	`${name}: ${plainNumber(lowMm)} to ${mm(highMm)}${nowMm === undefined ? '' : `, now ${mm(nowMm)}`}.`;

const known = (typed: string): string => (typed === '' ? 'not known' : typed);

/** What an answer brings about, beside its question. */
export const consequences = {
	bothForces: ({forceMn}: {forceMn: number}) => `= ${inUnit(forceMn, 'gf')} = ${inUnit(forceMn, 'mN')}`,
	carried: ({carriedMn, playingMn}: {carriedMn: number; playingMn: number}) =>
		`The gauge will carry ${inUnit(carriedMn, 'gf')} = ${inUnit(carriedMn, 'mN')} (${percent((100 * carriedMn) / playingMn, 1)} of the playing force).`,
	guardUnseen: ({guardMn}: {guardMn: number}) =>
		`That includes ${inUnit(guardMn, 'gf')} for the guard, which you did not weigh.`,
	guardAlone: ({guardMn}: {guardMn: number}) => `${inUnit(guardMn, 'gf')} of that is the guard.`,
	guardHangs: ({depthMm}: {depthMm: number}) => `The guard hangs ${mm(depthMm)} below the stylus.`,
	guardClear: ({gapMm}: {gapMm: number}) => `Keep more than ${mm(gapMm)} free under the guard.`,
	stylus: (clearance: Clearance) => window('stylus', clearance),
	guard: (clearance: Clearance) => window('guard', clearance),
	putBackForce: ({offPct, playingMn, allowedPct}: {offPct: number; playingMn: number; allowedPct: number}) =>
		`${percent(offPct, 1)} off the playing force of ${inUnit(playingMn, 'gf')} (allowed ± ${plainNumber(allowedPct)} %)`,
	deck: 'The deck from above. You stand at the front.',
	/** The mark before a line that is done, or is not so, stands with its tone. */
	ticked: ({text, mark, isAsked}: {text: string; mark: 'yes' | 'no' | undefined; isAsked: boolean}) =>
		mark === undefined ? `${isAsked ? '❯' : '·'} ${text}` : text,
	wasItNotSo: 'Was it wrong while you took the rounds? Type n first: a new series begins.',
	nextCheck: ({date}: {date: string}) => `Next check: ${dayText(date)}`,
	/** What was answered with y and n, and line by line. */
	answered: {
		allDone: 'all lines done',
		left: ({lines}: {lines: readonly string[]}) => `not done: ${listed(lines)}`,
	},
	answer: ({title, typed}: {title: string; typed: string}) => `${title}: ${typed}`,
	/** Several together; a line does not break within one that is short. */
	answers: ({answers}: {answers: readonly string[]}) =>
		answers.map((one) => (one.length > 30 ? one : one.replaceAll(' ', '\u00a0'))).join(' · '),
	corrected: ({title, typed, since}: {title: string; typed: string; since: string}) =>
		`${title}: ${known(typed)} (corrected since the last check, ${known(since)} then)`,
};
