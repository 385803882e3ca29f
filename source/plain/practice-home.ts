import {
	armOptions,
	armsLines,
	armsTitle,
	extentLines,
	extentOf,
	extentOptions,
	extentTitle,
	practiceNotice,
} from '../pages/practice-words.js';
import {line} from '../pages/shown-lines.js';
import type {PracticeDesk} from '../workbench.js';
import {choose} from './choose.js';
import type {Lines} from './converse.js';
import type {HomeEnd} from './home.js';

/** The first questions of practice in plain lines: which invented arm, and how much of its check. */
export async function practiceHome(
	desk: PracticeDesk,
	lines: Lines,
	hasHome: boolean,
): Promise<HomeEnd | {readonly kind: 'home'}> {
	const notices = [practiceNotice, ...desk.notices()].map((text) => line(text));
	for (;;) {
		const open = desk.unfinished();
		const arm = await choose(armsTitle, [...notices, ...armsLines], armOptions(desk.arms, open, hasHome), lines);
		if (arm.kind !== 'chosen') return arm;
		if (arm.id === 'leave') return {kind: 'left'};
		if (arm.id === 'home') return {kind: 'home'};
		if (arm.id === 'resume') return {kind: 'opened', opened: await desk.resume()};
		const extent = await choose(extentTitle, extentLines(open), extentOptions, lines);
		if (extent.kind !== 'chosen') return extent;
		if (extent.id === 'back') continue;
		const chosen = arm.id === 'hidden' ? undefined : arm.id;
		return {kind: 'opened', opened: await desk.begin(chosen, extentOf(extent.id))};
	}
}
