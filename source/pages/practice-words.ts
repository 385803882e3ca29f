import type {Option} from '../procedure/step.js';
import type {Nudge, PracticeExtent, Unfinished} from '../workbench.js';
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
	/** Practice was opened from the first screen of real checks. */
	hasHome: boolean,
): Option[] => [
	...(open ? [{id: 'resume', label: `go on with "${open.arm}", left ${open.ago} at '${open.step}'`}] : []),
	{id: 'hidden', label: 'one of them, not told which'},
	...arms.map(({id, name}) => ({id, label: name})),
	...(hasHome ? [{id: 'home', label: 'back to real checks'}] : []),
	{id: 'leave', label: 'leave'},
];

/** The second one: how much of the check. */
export const extentTitle = 'PRACTICE: how much of the check?';
export const extentOptions: readonly Option[] = [
	{id: 'once', label: 'a first try: one round at each radius, deck prepared (three minutes)'},
	{id: 'probe', label: 'the whole probe: three rounds at each radius, deck prepared (ten minutes)'},
	{id: 'whole', label: 'the whole check, from the first line (twenty minutes)'},
	{id: 'back', label: 'back'},
];
export const extentOf = (id: string): PracticeExtent => (id === 'once' || id === 'probe' ? id : 'whole');

/** Said before another arm takes the place of one that is not finished. */
export const extentLines = (open: Unfinished | undefined): Shown[] =>
	open ? [line(`The practice on "${open.arm}" is put away as it stands.`)] : [];

/** The keys of the hand in practice, the same on every face; arrows stand for the large ones where there are any. */
export const nudgeKeys: Readonly<Record<string, Nudge>> = {
	'<': {way: 'in', size: 'large'},
	'>': {way: 'out', size: 'large'},
	',': {way: 'in', size: 'fine'},
	'.': {way: 'out', size: 'fine'},
};
export const nudgeHelp = {
	keys: '← in, → out: nudge it · fine: , in . out · then type what the gauge showed',
	lines:
		'Nudge it with a line of < in, > out, fine: , in . out (as many as you like); then type what the gauge showed.',
};

/** What can follow once a practice check is filed. */
export const practisedOptions: readonly Option[] = [
	{id: 'again', label: 'another invented arm'},
	{id: 'leave', label: 'leave'},
];
export const practisedTitle = 'PRACTICE filed, apart from all real checks.';
