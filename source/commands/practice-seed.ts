export const mostSeed = 2 ** 32 - 1;

/** A whole number typed on the command line, within bounds; undefined for anything else. */
export function wholeNumber(text: string, least: number, most: number): number | undefined {
	const value = Number(text);
	return /^\d+$/.test(text) && value >= least && value <= most ? value : undefined;
}

/** A seed as it was typed. */
export const readSeed = (text: string): number | undefined => wholeNumber(text, 0, mostSeed);
