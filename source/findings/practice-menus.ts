import type {Option} from '../procedure/step.js';
import type {Unfinished} from '../workbench.js';
import {line, type Shown} from './shown-lines.js';

/** Said wherever a practice check is shown or reported. */
export const practiceNotice = 'PRACTICE: arm, deck and readings are invented. Nothing here is a real check.';

/** The first list of practice: which invented arm. */
export const armsTitle = 'PRACTICE: which invented arm?';
export const armsLines: readonly Shown[] = [
	line(
		'Each has one lesson. You probe it as you would at the bench; at the end its hidden truth stands beside what you found.',
	),
];
export const armOptions = (
	arms: readonly {readonly id: string; readonly name: string}[],
	open: Unfinished | undefined,
): Option[] => [
	...(open ? [{id: 'resume', label: `go on with "${open.arm}", left ${open.ago} at '${open.step}'`}] : []),
	{id: 'hidden', label: 'one of them, not told which'},
	...arms.map(({id, name}) => ({id, label: name})),
	{id: 'leave', label: 'leave'},
];

/** The second one: how much of the check. */
export const extentTitle = 'PRACTICE: how much of the check?';
export const extentOptions: readonly Option[] = [
	{id: 'probe', label: 'only the probe: somebody else has prepared the deck (three minutes)'},
	{id: 'whole', label: 'the whole check, from the first line (ten minutes)'},
	{id: 'back', label: 'back'},
];

/** What can follow once a practice check is filed. */
export const practisedOptions: readonly Option[] = [
	{id: 'again', label: 'another invented arm'},
	{id: 'leave', label: 'leave'},
];
export const practisedTitle = 'PRACTICE filed, apart from all real checks.';
