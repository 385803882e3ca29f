// groff_char(7): these characters, bare, are set as others that cannot be typed back.
const NAMED: Readonly<Record<string, string>> = {
	'\\': '\\(rs',
	'-': '\\-',
	"'": '\\(aq',
	'`': '\\(ga',
	'^': '\\(ha',
	'~': '\\(ti',
	'"': '\\(dq',
};

const hexOf = (character: string): string =>
	(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');

/** Text in which roff sees nothing of its own, on one line; the input is ASCII whatever the text holds. */
export const roff = (text: string): string =>
	text
		.replace(/[\\\-'`^~"]/g, (character) => NAMED[character] ?? character)
		.replace(/[\u0080-\u{10FFFF}]/gu, (character) => `\\[u${hexOf(character)}]`)
		// A line that begins with a point is a request.
		.replace(/^\./, '\\&.');

/** Running text, in lines of input that are short enough for every tool; they do not show in the output. */
export const running = (text: string): readonly string[] =>
	text
		.replace(/(.{1,60})(?: |$)/g, '$1\n')
		.trimEnd()
		.split('\n')
		.map(roff);

export const bold = (text: string): string => `\\fB${roff(text)}\\fR`;

export const macroArgument = (text: string): string => `"${roff(text)}"`;

/** A macro with its arguments. */
export const macro = (name: string, ...values: readonly string[]): string =>
	[`.${name}`, ...values.map(macroArgument)].join(' ');

/** A term with its meaning indented under it. */
export const item = (term: string, meaning: string): readonly string[] => ['.TP', bold(term), ...running(meaning)];

/** Lines that stay as they are. */
export const asTyped = (lines: readonly string[]): readonly string[] => ['.PP', '.nf', ...lines.map(roff), '.fi'];
