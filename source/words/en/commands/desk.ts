import type {Verdict} from '../../../results/figures-types.js';
import {found} from '../../speaker.js';

export type ArmMeant = {
	/** As it was typed. */
	readonly arm: string;
	/** The known name that was probably meant. */
	readonly meant?: string | undefined;
};

const verdicts: Readonly<Record<Verdict, string>> = {
	good: 'good',
	usable: 'usable',
	beyond: 'too much',
	undecided: 'undecided',
	'off-scale': 'off scale',
};

/** A verdict within a sentence; one of a later version stands for itself. */
const verdictIn = (verdict: string | null | undefined): string =>
	verdict ? (found(verdicts, verdict) ?? verdict) : 'no verdict';

/** The workbench on the disk: checks that are started, repeated and marked. */
export const desk = {
	newArm: 'a new arm',
	itsEnd: 'its end',
	nothingOpen: 'No check is open. Start a new one.',
	cameToEnd: 'That check was at its end, and is filed now. Past checks show it.',
	voidAlready: ({reason}: {readonly reason: string}) => `That check is void already: ${reason}.`,
	notVoid: 'That check is not void.',
	/** What is noted beside one check, or beside all of them, cannot be read. */
	countsNotKnown: ({sentence, ofAll}: {readonly sentence: string; readonly ofAll: boolean}) =>
		ofAll
			? `${sentence} Until then all checks are left out of comparisons, trend and due dates: any may be void.`
			: `${sentence} Until then the check is left out of comparisons, trend and due dates: it may be void.`,
	filedElsewhere: ({filed, own}: {readonly filed: string; readonly own: string}) =>
		`Another copy filed this check as ${filed}, with other answers. Yours goes on as ${own}: both are kept.`,
	nothingToRepeat: 'No arm has a past check to repeat. Start a full one.',
	nothingToRepeatOf: ({arm, meant}: ArmMeant) =>
		meant === undefined
			? `There is no past check of "${arm}" to repeat. Start a full one with --arm.`
			: `There is no past check of "${arm}" to repeat. Did you mean "${meant}"?`,
	listedWrongly: ({id, dataDir}: {readonly id: string; readonly dataDir: string}) =>
		`The check ${id} is listed under the wrong arm. Remove the folder "index" in "${dataDir}": the next start makes it again.`,
	remarkInTheWay: ({sentence}: {readonly sentence: string}) => `${sentence} Move that file away, then delete again.`,
};

/** The last lines on the normal screen: what is saved or filed, and how to go on. */
export const parting = {
	saved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
		`Saved: the check of ${arm} stands at '${step}'.`,
	practiceSaved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
		`PRACTICE saved: ${arm} stands at '${step}'.`,
	waiting: ({arm, step, goOn}: {readonly arm: string; readonly step: string; readonly goOn: string}) =>
		`The check of ${arm} still waits at '${step}'. Go on with: ${goOn}`,
	goOn: ({goOn}: {readonly goOn: string}) => `Go on with: ${goOn}`,
	goOnWithDeck: ({isReady, goOn}: {readonly isReady: boolean; readonly goOn: string}) =>
		isReady ? `Deck ready to play. Go on with: ${goOn}` : `Deck not ready to play. Go on with: ${goOn}`,
	nothingOpen: 'No check is open.',
	filed: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
		`Filed as ${id}: ${verdictIn(verdict)}.`,
	practiceFiled: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
		`PRACTICE, filed as ${id}: ${verdictIn(verdict)}.`,
	deckNotReady: 'Deck NOT ready to play. Past checks show its put-back list.',
	deckReady: 'Deck ready to play. Keep the volume down for the first record.',
	practiceReport: ({command}: {readonly command: string}) => `Report on it: ${command}`,
};
