import type {ProfileKind} from '../../../procedure/step-ids.js';
import {dayText} from '../../dates.js';
import {listed} from '../../numbers.js';
import {results} from '../results.js';

const renaming = {
	arm: 'Type a new name for the same arm. Its past checks stay with it. For another arm, enter a new one in a check.',
	cartridge: 'Type a new name for the same cartridge. For another one or a new stylus, enter a new one in a check.',
	tools:
		'Type a new name for the same gauge, scale and level. For other tools or a repaired gauge, enter new ones in a check.',
} satisfies Record<ProfileKind, string>;

type Named = {readonly name: string};
/** A day, as yyyy-mm-dd. */
type Kept = {readonly on: string; readonly changedOn: string | undefined};

export const profiles = {
	title: 'Profiles',
	gone: 'That profile is gone.',
	none: 'None yet. A check fills them in as you answer.',
	some: 'Choose one to see, rename or correct it, or set it aside.',
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
	correcting: 'Past checks keep their old answers.',
	takenOver: ({kind}: {readonly kind: ProfileKind}) =>
		`The open check keeps its answers for this ${results.kinds[kind]}. A change here holds for new checks.`,
	actions: {
		rename: 'rename it',
		answers: 'correct an answer',
		events: 'what was done to it',
		'set-aside': 'set it aside: no longer offer it',
		'take-back': 'take it back: offer it again',
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
