// The least of the largest |offset + k·slope| over k in 0…5, found exactly on straight lines.

export interface Line {
	offset: number;
	slope: number;
}

const valueAt = ({offset, slope}: Line, k: number): number => offset + k * slope;

export const worstAt = (lines: Line[], k: number): number =>
	Math.max(...lines.map((line) => Math.abs(valueAt(line, k))));

/** The lines that lie on top somewhere, by rising slope. */
const upperEnvelope = (lines: Line[]): Line[] => {
	const sorted = [...lines].sort((a, b) => a.slope - b.slope || a.offset - b.offset);
	const kept: Line[] = [];
	for (const line of sorted) {
		if (kept.at(-1)?.slope === line.slope) {
			kept.pop();
		}
		for (let top = kept.at(-1), under = kept.at(-2); top && under; top = kept.at(-1), under = kept.at(-2)) {
			const covered =
				(line.offset - under.offset) * (top.slope - under.slope) >=
				(top.offset - under.offset) * (line.slope - under.slope);
			if (!covered) {
				break;
			}
			kept.pop();
		}
		kept.push(line);
	}
	return kept;
};

export const bestFactor = (lines: Line[]): number => {
	const both = lines.flatMap(({offset, slope}) => [
		{offset, slope},
		{offset: -offset, slope: -slope},
	]);
	const envelope = upperEnvelope(both);
	const breaks = envelope.slice(1).map((line, index) => {
		const before = envelope[index] ?? line;
		return (before.offset - line.offset) / (line.slope - before.slope);
	});
	const candidates = [0, 5, ...breaks.filter((k) => k > 0 && k < 5)];
	const least = Math.min(...candidates.map((k) => worstAt(lines, k)));
	// Every line alone says how far k may go with its own leftover within 1e-9 of the least.
	let from = 0;
	let to = 5;
	for (const {offset, slope} of both) {
		const meets = (least + 1e-9 - offset) / slope;
		if (slope > 0) {
			to = Math.min(to, meets);
		} else if (slope < 0) {
			from = Math.max(from, meets);
		}
	}
	return Math.min(Math.max(1, from), to);
};
