import type {Finding} from '../results/diagnose.js';
import type {IssuedFinding} from '../results/issued.js';
import {words} from './index.js';
import {speaker} from './speaker.js';

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** A finding with its words, as it is issued. */
export function worded({code, places, who, values}: Finding): IssuedFinding {
	// The table has for each code the sentences of just its values; the compiler cannot follow that through a look-up.
	const said = words.findings[code] as {found: (of: unknown) => string; likely: string; next: (of: unknown) => string};
	const {likely} = said;
	const found = said.found(values);
	const next = said.next(values);
	const advice = likely === '' ? next : `likely ${likely}; ${next}`;
	return {code, places, who, found, likely, next, text: `${found} ${capital(advice)}`};
}

/** Why the next check is due when it is. */
export const nextCheckText = speaker(words.results.nextCheck);
/** Why a profile was not changed. */
export const profileRefusalText = speaker(words.results.profileRefused);
/** What is wrong at a key of a document, and what is wanted there. */
export const faultText = speaker(words.documents.faults);
export const obstacleText = speaker(words.results.obstacles);
export const noteText = speaker(words.results.notes);
