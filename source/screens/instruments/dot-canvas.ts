/** A drawing of dots, two across and four down in each character, which makes them about square. */
export type DotCanvas = {
	/** Sets the dot nearest to a place, in dots from the upper left one; outside nothing is drawn. */
	readonly dot: (x: number, y: number) => void;
	/** The middle of the cell that a place lies in, or of the nearest cell for a place outside. */
	readonly middle: (x: number, y: number) => {readonly x: number; readonly y: number};
	/** Puts a character over that cell. */
	readonly mark: (x: number, y: number, character: string) => void;
	/** The drawing as lines of text: dots of Braille, or plain characters that come near them. */
	readonly lines: (unicode: boolean) => string[];
};

export const dotsAcross = 2;
export const dotsDown = 4;

export function dotCanvas(columns: number, rows: number): DotCanvas {
	const cells = new Uint8Array(columns * rows);
	const marks = new Map<number, string>();
	return {
		dot(x, y) {
			const [across, down] = [Math.round(x), Math.round(y)];
			const isInside = across >= 0 && down >= 0 && across < columns * dotsAcross && down < rows * dotsDown;
			if (!isInside) return;
			const cell = Math.floor(down / dotsDown) * columns + Math.floor(across / dotsAcross);
			cells[cell] = (cells[cell] ?? 0) | bitOf(across % dotsAcross, down % dotsDown);
		},
		middle: (x, y) => ({
			x: middleOf(nearestCell(x, dotsAcross, columns), dotsAcross),
			y: middleOf(nearestCell(y, dotsDown, rows), dotsDown),
		}),
		mark(x, y, character) {
			marks.set(nearestCell(y, dotsDown, rows) * columns + nearestCell(x, dotsAcross, columns), character);
		},
		lines(unicode) {
			const characters = unicode ? braille : plain;
			const written = (cell: number) => marks.get(cell) ?? characters[cells[cell] ?? 0] ?? ' ';
			return Array.from({length: rows}, (_, row) =>
				Array.from({length: columns}, (_, column) => written(row * columns + column)).join(''),
			);
		},
	};
}

const nearestCell = (place: number, dots: number, cells: number): number =>
	Math.min(cells - 1, Math.max(0, Math.floor(Math.round(place) / dots)));

/** Where the middle of a column or row of cells lies, in dots. */
export const middleOf = (cell: number, dots: number): number => cell * dots + (dots - 1) / 2;

/** The block 'Braille Patterns' numbers three dots down the left, three down the right, then the lowest two (Unicode chart U+2800). */
function bitOf(column: number, row: number): number {
	return 1 << (row === 3 ? 6 + column : 3 * column + row);
}

const patterns = Array.from({length: 256}, (_, pattern) => pattern);

// Some terminals draw the pattern without dots as eight empty rings.
const braille = patterns.map((pattern) => (pattern === 0 ? ' ' : String.fromCodePoint(0x2800 + pattern)));

/** Dots that a plain character darkens, from the top row down: 1 the left one, 2 the right one, 3 both. */
const shapes: readonly (readonly [character: string, ...shapes: string[]])[] = [
	[' ', '0000'],
	["'", '1000', '2000', '3000', '1100', '2200'],
	['-', '0300', '0030', '0100', '0010', '0200', '0020', '0120', '0210'],
	['.', '0001', '0002', '0003', '0011', '0022'],
	['|', '1111', '2222'],
	['/', '2211', '0021', '2100', '0221', '2110'],
	['\\', '1122', '0012', '1200', '0112', '1220'],
];

const looks = shapes.flatMap(([character, ...forms]) => forms.map((form) => ({character, pattern: patternOf(form)})));

const plain = patterns.map((pattern) => {
	const apart = looks.map((look) => ones(look.pattern ^ pattern));
	return looks[apart.indexOf(Math.min(...apart))]?.character ?? ' ';
});

function patternOf(form: string): number {
	let pattern = 0;
	[...form].forEach((dots, row) => {
		if (dots === '1' || dots === '3') pattern |= bitOf(0, row);
		if (dots === '2' || dots === '3') pattern |= bitOf(1, row);
	});
	return pattern;
}

function ones(pattern: number): number {
	let count = 0;
	for (let rest = pattern; rest > 0; rest >>= 1) count += rest & 1;
	return count;
}
