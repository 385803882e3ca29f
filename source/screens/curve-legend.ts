/** One entry of a legend: its mark, and its name where there is room and where there is less. */
export type LegendEntry = {readonly mark: string; readonly long: string; readonly short: string};

/** A legend on one line if it fits in any of its wordings, else on two. */
export function legendLines(entries: readonly LegendEntry[], tail: string, width: number): string[] {
	const long = entries.map(({mark, long: name}) => `${mark} ${name}`);
	const short = entries.map(({mark, short: name}) => `${mark} ${name}`);
	const wordings = [[...long, tail].join('  '), long.join('  '), short.join(' ')];
	const fitting = wordings.find((one) => one.length <= width);
	return fitting === undefined ? broken(short, width).slice(0, 2) : [fitting];
}

function broken(parts: readonly string[], width: number): string[] {
	const lines: string[] = [];
	for (const part of parts) {
		const last = lines.at(-1);
		if (last !== undefined && last.length + 1 + part.length <= width) lines[lines.length - 1] = `${last} ${part}`;
		else lines.push(part);
	}
	return lines;
}
