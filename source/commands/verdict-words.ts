import type {Verdict} from '../results/figures-types.js';

const isVerdictWord: Readonly<Record<Verdict | 'none', true>> = {
	good: true,
	usable: true,
	beyond: true,
	undecided: true,
	'off-scale': true,
	none: true,
};

/** The words by which a list is asked for a verdict; none where a check came to no verdict. */
export const verdictWords: readonly string[] = Object.keys(isVerdictWord);
