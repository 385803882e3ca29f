/** Quantile by linear interpolation. */
export const quantile = (values, share) => {
	const sorted = [...values].sort((a, b) => a - b);
	const place = (sorted.length - 1) * share;
	const below = sorted[Math.floor(place)] ?? Number.NaN;
	const above = sorted[Math.ceil(place)] ?? Number.NaN;
	return below + (above - below) * (place - Math.floor(place));
};

export const median = (values) => quantile(values, 0.5);

/** Ratio of two quantiles with its 95 % bootstrap interval; seeded, so that a report can be made again. */
export const ratio = (values, references, share = 0.5) => {
	let state = 20_240_229;
	const random = () => {
		state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
		return state / 2 ** 32;
	};
	const resample = (from) => from.map(() => from[Math.floor(random() * from.length)]);
	const ratios = Array.from(
		{length: 800},
		() => quantile(resample(values), share) / quantile(resample(references), share),
	);
	return {
		value: quantile(values, share) / quantile(references, share),
		low: quantile(ratios, 0.025),
		high: quantile(ratios, 0.975),
	};
};

export const printTable = (title, head, rows) => {
	const cells = [head, ...rows].map((row) => row.map(String));
	const widths = head.map((_, column) => Math.max(...cells.map((row) => row[column].length)));
	console.log(`\n${title}`);
	for (const row of cells) {
		console.log(`  ${row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  ')}`);
	}
};

export const ratioText = ({value, low, high}) => `${value.toFixed(2)} (${low.toFixed(2)} to ${high.toFixed(2)})`;
