import type {Clearance} from '../../pages/instruments/clearance.js';
import {words} from '../../words/index.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {type Room, sheetOf, shownText} from './sheet.js';

const glyphs = {
	unicode: {head: '█', tip: '▼', side: '│', floor: '└───┘', pad: '━', corner: '┓', post: '┃', surface: '▀'},
	ascii: {head: '#', tip: 'V', side: '|', floor: '[___]', pad: '=', corner: '+', post: '|', surface: '='},
} as const;

/** Columns of the parts, from the left. */
const at = {head: 3, headEnd: 13, guard: 6, tip: 8, pad: 9, post: 16, surfaceEnd: 18, names: 21} as const;

/** The head with its stylus on the pad of the gauge, the guard below it and the surface under it, to scale upward. */
export function sideScene(clearance: Clearance, room: Room, look: Look, decimals: number): Row[] {
	const {stylusMm, stylusWindowMm, guard, isMatOn} = clearance;
	const glyph = glyphs[look.unicode ? 'unicode' : 'ascii'];
	const said = words.instruments.clearance;
	const sheet = sheetOf(room);
	const surface = room.rows - 1;
	// The head takes the first row; until the height is read all stands in the middle of its window.
	const heightMm = stylusMm ?? (stylusWindowMm[0] + stylusWindowMm[1]) / 2;
	const rowsPerMm = (surface - 1) / Math.max(heightMm, 0.1);
	const name = (row: number, text: string): void => sheet.write(row, at.names, shownText(text, look));
	sheet.write(0, at.head, glyph.head.repeat(at.headEnd - at.head + 1));
	name(0, said.head);
	sheet.write(1, at.pad, `${glyph.pad.repeat(at.post - at.pad)}${glyph.corner}`);
	for (let row = 2; row < surface; row++) sheet.write(row, at.post, glyph.post);
	if (guard) {
		const guardMm = heightMm - guard.depthMm;
		// It hangs below the stylus and over the surface, however few rows there are.
		const row = Math.max(2, Math.min(surface - 1, surface - Math.round(Math.max(0, guardMm) * rowsPerMm)));
		for (let side = 1; side < row; side++)
			for (const column of [at.guard, at.guard + glyph.floor.length - 1]) sheet.write(side, column, glyph.side);
		sheet.write(row, at.guard, glyph.floor);
		name(row, said.named({name: said.guard, mm: stylusMm === undefined ? undefined : guardMm, decimals}));
	}
	const foot = surface - 1;
	if (sheet.isFree(foot, at.names, said.gauge)) name(foot, said.gauge);
	sheet.write(1, at.tip, glyph.tip, 'strong');
	name(1, said.named({name: said.stylus, mm: stylusMm, decimals}));
	sheet.write(surface, 0, glyph.surface.repeat(at.surfaceEnd + 1));
	name(surface, isMatOn ? said.mat : said.platter);
	return sheet.rows();
}
