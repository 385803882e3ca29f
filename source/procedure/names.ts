import type {SideWord} from './step.js';
import type {IdOf, OptionOf} from './step-ids.js';

/** What the options of each choice are called. */
export type OptionNames = {readonly [Id in IdOf<'choice' | 'several'>]: {readonly [Option in OptionOf<Id>]: string}} & {
	/** The name that is offered for gauge and tools. */
	readonly 'tools-name': {readonly 'bench-set': string};
};

/** How the language in use writes what is kept as it was typed: options, sides, yes and no, and how many rounds there are. */
export type Names = {
	readonly options: OptionNames;
	readonly sides: Readonly<Record<SideWord, string>>;
	readonly yes: string;
	readonly no: string;
	readonly rounds: (count: number) => string;
};

/** What an option is called where names are given; its id else. */
export const nameOf = (names: Names | undefined, step: string, option: string): string => {
	const options: Readonly<Record<string, Readonly<Record<string, string>>>> | undefined = names?.options;
	return options?.[step]?.[option] ?? option;
};
