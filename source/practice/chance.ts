import {uniformFloat64} from 'pure-rand/distribution/uniformFloat64';
import {xoroshiro128plus, xoroshiro128plusFromState} from 'pure-rand/generator/xoroshiro128plus';
import type {RandomGenerator} from 'pure-rand/types/RandomGenerator';

/** Where a generator stands: plain numbers, so that a run can be kept, repeated and gone on with. */
export type ChanceState = readonly number[];
export type Chance = RandomGenerator;

// The first numbers of neighbouring seeds resemble each other; these are thrown away.
const warmUp = 32;

/** A generator that gives the same numbers for the same seed. */
export function chanceFrom(seed: number): Chance {
	const chance = xoroshiro128plus(seed);
	for (let drawn = 0; drawn < warmUp; drawn++) chance.next();
	return chance;
}

/** The generator as it stood. */
export const resumedChance = (state: ChanceState): Chance => xoroshiro128plusFromState(state);

/** A number between two others, all alike likely. */
export const between = (chance: Chance, low: number, high: number): number =>
	low + (high - low) * uniformFloat64(chance);

/** A number of mean 0 and standard deviation 1, evenly spread. */
export const evenUnit = (chance: Chance): number => Math.sqrt(12) * (uniformFloat64(chance) - 0.5);
