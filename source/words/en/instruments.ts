/** What stands in the instruments of a screen: names of marks, sides and limits, as short as they can be. */
export const instruments = {
	/** Stands where a reading will be. */
	nothingTyped: '-',
	seconds: 's',
};
