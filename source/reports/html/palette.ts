/** A colour of the page, by what it is for. A ground lies behind words of its own hue. */
type Hue =
	| 'paper'
	| 'ink'
	| 'soft'
	| 'line'
	| 'band'
	| 'bandEdge'
	| 'good'
	| 'goodGround'
	| 'warn'
	| 'warnGround'
	| 'bad'
	| 'badGround';

export type Palette = Readonly<Record<Hue, `#${string}`>>;

/** On paper, and where nothing else is asked for: the hues of the terminal, dark enough to read on white. */
export const lightPalette: Palette = {
	paper: '#ffffff',
	ink: '#1c2733',
	soft: '#54626f',
	line: '#ccd5dd',
	band: '#d5dee7',
	bandEdge: '#3f5163',
	good: '#0a6069',
	goodGround: '#e2f5f7',
	warn: '#755000',
	warnGround: '#fdf3d7',
	bad: '#9b1477',
	badGround: '#fce9f6',
};

/** On a screen that asks for dark. */
export const darkPalette: Palette = {
	paper: '#12181f',
	ink: '#e4e9ee',
	soft: '#a5b1bd',
	line: '#39444f',
	band: '#33414f',
	bandEdge: '#a9bacb',
	good: '#5fd9e8',
	goodGround: '#0f2c31',
	warn: '#f0c64b',
	warnGround: '#302709',
	bad: '#ff9be4',
	badGround: '#3a1531',
};

/** The colours as custom properties of CSS. */
export const propertiesOf = (palette: Palette): string =>
	Object.entries(palette)
		.map(([hue, colour]) => `--${hue}: ${colour};`)
		.join(' ');
