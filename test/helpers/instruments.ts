import fc from 'fast-check';
import stringWidth from 'string-width';
import {expect} from 'vitest';
import type {Row} from '../../source/screens/body.js';
import type {Room} from '../../source/screens/instruments/sheet.js';
import type {Look} from '../../source/screens/look.js';

export const onScreen: Look = {unicode: true, color: false, screenReader: false};
export const inAscii: Look = {...onScreen, unicode: false};

/** From the least window to one larger than most. */
export const anyRoom: fc.Arbitrary<Room> = fc.record({
	columns: fc.integer({min: 20, max: 120}),
	rows: fc.integer({min: 3, max: 30}),
});

/** What a screen of 80 × 24, one of 40 × 20 and one of 120 × 40 leave for an instrument. */
export const usualRooms: readonly Room[] = [
	{columns: 76, rows: 11},
	{columns: 38, rows: 7},
	{columns: 100, rows: 24},
];

export const textOf = (rows: readonly Row[]): string[] => rows.map(({text}) => text);

/** What is wrong with a drawing in its room, in words; empty when nothing is. */
function faults(rows: readonly Row[], room: Room, look: Look): readonly string[] {
	const faultsOf = ({text, spans = []}: Row): readonly string[] => {
		const width = stringWidth(text);
		const within = (index: number) => spans[index - 1]?.to ?? 0;
		const misplaced = spans.filter(({from, to}, index) => !(from < to && from >= within(index) && to <= width));
		return [
			...(width <= room.columns ? [] : [`too wide: ${text}`]),
			...(look.unicode || /^[ -~]*$/.test(text) ? [] : [`not in ASCII: ${text}`]),
			...misplaced.map(({from, to}) => `cells ${from} to ${to} of ${width}: ${text}`),
		];
	};
	return [...(rows.length <= room.rows ? [] : [`${rows.length} of ${room.rows} lines`]), ...rows.flatMap(faultsOf)];
}

/**
 * A drawing for any data stays within any room, says something in it, and keeps to ASCII where that is all there is.
 *
 * @param says whether it has something to say in that room
 */
export function expectToFit<Data>(
	any: fc.Arbitrary<Data>,
	draw: (data: Data, room: Room, look: Look) => Row[],
	says: (data: Data, room: Room) => boolean = () => true,
): void {
	fc.assert(
		fc.property(any, anyRoom, (data, room) => {
			for (const look of [onScreen, inAscii]) {
				const rows = draw(data, room, look);
				expect(faults(rows, room, look)).toEqual([]);
				if (says(data, room)) expect(rows.some(({text}) => text.trim() !== '')).toBe(true);
			}
		}),
		{numRuns: 400},
	);
}

/** Every cell of a drawing in which a mark stands. */
export const cellsOf = (rows: readonly Row[], mark: string): {row: number; column: number}[] =>
	rows.flatMap(({text}, row) => [...text].flatMap((cell, column) => (cell === mark ? [{row, column}] : [])));
