/** Far deeper than any document of ours, and far from the depth at which what goes through a value gives up. */
const MOST_LEVELS = 500;

/**
 * Whether a document is nested so deeply that it cannot be checked, changed and written again.
 * @param value what the text was parsed to, which knows no depth that is too great
 */
export const isTooDeep = (text: string, value: unknown): boolean =>
	['{', '['].some((bracket) => hasMany(text, bracket)) && isDeeper(value, MOST_LEVELS);

/** A cheap first look: half of all levels are of one kind of bracket. */
const hasMany = (text: string, bracket: string): boolean => {
	let count = 0;
	for (let at = text.indexOf(bracket); at !== -1; at = text.indexOf(bracket, at + 1))
		if (++count > MOST_LEVELS / 2) return true;
	return false;
};

const isDeeper = (value: unknown, levels: number): boolean =>
	typeof value === 'object' &&
	value !== null &&
	(levels === 0 || Object.values(value).some((one) => isDeeper(one, levels - 1)));
