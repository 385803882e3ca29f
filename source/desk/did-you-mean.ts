import {distance} from 'fastest-levenshtein';

// More slips than that, or more than every third letter, and it is another word.
const MOST_SLIPS = 3;

/** The known word that was probably meant: one that begins the same, or is few slips away; undefined where none is near. */
export function didYouMean(typed: string, known: readonly string[]): string | undefined {
	const word = typed.toLowerCase();
	const begun = known.find((one) => word.length > 1 && one.toLowerCase().startsWith(word));
	if (begun !== undefined) return begun;
	const slips = known.map((one) => ({one, count: slipsBetween(word, one.toLowerCase())}));
	const [nearest] = slips.sort((one, other) => one.count - other.count);
	return nearest && nearest.count <= Math.min(MOST_SLIPS, typed.length / 3) ? nearest.one : undefined;
}

/** Two letters that changed places are one slip, as a hand makes it. */
function slipsBetween(word: string, one: string): number {
	const swapped = [...word].slice(1).map((letter, at) => word.slice(0, at) + letter + word[at] + word.slice(at + 2));
	return Math.min(distance(word, one), ...swapped.map((other) => 1 + distance(other, one)));
}
