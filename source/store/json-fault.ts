/** Where a parser stopped, as far as its message tells: it names no place where it found a letter that cannot stand there. */
const positionIn = (error: unknown): number | undefined => {
	const [, position] = /position (\d+)/.exec(String(error)) ?? [];
	return position === undefined ? undefined : Number(position);
};

/** Whether nothing is wrong with a text but that it does not go on. */
const isOnlyCut = (text: string): boolean => {
	try {
		JSON.parse(text);
		return true;
	} catch (error) {
		return (
			/Unexpected end|Unterminated string/.test(String(error)) || (positionIn(error) ?? 0) >= text.trimEnd().length
		);
	}
};

/** The line, counted from 1, at which a text stops being JSON. @param error what the parser said */
export const lineOfFault = (text: string, error: unknown): number => {
	const position = positionIn(error);
	if (position !== undefined) return text.slice(0, position).split('\n').length;
	const lines = text.split('\n');
	let [sound, broken] = [0, lines.length];
	while (broken - sound > 1) {
		const middle = Math.floor((sound + broken) / 2);
		if (isOnlyCut(lines.slice(0, middle).join('\n'))) sound = middle;
		else broken = middle;
	}
	return broken;
};
