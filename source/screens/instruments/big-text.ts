import stringWidth from 'string-width';

/**
 * Three squares wide and five high, a row of squares after the other; our own drawing. Six and nine have an open end,
 * so that neither is taken for an eight across the bench.
 */
const shapes: Readonly<Record<string, readonly string[]>> = {
	'0': ['###', '# #', '# #', '# #', '###'],
	'1': ['## ', ' # ', ' # ', ' # ', '###'],
	'2': ['###', '  #', '###', '#  ', '###'],
	'3': ['###', '  #', ' ##', '  #', '###'],
	'4': ['#  ', '# #', '###', '  #', '  #'],
	'5': ['###', '#  ', '###', '  #', '###'],
	'6': ['#  ', '#  ', '###', '# #', '###'],
	'7': ['###', '  #', '  #', '  #', '  #'],
	'8': ['###', '# #', '###', '# #', '###'],
	'9': ['###', '# #', '###', '  #', '  #'],
	'.': [' ', ' ', ' ', ' ', '#'],
	',': ['  ', '  ', '  ', ' #', '# '],
	':': [' ', '#', ' ', '#', ' '],
	'+': ['   ', ' # ', '###', ' # ', '   '],
	'-': ['   ', '   ', '###', '   ', '   '],
	'±': [' # ', '###', ' # ', '   ', '###'],
	'%': ['# #', '  #', ' # ', '#  ', '# #'],
	'°': ['###', '# #', '###', '   ', '   '],
	' ': ['  ', '  ', '  ', '  ', '  '],
};

const squaresHigh = 5;

export type BigRows = 1 | 3 | 5;

/**
 * A text in large characters, three or five rows high, all rows of one width; what has no large form stands small at
 * the foot. One row is the text itself, and so is every text where the terminal has no blocks.
 */
export function bigText(text: string, {rows, unicode}: {readonly rows: BigRows; readonly unicode: boolean}): string[] {
	if (rows === 1 || !unicode) return [text];
	const parts = partsOf(text).map((part) => drawn(part, rows));
	const gap = rows === 3 ? '  ' : '   ';
	return Array.from({length: rows}, (_, row) => parts.map((part) => part[row] ?? '').join(gap));
}

/** Each large character by itself, small ones together. */
function partsOf(text: string): string[] {
	const parts: string[] = [];
	for (const character of text) {
		const last = parts.at(-1);
		if (last !== undefined && !(last in shapes) && !(character in shapes)) parts[parts.length - 1] = last + character;
		else parts.push(character);
	}
	return parts;
}

function drawn(part: string, rows: 3 | 5): string[] {
	const shape = shapes[part];
	if (!shape) {
		const blank = ' '.repeat(stringWidth(part));
		return Array.from({length: rows}, (_, row) => (row === rows - 1 ? part : blank));
	}
	return rows === 3 ? inHalves(shape) : doubled(shape);
}

/** A square is as wide as a cell and half as high; the upper half of the first row stays blank. */
function inHalves(shape: readonly string[]): string[] {
	const blank = ' '.repeat(shape[0]?.length ?? 0);
	const halves = [blank, ...shape];
	return Array.from({length: (squaresHigh + 1) / 2}, (_, row) => {
		const [upper = blank, lower = blank] = halves.slice(2 * row);
		return [...upper].map((square, column) => blockOf(square === '#', lower[column] === '#')).join('');
	});
}

function blockOf(isUpper: boolean, isLower: boolean): string {
	if (isUpper) return isLower ? '█' : '▀';
	return isLower ? '▄' : ' ';
}

/** A square is two cells wide and one high. */
const doubled = (shape: readonly string[]): string[] =>
	shape.map((squares) => [...squares].map((square) => (square === '#' ? '██' : '  ')).join(''));
