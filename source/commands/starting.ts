import {formatDistanceStrict} from 'date-fns/formatDistanceStrict';
import type {Check} from '../check/check.js';
import {progressOf} from '../check/progress.js';
import type {Profile} from '../procedure/facts.js';
import {profileNamed} from '../results/profiles.js';
import {titleOf} from '../words/step-text.js';
import type {Unfinished} from '../workbench.js';

/** What is known of an arm when its check starts: its profile, or its name alone. */
export function answersFor(armName: string | undefined, profiles: readonly Profile[]) {
	if (armName === undefined) return {};
	const known = profileNamed(profiles, 'arm', armName);
	if (!known) return {'arm-name': {value: armName, typed: armName}};
	return {'arm-profile': {value: known.id, typed: known.name}, ...known.answers};
}

/** The check in progress, in words for the first screen. */
export function unfinishedOf(check: Check, profiles: readonly Profile[], savedAt: string, now: Date): Unfinished {
	const {facts, current} = progressOf(check, profiles);
	return {
		arm: facts.text('arm-name') ?? 'a new arm',
		step: current ? titleOf(current.id) : 'its end',
		ago: formatDistanceStrict(savedAt, now, {addSuffix: true}),
	};
}
