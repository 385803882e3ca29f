import {ticksOn} from '../../pages/pictures/scale.js';
import {words} from '../../words/index.js';
import {readingText, withSign} from '../../words/numbers.js';

/** What a gauge shows in its own sign, in percent. */
export type GaugeReading = {
	readonly readingPct: number;
	/** The end of its scale either way. */
	readonly topPct: number;
	readonly stepPct: number;
	/** It stands end for end: its plus end points to the spindle. */
	readonly isTurned: boolean;
};

const glyphs = {
	unicode: {left: '├', right: '┤', span: '─', tick: '┬', zero: '┼', pointer: '●', rim: '►', spindle: '◄'},
	ascii: {left: '[', right: ']', span: '-', tick: '+', zero: '|', pointer: 'o', rim: '>', spindle: '<'},
} as const;

// On a scale of 20 % either way this is two thirds of a percent a column.
const mostColumns = 65;

/** The scale as it stands under the arm, the spindle always to the left: directions, the scale with its pointer, numbers. */
export function gaugeScale(gauge: GaugeReading, width: number, unicode: boolean): string[] {
	const glyph = glyphs[unicode ? 'unicode' : 'ascii'];
	// Two columns are kept for the percent sign behind the numbers.
	const half = Math.floor((Math.min(mostColumns, width - 2) - 1) / 2);
	const outward = gauge.isTurned ? -1 : 1;
	const columnOf = (pct: number) => half + outward * columnsFromZero(pct, gauge.topPct, half);
	const ticks = ticksPct(gauge.topPct);
	const cells = Array.from({length: 2 * half + 1}, (): string => glyph.span);
	for (const tick of ticks) cells[columnOf(tick)] = glyph.tick;
	cells[0] = glyph.left;
	cells[2 * half] = glyph.right;
	cells[half] = glyph.zero;
	cells[columnOf(Number(readingText(gauge.readingPct, gauge.stepPct)))] = glyph.pointer;
	const {spindle, rim, gauge: said} = words.pictures;
	const names = [`${glyph.spindle} ${spindle}`, gauge.isTurned ? said.turned : '', `${rim} ${glyph.rim}`];
	const numbers = [0, -gauge.topPct, gauge.topPct, ...ticks].map((pct) => ({
		text: withSign(pct),
		column: columnOf(pct),
	}));
	return [
		written(
			names.map((text, place) => ({text, column: place * half})),
			half,
		),
		cells.join(''),
		`${written(numbers, half)} %`,
	];
}

/** A reading beside zero is never drawn on it: on which side it lies is what matters. */
function columnsFromZero(pct: number, topPct: number, half: number): number {
	if (pct === 0) return 0;
	return Math.sign(pct) * Math.min(half, Math.max(1, Math.round((Math.abs(pct) / topPct) * half)));
}

/** From the inside to the end, two to four steps either way; the end itself is no tick. */
const ticksPct = (topPct: number): number[] =>
	ticksOn({low: 0, high: topPct}, 4)
		.filter((tick) => tick > 0 && tick < topPct)
		.flatMap((tick) => [-tick, tick]);

/** Texts about their columns, pushed inside at the ends; the first ones go first, one that would touch another is left out. */
function written(texts: readonly {readonly text: string; readonly column: number}[], half: number): string {
	const cells = Array.from({length: 2 * half + 1}, () => ' ');
	for (const {text, column} of texts) {
		const start = Math.max(0, Math.min(cells.length - text.length, column - Math.floor(text.length / 2)));
		const around = cells.slice(Math.max(0, start - 1), start + text.length + 1);
		if (around.every((cell) => cell === ' ')) cells.splice(start, text.length, ...text);
	}
	return cells.join('');
}
