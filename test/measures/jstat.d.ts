// The library ships no types; this is what the tests use of it.
declare module 'jstat' {
	export const jStat: {
		readonly studentt: {readonly inv: (probability: number, degreesOfFreedom: number) => number};
		readonly models: {
			/** Least squares; each row holds what stands before each coefficient. */
			readonly ols: (
				values: readonly number[],
				rows: readonly (readonly number[])[],
			) => {
				readonly coef: readonly number[];
				readonly t: {readonly se: readonly number[]; readonly sigmaHat: number; readonly p: readonly number[]};
			};
		};
	};
}
