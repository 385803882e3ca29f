// Student's t, quantile 0.975, for any number of degrees of freedom from 1 up, whole or not.
// With x = √ν·tan(angle) the central probability is an integral of cos^(ν−1) over a bounded angle.

/** Γ(a + 1/2) / Γ(a): climbed to where the asymptotic series is exact in double precision. */
const gammaRatio = (a: number): number => {
	if (a < 60) {
		return (gammaRatio(a + 1) * a) / (a + 0.5);
	}
	const i = 1 / a;
	const terms = [1, -1 / 8, 1 / 128, 5 / 1024, -21 / 32768, -399 / 262144, 869 / 4194304];
	return Math.sqrt(a) * terms.reduceRight((total, term) => total * i + term, 0);
};

const panels = 2000;

/** Probability between 0 and t (Simpson's rule). */
const centralHalf = (t: number, freedom: number): number => {
	const angle = Math.atan(t / Math.sqrt(freedom));
	const height = (at: number): number => Math.exp((freedom - 1) * Math.log(Math.cos(at)));
	let total = height(0) + height(angle);
	for (let panel = 1; panel < panels; panel++) {
		total += (panel % 2 === 1 ? 4 : 2) * height((angle * panel) / panels);
	}
	return (gammaRatio(freedom / 2) / Math.sqrt(Math.PI)) * (angle / panels / 3) * total;
};

const density = (t: number, freedom: number): number =>
	(gammaRatio(freedom / 2) / Math.sqrt(Math.PI * freedom)) *
	Math.exp((-(freedom + 1) / 2) * Math.log1p((t * t) / freedom));

export const normalQuantile = 1.959963984540054;

const known = new Map<number, number>();

export const studentQuantile = (freedom: number): number => {
	if (!Number.isFinite(freedom)) {
		return normalQuantile;
	}
	const before = known.get(freedom);
	if (before !== undefined) {
		return before;
	}
	// The probability is concave above zero: Newton from below climbs to the root and never passes it.
	let t = normalQuantile;
	for (let turn = 0; turn < 60; turn++) {
		const move = (0.475 - centralHalf(t, freedom)) / density(t, freedom);
		t += move;
		if (Math.abs(move) < 1e-13 * t) {
			break;
		}
	}
	known.set(freedom, t);
	return t;
};
