import type {Option} from '../procedure/step.js';
import type {Saved} from '../workbench.js';
import type {Shown} from './shown-lines.js';

/** What is wanted on a page: a choice from a list, a yes or no, or a line of text. */
export type PagePrompt =
	| {readonly kind: 'choice'; readonly options: readonly Option[]}
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
export type Page = {readonly title: string; readonly shown: readonly Shown[]; readonly prompt: PagePrompt};

/** Where an entry leads. */
export type Turn<P> =
	| {readonly kind: 'go'; readonly to: P}
	/** To where these pages were called from; or to the put-back list of a check. */
	| {readonly kind: 'out'; readonly reopen?: string}
	| {readonly kind: 'refused'; readonly sentence: string}
	/** Something to be put on the disk first; `to` is gone to once it is there. */
	| {readonly kind: 'save'; readonly save: () => Promise<Saved>; readonly to: P};

/** Pages that lead to one another; P says which of them is shown. */
export type Pages<P> = {
	readonly start: P;
	readonly pageOf: (place: P) => Page;
	/** @param entry the id of an option, or what was typed */
	readonly turn: (place: P, entry: string) => Turn<P>;
	/** The page before; undefined from the first one. */
	readonly backOf: (place: P) => P | undefined;
};

export const back: Option = {id: 'back', label: 'back'};
