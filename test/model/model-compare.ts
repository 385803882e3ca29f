// Comparisons by the rule of the page: a value within 1e-9 of a limit counts as on it.

const same = (value: number, limit: number): boolean => Math.abs(value - limit) <= 1e-9;

export const above = (value: number, limit: number): boolean => value > limit && !same(value, limit);
export const below = (value: number, limit: number): boolean => value < limit && !same(value, limit);
export const atLeast = (value: number, limit: number): boolean => value > limit || same(value, limit);
export const atMost = (value: number, limit: number): boolean => value < limit || same(value, limit);

export const sum = (numbers: number[]): number => numbers.reduce((total, number) => total + number, 0);

export const mean = (numbers: number[]): number => sum(numbers) / numbers.length;
