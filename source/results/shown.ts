const longest = 60;

/** Text from outside made safe for one line of a terminal: control and direction-changing characters shown escaped. */
export const escaped = (text: string): string =>
	text.replaceAll(
		/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu,
		(character) => `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`,
	);

/** A value of a JSON document as one short piece of a sentence. */
export const shown = (value: unknown): string => {
	if (value === undefined) return 'nothing';
	if (typeof value === 'number') return String(value);
	if (Array.isArray(value)) return value.length === 1 ? 'a list of 1' : `a list of ${value.length}`;
	if (typeof value === 'object' && value !== null) return 'a group of keys';
	const text = escaped(JSON.stringify(value) ?? String(value));
	return text.length > longest ? `${text.slice(0, longest)}…` : text;
};

/** A path in a JSON document, such as `probe[0].rounds[1].innerLimit`; keys that would confuse it stand in quotes. */
export const shownPath = (path: readonly PropertyKey[]): string =>
	path.reduce<string>((sofar, step) => {
		if (typeof step === 'number') return `${sofar}[${step}]`;
		const key = String(step);
		if (!/^[^\s.:[\]"\\\p{C}]+$/u.test(key)) return `${sofar}[${escaped(JSON.stringify(key))}]`;
		return sofar === '' ? key : `${sofar}.${key}`;
	}, '');
