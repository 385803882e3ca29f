import {label} from './element.js';

/** One entry of a legend: a small drawing, made where its middle shall be, and what it stands for. */
export type Entry = {readonly draw: (x: number, y: number) => string; readonly text: string};

const rowHeight = 18;
const drawingWidth = 26;
const entryGap = 14;
/** What a letter of the pictures takes on average, in drawing units; the legend only needs to know when to break. */
const letterWidth = 6.6;

const widthOf = ({text}: Entry): number => drawingWidth + 5 + text.length * letterWidth + entryGap;

/** Entries side by side, broken into rows. */
export function legend(
	entries: readonly Entry[],
	[left, top]: readonly [number, number],
	width: number,
): {readonly height: number; readonly content: string[]} {
	let [x, row] = [left, 0];
	const content = entries.map((entry) => {
		if (x > left && x + widthOf(entry) - entryGap > left + width) [x, row] = [left, row + 1];
		const middle = top + row * rowHeight + rowHeight / 2;
		const drawn = `${entry.draw(x + drawingWidth / 2, middle)}${label(x + drawingWidth + 5, middle + 4, entry.text)}`;
		x += widthOf(entry);
		return drawn;
	});
	return {height: (row + 1) * rowHeight, content};
}
