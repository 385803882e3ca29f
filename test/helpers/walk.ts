import type {RunningProgram} from './pty.js';

/** One question of a check: what its screen says, and the keys that answer it. */
export type Turn = {readonly shows: readonly string[]; readonly keys: string};

export const turn = (keys: string, ...shows: readonly string[]): Turn => ({shows, keys});

const ENTER = '\r';

/** A line typed into a field, with its Enter. */
export const typed = (text: string, ...shows: readonly string[]): Turn => turn(text + ENTER, ...shows);

/** A screen as one run of words, so that a sentence is found wherever a narrow window breaks it. */
export const words = (screen: string): string => screen.replace(/\s+/g, ' ');

/** Whether a screen asks the question of a turn. */
export const asks =
	({shows}: Turn) =>
	(screen: string): boolean => {
		const text = words(screen);
		return shows.every((one) => text.includes(one));
	};

export type WalkOptions = {
	/** Looks at the screen of each question before it is answered. */
	readonly look?: (screen: string, turn: Turn) => void;
	/** Every key by itself, instead of an answer at once. */
	readonly keyByKey?: boolean;
};

/** Plays the turns: waits for the question of each, then types its answer. */
export async function walk(
	program: RunningProgram,
	turns: readonly Turn[],
	{look, keyByKey = false}: WalkOptions = {},
): Promise<void> {
	for (const one of turns) {
		const screen = await program.waitFor(asks(one));
		look?.(screen, one);
		for (const keys of keyByKey ? one.keys : [one.keys]) program.type(keys);
	}
}

/** The keys of the turns as one string, as they would be pasted. */
export const pasted = (turns: readonly Turn[]): string => turns.map(({keys}) => keys).join('');

/** The turns as lines for the plain face, which takes the same answers. */
export const asLines = (turns: readonly Turn[]): string =>
	turns.map(({keys}) => `${keys.replace(ENTER, '')}\n`).join('');
