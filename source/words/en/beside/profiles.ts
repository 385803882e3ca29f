import type {ProfileKind} from '../../../procedure/step-ids.js';
import {dayText} from '../../dates.js';
import {listed} from '../../numbers.js';
import {results} from '../results.js';

const renaming = {
	arm: 'A new name for the same arm; its past checks keep the old one and stay with it. Another arm is entered in a check.',
	cartridge: 'A new name for the same cartridge. Another one, or one with a new stylus, is entered in a check.',
	tools:
		'A new name for the same gauge, scale and level. Others, or a gauge that was repaired or adjusted, are entered in a check.',
} satisfies Record<ProfileKind, string>;

type Named = {readonly name: string};
/** A day, as yyyy-mm-dd. */
type Kept = {readonly on: string; readonly changedOn: string | undefined};

export const profiles = {
	title: 'Profiles',
	gone: 'That profile is no longer on file.',
	none: 'None yet: they are kept as you answer the questions of a check.',
	some: 'Kept from your checks. Choose one to see it, rename, correct or set it aside.',
	inList: ({kind, name, isAside}: Named & {readonly kind: ProfileKind; readonly isAside: boolean}) =>
		`${kind}: ${name}${isAside ? ' (set aside)' : ''}`,
	kept: ({on, changedOn}: Kept) =>
		changedOn === undefined
			? `Kept on ${dayText(on)}.`
			: `Kept on ${dayText(on)}, changed here on ${dayText(changedOn)}.`,
	formerNames: ({names}: {readonly names: readonly string[]}) =>
		`Called ${listed(names.map((name) => `"${name}"`))} before.`,
	aside: 'Set aside: checks do not offer it. Its past checks stay.',
	rename: ({name}: Named) => `Rename ${name}`,
	renaming,
	correct: ({name}: Named) => `Correct ${name}`,
	correcting: 'Past checks keep the answers that they were made with.',
	takenOver: ({kind}: {readonly kind: ProfileKind}) =>
		`The open check has taken this ${results.kinds[kind]} over and keeps its answers: a change here holds for checks that start from now on.`,
	actions: {
		rename: 'rename it',
		answers: 'correct an answer',
		events: 'what was done to it',
		'set-aside': 'set it aside: offer it no more',
		'take-back': 'take it back: offer it in checks again',
		back: 'back to the list',
	},
	answer: ({title, text}: {readonly title: string; readonly text: string}) => `${title}: ${text}`,
	now: ({text}: {readonly text: string}) => `Now: ${text}`,
	/** An answer as it was typed; undefined where there is none. */
	text: ({typed}: {readonly typed: string | undefined}) => {
		if (typed === undefined) return 'no answer yet';
		return typed === '' ? 'not known' : typed;
	},
};
