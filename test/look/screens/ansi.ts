import stringWidth from 'string-width';

/** How a run of characters is drawn. Colours are the numbers of the sixteen that a terminal has; undefined: its own. */
type Style = {
	readonly bold: boolean;
	readonly dim: boolean;
	readonly italic: boolean;
	readonly underline: boolean;
	readonly inverse: boolean;
	readonly ink: number | undefined;
	readonly ground: number | undefined;
};

const unstyled: Style = {
	bold: false,
	dim: false,
	italic: false,
	underline: false,
	inverse: false,
	ink: undefined,
	ground: undefined,
};

/** What a code of "select graphic rendition" does (ECMA-48, 8.3.117; 90 to 107 are the bright ones of aixterm). */
function after(style: Style, code: number): Style {
	if (code === 0) return unstyled;
	if (code === 1) return {...style, bold: true};
	if (code === 2) return {...style, dim: true};
	if (code === 3) return {...style, italic: true};
	if (code === 4) return {...style, underline: true};
	if (code === 7) return {...style, inverse: true};
	if (code === 22) return {...style, bold: false, dim: false};
	if (code === 23) return {...style, italic: false};
	if (code === 24) return {...style, underline: false};
	if (code === 27) return {...style, inverse: false};
	if (code >= 30 && code <= 37) return {...style, ink: code - 30};
	if (code === 39) return {...style, ink: undefined};
	if (code >= 40 && code <= 47) return {...style, ground: code - 40};
	if (code === 49) return {...style, ground: undefined};
	if (code >= 90 && code <= 97) return {...style, ink: code - 82};
	if (code >= 100 && code <= 107) return {...style, ground: code - 92};
	throw new Error(`No picture can be drawn of the code ${code}.`);
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

// Letters, lines and blocks are as wide as a cell in the font; anything else is held to its cells.
const fits = /^[\n\u0020-\u024f\u2500-\u259f]$/;

const cells = (text: string): string =>
	[...new Intl.Segmenter().segment(text)]
		.map(({segment}) => {
			if (fits.test(segment)) return escaped(segment);
			const width = stringWidth(segment);
			return width === 0 ? '' : `<i class="w${width}">${escaped(segment)}</i>`;
		})
		.join('');

function run(text: string, style: Style): string {
	const marks = (['bold', 'dim', 'italic', 'underline', 'inverse'] as const).filter((mark) => style[mark]);
	const hues = [
		...(style.ink === undefined ? [] : [`ink${style.ink}`]),
		...(style.ground === undefined ? [] : [`ground${style.ground}`]),
	];
	const names = [...marks, ...hues];
	return names.length === 0 ? cells(text) : `<span class="${names.join(' ')}">${cells(text)}</span>`;
}

/** A frame with its escape sequences as the inside of a `pre`. @throws Error at a sequence that is no rendition */
export function htmlOfAnsi(frame: string): string {
	const parts = frame.split(/(\u001B\[[\d;]*m)/);
	let style = unstyled;
	return parts
		.map((part) => {
			const codes = /^\u001B\[([\d;]*)m$/.exec(part)?.[1];
			if (codes !== undefined) {
				style = codes.split(';').map(Number).reduce(after, style);
				return '';
			}
			if (part.includes('\u001B')) throw new Error(`No picture can be drawn of ${JSON.stringify(part)}.`);
			return part === '' ? '' : run(part, style);
		})
		.join('');
}
