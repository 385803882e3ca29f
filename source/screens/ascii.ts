/** How characters beyond ASCII are written where the terminal has no more. */
const spellings: Readonly<Record<string, string>> = {
	'°': ' deg',
	'′': ' min',
	'±': '+/-',
	µ: 'u',
	μ: 'u',
	'·': '-',
	'…': '...',
	'—': '-',
	'–': '-',
	'−': '-',
	'×': 'x',
	'← →': 'Left, Right',
};

const beyond = new RegExp(Object.keys(spellings).join('|'), 'gu');

/** A text of the program without characters that only Unicode has. Names stay as they were typed. */
export const ascii = (text: string): string => text.replace(beyond, (one) => spellings[one] ?? one);

// Ids and earlier entries go back into the program and must stay what they are.
const kept = new Set(['id', 'key', 'initial', 'keys', 'kind', 'tone']);

/** Everything that is to be drawn, in ASCII. */
export const inAscii = <T>(drawn: T): T =>
	JSON.parse(JSON.stringify(drawn, (name, one) => (typeof one === 'string' && !kept.has(name) ? ascii(one) : one)));
