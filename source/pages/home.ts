import type {Option} from '../procedure/step.js';
import type {DueArm} from '../results/years/due.js';
import {words} from '../words/index.js';
import type {Unfinished} from '../workbench.js';
import {line, type Shown} from './shown-lines.js';

/** What the home screen says above its list. */
export function homeLines(unfinished: Unfinished | undefined): Shown[] {
	if (!unfinished)
		return [line('A full check takes about half an hour: arm, gauge, level, stylus scale and a ruler at hand.')];
	const {arm, step, ago} = unfinished;
	return [line(`Unfinished check: ${arm}, left ${ago} at '${step}'. Deck not ready to play.`, 'warn')];
}

/** What can be chosen at home; the unfinished check comes first. */
export const homeOptions = (unfinished: Unfinished | undefined, due: DueArm | undefined): Option[] => [
	...(unfinished ? [{id: 'resume', label: `go on with the check of ${unfinished.arm}`}] : []),
	{id: 'start', label: 'new full check'},
	...(due ? [{id: 'recheck', label: `re-check ${due.arm} (${words.results.due(due)})`}] : []),
	{id: 'past', label: 'past checks'},
	{id: 'profiles', label: 'profiles of arms, cartridges and tools'},
	{id: 'settings', label: 'settings: limits, countdown, bell'},
	{id: 'practice', label: 'practise on an invented arm, without a turntable'},
	{id: 'leave', label: 'leave'},
];

/** Before a new check puts an open one aside. */
export const closingLines = ({arm}: Unfinished): Shown[] => [
	line(
		`The check of ${arm} is still open. Going on files it as interrupted, deck not ready to play; its put-back list stays under past checks.`,
		'warn',
	),
];
export const closingOptions: readonly Option[] = [
	{id: 'resume', label: 'go on with the open check'},
	{id: 'start', label: 'file it as interrupted'},
	{id: 'back', label: 'back'},
];

/** When a check was to be repeated while one is open. */
export const checkOpen = ({arm}: Unfinished): string =>
	`The check of ${arm} is still open, so none was repeated: go on with it, or choose another one here.`;

/** When a check of a named arm was asked for while one of another arm is open. */
export const otherArmOpen = (asked: string, {arm}: Unfinished): string =>
	`The check of ${arm} is still open, so the one of ${asked} was not started: go on with it, or start a new one here.`;
