import type {DueArm} from '../../../results/years/due.js';
import {agoText} from '../ago.js';
import {results} from '../results.js';

type OfArm = {readonly arm: string};
type UnfinishedValues = OfArm & {readonly minutesAgo: number; readonly step: string; readonly isReady: boolean};

/** The first page, and those that a check begins and ends with. */
export const home = {
	title: ({version}: {readonly version: string}) => `armdrift ${version}: is the arm free?`,
	nothingOpen: 'A full check takes about half an hour. Have arm, gauge, level, stylus scale and ruler at hand.',
	unfinished: ({arm, minutesAgo, step, isReady}: UnfinishedValues) =>
		`Unfinished check: ${arm}, left ${agoText(minutesAgo)} at '${step}'. Deck ${isReady ? '' : 'not '}ready to play.`,
	resume: ({arm}: OfArm) => `go on with the check of ${arm}`,
	start: 'new full check',
	recheck: ({arm, inDays}: OfArm & Pick<DueArm, 'inDays'>) =>
		`re-check ${arm} (${inDays > 0 ? `due ${results.due({inDays})}` : results.due({inDays})})`,
	past: 'past checks',
	profiles: 'profiles of arms, cartridges and tools',
	settings: 'settings: good and usable, countdown, bell',
	practice: 'practise on an invented arm, without a turntable',
	leave: 'leave',
	/** Before another check puts an open one aside. */
	checkOpen: {
		title: 'A check is open',
		goingOn: ({arm}: OfArm) =>
			`The check of ${arm} is still open. If you begin a new one, the open one is filed as interrupted: deck not ready to play. Its put-back list is then under past checks.`,
		resume: 'go on with the open check',
		start: 'file it as interrupted, begin the new check',
	},
	/** A check was to be repeated while one is open. */
	notRepeated: ({arm}: OfArm) => `The check of ${arm} is still open. Go on with it, or choose another one.`,
	/** A check of a named arm was asked for while one of another arm is open. */
	notStarted: ({arm, asked}: OfArm & {readonly asked: string}) =>
		`The check of ${arm} is still open, so ${asked} must wait. Go on with it, or start a new one.`,
	filed: {
		ready: 'Filed. The deck is ready to play. Volume down for the first record.',
		notReady: 'Filed. The deck is NOT ready to play. Its put-back list is under past checks.',
		leave: 'leave',
		home: 'back to the first screen',
	},
};
