import {setTimeout} from 'node:timers/promises';
import {stepById} from '../../source/procedure/index.js';
import {tickLines} from '../../source/procedure/step-ids.js';
import {titleOf} from '../../source/words/step-text.js';
import type {RunningProgram} from './pty.js';
import {flat, numbersIn, withAnyNumbers, words} from './said.js';

/** One question of a check: what its screen says, and the keys that answer it. */
export type Turn = {
	/** A line of the screen. */
	readonly title?: string;
	/** Words anywhere on it. */
	readonly shows: readonly string[];
	readonly keys: string;
	/** It is answered this much later than it is seen. */
	readonly waitsMs?: number;
};

/** An option of a list as full screens show it. */
export const option = (number: number, label: string): string => `${number} ${label}`;

/** What is asked at a limit, with a gauge that shows the force of the arm. */
export const limitAsked = (limit: 'inner' | 'outer', isTurned = false): string =>
	words.rounds.limit({which: `${limit}Limit`, isTurned, showsHand: false});

const ENTER = '\r';

/** A digit marks a line of a list, and Enter takes it. */
const taken = (keys: string): string => (/^\d$/.test(keys) ? keys + ENTER : keys);

/** A screen known by words on it. */
export const turn = (keys: string, ...shows: readonly string[]): Turn => ({shows, keys: taken(keys)});

/** The screen of a step of the procedure, known by its title. */
export const answer = (step: string, keys: string, ...shows: readonly string[]): Turn => {
	if (!stepById(step)) throw new Error(`no step ${step}`);
	return {title: titleOf(step), shows, keys: taken(keys)};
};

/** The same, answered by a line with its Enter. */
export const typed = (step: string, text: string, ...shows: readonly string[]): Turn =>
	answer(step, text + ENTER, ...shows);

const {minutes, titled} = words.pages.view;
/** Who listens hears what is left of the time behind the title, where others see it at the right of the bar. */
const timeLeft = new RegExp(`, ${withAnyNumbers(minutes({minutes: 7, isShort: false})).source}$`);

/** A title as it stands in the bar: alone, or with a round of so many. */
const inTheBar = (title: string): readonly string[] => [
	title,
	...[2, 3, 4, 5, 6].flatMap((usual) =>
		Array.from({length: usual}, (_, index) => titled({title, round: {number: index + 1, usual, isTurned: false}})),
	),
];

/** Whether a title stands in the bar over a screen, behind arm and place, if any; it is cut where it is narrow. */
export const isTitled = (screen: string, title: string): boolean => {
	const [bar = ''] = screen.split('\n');
	const [left = ''] = bar.trim().replace(timeLeft, '').split(/ {2,}/u);
	const numbered = left.replace(/^.*?\d+\/\d+ (?=\S)/u, '');
	const place = numbered === left ? left.replace(/^.*?(?: · |, )/u, '') : numbered;
	const [, whole = ''] = /^(.*?)(?:…|\.\.\.)$/u.exec(place) ?? [];
	return inTheBar(title).some((one) => left === one || place === one || (whole !== '' && one.startsWith(whole)));
};

/** Whether a screen asks the question of a turn. */
export const asks =
	({title, shows}: Turn) =>
	(screen: string): boolean => {
		const text = flat(screen);
		return (title === undefined || isTitled(screen, title)) && shows.every((one) => text.includes(flat(one)));
	};

/** Waits for the question of a turn. */
export const waitForTurn = async (program: RunningProgram, wanted: Turn): Promise<string> => {
	try {
		return await program.waitFor(asks(wanted), LIMIT_MS);
	} catch (error) {
		throw new Error(`Not asked: ${JSON.stringify(wanted)}. ${error instanceof Error ? error.message : ''}`);
	}
};

// Longer than any screen takes on a busy machine; only a failing test waits for it.
const LIMIT_MS = 15_000;

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
		const screen = await waitForTurn(program, one);
		look?.(screen, one);
		if (one.waitsMs !== undefined) await setTimeout(one.waitsMs);
		for (const keys of keyByKey ? one.keys : [one.keys]) program.type(keys);
	}
}

/** The keys of the turns as one string, as they would be pasted. */
export const pasted = (turns: readonly Turn[]): string => turns.map(({keys}) => keys).join('');

/** The titles of lists that are ticked. */
const listTitles = (Object.keys(tickLines) as (keyof typeof tickLines)[]).map(titleOf);

/** The turns as lines for the plain face, which takes the same answers; a list that is ticked all through is one line. */
export const asLines = (turns: readonly Turn[]): string =>
	turns
		.filter((one, index) => {
			const before = turns[index - 1];
			const goesOn = one.title !== undefined && listTitles.includes(one.title) && before?.title === one.title;
			return !(goesOn && one.keys === 'y' && before.keys === 'y');
		})
		.map(({keys}) => `${keys.replace(ENTER, '')}\n`)
		.join('');

/** All pages of a screen that is turned page by page, from its first one, as one run of words. */
export async function allPages(program: RunningProgram): Promise<string> {
	const pages = [program.screen()];
	const [count = 1] = numbersIn(pages[0] ?? '', words.faces.pageOf({page: 1, of: 7}), 7);
	for (let page = 2; page <= count; page++) {
		program.press('right');
		pages.push(await program.waitFor(words.faces.pageOf({page, of: count})));
	}
	return flat(pages.join('\n'));
}
