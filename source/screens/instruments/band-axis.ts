import stringWidth from 'string-width';
import type {BandsLayout} from '../../pages/pictures/bands-layout.js';
import {placesOn} from '../../pages/pictures/scale.js';
import type {BandRow} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {withSign} from '../../words/numbers.js';
import type {Look} from '../look.js';
import {type Sheet, shownText, startAbout} from './sheet.js';

export const bandGlyphs = {
	unicode: {
		now: {left: '├', right: '┤', span: '─', middle: '●'},
		earlier: {left: '├', right: '┤', span: '╌', middle: '○'},
		zero: '│',
		limit: '╎',
		goesOn: '…',
		spindle: '◄',
		rim: '►',
	},
	ascii: {
		now: {left: '[', right: ']', span: '-', middle: '#'},
		earlier: {left: '(', right: ')', span: '.', middle: 'o'},
		zero: '|',
		limit: ':',
		goesOn: '...',
		spindle: '<',
		rim: '>',
	},
} as const;

/** Columns from the first to the last of an axis. */
export type AxisSpan = readonly [from: number, to: number];

/** An axis of force on a sheet: where a value stands, and what is drawn there. */
export type BandAxis = ReturnType<typeof bandAxis>;

/** The axis of hold bands between two columns, the spindle to the left. */
export function bandAxis({axis, limits}: BandsLayout, span: AxisSpan, sheet: Sheet, look: Look) {
	const place = placesOn(axis, span);
	const at = (pct: number) => Math.round(place(pct));
	const glyph = bandGlyphs[look.unicode ? 'unicode' : 'ascii'];
	const [from, to] = span;
	const zero = at(0);
	const said = words.instruments.bands;
	const writeIfFree = (row: number, column: number, text: string): boolean => {
		const isFree = sheet.isFree(row, column, text);
		if (isFree) sheet.write(row, column, text);
		return isFree;
	};
	const linesOf = (zone: 'good' | 'usable', row: number): void => {
		for (const limit of limits) if (limit.zone === zone) sheet.write(row, at(limit.pct), glyph.limit);
	};
	return {
		at,
		/** Names and numbers of the limits, zero and both ends, on two rows. */
		whole(row: number): void {
			const {spindle, rim} = words.pictures;
			linesOf('usable', row + 1);
			const usable = limits.filter(({zone}) => zone === 'usable').map(({pct}) => at(pct));
			const outer = {low: Math.min(...usable), high: Math.max(...usable)};
			sheet.write(row + 1, zero, '0');
			for (const {pct, zone} of limits) {
				const text = shownText(said[zone]({pct}), look);
				const side: AxisSpan = pct < 0 ? [from, zero - 2] : [zero + 2, to];
				const within: AxisSpan = pct < 0 ? [outer.low + 1, zero - 2] : [zero + 2, outer.high - 1];
				// The name of the inner limit leaves the line of the outer one in sight where it can.
				const isWithin = zone === 'good' && within[1] - within[0] + 1 >= stringWidth(text);
				const start = startAbout(text, at(pct), isWithin ? within : side);
				sheet.write(zone === 'usable' ? row : row + 1, start, text);
			}
			const end = said.end({pct: axis.high});
			writeIfFree(row + 1, from, withSign(axis.low));
			// The percent sign stands beyond the axis where there is room.
			writeIfFree(row + 1, to - withSign(axis.high).length + 1, end) || writeIfFree(row + 1, to - end.length + 1, end);
			const [inward, outward] = [`${glyph.spindle} ${spindle}`, `${rim} ${glyph.rim}`].map((one) =>
				shownText(one, look),
			);
			for (const start of [from, 0]) if (writeIfFree(row, start, inward ?? '')) break;
			for (const start of [to - stringWidth(outward ?? '') + 1, to + 2])
				if (writeIfFree(row, start, outward ?? '')) break;
		},
		/** Numbers alone, on one row; the ends first, one that would touch another is left out. */
		brief(row: number): void {
			const end = said.end({pct: axis.high});
			sheet.write(row, from, withSign(axis.low));
			sheet.write(row, to - end.length + 1, end);
			for (const pct of [0, ...limits.map((limit) => limit.pct)])
				writeIfFree(row, startAbout(withSign(pct), at(pct), span), withSign(pct));
		},
		/** Zero and the limits on one row. */
		lines(row: number): void {
			linesOf('usable', row);
			linesOf('good', row);
			sheet.write(row, zero, glyph.zero);
		},
		band({lowPct, highPct, pullPct, earlier, figure}: BandRow, row: number): void {
			const marks = glyph[earlier ? 'earlier' : 'now'];
			const [low, high] = [at(lowPct), at(highPct)];
			const tone = earlier ? 'plain' : figure?.tone;
			sheet.write(row, low, marks.span.repeat(high - low + 1), tone);
			sheet.write(row, low, marks.left, tone);
			sheet.write(row, high, marks.right, tone);
			sheet.write(row, at(pullPct), marks.middle, tone);
		},
		/** From the inner limit toward the rim, as far as nobody knows. */
		begun(lowPct: number, row: number): void {
			const low = at(lowPct);
			const room = Math.max(0, to - low - glyph.goesOn.length);
			sheet.write(row, low, `${glyph.now.left}${glyph.now.span.repeat(Math.min(4, room))}${glyph.goesOn}`, 'strong');
		},
	};
}
