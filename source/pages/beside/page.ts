import type {Option} from '../../procedure/step.js';
import {words} from '../../words/index.js';
import type {Opened, Saved} from '../../workbench.js';
import {line, type Shown} from '../shown-lines.js';

/** What is wanted on a page: a choice from a list, a yes or no, or a line of text. */
export type PagePrompt =
	| {readonly kind: 'choice'; readonly options: readonly Option[]; readonly offersFirst?: true}
	/** One explicit key; the entry is `yes` or `no`. */
	| {readonly kind: 'yes-no'; readonly question: string}
	| {
			readonly kind: 'field';
			/** What an empty line keeps. */
			readonly initial: string;
			/** '-' empties it. */
			readonly mayBeEmpty: boolean;
			/** Unit of a bare number; '' for none. */
			readonly unit: string;
	  };

/** One screen beside a check. Every face draws the same one. */
export type BesidePage = {
	readonly title: string;
	readonly shown: readonly Shown[];
	readonly prompt: PagePrompt;
	/** Where Esc leads, if not to the page before. */
	readonly esc?: keyof typeof words.faces.escapes;
	/** The list goes on: the entries `newer` and `older` turn it. */
	readonly turns?: boolean;
};

/** Where an entry leads. */
export type Turn<P> =
	| {readonly kind: 'go'; readonly to: P}
	| {readonly kind: 'refused'; readonly sentence: string}
	/** Something to be put on the disk first; `to` is gone to once it is there. */
	| {readonly kind: 'save'; readonly save: () => Promise<Saved>; readonly to: P}
	/** To a check. */
	| {readonly kind: 'open'; readonly open: () => Promise<Opened>}
	/** To the invented arms and back, or out of the program. */
	| {readonly kind: 'practice' | 'real-checks' | 'leave'};

/** A page in sight, and where its entries lead. */
export type Stop<P> = {
	readonly page: BesidePage;
	/** @param entry the id of an option, or what was typed */
	readonly turn: (entry: string) => Turn<P>;
	/** Where Esc leads. */
	readonly back: Turn<P>;
};

/** A check that came to its end. */
export type Filed = NonNullable<Extract<Saved, {readonly ok: true}>['finished']>;

/** Pages that lead to one another; P says which of them is shown. */
export type Pages<P> = {
	/** The first one; back from a check leads there too. */
	readonly start: P;
	readonly at: (place: P) => Stop<P>;
	/** After a check is filed. */
	readonly filed: (record: Filed) => P;
	/** Where it is told that something could not be opened. */
	readonly failed: (sentence: string) => P;
};

/** What a face has room for. */
export type FaceRoom = {
	/** Lines of a long list, and columns of each. */
	readonly listRows: number;
	readonly columns: number;
	/** A long list is turned by keys of its own, and left by one; else by options. */
	readonly hasKeys: boolean;
};

/** An option, what it is called, and where it leads; one without a name is not offered now. */
export type Offer<P> = readonly [id: string, label: string | undefined, turn: () => Turn<P>];

export const backOffer = <P>(turn: Turn<P>): Offer<P> => ['back', words.beside.back, () => turn];

/** A list to choose from; what is none of its options leads where Esc does. */
export const listStop = <P>(page: Omit<BesidePage, 'prompt'>, back: Turn<P>, offers: readonly Offer<P>[]): Stop<P> => {
	const options = offers.flatMap(([id, label]) => (label === undefined ? [] : [{id, label}]));
	return {
		page: {...page, prompt: {kind: 'choice', options}},
		turn: (entry) => offers.find(([id]) => id === entry)?.[2]() ?? back,
		back,
	};
};

type Field = Extract<PagePrompt, {readonly kind: 'field'}>;

/** The same, where the first line is what most want next. */
export function offerStop<P>(page: Omit<BesidePage, 'prompt'>, back: Turn<P>, offers: readonly Offer<P>[]): Stop<P> {
	const stop = listStop(page, back, offers);
	const {prompt} = stop.page;
	return prompt.kind === 'choice' ? {...stop, page: {...stop.page, prompt: {...prompt, offersFirst: true}}} : stop;
}

/** A line to type. */
export const fieldStop = <P>(
	page: Omit<BesidePage, 'prompt'>,
	back: Turn<P>,
	turn: (typed: string) => Turn<P>,
	field: Partial<Field> = {},
): Stop<P> => ({
	page: {...page, prompt: {kind: 'field', initial: '', mayBeEmpty: false, unit: '', ...field}},
	turn,
	back,
});

export const go = <P>(to: P): {readonly kind: 'go'; readonly to: P} => ({kind: 'go', to});

export const warnings = (texts: readonly string[]): Shown[] => texts.map((text) => line(text, 'warn'));
