import type {Finding} from '../results/diagnose.js';
import type {IssuedFinding} from '../results/issued.js';
import {findings} from './en/findings.js';
import {words} from './index.js';
import {found} from './speaker.js';

/** A finding in one short sentence; nothing for one that this version does not know. */
export const briefly = ({code}: Pick<IssuedFinding, 'code'>): string => found(findings, code)?.brief ?? '';

/** A finding with its words, as it is issued. */
export function worded({code, places, who, values}: Finding): IssuedFinding {
	// The table has for each code the sentences of just its values; the compiler cannot follow that through a look-up.
	const said = findings[code] as {found: (of: unknown) => string; likely: string; next: (of: unknown) => string};
	const {likely} = said;
	const full = said.found(values);
	const next = said.next(values);
	const cause = likely === '' ? [] : [words.pages.verdict.likely({likely})];
	return {code, places, who, found: full, likely, next, text: [full, ...cause, next].join(' ')};
}
