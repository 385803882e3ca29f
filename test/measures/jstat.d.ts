// The library ships no types; this is what the tests use of it.
declare module 'jstat' {
	export const jStat: {
		readonly studentt: {readonly inv: (probability: number, degreesOfFreedom: number) => number};
	};
}
