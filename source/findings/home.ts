import type {Option} from '../procedure/step.js';
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
export const homeOptions = (unfinished: Unfinished | undefined): Option[] => [
	...(unfinished ? [{id: 'resume', label: `go on with the check of ${unfinished.arm}`}] : []),
	{id: 'start', label: 'new full check'},
	{id: 'past', label: 'past checks'},
	{id: 'profiles', label: 'profiles of arms, cartridges and tools'},
	{id: 'settings', label: 'settings: limits, countdown, bell'},
	{id: 'leave', label: 'leave'},
];
