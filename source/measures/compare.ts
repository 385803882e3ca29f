import constants from '../../shared/constants.json' with {type: 'json'};

const slack = constants.comparisonSlack.value;

/** Whether a value lies above a limit; within 1e-9 of it counts as equal to it, so not above. */
export const isAbove = (value: number, limit: number): boolean => value > limit + slack;

/** Whether a value lies below a limit; within 1e-9 of it counts as equal to it, so not below. */
export const isBelow = (value: number, limit: number): boolean => value < limit - slack;

/** Whether a value is at a limit or below it, within 1e-9. */
export const isAtMost = (value: number, limit: number): boolean => !isAbove(value, limit);

/** Whether a value is at a limit or above it, within 1e-9. */
export const isAtLeast = (value: number, limit: number): boolean => !isBelow(value, limit);

/** Whether a value lies in a window, its ends included, within 1e-9. */
export const isWithin = (value: number, [low, high]: readonly [number, number]): boolean =>
	isAtLeast(value, low) && isAtMost(value, high);
